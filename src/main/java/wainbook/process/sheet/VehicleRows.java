package wainbook.process.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import wainbook.predicate.FactType;
import wainbook.process.VehicleFacts;

/**
 * Rows that follow the vehicle, so that one sheet serves two packs and three: {@code pack {packs}} stands for as many rows as
 * the vehicle has packs, {@code tail lift {tail_lift}} for one where it has a tail lift and none where it has not.
 */
public final class VehicleRows {

    private static final Pattern FACT = Pattern.compile("\\{([a-z_]+)}");
    private static final int MOST = 40;

    private VehicleRows() {}

    /** The rows as they are on a vehicle; those whose fact is not known are left out, see {@link #missing}. */
    static List<String> of(List<String> rows, Map<String, String> stated) {
        Map<String, Object> facts = VehicleFacts.typed(stated);
        var all = new ArrayList<String>();
        for (String row : rows) {
            Optional<String> fact = fact(row);
            if (fact.isEmpty()) {
                all.add(row);
            } else if (facts.get(fact.get()) instanceof Number count) {
                IntStream.rangeClosed(1, Math.min(MOST, count.intValue()))
                        .forEach(number -> all.add(FACT.matcher(row).replaceFirst("" + number)));
            } else if (Boolean.TRUE.equals(facts.get(fact.get()))) {
                all.add(FACT.matcher(row).replaceFirst("").strip());
            }
        }
        return all;
    }

    /** Facts that the rows follow and that nobody stated. */
    static Stream<String> missing(List<String> rows, Map<String, String> stated) {
        Map<String, Object> facts = VehicleFacts.typed(stated);
        return rows.stream().flatMap(row -> fact(row).stream()).filter(fact -> !facts.containsKey(fact));
    }

    /** Facts that no row can follow: unknown ones, and those that neither count nor are true or false. */
    public static Stream<String> unfit(List<String> rows) {
        return rows.stream().flatMap(row -> fact(row).stream()).filter(fact -> {
            FactType type = VehicleFacts.VOCABULARY.types().get(fact);
            return type != FactType.WHOLE && type != FactType.TRUTH;
        });
    }

    private static Optional<String> fact(String row) {
        Matcher matcher = FACT.matcher(row);
        return matcher.find() ? Optional.of(matcher.group(1)) : Optional.empty();
    }
}
