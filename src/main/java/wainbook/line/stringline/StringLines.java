package wainbook.line.stringline;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import wainbook.gate.past.VehicleWay;
import wainbook.ledger.Ledger;
import wainbook.ledger.Subject;
import wainbook.line.forecast.Forecasts;
import wainbook.line.forecast.LineForecast;
import wainbook.order.WorkOrder.Phase;
import wainbook.order.WorkOrderRow;
import wainbook.page.Words;
import wainbook.works.shift.Shifts;
import wainbook.works.shift.WorksDay;

/** Draws the line over time, from the record and the forecast. */
@ApplicationScoped
public class StringLines {

    private static final int LEFT = 184;
    private static final int WIDTH = 960;
    private static final int TOP = 34;
    private static final int ROW = 20;
    private static final int ROW_LARGE = 30;
    /** So wide that a takt of an hour and a half can still be told from the next. */
    private static final double POINTS_A_MINUTE = 0.28;

    private final Ledger ledger;
    private final Forecasts forecasts;
    private final WorksDay day;

    StringLines(Ledger ledger, Forecasts forecasts, WorksDay day) {
        this.ledger = ledger;
        this.forecasts = forecasts;
        this.day = day;
    }

    /** The last two shifts to the end of the next; empty where nothing is or was on the line. */
    public Optional<StringLine> shortly(Instant now) {
        LineForecast forecast = forecasts.at(now);
        Window window = Window.shortly(shifts(forecast), now);
        return picture(Words.of("line.stringShort"), forecast, window, ROW, tracks(forecast, window));
    }

    /** To the end of all that is on order. */
    public Optional<StringLine> whole(Instant now) {
        LineForecast forecast = forecasts.at(now);
        Shifts shifts = shifts(forecast);
        List<Track> ahead = tracks(forecast, Window.until(shifts, now, now));
        return picture(
                Words.of("line.stringWhole"), forecast, Window.until(shifts, now, end(ahead, now)), ROW_LARGE, ahead);
    }

    /** One vehicle, from its coming onto the line to its end, with its plan. */
    public Optional<StringLine> of(String order, Instant now) {
        LineForecast forecast = forecasts.at(now);
        Shifts shifts = shifts(forecast);
        return way(order).flatMap(way -> {
            Track track = new TrackReading(forecast, shifts, now).withPlan(way, day.taktMinutes());
            Instant from = track.stays().stream()
                    .findFirst()
                    .map(Track.Stay::from)
                    .orElseGet(() ->
                            track.ahead().isEmpty() ? now : track.ahead().get(0).into());
            Window window = new Window(from, track.ends().orElse(now));
            return picture(Words.of("line.stringOf", order), forecast, window, ROW_LARGE, List.of(track));
        });
    }

    private List<Track> tracks(LineForecast forecast, Window window) {
        var reading = new TrackReading(
                forecast, shifts(forecast), forecast.line().calendar().now());
        Stream<String> gone = Stream.of(Phase.HANDED_OVER, Phase.FINISHED)
                .flatMap(phase -> WorkOrderRow.inPhaseSince(phase, window.from()).stream())
                .map(row -> row.number);
        Stream<String> here =
                forecast.vehicles().stream().map(one -> one.vehicle().order());
        return ledger.drawing(() -> Stream.concat(gone, here)
                .distinct()
                .flatMap(order -> way(order).stream())
                .map(reading::of)
                .filter(track ->
                        track.ends().filter(end -> end.isAfter(window.from())).isPresent())
                .toList());
    }

    private Optional<VehicleWay> way(String order) {
        return VehicleWay.of(ledger.history(Subject.workOrder(order)));
    }

    private static Instant end(List<Track> tracks, Instant now) {
        return tracks.stream()
                .flatMap(track -> track.ends().stream())
                .max(Comparator.naturalOrder())
                .orElse(now);
    }

    private static Shifts shifts(LineForecast forecast) {
        return forecast.line()
                .calendar()
                .shifts()
                .at(forecast.line().posts().stream()
                        .flatMap(post -> post.stations().stream())
                        .toList());
    }

    private Optional<StringLine> picture(
            String title, LineForecast forecast, Window window, int row, List<Track> tracks) {
        List<Shifts.Span> worked = shifts(forecast).working(window.from(), window.to());
        if (tracks.isEmpty() || worked.isEmpty()) {
            return Optional.empty();
        }
        double minutes = worked.stream()
                .mapToDouble(span -> Duration.between(span.from(), span.to()).toMinutes())
                .sum();
        var axis = new TimeAxis(worked, LEFT, LEFT + Math.max(WIDTH - LEFT, minutes * POINTS_A_MINUTE), day.zone());
        List<Rows.Named> stages = forecast.line().posts().stream()
                .map(post -> new Rows.Named(post.stage(), post.title(), post.stations()))
                .toList();
        return Optional.of(new StringLine(
                title,
                axis,
                new Rows(stages, Words.of("line.stringOff"), TOP, row),
                tracks,
                forecast.line().calendar().now()));
    }
}
