package wainbook.quality.chart;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import wainbook.quality.reading.Reading;

/**
 * What a chart is of.
 *
 * @param code of the joint, the kind of tool or the instrument; of an item its stage, key and column, parted by colons
 */
public record Charted(Sort sort, String code) {

    /** The sorts of chart. Those of tools hold tightenings of several joints, each in percent of its own tolerance. */
    public enum Sort {
        ITEM,
        JOINT,
        FAMILY,
        INSTRUMENT;

        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }

        static Optional<Sort> of(String word) {
            return Arrays.stream(values())
                    .filter(sort -> sort.word().equals(word))
                    .findFirst();
        }
    }

    /** Empty where there is no such sort. */
    public static Optional<Charted> of(String sort, String code) {
        return Sort.of(sort).map(known -> new Charted(known, code));
    }

    /**
     * The charts that a reading belongs on.
     *
     * @param family the kind of tool of a joint
     */
    static Stream<Charted> of(Reading reading, UnaryOperator<String> family) {
        if (reading.joint().isEmpty()) {
            String column = reading.column() == 0 ? "" : ":" + reading.column();
            return Stream.of(new Charted(Sort.ITEM, reading.stage() + ":" + reading.item() + column));
        }
        String joint = reading.joint().get();
        return Stream.concat(
                Stream.of(new Charted(Sort.JOINT, joint), new Charted(Sort.FAMILY, family.apply(joint))),
                reading.instrument().map(tool -> new Charted(Sort.INSTRUMENT, tool)).stream());
    }

    /** Readings of unlike things, that only their distance from their own limits makes alike. */
    boolean mixed() {
        return sort == Sort.FAMILY || sort == Sort.INSTRUMENT;
    }

    List<String> parts() {
        return List.of(code.split(":"));
    }

    public String path() {
        return "/quality/charts/" + sort.word() + "/" + code;
    }

    /** As an entry of the ledger names it. */
    public String key() {
        return sort.word() + "/" + code;
    }

    static final Comparator<Charted> IN_ORDER =
            Comparator.comparing(Charted::sort).thenComparing(Charted::code);
}
