package wainbook.line.forecast.past;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import wainbook.gate.past.VehicleWay;
import wainbook.ledger.History;
import wainbook.works.shift.Shifts;

/**
 * When a vehicle was kept from work: holds that were released, stays in a bay that ended.
 *
 * @param idle when it was kept from it otherwise, or still is
 */
public record Away(List<Spell> holds, List<Spell> bays, List<Spell> idle) {

    /** Counts working minutes between two times. */
    public interface WorkingMinutes {
        long between(Instant from, Instant to);

        /** Those of the shifts that work at one place. */
        default WorkingMinutes at(String place) {
            return this;
        }

        static WorkingMinutes of(Shifts shifts) {
            return new WorkingMinutes() {
                @Override
                public long between(Instant from, Instant to) {
                    return shifts.workingMinutes(from, to);
                }

                @Override
                public WorkingMinutes at(String place) {
                    return of(shifts.at(place));
                }
            };
        }
    }

    /** @param stopsWork nothing was done meanwhile */
    public record Spell(Instant from, Instant to, boolean stopsWork) {}

    public static Away of(History history) {
        return VehicleWay.of(history).map(Away::of).orElse(new Away(List.of(), List.of(), List.of()));
    }

    static Away of(VehicleWay way) {
        return new Away(
                way.holds().stream()
                        .flatMap(hold -> spell(hold.from(), hold.to(), hold.stopsWork()))
                        .toList(),
                way.inBay()
                        .flatMap(stay -> spell(stay.arrived(), stay.left(), true))
                        .toList(),
                List.of());
    }

    private static Stream<Spell> spell(Instant from, Optional<Instant> to, boolean stopsWork) {
        return to.map(ended -> new Spell(from, ended, stopsWork)).stream();
    }

    public Away and(List<Spell> others) {
        return new Away(
                holds, bays, Stream.concat(idle.stream(), others.stream()).toList());
    }

    /** Working minutes between two times in which it could be worked on. */
    public double present(Instant from, Instant to, WorkingMinutes minutes) {
        var spells = new ArrayList<>(holds);
        spells.addAll(bays);
        spells.addAll(idle);
        spells.sort(Comparator.comparing(Spell::from));
        double all = minutes.between(from, to);
        Instant counted = from;
        for (Spell spell : spells) {
            Instant begun = spell.from().isAfter(counted) ? spell.from() : counted;
            Instant ended = spell.to().isBefore(to) ? spell.to() : to;
            if (spell.stopsWork() && begun.isBefore(ended)) {
                all -= minutes.between(begun, ended);
                counted = ended;
            }
        }
        return all;
    }
}
