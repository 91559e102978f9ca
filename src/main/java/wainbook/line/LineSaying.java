package wainbook.line;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import wainbook.ledger.Kind;
import wainbook.ledger.Saying;
import wainbook.station.StationSaying.Held;

/** What is said of the line as a whole, and of what comes after it. */
public sealed interface LineSaying extends Saying {

    /**
     * What was forecast on a morning of each vehicle that was still to be finished; said once, and never changed.
     *
     * @param levels of the quantiles kept of each vehicle, rising, between 0 and 1
     * @param seed and {@code replications}: of the draws
     */
    @Kind("line.forecastKept/1")
    record ForecastKept(LocalDate day, List<BigDecimal> levels, long seed, int replications, List<Vehicle> vehicles)
            implements LineSaying {
        public ForecastKept {
            levels = List.copyOf(levels);
            vehicles = List.copyOf(vehicles);
        }
    }

    /**
     * The order in which these come onto the line, before those it does not name; said of the works. Each replaces the one before, and
     * an empty one gives the order back to the rule.
     */
    @Kind("line.entryOrderSet/1")
    record EntryOrderSet(List<String> orders) implements LineSaying {
        public EntryOrderSet {
            orders = List.copyOf(orders);
        }
    }

    /**
     * An appointment of a vehicle, agreed for a time. A later one of the same takes its place.
     *
     * @param appointment its code in the works' list
     */
    @Kind("line.appointmentBooked/1")
    record AppointmentBooked(String appointment, Instant on) implements LineSaying {}

    /** @param remark what was found; never empty where it was not passed */
    @Kind("line.appointmentAttended/1")
    record AppointmentAttended(String appointment, boolean passed, String remark) implements LineSaying {}

    /**
     * A part is missing for a stage of a vehicle. A later one of the same number moves the day.
     *
     * @param awaited its number on the vehicle
     * @param what in words of the trade
     * @param part its code in the sheet of the stage; absent where no item names it
     */
    @Kind("line.partAwaited/1")
    record PartAwaited(int awaited, String stage, String what, Optional<String> part, LocalDate expectedOn)
            implements LineSaying {}

    /** @param remark may be blank */
    @Kind("line.partCame/1")
    record PartCame(int awaited, String remark) implements LineSaying {}

    /**
     * The vehicle may be driven on the road by the driver named, until the release ends or what it rests on is disturbed.
     *
     * @param release its number on the vehicle, from 1
     * @param fingerprint of brakes, steering and joints of class A as they stood
     * @param driver the number of the person
     * @param held the signer's appointment and the driver's competence as they stood
     * @param plates under which it is driven
     * @param insurance the reference of the cover
     * @param documents that were due before road use and in hand
     */
    @Kind("line.roadReleased/1")
    record RoadReleased(
            int release,
            String fingerprint,
            String driver,
            List<Held> held,
            String plates,
            String insurance,
            List<String> documents)
            implements LineSaying {
        public RoadReleased {
            held = List.copyOf(held);
            documents = List.copyOf(documents);
        }
    }

    @Kind("line.roadReleaseEnded/1")
    record RoadReleaseEnded(int release, String reason) implements LineSaying {}

    /**
     * A drive on the road.
     *
     * @param loadKg carried
     * @param fromKm of the odometer, and {@code toKm}
     * @param packsDegC the highest seen, in degrees Celsius; likewise {@code driveDegC}
     * @param faults codes that the vehicle showed; empty for none
     * @param defects in words; empty for none
     * @param fit whether nothing was found that keeps it off the road
     */
    @Kind("line.roadDriven/1")
    record RoadDriven(
            int release,
            String driver,
            String route,
            int loadKg,
            int fromKm,
            int toKm,
            Optional<BigDecimal> packsDegC,
            Optional<BigDecimal> driveDegC,
            Optional<BigDecimal> outsideDegC,
            String faults,
            String defects,
            boolean fit)
            implements LineSaying {
        public int km() {
            return toKm - fromKm;
        }
    }

    /**
     * One vehicle.
     *
     * @param finish by the levels
     * @param promisedBy the end of work on the day it was promised for
     * @param odds of that, between 0 and 1
     * @param ground the thinnest record that it rested on; absent where no work was before it
     * @param byStages what the median times of the stages before it said, one after another
     * @param byTakt what counting takts said; absent in a works without one
     */
    record Vehicle(
            String order,
            List<Instant> finish,
            LocalDate promisedOn,
            Instant promisedBy,
            BigDecimal odds,
            Optional<Ground> ground,
            Instant byStages,
            Optional<Instant> byTakt) {
        public Vehicle {
            finish = List.copyOf(finish);
        }
    }

    /** How much of the works' own record a forecast rested on. */
    enum Ground {
        OWN,
        POOLED,
        PLANNED
    }
}
