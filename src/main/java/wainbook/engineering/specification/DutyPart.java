package wainbook.engineering.specification;

import java.util.Optional;
import wainbook.engineering.energy.driving.Battery;
import wainbook.engineering.energy.driving.Driven;
import wainbook.engineering.energy.driving.Kinematics;
import wainbook.engineering.energy.driving.Segment;
import wainbook.engineering.energy.driving.Spent;
import wainbook.engineering.energy.driving.Trace;
import wainbook.engineering.energy.driving.Vehicle;

/** A part of a day: described, or recorded second by second. */
public sealed interface DutyPart {

    double km();

    double hours();

    /** Of the whole payload, on board in this part. */
    double loadShare();

    /** @param weighed as it is in this part */
    Spent spent(Vehicle weighed, int packs);

    default Optional<Driven.Beyond> beyond(Vehicle weighed, int packs) {
        return Optional.empty();
    }

    /** As an operator tells it. */
    record Described(Segment segment, double loadShare) implements DutyPart {
        @Override
        public double km() {
            return segment.distanceKm();
        }

        @Override
        public double hours() {
            return segment.hours();
        }

        @Override
        public Spent spent(Vehicle weighed, int packs) {
            return segment.spent(weighed);
        }
    }

    /**
     * As a vehicle drove it.
     *
     * @param timesADay how often the recorded way is driven
     * @param openV voltage of the packs, which lie side by side
     * @param packOhm resistance of one
     */
    record Recorded(Trace trace, double timesADay, double loadShare, double openV, double packOhm) implements DutyPart {
        private static final double SECONDS_AN_HOUR = 3600;

        @Override
        public double km() {
            return timesADay * Kinematics.of(trace).distanceKm();
        }

        @Override
        public double hours() {
            return timesADay * trace.intervals() / SECONDS_AN_HOUR;
        }

        /** Where the packs cannot give a second, their resistance is left out: {@link #beyond} says so. */
        @Override
        public Spent spent(Vehicle weighed, int packs) {
            return driven(weighed, packOhm / packs)
                    .<Driven.Whole>fold(
                            whole -> whole,
                            beyond -> driven(weighed, 0).<Driven.Whole>fold(whole -> whole, never -> {
                                throw new IllegalStateException("packs without resistance give any power");
                            }))
                    .spent()
                    .times(timesADay);
        }

        @Override
        public Optional<Driven.Beyond> beyond(Vehicle weighed, int packs) {
            return driven(weighed, packOhm / packs).fold(whole -> Optional.<Driven.Beyond>empty(), Optional::of);
        }

        private Driven driven(Vehicle weighed, double resistanceOhm) {
            return Driven.over(trace, weighed, new Battery(openV, resistanceOhm));
        }
    }
}
