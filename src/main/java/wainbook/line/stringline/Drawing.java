package wainbook.line.stringline;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wainbook.line.stringline.Track.Band;
import wainbook.line.stringline.Track.Held;
import wainbook.line.stringline.Track.Stay;
import wainbook.line.stringline.Track.Step;

/** Draws one vehicle: what was, solid; what will probably be, with its band; held pieces; the plan. */
public record Drawing(TimeAxis axis, Rows rows, Track track, int number, Instant now) {

    private static final double HATCH = 8;

    /** A held piece. */
    public record Hatched(String x, String y, String width) {}

    /** The parts that fall into the picture, as SVG has them; empty where there is nothing of it. */
    public record Drawn(
            Optional<String> behind,
            Optional<String> ahead,
            Optional<String> band,
            Optional<String> planned,
            List<Hatched> held,
            Optional<Pieces.Point> begins) {}

    private interface Edge {
        Instant of(Band band);
    }

    Drawn drawn() {
        Pieces behind = behind();
        Pieces ahead = ahead(Band::median);
        return new Drawn(
                line(behind),
                line(ahead),
                ahead.none() ? Optional.empty() : Optional.of(ahead(Band::tenth).upTo(ahead(Band::ninetieth))),
                line(planned()),
                track.held().stream().flatMap(held -> hatched(held).stream()).toList(),
                !behind.none()
                        ? Optional.of(behind.first())
                        : ahead.none() ? Optional.empty() : Optional.of(ahead.first()));
    }

    private Pieces behind() {
        var pieces = new Pieces();
        for (Stay stay : track.stays()) {
            Instant to = stay.to().orElse(now);
            if (to.isAfter(axis.from()) && stay.from().isBefore(axis.to())) {
                rows.at(stay.stage(), stay.place()).ifPresent(y -> pieces.add(axis.x(stay.from()), axis.x(to), y));
            }
        }
        return pieces;
    }

    private Pieces ahead(Edge edge) {
        var pieces = new Pieces();
        Optional<Stay> here = last().filter(stay -> stay.to().isEmpty());
        Instant from = now;
        for (Step step : track.ahead()) {
            boolean present = here.filter(stay -> stay.stage().equals(Optional.of(step.stage())))
                    .isPresent();
            Instant to = edge.of(step.outOf());
            if (step.equals(track.ahead().get(0)) && !present) {
                from = step.into();
                here.flatMap(stay -> rows.at(stay.stage(), stay.place()))
                        .ifPresent(y -> pieces.add(axis.x(now), axis.x(step.into()), y));
            }
            Optional<Double> y = present
                    ? here.flatMap(stay -> rows.at(stay.stage(), stay.place()))
                    : rows.ahead(step.stage(), number);
            if (from.isBefore(axis.to()) && y.isPresent()) {
                pieces.add(axis.x(from), axis.x(to), y.get());
            }
            from = to;
        }
        return pieces;
    }

    private Pieces planned() {
        var pieces = new Pieces();
        Optional<Instant> entered = track.stays().stream().map(Stay::from).findFirst();
        if (entered.isPresent()) {
            Instant from = entered.get();
            for (Track.Due due : track.planned()) {
                Optional<Double> y = rows.ahead(due.stage(), number);
                if (due.outOf().isAfter(axis.from()) && from.isBefore(axis.to()) && y.isPresent()) {
                    pieces.add(axis.x(from), axis.x(due.outOf()), y.get());
                }
                from = due.outOf();
            }
        }
        return pieces;
    }

    /** A hold may outlast a stay; it is hatched wherever the vehicle stood. */
    private List<Hatched> hatched(Held held) {
        var hatched = new ArrayList<Hatched>();
        for (Stay stay : track.stays()) {
            double from = axis.x(later(stay.from(), held.from()));
            double to = axis.x(earlier(stay.to().orElse(now), held.to()));
            if (from < to) {
                rows.at(stay.stage(), stay.place())
                        .ifPresent(y -> hatched.add(new Hatched(
                                Pieces.figure(from), Pieces.figure(y - HATCH / 2), Pieces.figure(to - from))));
            }
        }
        return hatched;
    }

    private Optional<Stay> last() {
        return track.stays().stream().reduce((former, latter) -> latter);
    }

    private static Optional<String> line(Pieces pieces) {
        return pieces.none() ? Optional.empty() : Optional.of(pieces.line());
    }

    private static Instant later(Instant one, Instant other) {
        return one.isAfter(other) ? one : other;
    }

    private static Instant earlier(Instant one, Instant other) {
        return one.isBefore(other) ? one : other;
    }
}
