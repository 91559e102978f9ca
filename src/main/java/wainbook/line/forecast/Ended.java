package wainbook.line.forecast;

import java.util.Optional;
import wainbook.line.cause.Matter;
import wainbook.line.forecast.past.Stop;
import wainbook.line.forecast.state.OnHand;
import wainbook.line.forecast.state.OnHand.Doing;
import wainbook.line.forecast.state.TheLineNow;

/** The line as it would stand if one matter were ended now. */
final class Ended {

    private Ended() {}

    /** Empty where the line knows nothing of its vehicle. */
    static Optional<TheLineNow> on(TheLineNow line, Matter matter) {
        return line.vehicle(matter.order()).map(vehicle -> line.with(ended(line, vehicle, matter)));
    }

    private static OnHand ended(TheLineNow line, OnHand vehicle, Matter matter) {
        return switch (matter.sort()) {
            case HOLD -> vehicle.without(Stop.HOLD, matter.number());
            case NONCONFORMITY -> vehicle.without(Stop.NONCONFORMITY, matter.number());
            case HELP -> vehicle.without(Stop.HELP, matter.number());
            case PART -> vehicle.needing(vehicle.needs().without(matter.number()));
            case SIGNATURE -> vehicle.from(line.calendar().now(), Doing.SIGNED, vehicle.stage());
            case MOVE ->
                line.stageAfter(vehicle)
                        .map(next -> vehicle.from(line.calendar().now(), Doing.WORK, Optional.of(next)))
                        .orElse(vehicle);
        };
    }
}
