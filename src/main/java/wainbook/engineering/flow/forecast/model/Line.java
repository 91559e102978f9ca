package wainbook.engineering.flow.forecast.model;

import java.util.HashSet;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The line as it stands at minute 0.
 *
 * @param working the line's own working time: what waits and what time goes into is counted in its minutes
 * @param vehicles in the order of the line, the first in front, orders that wait at the end in their order of entry; those in a bay
 *     anywhere
 * @param appointments that every vehicle needs after the line, in their order
 * @param pulses at which it moves, if it is paced
 */
public record Line(
        WorkingTime working,
        List<Stage> stages,
        List<Vehicle> vehicles,
        List<Appointment> appointments,
        Pulses pulses) {

    /** One that is not paced. */
    public Line(WorkingTime working, List<Stage> stages, List<Vehicle> vehicles, List<Appointment> appointments) {
        this(working, stages, vehicles, appointments, Pulses.none());
    }

    public Line {
        stages = List.copyOf(stages);
        vehicles = List.copyOf(vehicles);
        appointments = List.copyOf(appointments);
        var names = new HashSet<String>();
        for (Vehicle vehicle : vehicles) {
            if (vehicle.visits().size() != stages.size()) {
                throw new IllegalArgumentException(vehicle.name() + " has "
                        + vehicle.visits().size() + " visits for " + stages.size() + " stages");
            }
            if (!names.add(vehicle.name())) {
                throw new IllegalArgumentException("two vehicles are called " + vehicle.name());
            }
        }
    }

    public Line withVehicles(List<Vehicle> others) {
        return new Line(working, stages, others, appointments, pulses);
    }

    public Line withWorking(WorkingTime time) {
        return new Line(time, stages, vehicles, appointments, pulses);
    }

    public Line withPulses(Pulses moments) {
        return new Line(working, stages, vehicles, appointments, moments);
    }

    /** The same with one vehicle as given, in the place of the one of that name. */
    public Line with(Vehicle changed) {
        return withVehicles(vehicles.stream()
                .map(one -> one.name().equals(changed.name()) ? changed : one)
                .toList());
    }

    /** The same with one stage as given, in the place of the one of that name. */
    public Line with(Stage changed) {
        return new Line(
                working,
                stages.stream()
                        .map(one -> one.name().equals(changed.name()) ? changed : one)
                        .toList(),
                vehicles,
                appointments,
                pulses);
    }

    public int stage(String name) {
        return IntStream.range(0, stages.size())
                .filter(one -> stages.get(one).name().equals(name))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("the line has no stage called " + name));
    }
}
