package wainbook.line.forecast.whatif;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import wainbook.engineering.flow.forecast.Effort;
import wainbook.engineering.flow.forecast.Finished;
import wainbook.engineering.flow.forecast.Forecast;
import wainbook.engineering.flow.forecast.Gain;
import wainbook.engineering.flow.forecast.Lateness;
import wainbook.engineering.flow.forecast.model.Line;
import wainbook.engineering.flow.forecast.model.WorkingTime;
import wainbook.engineering.flow.forecast.outcome.Finish;
import wainbook.engineering.flow.score.PairedDifference;
import wainbook.line.forecast.LineForecast;
import wainbook.line.forecast.state.OnHand;
import wainbook.line.forecast.state.TheLineNow;

/**
 * Before and after, with the same luck in both.
 *
 * @param lateBefore summed lateness in working minutes; the gain says what vanishes
 * @param by the day until the end of which finished vehicles are counted
 * @param more of them than before
 */
public record Answer(
        TheLineNow now,
        int replications,
        List<Row> vehicles,
        double lateBefore,
        double lateAfter,
        Gain gain,
        LocalDate by,
        double finishedBefore,
        double finishedAfter,
        PairedDifference more) {

    private static final int REPLICATIONS = 2000;
    private static final int WEEK = 7;

    public Answer {
        vehicles = List.copyOf(vehicles);
    }

    /**
     * One vehicle.
     *
     * @param later in working minutes of the last stage; negative if it finishes earlier; empty where one of the two lies beyond the
     *     calendar
     */
    public record Row(
            OnHand vehicle,
            Finish before,
            Finish after,
            double oddsBefore,
            double oddsAfter,
            Optional<PairedDifference> later) {}

    static Answer of(TheLineNow now, WhatIf asked) {
        Effort effort = Effort.exactly(LineForecast.SEED, REPLICATIONS);
        Line before = now.line();
        Line after = asked.changed(now);
        Forecast was = Forecast.of(before, effort);
        Forecast is = Forecast.of(after, effort);
        LocalDate by = asked.finishedBy()
                .orElse(now.calendar().day(now.calendar().now()).plusDays(WEEK));
        double end = now.calendar().beginOf(by.plusDays(1));
        var finishedBefore = Finished.by(was, end);
        var finishedAfter = Finished.by(is, end);
        WorkingTime counted = Lateness.counted(before);
        return new Answer(
                now,
                REPLICATIONS,
                now.vehicles().stream().map(one -> row(one, was, is, counted)).toList(),
                Lateness.of(before, was).meanMinutes(),
                Lateness.of(after, is, counted).meanMinutes(),
                Gain.of(before, was, after, is),
                by,
                finishedBefore.mean(),
                finishedAfter.mean(),
                finishedAfter.moreThan(finishedBefore));
    }

    private static Row row(OnHand vehicle, Forecast was, Forecast is, WorkingTime counted) {
        Finish before = was.of(vehicle.order()).finish();
        Finish after = is.of(vehicle.order()).finish();
        return new Row(
                vehicle,
                before,
                after,
                was.of(vehicle.order()).promise().orElseThrow().share(),
                is.of(vehicle.order()).promise().orElseThrow().share(),
                Double.isFinite(before.median()) && Double.isFinite(after.median())
                        ? Optional.of(after.laterThan(before, counted))
                        : Optional.empty());
    }
}
