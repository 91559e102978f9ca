package wainbook.engineering.flow.forecast.model;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A vehicle of the forecast.
 *
 * @param name tells its random numbers from those of others: it stays the same from one forecast to the next
 * @param visits one for each stage of the line, those behind it too
 * @param bookings minute by appointment, counted from 0, for those already booked
 * @param promised the minute it is promised for
 * @param pulsesStood pulses of a paced line that it has stood for at its stage already
 */
public record Vehicle(
        String name,
        Whereabouts whereabouts,
        List<Visit> visits,
        Pace pace,
        Optional<Hold> hold,
        Map<Integer, Double> bookings,
        OptionalDouble promised,
        int pulsesStood) {

    public Vehicle {
        visits = List.copyOf(visits);
        bookings = Map.copyOf(bookings);
    }

    public static Vehicle of(String name, Whereabouts whereabouts, List<Visit> visits) {
        return new Vehicle(
                name, whereabouts, visits, Pace.USUAL, Optional.empty(), Map.of(), OptionalDouble.empty(), 0);
    }

    public Vehicle withVisits(List<Visit> others) {
        return new Vehicle(name, whereabouts, others, pace, hold, bookings, promised, pulsesStood);
    }

    public Vehicle withPace(Pace other) {
        return new Vehicle(name, whereabouts, visits, other, hold, bookings, promised, pulsesStood);
    }

    public Vehicle withHold(Hold open) {
        return new Vehicle(name, whereabouts, visits, pace, Optional.of(open), bookings, promised, pulsesStood);
    }

    public Vehicle released() {
        return new Vehicle(name, whereabouts, visits, pace, Optional.empty(), bookings, promised, pulsesStood);
    }

    public Vehicle promisedFor(double minute) {
        return new Vehicle(name, whereabouts, visits, pace, hold, bookings, OptionalDouble.of(minute), pulsesStood);
    }

    public Vehicle booked(Map<Integer, Double> minutes) {
        return new Vehicle(name, whereabouts, visits, pace, hold, minutes, promised, pulsesStood);
    }

    public Vehicle stood(int pulses) {
        return new Vehicle(name, whereabouts, visits, pace, hold, bookings, promised, pulses);
    }
}
