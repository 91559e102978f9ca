package wainbook.line.forecast.whatif;

import java.util.stream.IntStream;
import wainbook.engineering.flow.forecast.model.Line;
import wainbook.engineering.flow.forecast.model.Vehicle;
import wainbook.engineering.flow.forecast.model.Whereabouts;

/** A second station, or one more person at a stage. */
record MoreHands(Line line) {

    Line station(String stage) {
        return line.with(line.stages().get(line.stage(stage)).withOneStationMore());
    }

    /** Of the vehicle that stands there the work goes on as it is. */
    Line helped(WhatIf.Hands hands) {
        int stage = line.stage(hands.stage());
        return line.withVehicles(line.vehicles().stream()
                .map(vehicle -> isAt(stage, vehicle)
                        ? vehicle
                        : helped(vehicle, stage, hands.factor().doubleValue()))
                .toList());
    }

    private static boolean isAt(int stage, Vehicle vehicle) {
        return vehicle.whereabouts() instanceof Whereabouts.AtWork at && at.stage() == stage;
    }

    private static Vehicle helped(Vehicle vehicle, int stage, double factor) {
        return vehicle.withVisits(IntStream.range(0, vehicle.visits().size())
                .mapToObj(at -> at == stage
                        ? vehicle.visits().get(at).working(factor)
                        : vehicle.visits().get(at))
                .toList());
    }
}
