package wainbook.station.serial;

import wainbook.ledger.Kind;
import wainbook.ledger.Saying;

/** What is said of parts that a vehicle comes back with. */
public sealed interface BroughtSaying extends Saying {

    String part();

    String serial();

    default StandingSerials.Serial named() {
        return new StandingSerials.Serial(part(), serial());
    }

    /** The vehicle came back with this part. */
    @Kind("station.partBrought/1")
    record PartBrought(String part, String serial) implements BroughtSaying {}

    /** A part that the vehicle came back with was taken off it. */
    @Kind("station.partTakenOff/1")
    record PartTakenOff(String part, String serial, String reason) implements BroughtSaying {}
}
