package wainbook.line.forecast.whatif;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import wainbook.engineering.flow.forecast.model.Interval;
import wainbook.engineering.flow.forecast.model.Line;
import wainbook.engineering.flow.forecast.model.Pulses;
import wainbook.engineering.flow.forecast.model.Stage;
import wainbook.engineering.flow.forecast.model.WorkingTime;
import wainbook.line.forecast.state.Calendar;

/** Overtime: the stages work on after their last shift of a day, and a paced line moves on at the pace it had. */
record LongerDays(Line line, Calendar calendar) {

    Line worked(WhatIf.Overtime overtime) {
        Line longer = line;
        for (Stage stage : line.stages()) {
            if (overtime.stage().filter(one -> !one.equals(stage.name())).isEmpty()) {
                List<Interval> more = more(stage.working(), overtime);
                WorkingTime time = stage.working().and(WorkingTime.of(more));
                longer = longer.with(stage.withWorking(time).withSignature(time, stage.signature()))
                        .withWorking(longer.working().and(WorkingTime.of(more)));
            }
        }
        return overtime.stage().isEmpty() ? longer.withPulses(pulses(overtime)) : longer;
    }

    private List<Interval> more(WorkingTime time, WhatIf.Overtime overtime) {
        return overtime.days().stream()
                .sorted()
                .flatMap(day -> end(time, day).stream())
                .map(end -> new Interval(end, end + overtime.minutes()))
                .toList();
    }

    /** When work ends that day; empty where none is done from now on. */
    private Optional<Double> end(WorkingTime time, LocalDate day) {
        double from = calendar.beginOf(day);
        double to = calendar.beginOf(day.plusDays(1));
        return time.intervals().stream()
                .filter(one -> one.fromMinute() >= from && one.fromMinute() < to)
                .map(Interval::toMinute)
                .reduce((former, latter) -> latter);
    }

    /** After the last move of the day as many as fit, each as long after the one before as moves of the line are at least apart. */
    private Pulses pulses(WhatIf.Overtime overtime) {
        double[] usual = line.pulses().minutes();
        double apart = IntStream.range(1, usual.length)
                .mapToDouble(at -> usual[at] - usual[at - 1])
                .min()
                .orElse(Double.POSITIVE_INFINITY);
        WorkingTime last = line.stages().get(line.stages().size() - 1).working();
        return line.pulses()
                .and(overtime.days().stream()
                        .flatMapToDouble(day -> end(last, day).stream()
                                .flatMapToDouble(end -> after(usual, calendar.beginOf(day), end, apart, overtime)))
                        .toArray());
    }

    private static DoubleStream after(
            double[] usual, double begin, double end, double apart, WhatIf.Overtime overtime) {
        double last = DoubleStream.of(usual)
                .filter(one -> one >= begin && one < end)
                .max()
                .orElse(Double.POSITIVE_INFINITY);
        return DoubleStream.iterate(last + apart, at -> at < end + overtime.minutes(), at -> at + apart);
    }
}
