package wainbook.engineering.flow.simulation;

import java.util.List;
import java.util.stream.Stream;

/**
 * One replication of a line that begins empty and always has a vehicle waiting in front.
 *
 * @param perMinute vehicles that leave the line, over the vehicles after the warm-up
 * @param stages the shares of each stage's time, over the same vehicles
 */
public record Spell(double perMinute, List<Shares> stages) {

    public Spell {
        stages = List.copyOf(stages);
    }

    /**
     * @param warmUp vehicles that go ahead and do not count
     * @param vehicles that count
     * @param key of the replication; the work of a vehicle at a stage hangs on its own key below it
     */
    public static Spell of(List<WorkTime> times, int[] servers, int[] rooms, int warmUp, int vehicles, long key) {
        int last = servers.length - 1;
        var passage = new Passage(servers, rooms);
        var sums = Stream.generate(Shares.Sum::new).limit(servers.length).toList();
        double[] work = new double[servers.length];
        double from = 0;
        for (int vehicle = 1; vehicle <= warmUp + vehicles; vehicle++) {
            draw(times, Draws.key(key, vehicle), work);
            passage.next(0, work);
            if (vehicle > warmUp) {
                for (int stage = 0; stage <= last; stage++) {
                    sums.get(stage).add(passage, stage);
                }
            } else {
                from = passage.left(last);
            }
        }
        return new Spell(
                vehicles / (passage.left(last) - from),
                sums.stream().map(Shares.Sum::shares).toList());
    }

    private static void draw(List<WorkTime> times, long vehicle, double[] work) {
        for (int stage = 0; stage < work.length; stage++) {
            work[stage] = times.get(stage).minutes(Draws.uniform(Draws.key(vehicle, stage + 1L)));
        }
    }
}
