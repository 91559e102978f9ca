package wainbook.works.instruments.drift;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import wainbook.engineering.measurement.Drift;
import wainbook.page.Formats;
import wainbook.page.Words;
import wainbook.page.chart.Chart;
import wainbook.page.chart.Chart.Level;
import wainbook.page.chart.Chart.Line;
import wainbook.page.chart.Chart.Mark;
import wainbook.page.chart.Chart.Point;
import wainbook.page.chart.Chart.Sort;

/** One series with what is permitted, the line through it, and where that leads up to the due day. */
public record DriftChart(Series series, String unit, Optional<LocalDate> due) {

    public String title() {
        return Words.of("works.driftTitle", series.target().toPlainString(), unit);
    }

    /** What comes of it, in a sentence. */
    public String sentence() {
        Optional<Drift.Results> found = due.flatMap(series::on);
        if (found.isEmpty()) {
            return Words.of("works.driftTooFew", series.days().size());
        }
        String odds = DueList.words(found.get().oddsOutside().orElse(0.0));
        return found.get().trendShown()
                ? Words.of(
                        "works.driftTrend",
                        Formats.date(due.orElseThrow()),
                        odds,
                        found.get()
                                .earliestDay()
                                .map(day -> Formats.date(series.first().plusDays(Math.round(Math.floor(day)))))
                                .orElse("–"))
                : Words.of("works.driftNoTrend", series.days().size(), Formats.date(due.orElseThrow()), odds);
    }

    public Chart chart() {
        List<Double> days = series.dayNumbers();
        var marks = new ArrayList<Mark>();
        IntStream.range(0, days.size())
                .forEach(i -> marks.add(new Mark(
                        days.get(i),
                        Formats.date(series.days().get(i)),
                        series.errorsPercent().get(i),
                        Math.abs(series.errorsPercent().get(i)) > series.roomPercent())));
        return new Chart(
                title(),
                sentence(),
                "%",
                marks,
                List.of(
                        new Level(Sort.LIMIT, Words.of("works.driftUpper"), series.roomPercent()),
                        new Level(Sort.LIMIT, Words.of("works.driftLower"), -series.roomPercent())),
                lines(days));
    }

    /** The line and the 95 % interval of the next calibration, from the first day to the due day. */
    private List<Line> lines(List<Double> days) {
        Optional<LocalDate> end = due.filter(day -> series.on(day).isPresent());
        if (end.isEmpty()) {
            return List.of();
        }
        long last = Math.max(
                ChronoUnit.DAYS.between(series.first(), end.get()),
                days.get(days.size() - 1).longValue());
        var middle = new ArrayList<Point>();
        var upper = new ArrayList<Point>();
        var lower = new ArrayList<Point>();
        for (int step = 0; step <= 12; step++) {
            long at = last * step / 12;
            series.on(series.first().plusDays(at)).ifPresent(found -> {
                middle.add(new Point(at, found.predicted().orElseThrow()));
                upper.add(new Point(at, found.predictedUpper().orElseThrow()));
                lower.add(new Point(at, found.predictedLower().orElseThrow()));
            });
        }
        return List.of(new Line(false, middle), new Line(true, upper), new Line(true, lower));
    }
}
