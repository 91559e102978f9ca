package wainbook.line.stringline;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.DayOfWeek;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import wainbook.line.stringline.Track.Band;
import wainbook.line.stringline.Track.Due;
import wainbook.line.stringline.Track.Held;
import wainbook.line.stringline.Track.Stay;
import wainbook.line.stringline.Track.Step;
import wainbook.works.shift.Shift;
import wainbook.works.shift.Shifts;

class StringLineTest {

    private static final ZoneId LONDON = ZoneId.of("Europe/London");
    /** A Monday. */
    private static final Instant NOW = Instant.parse("2026-03-02T10:00:00Z");

    private static final Shifts SHIFTS = new Shifts(
            List.of(Shift.everywhere(
                    "Day",
                    6 * 60,
                    14 * 60,
                    List.of(
                            DayOfWeek.MONDAY,
                            DayOfWeek.TUESDAY,
                            DayOfWeek.WEDNESDAY,
                            DayOfWeek.THURSDAY,
                            DayOfWeek.FRIDAY))),
            LONDON);

    /** Friday 06:00 to Tuesday 14:00: three shifts of 480 minutes on 960 points, so that a point is a minute and a half. */
    private static final TimeAxis AXIS = new TimeAxis(
            SHIFTS.working(Instant.parse("2026-02-27T06:00:00Z"), Instant.parse("2026-03-03T14:00:00Z")),
            0,
            960,
            LONDON);

    private static final Rows ROWS = new Rows(
            List.of(
                    new Rows.Named("strip", "Strip", List.of("S-1")),
                    new Rows.Named("packs", "Packs", List.of("P-1", "P-2"))),
            "Off the line",
            30,
            30);

    private static Instant minutes(int working) {
        return SHIFTS.after(AXIS.from(), Duration.ofMinutes(working)).orElseThrow();
    }

    @Test
    void time_off_shift_has_no_width() {
        assertThat(AXIS.x(Instant.parse("2026-02-27T14:00:00Z"))).isEqualTo(320);
        assertThat(AXIS.x(Instant.parse("2026-03-01T12:00:00Z"))).isEqualTo(320);
        assertThat(AXIS.x(Instant.parse("2026-03-02T06:00:00Z"))).isEqualTo(320);
        assertThat(AXIS.x(NOW)).isEqualTo(480);
    }

    @Test
    void what_lies_outside_the_picture_is_drawn_at_its_edges() {
        assertThat(AXIS.x(NOW.minus(Duration.ofDays(30)))).isZero();
        assertThat(AXIS.x(NOW.plus(Duration.ofDays(30)))).isEqualTo(960);
    }

    @Test
    void later_never_stands_further_left() {
        Random times = new Random(5);
        double[] drawn = times.ints(500, -600, 10_000)
                .sorted()
                .mapToDouble(minute -> AXIS.x(AXIS.from().plus(Duration.ofMinutes(minute))))
                .toArray();
        double[] sorted = drawn.clone();
        Arrays.sort(sorted);
        assertThat(drawn).containsExactly(sorted);
    }

    @Test
    void each_day_that_is_worked_begins_with_its_name() {
        assertThat(AXIS.ticks().stream()
                        .filter(TimeAxis.Tick::day)
                        .map(tick -> tick.label().orElse("")))
                .containsExactly("Fri 27 Feb", "Mon 2 Mar", "Tue 3 Mar");
    }

    @Test
    void a_stage_with_two_stations_has_two_lanes_and_off_the_line_is_below() {
        double left = ROWS.at(Optional.of("packs"), "P-1").orElseThrow();
        double right = ROWS.at(Optional.of("packs"), "P-2").orElseThrow();
        double off = ROWS.at(Optional.empty(), "BAY").orElseThrow();
        assertThat(left).isLessThan(right);
        assertThat(right).isLessThan(off);
        assertThat(ROWS.at(Optional.of("elsewhere"), "X")).isEmpty();
    }

    @Test
    void a_string_is_solid_up_to_now_and_goes_on_as_forecast() {
        var drawn = drawing(track(
                List.of(stay("strip", "S-1", 0, 480), stay("packs", "P-2", 480, null)),
                List.of(),
                List.of(new Step("packs", NOW, band(800, 900, 1000)))));

        assertThat(drawn.behind()).contains("0,45 316,45 324,80 480,80");
        assertThat(drawn.ahead()).contains("480,80 600,80");
        assertThat(drawn.band()).contains("480,80 533.3,80 666.7,80 480,80");
        assertThat(drawn.held()).isEmpty();
    }

    @Test
    void who_waits_in_a_bay_comes_back_where_it_is_forecast() {
        var away = new Stay(Optional.empty(), "BAY", minutes(480), Optional.empty());
        var drawn = drawing(track(
                List.of(stay("strip", "S-1", 0, 480), away),
                List.of(),
                List.of(new Step("strip", minutes(840), band(880, 900, 990)))));

        assertThat(drawn.ahead()).contains("480,105 556,105 564,45 600,45");
    }

