package wainbook.line.measure.page;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import wainbook.engineering.flow.status.Bottleneck;
import wainbook.line.measure.Measures;
import wainbook.line.measure.StationTimes;
import wainbook.page.Formats;
import wainbook.page.Words;

/** Which station held up the line, by two readings, as the page of measures shows it. */
public record BottleneckView(Measures found, Formats formats) {

    private double reigned() {
        return found.bottleneck().shiftingMinutes()
                + found.stations().stream()
                        .mapToDouble(StationTimes::soleMinutes)
                        .sum();
    }

    public boolean any() {
        return reigned() > 0;
    }

    /** The longest first; only those that were it. */
    public List<StationTimes> stations() {
        return found.stations().stream()
                .filter(one -> one.soleMinutes() > 0)
                .sorted(Comparator.comparingDouble(StationTimes::soleMinutes).reversed())
                .toList();
    }

    public String sole(StationTimes one) {
        return MeasuresView.minutes(one.soleMinutes());
    }

    public String soleShare(StationTimes one) {
        return Figures.percent(one.soleMinutes() / reigned());
    }

    public String shifting() {
        return Words.of(
                "line.measuresShifting",
                MeasuresView.minutes(found.bottleneck().shiftingMinutes()),
                Figures.percent(found.bottleneck().shiftingMinutes() / reigned()));
    }

    public String atEnd() {
        return station(found.bottleneckAtEnd())
                .map(title -> Words.of(
                        "line.measuresBottleneckNow",
                        formats.moment(found.period().end()),
                        title))
                .orElseGet(() -> Words.of("line.measuresBottleneckNone"));
    }

    public String turning() {
        return station(found.turningPoint())
                .map(title -> Words.of("line.measuresTurning", title))
                .orElseGet(() -> Words.of("line.measuresTurningNone"));
    }

    public List<String> sources() {
        return Bottleneck.SOURCES.stream().map(Figures::source).toList();
    }

    private Optional<String> station(OptionalInt at) {
        return at.stream()
                .mapToObj(found.stations()::get)
                .map(one -> one.station().title())
                .findFirst();
    }
}
