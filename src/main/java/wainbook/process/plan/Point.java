package wainbook.process.plan;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * A place where the dead state is proved with the tester.
 *
 * @param source the source whose absence is proved here
 * @param pairs what is measured against what; always at least plus to minus and both to chassis
 */
public record Point(String code, String source, String where, List<Pair> pairs) {

    /** Two places that the probes touch. */
    public enum Pair {
        PLUS_MINUS,
        PLUS_CHASSIS,
        MINUS_CHASSIS,
        PHASE_U_V,
        PHASE_V_W,
        PHASE_W_U;

        public boolean alternating() {
            return this == PHASE_U_V || this == PHASE_V_W || this == PHASE_W_U;
        }
    }

    public static final Set<Pair> RAILS = Set.of(Pair.PLUS_MINUS, Pair.PLUS_CHASSIS, Pair.MINUS_CHASSIS);

    public Point {
        pairs = List.copyOf(EnumSet.copyOf(pairs));
        if (!pairs.containsAll(RAILS)) {
            throw new IllegalArgumentException("point " + code
                    + " misses a pair: plus to minus, plus to chassis and minus to chassis are measured");
        }
    }
}
