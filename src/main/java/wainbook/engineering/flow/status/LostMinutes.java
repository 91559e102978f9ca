package wainbook.engineering.flow.status;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.TreeMap;
import wainbook.engineering.flow.status.Timeline.Stretch;

/**
 * Minutes that stations were blocked or starved, each booked to who was the cause at that minute: the cause may change while the victim
 * goes on waiting.
 *
 * @param station the cause, counted from 0, or {@link Walk#RELEASE}; the waiting one itself where its vehicle could have moved on
 * @param doing what the cause was doing; starved for the release, blocked where a vehicle could have moved on
 * @param minutes of all its victims together
 */
public record LostMinutes(int station, Doing doing, double minutes) {

    private static final double MILLIS_A_MINUTE = 60_000;

    private record Cause(int station, Doing doing) {}

    private static final Comparator<Cause> ORDER =
            Comparator.comparingInt(Cause::station).thenComparing(Cause::doing);

    /** The greatest loss first; of equal ones the station nearer the start. */
    public static List<LostMinutes> of(Timeline timeline) {
        Map<Cause, Long> lost = new TreeMap<>(ORDER);
        timeline.sweep((from, to, line) -> {
            for (int station = 0; station < line.size(); station++) {
                OptionalInt at = Walk.cause(one -> post(timeline, line, one), station);
                if (at.isPresent()) {
                    int cause = at.getAsInt();
                    Doing doing = cause == Walk.RELEASE
                            ? Doing.STARVED
                            : line.get(cause).doing();
                    lost.merge(new Cause(cause, doing), to - from, Long::sum);
                }
            }
        });
        var all = new ArrayList<LostMinutes>();
        lost.forEach(
                (cause, millis) -> all.add(new LostMinutes(cause.station(), cause.doing(), millis / MILLIS_A_MINUTE)));
        all.sort(Comparator.comparingDouble(LostMinutes::minutes).reversed());
        return List.copyOf(all);
    }

    private static Walk.Post post(Timeline timeline, List<Stretch> line, int station) {
        Stretch one = line.get(station);
        return new Walk.Post(
                one.doing(), one.vehicle(), one.next(), timeline.before().get(station));
    }
}
