package wainbook.line.forecast;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.order.OrderSaying.Direction;
import wainbook.order.OrderSaying.Held;
import wainbook.order.OrderSaying.HoldReleased;
import wainbook.order.OrderSaying.Moved;
import wainbook.order.OrderSaying.Stops;
import wainbook.works.shift.Shifts;

/** When a vehicle was kept from work and is no longer: holds that were released, stays in a bay that ended. */
record Away(List<Spell> holds, List<Spell> bays) {

    /** Counts working minutes between two times. */
    interface WorkingMinutes {
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
    record Spell(Instant from, Instant to, boolean stopsWork) {}

    static Away of(History history) {
        var holds = new ArrayList<Spell>();
        var bays = new ArrayList<Spell>();
        Map<Integer, Entry> open = new HashMap<>();
        Instant off = null;
        for (Entry entry : history.entries()) {
            Instant at = entry.moment().at();
            if (entry.saying() instanceof Held held) {
                open.put(held.hold(), entry);
            } else if (entry.saying() instanceof HoldReleased released && open.containsKey(released.hold())) {
                Entry begun = open.remove(released.hold());
                boolean stops = ((Held) begun.saying()).stops().contains(Stops.WORK);
                holds.add(new Spell(begun.moment().at(), at, stops));
            } else if (entry.saying() instanceof Moved moved) {
                if (off != null) {
                    bays.add(new Spell(off, at, true));
                }
                off = moved.direction() == Direction.OFF_LINE ? at : null;
            }
        }
        return new Away(holds, bays);
    }

    /** Working minutes between two times in which it could be worked on. */
    double present(Instant from, Instant to, WorkingMinutes minutes) {
        var spells = new ArrayList<>(holds);
        spells.addAll(bays);
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
