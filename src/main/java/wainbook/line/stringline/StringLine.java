package wainbook.line.stringline;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import wainbook.line.stringline.Drawing.Drawn;
import wainbook.line.stringline.Track.Stay;
import wainbook.line.stringline.Track.Step;
import wainbook.page.Formats;
import wainbook.page.Words;

/**
 * The picture of the line over time, and the same facts as a table.
 *
 * @param tracks in the order of the line, those that left it first
 */
public record StringLine(String title, TimeAxis axis, Rows rows, List<Track> tracks, Instant now) {

    private static final int FOOT = 16;

    /** One vehicle as it is drawn. */
    public record Strand(Track track, Drawn drawn, Optional<Labels.Label> label) {

        public String path() {
            return "/orders/" + track.order();
        }

        public String words() {
            return track.odds()
                    .map(odds -> Words.of("line.stringOdds", odds))
                    .orElseGet(() -> Words.of("line.stringDone"));
        }
    }

    /** A line of the table: when the vehicle left each stage, or probably will. */
    public record Told(Track track, List<String> cells) {
        public Told {
            cells = List.copyOf(cells);
        }
    }

    public StringLine {
        tracks = List.copyOf(tracks);
    }

    public int width() {
        return (int) Math.ceil(axis.right());
    }

    public int height() {
        return rows.foot() + FOOT;
    }

    public List<TimeAxis.Tick> ticks() {
        return axis.ticks();
    }

    public int foot() {
        return rows.foot();
    }

    public Optional<String> nowAt() {
        return axis.holds(now) ? Optional.of(Pieces.figure(axis.x(now))) : Optional.empty();
    }

    public List<Strand> strands() {
        var labels = new Labels(axis.right());
        List<Drawn> drawn = IntStream.range(0, tracks.size())
                .mapToObj(i -> new Drawing(axis, rows, tracks.get(i), i, now).drawn())
                .toList();
        IntStream.range(0, tracks.size())
                .boxed()
                .sorted((one, other) -> Boolean.compare(
                        tracks.get(other).late(), tracks.get(one).late()))
                .forEach(i -> drawn.get(i)
                        .begins()
                        .ifPresent(at -> labels.place(tracks.get(i).order(), at)));
        var strands = new ArrayList<Strand>();
        for (int i = 0; i < tracks.size(); i++) {
            strands.add(new Strand(
                    tracks.get(i), drawn.get(i), labels.of(tracks.get(i).order())));
        }
        return strands;
    }

    public List<Told> told() {
        var formats = new Formats(axis.zone());
        return tracks.stream()
                .map(track -> new Told(
                        track,
                        rows.stages().stream()
                                .map(stage -> told(track, stage.stage(), formats))
                                .toList()))
                .toList();
    }

    private String told(Track track, String stage, Formats formats) {
        Optional<Step> ahead = track.ahead().stream()
                .filter(step -> step.stage().equals(stage))
                .findFirst();
        if (ahead.isPresent()) {
            Track.Band band = ahead.get().outOf();
            return Words.of(
                    "line.stringAhead",
                    formats.moment(band.median()),
                    formats.moment(band.tenth()),
                    formats.moment(band.ninetieth()));
        }
        return track.stays().stream()
                .filter(stay -> stay.stage().equals(Optional.of(stage)))
                .reduce((former, latter) -> latter)
                .flatMap(Stay::to)
                .map(formats::moment)
                .orElse("");
    }
}
