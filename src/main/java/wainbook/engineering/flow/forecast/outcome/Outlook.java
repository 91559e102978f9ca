package wainbook.engineering.flow.forecast.outcome;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What a forecast says of one vehicle.
 *
 * @param offTheLine when it leaves the line or the bay, as {@code finish}; the same where nothing is dated after the line
 * @param finish when it is through its appointments too
 * @param promise the odds of that by the minute it is promised for
 * @param stages those it has not left yet
 * @param besides mean working minutes of the line that go into what lies before and after the stages
 */
public record Outlook(
        String vehicle,
        Finish offTheLine,
        Finish finish,
        Optional<Odds> promise,
        List<StageTimes> stages,
        Map<Cause, Double> besides) {

    public Outlook {
        stages = List.copyOf(stages);
        besides = Map.copyOf(besides);
    }

    /** Mean working minutes of the line from minute 0 to the finish, by what they go into; together they are all of them. */
    public Map<Cause, Double> drivers() {
        Map<Cause, Double> all = new EnumMap<>(Cause.class);
        all.putAll(besides);
        stages.forEach(
                stage -> stage.meanMinutes().forEach((cause, minutes) -> all.merge(cause, minutes, Double::sum)));
        return all;
    }

    /** Of all its time, from 0 to 1; 0 if no time is left. */
    public double share(Cause cause) {
        double all = drivers().values().stream().mapToDouble(one -> one).sum();
        return all > 0 ? drivers().getOrDefault(cause, 0.0) / all : 0;
    }
}
