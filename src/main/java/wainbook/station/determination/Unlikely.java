package wainbook.station.determination;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import wainbook.act.Reason;
import wainbook.process.determination.Method;
import wainbook.station.StationSaying.Determined;

/**
 * What may be a slip though nothing is impossible: the last vehicle's value to every digit, or one a decade away from those of
 * late. It is asked about once, and kept as it is when the person is sure.
 *
 * @param lately values of other vehicles at the same line, newest first
 */
public record Unlikely(List<BigDecimal> lately) {

    /** How many values are looked at. */
    public static final int LOOKED_AT = 20;

    private static final int ENOUGH = 5;
    private static final double DECADE = 10;

    public static final List<String> KEYS = List.of("station.sameAsLast", "station.decadeAway");

    public Optional<Reason> of(Determined said) {
        if (said.value().isEmpty() || said.openEnded() || !asked(said.method())) {
            return Optional.empty();
        }
        BigDecimal value = said.value().get();
        String shown = Quantities.of(value, said.unit());
        if (!lately.isEmpty() && lately.get(0).compareTo(value) == 0) {
            return Optional.of(
                    Reason.of("station.sameAsLast", Reason.PRACTICE, shown).liftedAt("#sure"));
        }
        if (lately.size() < ENOUGH || value.signum() <= 0) {
            return Optional.empty();
        }
        BigDecimal middle = lately.stream().sorted().toList().get(lately.size() / 2);
        double times = value.doubleValue() / middle.doubleValue();
        return times >= DECADE || times <= 1 / DECADE
                ? Optional.of(
                        Reason.of("station.decadeAway", Reason.PRACTICE, shown, Quantities.of(middle, said.unit()))
                                .liftedAt("#sure"))
                : Optional.empty();
    }

    private static boolean asked(Method method) {
        return method.insulation() || method == Method.BONDING;
    }
}
