package wainbook.line.forecast.state;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wainbook.line.forecast.past.Stop;

/**
 * A vehicle that is still to be finished, as the record has it.
 *
 * @param stage it is at, or goes back to from a bay
 * @param since when it came where it is
 * @param minutes of working time in what it is doing
 * @param plannedMinutes of the check sheet at each stage that it passes
 * @param stops what stands against it now
 * @param needs what its stages wait for
 */
public record OnHand(
        String order,
        String kind,
        Doing doing,
        Optional<String> stage,
        Optional<String> place,
        Instant since,
        double minutes,
        Map<String, Integer> plannedMinutes,
        List<Stop.Open> stops,
        LocalDate promisedOn,
        Needs needs) {

    /** How far it is, the furthest first. */
    public enum Doing {
        /** Has left the line; appointments are before it. */
        AFTER,
        SIGNED,
        UNSIGNED,
        WORK,
        BAY,
        ACCEPTED,
        SURVEY,
        ORDERED;

        boolean onLine() {
            return this == SIGNED || this == UNSIGNED || this == WORK;
        }

        public boolean inFront() {
            return this == ACCEPTED || this == SURVEY || this == ORDERED;
        }
    }

    /** One whose stages need nothing but work. */
    OnHand(
            String order,
            String kind,
            Doing doing,
            Optional<String> stage,
            Optional<String> place,
            Instant since,
            double minutes,
            Map<String, Integer> plannedMinutes,
            List<Stop.Open> stops,
            LocalDate promisedOn) {
        this(order, kind, doing, stage, place, since, minutes, plannedMinutes, stops, promisedOn, Needs.NONE);
    }

    public OnHand {
        plannedMinutes = Map.copyOf(plannedMinutes);
        stops = List.copyOf(stops);
    }

    /** Whether an open hold is on it. */
    public boolean held() {
        return stops.stream().anyMatch(stop -> stop.sort() == Stop.HOLD);
    }

    /** The same without something that stands against it. */
    public OnHand without(Stop sort, int number) {
        return new OnHand(
                order,
                kind,
                doing,
                stage,
                place,
                since,
                minutes,
                plannedMinutes,
                stops.stream()
                        .filter(stop -> stop.sort() != sort || stop.number() != number)
                        .toList(),
                promisedOn,
                needs);
    }

    public OnHand needing(Needs others) {
        return new OnHand(order, kind, doing, stage, place, since, minutes, plannedMinutes, stops, promisedOn, others);
    }

    /** The same doing something else from now on. */
    public OnHand from(Instant now, Doing next, Optional<String> there) {
        Instant came = there.equals(stage) ? since : now;
        return new OnHand(order, kind, next, there, place, came, 0, plannedMinutes, stops, promisedOn, needs);
    }
}