    @Test
    void a_hold_is_hatched_wherever_the_vehicle_stood() {
        var drawn = drawing(track(
                List.of(stay("strip", "S-1", 0, 480), stay("packs", "P-1", 480, null)),
                List.of(new Held(minutes(450), minutes(510))),
                List.of()));

        assertThat(drawn.held())
                .containsExactly(new Drawing.Hatched("300", "41", "20"), new Drawing.Hatched("320", "66", "20"));
    }

    @Test
    void the_plan_is_counted_from_when_the_vehicle_came() {
        Track track = new Track(
                "WB-1",
                "bus",
                List.of(stay("strip", "S-1", 0, null)),
                List.of(),
                List.of(),
                List.of(new Due("strip", minutes(90)), new Due("packs", minutes(270))),
                false,
                Optional.empty());

        assertThat(drawing(track).planned()).contains("0,45 56,45 64,70 180,70");
    }

    @Test
    void what_was_over_before_the_picture_begins_is_not_drawn() {
        var before = new Stay(
                Optional.of("strip"),
                "S-1",
                AXIS.from().minusSeconds(7200),
                Optional.of(AXIS.from().minusSeconds(60)));
        var drawn = drawing(track(List.of(before), List.of(), List.of()));
        assertThat(drawn.behind()).isEmpty();
        assertThat(drawn.begins()).isEmpty();
    }

    /** Sixty vehicles a takt apart: no number on another's, and the late ones have theirs. */
    @Test
    void numbers_never_stand_on_each_other_and_late_ones_come_first() {
        List<Track> sixty = IntStream.range(0, 60)
                .mapToObj(i -> new Track(
                        "WB-0%03d".formatted(i),
                        "bus",
                        List.of(stay("strip", "S-1", 7 * i, 7 * i + 7)),
                        List.of(),
                        List.of(),
                        List.of(),
                        i == 31,
                        Optional.empty()))
                .toList();
        var picture = new StringLine("Sixty", AXIS, ROWS, sixty, NOW);

        List<Labels.Label> labels = picture.strands().stream()
                .flatMap(strand -> strand.label().stream())
                .toList();
        assertThat(picture.strands().get(31).label()).isPresent();
        assertThat(labels).hasSizeGreaterThan(3).hasSizeLessThan(60);
        List<Double> places =
                labels.stream().map(label -> Double.valueOf(label.x())).sorted().toList();
        for (int i = 1; i < places.size(); i++) {
            assertThat(places.get(i) - places.get(i - 1)).isGreaterThanOrEqualTo(7 * 6.4);
        }
    }

    @Test
    void the_table_says_when_each_stage_was_left_or_will_be() {
        var picture = new StringLine(
                "One",
                AXIS,
                ROWS,
                List.of(track(
                        List.of(stay("strip", "S-1", 0, 480), stay("packs", "P-2", 480, null)),
                        List.of(),
                        List.of(new Step("packs", NOW, band(800, 900, 1000))))),
                NOW);

        assertThat(picture.told().get(0).cells())
                .containsExactly("27 Feb 2026 14:00", "2 Mar 2026 13:00 (2 Mar 2026 11:20 to 3 Mar 2026 06:40)");
    }

    @Test
    void the_small_picture_goes_from_two_shifts_before_to_the_end_of_the_next() {
        var during = Window.shortly(SHIFTS, NOW);
        assertThat(during.from()).isEqualTo("2026-02-26T06:00:00Z");
        assertThat(during.to()).isEqualTo("2026-03-03T14:00:00Z");

        var night = Window.shortly(SHIFTS, Instant.parse("2026-03-02T20:00:00Z"));
        assertThat(night.from()).isEqualTo("2026-02-27T06:00:00Z");
        assertThat(night.to()).isEqualTo("2026-03-03T14:00:00Z");
    }

    @Test
    void a_works_without_shifts_sees_a_day_back_and_a_day_ahead() {
        var window = Window.shortly(new Shifts(List.of(), LONDON), NOW);
        assertThat(Duration.between(window.from(), window.to())).isEqualTo(Duration.ofDays(2));
    }

    @Test
    void the_whole_picture_ends_with_what_is_to_come_within_a_month() {
        Instant end = NOW.plus(Duration.ofDays(9));
        assertThat(Window.until(SHIFTS, NOW, end).to()).isEqualTo(end);
        assertThat(Window.until(SHIFTS, NOW, NOW.plus(Duration.ofDays(400))).to())
                .isEqualTo(NOW.plus(Duration.ofDays(31)));
    }

    private static Drawing.Drawn drawing(Track track) {
        return new Drawing(AXIS, ROWS, track, 0, NOW).drawn();
    }

    private static Track track(List<Stay> stays, List<Held> held, List<Step> ahead) {
        return new Track("WB-1", "bus", stays, held, ahead, List.of(), false, Optional.empty());
    }

    private static Stay stay(String stage, String place, int from, Integer to) {
        return new Stay(
                Optional.of(stage),
                place,
                minutes(from),
                Optional.ofNullable(to).map(StringLineTest::minutes));
    }

    private static Band band(int tenth, int median, int ninetieth) {
        return new Band(minutes(tenth), minutes(median), minutes(ninetieth));
    }
}
