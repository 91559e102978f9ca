package wainbook.engineering.flow.status;

import static org.assertj.core.api.Assertions.assertThat;
import static wainbook.engineering.flow.status.Doing.AWAITING_SIGN_OFF;
import static wainbook.engineering.flow.status.Doing.BLOCKED;
import static wainbook.engineering.flow.status.Doing.DOWN;
import static wainbook.engineering.flow.status.Doing.HELD;
import static wainbook.engineering.flow.status.Doing.OFF_SHIFT;
import static wainbook.engineering.flow.status.Doing.OVER_TAKT;
import static wainbook.engineering.flow.status.Doing.STARVED;
import static wainbook.engineering.flow.status.Doing.WORKING;

import java.util.List;
import java.util.OptionalInt;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import wainbook.engineering.flow.status.Walk.Post;

/** Who a waiting station waits for in the end. Stations are counted from 0. */
class WalkTest {

    private static OptionalInt row(int station, Doing... doing) {
        return Walk.cause(List.of(doing), station);
    }

    private static OptionalInt of(int station, Post... posts) {
        return Walk.cause(at -> posts[at], station);
    }

    private static Post post(Doing doing, List<Integer> next, List<Integer> before) {
        return new Post(doing, doing != STARVED, next, before);
    }

    private static Post empty(Doing doing, List<Integer> before) {
        return new Post(doing, false, List.of(), before);
    }

    @Test
    void a_blocked_station_waits_for_the_first_ahead_that_is_not_blocked() {
        Doing[] at59 = {AWAITING_SIGN_OFF, BLOCKED, HELD, BLOCKED, AWAITING_SIGN_OFF};
        assertThat(row(1, at59)).hasValue(2);
        assertThat(row(3, at59)).hasValue(4);
        assertThat(row(0, BLOCKED, BLOCKED, HELD, STARVED, WORKING)).hasValue(2);
    }

    @Test
    void a_starved_station_waits_for_the_first_before_it_that_is_not_starved() {
        assertThat(row(4, BLOCKED, BLOCKED, HELD, STARVED, STARVED)).hasValue(2);
        assertThat(row(4, BLOCKED, BLOCKED, OVER_TAKT, STARVED, STARVED)).hasValue(2);
    }

    @Test
    void an_empty_station_that_is_down_or_off_shift_is_itself_the_cause() {
        for (Doing doing : List.of(DOWN, OFF_SHIFT)) {
            Post first = post(WORKING, List.of(1), List.of());
            Post stopped = empty(doing, List.of(0));
            Post last = empty(STARVED, List.of(1));
            assertThat(of(2, first, stopped, last)).hasValue(1);

            Post blocked = post(BLOCKED, List.of(1), List.of());
            assertThat(of(0, blocked, stopped, last)).hasValue(1);
        }
    }

    @Test
    void where_nothing_comes_the_release_is_the_cause() {
        assertThat(row(0, STARVED, STARVED, WORKING)).hasValue(Walk.RELEASE);
        assertThat(row(1, STARVED, STARVED, WORKING)).hasValue(Walk.RELEASE);
    }

    @Test
    void a_vehicle_that_could_move_on_is_its_own_cause_and_that_of_those_behind_it() {
        assertThat(row(0, BLOCKED, STARVED)).hasValue(0);
        assertThat(row(1, WORKING, BLOCKED)).hasValue(1);
        assertThat(row(0, BLOCKED, BLOCKED, STARVED)).hasValue(1);
        assertThat(row(0, BLOCKED, BLOCKED, BLOCKED)).hasValue(2);
    }

    @Test
    void one_free_station_of_a_stage_is_enough() {
        Post behind = post(BLOCKED, List.of(1, 2), List.of());
        Post working = post(WORKING, List.of(), List.of(0));
        assertThat(of(0, behind, working, empty(STARVED, List.of(0)))).hasValue(0);
        assertThat(of(0, behind, working, post(BLOCKED, List.of(), List.of(0)))).hasValue(1);
    }

    @Test
    void of_stations_side_by_side_the_one_that_will_probably_be_left_first_is_the_cause() {
        Post behind = post(BLOCKED, List.of(1, 2), List.of());
        Post held = post(HELD, List.of(), List.of(0));
        assertThat(of(0, behind, held, post(AWAITING_SIGN_OFF, List.of(), List.of(0))))
                .hasValue(2);
        assertThat(of(0, behind, empty(DOWN, List.of(0)), held)).hasValue(2);
    }

    @Test
    void a_stage_that_two_routes_come_to_is_fed_by_either() {
        assertThat(of(
                        2,
                        empty(STARVED, List.of()),
                        post(OVER_TAKT, List.of(2), List.of()),
                        empty(STARVED, List.of(0, 1))))
                .hasValue(1);
    }

    /** The truck at the second station does not pass the last one: it is the bus behind it that will come there. */
    @Test
    void a_vehicle_whose_route_leads_elsewhere_is_looked_past() {
        Post bus = post(WORKING, List.of(1), List.of());
        Post truck = post(HELD, List.of(3), List.of(0));
        assertThat(of(2, bus, truck, empty(STARVED, List.of(1)), empty(STARVED, List.of(1))))
                .hasValue(0);
        assertThat(of(3, bus, truck, empty(STARVED, List.of(1)), empty(STARVED, List.of(1))))
                .hasValue(1);
    }

    @Test
    void a_ring_ends() {
        assertThat(of(0, post(BLOCKED, List.of(1), List.of(1)), post(BLOCKED, List.of(0), List.of(0))))
                .isPresent();
        assertThat(of(0, empty(STARVED, List.of(1)), empty(STARVED, List.of(0))))
                .hasValue(Walk.RELEASE);
    }

    @ParameterizedTest
    @EnumSource(
            names = {"BLOCKED", "STARVED"},
            mode = EnumSource.Mode.EXCLUDE)
    void a_station_that_waits_for_nobody_has_no_cause(Doing doing) {
        assertThat(row(1, WORKING, doing, WORKING)).isEmpty();
    }

    /** Whoever is the cause does not wait, unless its vehicle could move on. */
    @Test
    void the_cause_of_a_row_never_waits_itself_unless_it_could_move() {
        var random = new SplittableRandom(11);
        Doing[] all = Doing.values();
        for (int i = 0; i < 2000; i++) {
            List<Doing> line = IntStream.range(0, 7)
                    .mapToObj(at -> all[random.nextInt(all.length)])
                    .toList();
            for (int station = 0; station < 7; station++) {
                Walk.cause(line, station).stream()
                        .filter(at -> at != Walk.RELEASE)
                        .forEach(at -> assertThat(!line.get(at).waits() || line.get(at) == BLOCKED)
                                .as("%s", line)
                                .isTrue());
            }
        }
    }
}
