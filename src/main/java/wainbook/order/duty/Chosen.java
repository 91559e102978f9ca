package wainbook.order.duty;

import java.math.BigDecimal;
import java.util.List;
import java.util.UUID;

/**
 * A specification as it was chosen, with what it was judged by.
 *
 * @param componentsRevision of the library of parts
 * @param duty the entry that states it; likewise {@code chassis}
 * @param limits that counted
 * @param predicted load of every axle as built: no driver, no payload
 */
public record Chosen(
        int packs,
        String packType,
        int componentsRevision,
        UUID duty,
        UUID chassis,
        List<Limit> limits,
        List<Predicted> predicted,
        Figures figures) {

    public Chosen {
        limits = List.copyOf(limits);
        predicted = List.copyOf(predicted);
    }

    /** @param what the total, or an axle or group, as a key of texts */
    public record Limit(String what, BigDecimal kg, String source) {}

    /**
     * @param axle from the front, 1 the foremost
     * @param uncertaintyKg standard
     */
    public record Predicted(int axle, BigDecimal kg, BigDecimal uncertaintyKg) {}

    /** What was shown when it was chosen. */
    public record Figures(
            BigDecimal payloadLimitKg,
            BigDecimal kwhPerKm,
            BigDecimal rangeNewKm,
            BigDecimal rangeAtEndKm,
            BigDecimal oddsAtEndPercent,
            BigDecimal chargeHours) {}
}
