package wainbook.engineering.flow.status;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import wainbook.engineering.flow.status.Timeline.Stretch;

/**
 * What is known of one station over time. What it was doing follows at each moment by the rule of {@link Signs}. Times are in
 * milliseconds since a moment.
 *
 * @param working its hours, in their order and apart, from the first arrival on
 * @param down when somebody said that work stands still here; in any order
 * @param stays of vehicles; of two at a time the one that came first counts
 */
public record StationPast(List<Span> working, List<Span> down, List<Stay> stays) {

    /** Holds its beginning and not its end. */
    public record Span(long fromMillis, long toMillis) {
        boolean holds(long millis) {
            return fromMillis <= millis && millis < toMillis;
        }
    }

    /**
     * A vehicle at the station.
     *
     * @param held under a hold
     * @param done nothing more to do before the signature
     * @param signed by a signature that holds
     * @param taktMillis working time it may take
     * @param next the stations it could go to next
     */
    public record Stay(
            Span at, List<Span> held, List<Span> done, List<Span> signed, long taktMillis, List<Integer> next) {
        public Stay {
            held = List.copyOf(held);
            done = List.copyOf(done);
            signed = List.copyOf(signed);
            next = List.copyOf(next);
        }
    }

    public StationPast {
        working = List.copyOf(working);
        down = List.copyOf(down);
        stays = stays.stream()
                .sorted(Comparator.comparingLong(stay -> stay.at().fromMillis()))
                .toList();
    }

    /** From a moment to another without a gap; none where the one is not before the other. */
    public List<Stretch> stretches(long fromMillis, long toMillis) {
        var stretches = new ArrayList<Stretch>();
        List<Long> changes = changes(fromMillis, toMillis);
        List<Long> over = stays.stream().map(this::overTakt).toList();
        int stay = 0;
        int hours = 0;
        for (int i = 0; i + 1 < changes.size(); i++) {
            long at = changes.get(i);
            while (hours < working.size() && working.get(hours).toMillis() <= at) {
                hours++;
            }
            while (stay < stays.size() && stays.get(stay).at().toMillis() <= at) {
                stay++;
            }
            boolean shift = hours < working.size() && working.get(hours).holds(at);
            Optional<Stay> here = Optional.of(stay)
                    .filter(index -> index < stays.size())
                    .map(stays::get)
                    .filter(one -> one.at().holds(at));
            boolean late = here.isPresent() && over.get(stay) <= at;
            Timeline.add(
                    stretches,
                    new Stretch(
                            at,
                            changes.get(i + 1),
                            signs(at, shift, here, late).doing(),
                            here.isPresent(),
                            here.map(Stay::next).orElse(List.of())));
        }
        return stretches;
    }

    private Signs signs(long at, boolean shift, Optional<Stay> here, boolean late) {
        boolean stands = any(down, at);
        return here.map(one -> new Signs(
                        shift, stands, true, any(one.held(), at), any(one.done(), at), any(one.signed(), at), late))
                .orElse(Signs.empty(shift, stands));
    }

    private static boolean any(List<Span> spans, long at) {
        return spans.stream().anyMatch(span -> span.holds(at));
    }

    private List<Long> changes(long fromMillis, long toMillis) {
        var changes = new TreeSet<Long>();
        working.forEach(span -> both(changes, span));
        down.forEach(span -> both(changes, span));
        for (Stay stay : stays) {
            both(changes, stay.at());
            stay.held().forEach(span -> both(changes, span));
            stay.done().forEach(span -> both(changes, span));
            stay.signed().forEach(span -> both(changes, span));
            changes.add(overTakt(stay));
        }
        if (fromMillis >= toMillis) {
            return List.of();
        }
        changes.add(fromMillis);
        changes.add(toMillis);
        return List.copyOf(changes.subSet(fromMillis, true, toMillis, true));
    }

    private static void both(TreeSet<Long> changes, Span span) {
        changes.add(span.fromMillis());
        changes.add(span.toMillis());
    }

    /** When its working time passes the takt; never is the end of all time. */
    private long overTakt(Stay stay) {
        long left = stay.taktMillis();
        for (Span span : working) {
            long begun = Math.max(span.fromMillis(), stay.at().fromMillis());
            long worked = Math.max(0, span.toMillis() - begun);
            if (worked > left) {
                return begun + left;
            }
            left -= worked;
        }
        return Long.MAX_VALUE;
    }
}
