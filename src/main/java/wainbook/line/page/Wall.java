package wainbook.line.page;

import java.util.List;
import java.util.Optional;
import wainbook.line.Standing;
import wainbook.line.page.LineNow.Row;
import wainbook.line.station.StationState;
import wainbook.page.Formats;
import wainbook.page.Words;

/**
 * The line for a screen above it, to be read from five metres: few words, large, nothing to touch.
 *
 * @param leftMin working minutes to the end of the present takt, counted from the first shift of the day; empty off shift
 * @param planned vehicles that the takt asks for by now, of today's working time
 */
public record Wall(LineNow line, Formats formats, Optional<Long> leftMin, Optional<Long> planned) {

    private static final int BAR = 100;

    /** One station, as few words as will do. */
    public record Post(Row row, Formats formats) {

        public String word() {
            return row.state().word();
        }

        public String vehicle() {
            return row.standing().map(standing -> standing.order().number()).orElse("");
        }

        /** How much of the takt is left, in hundredths; the bar empties. */
        public long left() {
            return row.standing()
                    .map(standing ->
                            Math.round(BAR * Math.max(0, 1 - standing.minutes() / Math.max(1, standing.allowedMin()))))
                    .orElse(0L);
        }

        /** Minutes left of the takt, or how far over it. */
        public String minutes() {
            return row.standing()
                    .map(standing -> standing.takt() - standing.minutes())
                    .map(left -> left < 0 ? Words.of("line.wallOver", -left) : Words.of("line.wallLeft", left))
                    .orElse("");
        }

        public boolean late() {
            return row.standing().filter(Standing::late).isPresent();
        }

        public String cause() {
            return switch (row.state()) {
                case WORKING, OVER_TAKT ->
                    row.standing()
                            .map(here -> Words.of("line.wallItems", here.items() - here.settled()))
                            .orElse("");
                case HELD, DOWN, AWAITING_SIGN_OFF ->
                    row.standing()
                            .map(here -> Words.of("line.wallSince", formats.clock(here.since())))
                            .orElse("");
                case BLOCKED, STARVED ->
                    row.waitsFor()
                            .map(station -> Words.of("line.wallWaits", station))
                            .orElse(Words.of(
                                    row.state() == StationState.BLOCKED ? "line.wallFree" : "line.wallNothing"));
                case OFF_SHIFT -> Words.of("line.whenWorking", row.whenWorking().word());
            };
        }
    }

    public List<Post> posts() {
        return line.rows().stream().map(row -> new Post(row, formats)).toList();
    }

    public long calls() {
        return line.rows().stream()
                .flatMap(row -> row.standing().stream())
                .mapToLong(Standing::calls)
                .sum();
    }
}
