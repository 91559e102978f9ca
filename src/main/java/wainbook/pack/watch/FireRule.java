package wainbook.pack.watch;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * When a watched pack is a case for the fire service: a rise of more than 2 K in an hour over ambient, or 60 °C. Common
 * practice, no source; the pack maker's and the fire service's own figures come first.
 */
public final class FireRule {

    public static final BigDecimal MOST_RISE_K = new BigDecimal("2");
    public static final BigDecimal HOT_C = new BigDecimal("60");
    private static final Duration WITHIN = Duration.ofHours(1);

    private FireRule() {}

    /**
     * @param former the readings before it, oldest first
     * @return what it says; empty where nothing
     */
    public static List<Alarm> alarms(List<Temperatures> former, Temperatures now) {
        var alarms = new ArrayList<Alarm>();
        if (compared(former, now.at()).stream()
                .anyMatch(before -> rise(before, now).compareTo(MOST_RISE_K) > 0)) {
            alarms.add(Alarm.RISE);
        }
        if (now.packC().compareTo(HOT_C) >= 0) {
            alarms.add(Alarm.HOT);
        }
        return List.copyOf(alarms);
    }

    /**
     * Every reading of the last hour, and the one before them: nobody knows when between two readings the pack grew warm,
     * so a rise over a longer gap counts as if it had come within the hour.
     */
    private static List<Temperatures> compared(List<Temperatures> former, Instant now) {
        Instant since = now.minus(WITHIN);
        var compared = new ArrayList<>(
                former.stream().filter(one -> !one.at().isBefore(since)).toList());
        Optional<Temperatures> before =
                former.stream().filter(one -> one.at().isBefore(since)).reduce((one, next) -> next);
        before.ifPresent(compared::add);
        return compared;
    }

    private static BigDecimal rise(Temperatures before, Temperatures now) {
        return now.aboveAirK().subtract(before.aboveAirK());
    }
}
