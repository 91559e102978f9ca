package wainbook.line.awaited.page;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import wainbook.line.awaited.AwaitedPart;
import wainbook.line.awaited.AwaitedParts;
import wainbook.line.awaited.StagesAhead;
import wainbook.order.WorkOrder;
import wainbook.order.WorkOrder.Phase;
import wainbook.page.Filled;
import wainbook.page.Formats;
import wainbook.page.Option;
import wainbook.page.Words;

/**
 * The parts awaited for a vehicle as their page shows them.
 *
 * @param chosen the part whose forms are open
 * @param filled the form that was sent
 * @param changes whether this person says and notes
 */
public record AwaitedView(
        WorkOrder order,
        AwaitedParts parts,
        List<StagesAhead.Stage> stages,
        LocalDate today,
        Optional<Integer> chosen,
        Filled filled,
        boolean changes) {

    /** One part; {@code open}: its forms are. */
    public record Row(AwaitedPart part, String stage, String expected, boolean late, boolean canOpen, boolean open) {

        public String word() {
            return Words.of(
                    !part.isOpen() ? "line.awaitedHere" : late ? "line.awaitedLate" : "line.awaitedFor", expected);
        }

        public String sign() {
            return !part.isOpen() ? "done" : late ? "alert" : "clock";
        }

        public String meaning() {
            return !part.isOpen() ? "safe" : late ? "danger" : "must";
        }
    }

    /** What is awaited first, the earliest day before others; then what came. */
    public List<Row> rows() {
        return parts.all().stream()
                .sorted(Comparator.comparing((AwaitedPart part) -> !part.isOpen())
                        .thenComparing(AwaitedPart::expectedOn)
                        .thenComparing(AwaitedPart::number))
                .map(this::row)
                .toList();
    }

    private Row row(AwaitedPart part) {
        boolean mayChange = changes && part.isOpen() && here();
        boolean open =
                mayChange && chosen.filter(number -> number == part.number()).isPresent();
        return new Row(
                part, title(part.stage()), Formats.day(part.expectedOn()), part.late(today), mayChange && !open, open);
    }

    private String title(String stage) {
        return stages.stream()
                .filter(one -> one.code().equals(stage))
                .map(StagesAhead.Stage::title)
                .findFirst()
                .orElse(stage);
    }

    private boolean here() {
        return order.phase() != Phase.HANDED_OVER && order.phase() != Phase.DONOR_REJECTED;
    }

    /** Nothing can be missing any more once all gates are signed. */
    public boolean mayMiss() {
        return changes && here() && !stageOptions().isEmpty();
    }

    /** One form at a time. */
    public boolean misses() {
        return mayMiss() && rows().stream().noneMatch(Row::open);
    }

    public List<Option> stageOptions() {
        return stages.stream()
                .filter(stage -> !stage.signed())
                .map(stage -> new Option(stage.code(), stage.title()))
                .toList();
    }

    /** With the stages whose sheets name them. */
    public List<Option> partOptions() {
        List<StagesAhead.Stage> ahead =
                stages.stream().filter(stage -> !stage.signed()).toList();
        return ahead.stream()
                .flatMap(stage -> stage.parts().stream())
                .distinct()
                .sorted()
                .map(part -> new Option(
                        part,
                        Words.of(
                                "line.awaitedPartOption",
                                part,
                                String.join(
                                        ", ",
                                        ahead.stream()
                                                .filter(stage -> stage.parts().contains(part))
                                                .map(StagesAhead.Stage::title)
                                                .toList()))))
                .toList();
    }

    public String path() {
        return AwaitedPart.path(order.number());
    }

    public String title() {
        int open = parts.open().size();
        return open == 0
                ? Words.of("line.awaitedTitleNone", order.number())
                : Words.of("line.awaitedTitle", order.number(), open);
    }
}
