package wainbook.line.forecast.whatif;

import wainbook.engineering.flow.forecast.model.Hold;
import wainbook.engineering.flow.forecast.model.Line;
import wainbook.engineering.flow.forecast.model.Vehicle;
import wainbook.line.forecast.state.TheLineNow;

/** A hold that ends at a stated time. */
record EarlierRelease(Line line, TheLineNow now) {

    Line released(WhatIf.Release release) {
        Vehicle vehicle = line.vehicles().stream()
                .filter(one -> one.name().equals(release.order()))
                .findFirst()
                .orElseThrow();
        double minute = release.at().map(now.calendar()::minute).orElse(0.0);
        return line.with(vehicle.hold()
                .map(hold -> vehicle.withHold(new Hold(hold.stopsWork(), new Hold.At(Math.max(0, minute)))))
                .orElse(vehicle));
    }
}
