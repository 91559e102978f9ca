package wainbook.handover.carbon;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import wainbook.handover.carbon.CarbonSaying.Used;
import wainbook.page.Words;

/** The factors of a year, as far as they were read. */
public record CarbonSet(int year, String set, Map<Factor, CarbonSet.Value> factors) {

    /** How well a factor is known. */
    public enum Standing {
        SEEN,
        SECOND_HAND,
        DERIVED,
        MEMORY;

        public String word() {
            return Words.of("handover.carbonStanding." + name());
        }
    }

    /** @param unit kilograms for a litre or a kilowatt-hour */
    public record Value(BigDecimal value, String unit, String source, Standing standing) {}

    public CarbonSet {
        factors = new EnumMap<>(factors);
    }

    /** Those that were not read. */
    public List<Factor> missing() {
        return Arrays.stream(Factor.values())
                .filter(factor -> !factors.containsKey(factor))
                .toList();
    }

    public boolean whole() {
        return missing().isEmpty();
    }

    public String missingInWords() {
        return missing().stream().map(Factor::word).collect(Collectors.joining(", "));
    }

    Optional<Used> used(Factor factor) {
        return Optional.ofNullable(factors.get(factor))
                .map(value -> new Used(factor, value.value(), value.unit(), year, value.source(), value.standing()));
    }
}
