package wainbook.station;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import wainbook.process.joint.CheckWay.Found;

/**
 * What a person answers to a check item: what it asks is there, the rest is empty. Numbers are kept as typed. A script
 * leaves out what is empty, lists too.
 *
 * @param boltsNm in the order of tightening
 * @param found at each fastener of a marked joint, in the order of tightening
 * @param cells row by row
 * @param sha256 the fingerprint of a file that was handed in before
 * @param readings by their names, for a quantity that is determined
 * @param sure whether what looks like a slip was asked about and is as typed
 */
public record Reply(
        Optional<BigDecimal> reading,
        List<BigDecimal> cells,
        List<BigDecimal> boltsNm,
        List<BigDecimal> anglesDeg,
        List<Found> found,
        Optional<String> serial,
        Optional<String> lot,
        Optional<BigDecimal> quantity,
        Optional<String> choice,
        Optional<String> words,
        Optional<String> version,
        Optional<String> sha256,
        Optional<Boolean> sure,
        List<StationSaying.Figure> readings) {

    /** Readings that name somebody or something, whatever they look like. */
    private static final Set<String> NAMED = Set.of("place", "second", "resistor");

    public Reply {
        cells = cells == null ? List.of() : List.copyOf(cells);
        boltsNm = boltsNm == null ? List.of() : List.copyOf(boltsNm);
        anglesDeg = anglesDeg == null ? List.of() : List.copyOf(anglesDeg);
        found = found == null ? List.of() : List.copyOf(found);
        readings = readings == null ? List.of() : List.copyOf(readings);
    }

    public static Reply done() {
        return new Builder().build();
    }

    public static Builder with() {
        return new Builder();
    }

    /** The same with one more thing said under a name. */
    public Reply and(String name, String value) {
        var more = new ArrayList<>(readings);
        more.add(new StationSaying.Figure(name, value));
        return new Reply(
                reading, cells, boltsNm, anglesDeg, found, serial, lot, quantity, choice, words, version, sha256, sure,
                more);
    }

    /** What was said under a name. */
    public Optional<String> reading(String name) {
        return readings.stream()
                .filter(figure -> figure.name().equals(name))
                .map(StationSaying.Figure::value)
                .findFirst();
    }

    /** The figures in it: what is kept when it can pass nothing. */
    public List<BigDecimal> figures() {
        Stream<BigDecimal> named = readings.stream()
                .filter(figure -> !NAMED.contains(figure.name()))
                .map(StationSaying.Figure::value)
                .filter(value -> value.matches("-?\\d{1,9}(\\.\\d{1,9})?"))
                .map(BigDecimal::new);
        return Stream.of(reading.stream(), cells.stream(), boltsNm.stream(), anglesDeg.stream(), named)
                .flatMap(figures -> figures)
                .toList();
    }

    /** Puts a reply together from what a form or a script sends. */
    public static final class Builder {
        private Optional<BigDecimal> reading = Optional.empty();
        private List<BigDecimal> cells = List.of();
        private List<BigDecimal> boltsNm = List.of();
        private List<BigDecimal> anglesDeg = List.of();
        private List<Found> found = List.of();
        private Optional<String> serial = Optional.empty();
        private Optional<String> lot = Optional.empty();
        private Optional<BigDecimal> quantity = Optional.empty();
        private Optional<String> choice = Optional.empty();
        private Optional<String> words = Optional.empty();
        private Optional<String> version = Optional.empty();
        private Optional<String> sha256 = Optional.empty();
        private Optional<Boolean> sure = Optional.empty();
        private final List<StationSaying.Figure> readings = new ArrayList<>();

        public Builder reading(BigDecimal typed) {
            reading = Optional.of(typed);
            return this;
        }

        public Builder cells(List<BigDecimal> typed) {
            cells = typed;
            return this;
        }

        public Builder boltsNm(List<BigDecimal> typed) {
            boltsNm = typed;
            return this;
        }

        public Builder anglesDeg(List<BigDecimal> typed) {
            anglesDeg = typed;
            return this;
        }

        public Builder found(List<Found> seen) {
            found = seen;
            return this;
        }

        public Builder serial(String typed) {
            serial = Optional.of(typed);
            return this;
        }

        public Builder lot(String typed) {
            lot = Optional.of(typed);
            return this;
        }

        public Builder quantity(BigDecimal typed) {
            quantity = Optional.of(typed);
            return this;
        }

        public Builder choice(String typed) {
            choice = Optional.of(typed);
            return this;
        }

        public Builder words(String typed) {
            words = Optional.of(typed);
            return this;
        }

        public Builder version(String typed) {
            version = Optional.of(typed);
            return this;
        }

        public Builder file(String fingerprint) {
            sha256 = Optional.of(fingerprint);
            return this;
        }

        public Builder reading(String name, String value) {
            readings.add(new StationSaying.Figure(name, value));
            return this;
        }

        public Builder sure() {
            sure = Optional.of(true);
            return this;
        }

        public Reply build() {
            return new Reply(
                    reading, cells, boltsNm, anglesDeg, found, serial, lot, quantity, choice, words, version, sha256,
                    sure, readings);
        }
    }
}
