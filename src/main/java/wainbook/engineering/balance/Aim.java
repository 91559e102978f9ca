package wainbook.engineering.balance;

import java.util.Map;
import java.util.Optional;

/**
 * What a balance is wanted for: the fewest stations for a takt, or the shortest takt for the stations there are; and which of
 * the equals then.
 *
 * @param stations the number there is; where a takt is given, the most there can be
 * @param limitS seconds for all of it
 * @param today station of each task, from 1, for the least change
 */
public record Aim(Optional<Double> taktMinutes, int stations, double limitS, Then then, Map<String, Integer> today) {

    /** Which one among equally good ones. */
    public enum Then {
        /** The one with the least sum of squared loads. */
        SMOOTHEST,
        /** The one with the fewest tasks that move. */
        LEAST_CHANGE,
        /** Any. */
        ANY
    }

    public Aim {
        today = Map.copyOf(today);
    }

    public static Aim takt(double minutes, int most, double limitS) {
        return new Aim(Optional.of(minutes), most, limitS, Then.SMOOTHEST, Map.of());
    }

    public static Aim stations(int stations, double limitS) {
        return new Aim(Optional.empty(), stations, limitS, Then.SMOOTHEST, Map.of());
    }

    public Aim then(Then other, Map<String, Integer> places) {
        return new Aim(taktMinutes, stations, limitS, other, places);
    }
}
