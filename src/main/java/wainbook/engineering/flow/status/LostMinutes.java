package wainbook.engineering.flow.status;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.TreeMap;

/**
 * Minutes that stations were blocked or starved, each booked to who was the cause at that minute: the cause may change while the victim
 * goes on waiting.
 *
 * @param station the cause, counted from 0, or {@link Walk#RELEASE}
 * @param doing what the cause was doing; starved for the release
 * @param minutes of all its victims together
 */
public record LostMinutes(int station, Doing doing, double minutes) {

    private record Cause(int station, Doing doing) {}

    private static final Comparator<Cause> ORDER =
            Comparator.comparingInt(Cause::station).thenComparing(Cause::doing);

    /** The greatest loss first; of equal ones the station nearer the start. */
    public static List<LostMinutes> of(Timeline timeline) {
        Map<Cause, Double> lost = new TreeMap<>(ORDER);
        double[] changes = timeline.changes();
        for (int i = 0; i + 1 < changes.length; i++) {
            List<Doing> line = timeline.at(changes[i]);
            double minutes = changes[i + 1] - changes[i];
            for (int station = 0; station < line.size(); station++) {
                OptionalInt at = Walk.cause(line, station);
                if (at.isPresent()) {
                    int cause = at.getAsInt();
                    Doing doing = cause == Walk.RELEASE ? Doing.STARVED : line.get(cause);
                    lost.merge(new Cause(cause, doing), minutes, Double::sum);
                }
            }
        }
        var all = new ArrayList<LostMinutes>();
        lost.forEach((cause, minutes) -> all.add(new LostMinutes(cause.station(), cause.doing(), minutes)));
        all.sort(Comparator.comparingDouble(LostMinutes::minutes).reversed());
        return List.copyOf(all);
    }
}
