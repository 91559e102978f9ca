package wainbook.line.cause;

import static org.assertj.core.api.Assertions.assertThat;
import static wainbook.line.station.StationState.AWAITING_SIGN_OFF;
import static wainbook.line.station.StationState.BLOCKED;
import static wainbook.line.station.StationState.HELD;
import static wainbook.line.station.StationState.OVER_TAKT;
import static wainbook.line.station.StationState.STARVED;
import static wainbook.line.station.StationState.WORKING;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import wainbook.line.cause.Chain.Post;
import wainbook.line.station.StationState;

class ChainTest {

    /** Five stations in a row; the rows are the worked timeline of a line without places between stations. */
    private static Chain row(StationState... states) {
        Map<String, Post> posts = new LinkedHashMap<>();
        for (int i = 1; i <= states.length; i++) {
            StationState state = states[i - 1];
            posts.put(
                    "S" + i,
                    new Post(
                            "S" + i,
                            state,
                            state != STARVED,
                            i < states.length ? List.of("S" + (i + 1)) : List.of(),
                            i > 1 ? List.of("S" + (i - 1)) : List.of()));
        }
        return new Chain(posts::get);
    }

    private static Chain of(Post... posts) {
        Map<String, Post> known = new LinkedHashMap<>();
        for (Post post : posts) {
            known.put(post.station(), post);
        }
        return new Chain(known::get);
    }

    private static Post post(String station, StationState state, List<String> next, List<String> before) {
        return new Post(station, state, state != STARVED, next, before);
    }

    @Test
    void a_blocked_station_waits_for_the_first_ahead_that_is_not_blocked() {
        Chain at59 = row(AWAITING_SIGN_OFF, BLOCKED, HELD, BLOCKED, AWAITING_SIGN_OFF);
        assertThat(at59.cause("S2")).contains("S3");
        assertThat(at59.cause("S4")).contains("S5");
        Chain at100 = row(BLOCKED, BLOCKED, HELD, STARVED, WORKING);
        assertThat(at100.cause("S1")).contains("S3");
        assertThat(at100.cause("S2")).contains("S3");
    }

    @Test
    void a_starved_station_waits_for_the_first_before_it_that_has_a_vehicle() {
        Chain at125 = row(BLOCKED, BLOCKED, HELD, STARVED, STARVED);
        assertThat(at125.cause("S4")).contains("S3");
        assertThat(at125.cause("S5")).contains("S3");
        assertThat(row(BLOCKED, BLOCKED, OVER_TAKT, STARVED, STARVED).cause("S5"))
                .contains("S3");
    }

    @Test
    void nothing_before_it_is_nobodys_fault_on_the_line() {
        assertThat(row(STARVED, STARVED, WORKING).cause("S1")).isEmpty();
        assertThat(row(STARVED, STARVED, WORKING).cause("S2")).isEmpty();
    }

    @Test
    void the_way_is_free_where_the_next_station_is_empty_or_there_is_none() {
        assertThat(row(BLOCKED, STARVED).cause("S1")).isEmpty();
        assertThat(row(WORKING, BLOCKED).cause("S2")).isEmpty();
    }

    @Test
    void a_blocked_vehicle_that_could_move_on_is_the_cause_of_those_behind_it() {
        assertThat(row(BLOCKED, BLOCKED, STARVED).cause("S1")).contains("S2");
        assertThat(row(BLOCKED, BLOCKED, BLOCKED).cause("S1")).contains("S3");
    }

    @Test
    void one_free_station_of_a_stage_is_enough() {
        Post behind = post("A", BLOCKED, List.of("B1", "B2"), List.of());
        Post working = post("B1", WORKING, List.of(), List.of("A"));
        assertThat(of(behind, working, post("B2", STARVED, List.of(), List.of("A")))
                        .cause("A"))
                .isEmpty();
        assertThat(of(behind, working, post("B2", BLOCKED, List.of(), List.of("A")))
                        .cause("A"))
                .contains("B1");
    }

    @Test
    void a_stage_that_two_routes_come_to_is_fed_by_either() {
        assertThat(of(
                                post("A", STARVED, List.of(), List.of()),
                                post("B", OVER_TAKT, List.of("C"), List.of()),
                                post("C", STARVED, List.of(), List.of("A", "B")))
                        .cause("C"))
                .contains("B");
    }

    @Test
    void a_ring_ends() {
        assertThat(of(post("A", BLOCKED, List.of("B"), List.of("B")), post("B", BLOCKED, List.of("A"), List.of("A")))
                        .cause("A"))
                .isPresent();
        assertThat(of(post("A", STARVED, List.of("B"), List.of("B")), post("B", STARVED, List.of("A"), List.of("A")))
                        .cause("A"))
                .isEmpty();
    }

    @ParameterizedTest
    @EnumSource(
            names = {"BLOCKED", "STARVED"},
            mode = EnumSource.Mode.EXCLUDE)
    void a_station_that_waits_for_nobody_has_no_cause(StationState state) {
        Optional<String> cause = row(WORKING, state, WORKING).cause("S2");
        assertThat(cause).isEmpty();
    }
}
