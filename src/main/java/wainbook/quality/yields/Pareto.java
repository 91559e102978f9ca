package wainbook.quality.yields;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import wainbook.gate.passage.Slip;

/** What went wrong, the commonest first: by cause, stage, kind of vehicle, item or part, and how many working minutes it cost. */
public record Pareto(By by, List<Row> rows) {

    public Pareto {
        rows = List.copyOf(rows);
    }

    /** What is counted by. */
    public enum By {
        CAUSE,
        STAGE,
        KIND,
        ITEM,
        PART;

        private String of(Slip slip) {
            return switch (this) {
                case CAUSE -> slip.cause();
                case STAGE -> slip.stage();
                case KIND -> slip.vehicleKind();
                case ITEM -> slip.item();
                case PART -> slip.part();
            };
        }

        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }

        public static Optional<By> of(String word) {
            for (By by : values()) {
                if (by.word().equals(word)) {
                    return Optional.of(by);
                }
            }
            return Optional.empty();
        }
    }

    /**
     * One bar.
     *
     * @param upTo share of all in percent, up to and with this one
     * @param lostMinutes of those whose minutes are known
     * @param known how many those are
     */
    public record Row(String code, int count, double upTo, long lostMinutes, int known) {}

    public static Pareto of(List<Slip> slips, By by) {
        Map<String, List<Slip>> parts = new LinkedHashMap<>();
        slips.forEach(slip ->
                parts.computeIfAbsent(by.of(slip), none -> new ArrayList<>()).add(slip));
        List<Map.Entry<String, List<Slip>>> sorted = parts.entrySet().stream()
                .sorted(Comparator.comparing((Map.Entry<String, List<Slip>> one) ->
                                -one.getValue().size())
                        .thenComparing(Map.Entry::getKey))
                .toList();
        var rows = new ArrayList<Row>();
        int sum = 0;
        for (Map.Entry<String, List<Slip>> one : sorted) {
            sum += one.getValue().size();
            List<Long> minutes = one.getValue().stream()
                    .flatMap(slip -> slip.lostMinutes().stream())
                    .toList();
            rows.add(new Row(
                    one.getKey(),
                    one.getValue().size(),
                    100.0 * sum / slips.size(),
                    minutes.stream().mapToLong(Long::longValue).sum(),
                    minutes.size()));
        }
        return new Pareto(by, rows);
    }
}
