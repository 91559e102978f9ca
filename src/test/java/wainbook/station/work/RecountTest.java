package wainbook.station.work;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import wainbook.act.Moment;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.ledger.Saying;
import wainbook.ledger.Subject;
import wainbook.order.OrderSaying.Binding;
import wainbook.order.OrderSaying.Direction;
import wainbook.order.OrderSaying.Moved;
import wainbook.order.OrderSaying.Ordered;
import wainbook.order.OrderSaying.Place;
import wainbook.order.WorkOrder;
import wainbook.process.sheet.Ask;
import wainbook.process.sheet.CheckItem;
import wainbook.process.sheet.CheckItem.Dependence;
import wainbook.process.sheet.CheckSheet;
import wainbook.process.sheet.Condition;
import wainbook.station.ItemState;
import wainbook.station.Reply;
import wainbook.station.StageRecord;
import wainbook.station.StationSaying.About;
import wainbook.station.StationSaying.Basis;
import wainbook.station.StationSaying.Counted;
import wainbook.station.StationSaying.Verdict;
import wainbook.station.StationSaying.Voided;
import wainbook.station.judgement.Judged;
import wainbook.works.Person;
import wainbook.works.Role;

/** Tools counted before and after: no cover closes over one that is missing. */
class RecountTest {

    private static final Instant NOW = Instant.parse("2026-03-02T06:00:00Z");
    private static final CheckSheet SHEET = new CheckSheet(
            "DIST",
            "Distribution",
            List.of(
                    item("tools-in", Ask.Quantity.of("pieces", Optional.empty()), List.of(), List.of()),
                    item(
                            "tools-out",
                            new Ask.Recount("tools-in", "pieces"),
                            List.of("tools-in"),
                            List.of(new Dependence(Dependence.Sort.ITEM, "tools-in")))),
            "distribution");

    @Test
    void as_many_as_went_in_are_asked_for() {
        assertThat(asked(counted("tools-in", "18"))).isEqualTo(Ask.Quantity.of("pieces", Optional.of(decimal("18"))));
    }

    @Test
    void before_the_first_count_no_number_passes() {
        Work work = work(List.of());
        assertThat(work.state().item().asks()).isEqualTo(Ask.Quantity.of("pieces", Optional.empty()));
        assertThat(work.guards().counting()).extracting("key").contains("station.notInOrder");
    }

    @Test
    void a_missing_piece_and_a_piece_too_many_fail() {
        for (String found : List.of("17", "19")) {
            assertThat(judged(found).verdict()).as(found).isEqualTo(Verdict.FAIL);
            assertThat(judged(found).expected()).contains(decimal("18"));
        }
        assertThat(judged("18").verdict()).isEqualTo(Verdict.PASS);
    }

    @Test
    void a_first_count_that_was_voided_counts_no_more() {
        List<Saying> said = new ArrayList<>(List.of(counted("tools-in", "18")));
        said.add(new Voided(new UUID(1, 3), "DIST/tools-in", "miscounted"));
        assertThat(work(said).state().item().asks()).isEqualTo(Ask.Quantity.of("pieces", Optional.empty()));
        said.add(counted("tools-in", "20"));
        assertThat(work(said).state().item().asks()).isEqualTo(Ask.Quantity.of("pieces", Optional.of(decimal("20"))));
    }

    @Test
    void when_more_went_in_later_it_is_counted_anew() {
        assertThat(work(List.of(counted("tools-in", "18"), counted("tools-out", "18"), counted("tools-in", "20")))
                        .state()
                        .status())
                .isEqualTo(ItemState.Status.STALE);
    }

    private static Counted judged(String found) {
        Judged judged = work(List.of(counted("tools-in", "18")))
                .judge(Reply.with().quantity(decimal(found)).build());
        return (Counted) judged.fold(said -> said, reasons -> {
            throw new AssertionError(reasons);
        });
    }

    private static Ask asked(Saying... said) {
        return work(List.of(said)).state().item().asks();
    }

    private static Work work(List<Saying> said) {
        History history = history(said);
        WorkOrder order = WorkOrder.of(history).orElseThrow();
        StageRecord record = StageRecord.of(history, order, "distribution", (code, revision) -> SHEET)
                .orElseThrow();
        var guards = new Guards(
                order,
                record,
                record.item("tools-out").orElseThrow(),
                new Person("W-2", List.of(Role.TECHNICIAN), false, Map.of()),
                Optional.empty(),
                Optional.empty(),
                List.of(),
                List.of(),
                NOW,
                LocalDate.of(2026, 3, 2));
        return new Work(
                history,
                "distribution",
                guards.state(),
                guards,
                Moment.of("W-1", NOW),
                fingerprint -> Optional.empty(),
                List.of());
    }

    private static History history(List<Saying> said) {
        Subject subject = Subject.workOrder("WB-1");
        var entries = new ArrayList<Entry>();
        Saying ordered = new Ordered(
                "operator", "12 m bus", "bus-12m", "BUS-12M", List.of("distribution"), LocalDate.of(2027, 1, 1));
        Saying moved = new Moved(
                Direction.ONTO_LINE,
                new Place(Optional.empty(), "YARD"),
                new Place(Optional.of("distribution"), "ST-1"),
                Optional.of(new Binding("distribution", "DIST", 1)),
                List.of(),
                Optional.empty());
        Stream.concat(Stream.of(ordered, moved), said.stream()).forEach(one -> {
            long number = entries.size() + 1L;
            entries.add(new Entry(new UUID(1, number), subject, number, Moment.of("W-1", NOW), "0".repeat(64), one));
        });
        return new History(subject, entries);
    }

    private static Counted counted(String item, String pieces) {
        return new Counted(
                new About("distribution", "DIST", 1, item, List.of()),
                new Basis(Condition.NONE, Optional.empty(), Optional.empty()),
                decimal(pieces),
                "pieces",
                Optional.empty(),
                Verdict.PASS);
    }

    private static CheckItem item(String key, Ask asks, List<String> after, List<Dependence> dependsOn) {
        return new CheckItem(
                key,
                "Count",
                asks,
                Condition.NONE,
                Optional.empty(),
                Optional.empty(),
                2,
                Optional.empty(),
                List.of(),
                after,
                dependsOn,
                Optional.empty(),
                2,
                Optional.empty());
    }

    private static BigDecimal decimal(String value) {
        return new BigDecimal(value);
    }
}
