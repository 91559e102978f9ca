package wainbook.line.page;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.hibernate.SessionFactory;
import org.hibernate.stat.Statistics;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import wainbook.act.Actor;
import wainbook.house.Browsing;
import wainbook.house.Cast;
import wainbook.house.OnRecord;
import wainbook.matter.MatterSaying.Cause;
import wainbook.matter.MatterSaying.NonconformityOpened;
import wainbook.order.OrderSaying.Held;
import wainbook.order.OrderSaying.HoldKind;
import wainbook.order.OrderSaying.Stops;
import wainbook.safety.stop.StopRow;
import wainbook.safety.stop.Stopping;
import wainbook.station.StationSaying.Help;
import wainbook.station.StationSaying.HelpCalled;

@QuarkusTest
class LinePageTest {

    @Inject
    LineLook look;

    @Inject
    SessionFactory sessions;

    @Inject
    Clock clock;

    @Inject
    Stopping stopping;

    private OnRecord ahead;
    private OnRecord behind;

    @BeforeEach
    void two_buses_stand_one_behind_the_other() {
        Cast.assemble();
        ahead = OnRecord.accepted().at("strip", "ST-1").at("fitting", "ST-2");
        behind = OnRecord.accepted().at("strip", "ST-1");
    }

    @AfterEach
    void the_stations_are_free_again() {
        ahead.out();
        behind.out();
    }

    @Test
    void a_blocked_station_names_who_stands_in_the_way_and_how() {
        behind.signed();
        String page = page();
        assertThat(page)
                .contains("The gate is signed; Fitting station is occupied by " + ahead.number()
                        + ", working, there since")
                .contains("ST-1");
        assertThat(state("ST-1")).isEqualTo("BLOCKED");
        assertThat(state("ST-2")).isEqualTo("WORKING");
        assertThat(state("ST-3")).isEqualTo("STARVED");
    }

    @Test
    void the_chain_is_followed_to_the_vehicle_that_holds_the_others() {
        behind.signed();
        ahead.say(new Held(1, HoldKind.QUALITY, List.of(Stops.WORK), "Crack suspected"));
        assertThat(page())
                .contains(
                        "is occupied by " + ahead.number() + ", held since",
                        "Hold 1 stops work: Crack suspected",
                        "Settle hold 1 of " + ahead.number());
    }

    @Test
    void a_starved_station_names_the_vehicle_it_waits_for() {
        assertThat(page()).contains(ahead.number() + " is still at Fitting station, working, there since");
    }

    @Test
    void who_can_move_on_comes_before_what_must_be_decided_and_says_what_it_frees() {
        behind.signed();
        ahead.signed();
        behind.say(new NonconformityOpened(
                1, "strip", Optional.empty(), Cause.REPORTED, "Bracket bent", Optional.empty()));
        String page = page();
        assertThat(page)
                .contains("lets " + ahead.number() + " move on; 2 stations wait for it")
                .contains("until then the gate of " + behind.number() + " stays shut");
        assertThat(page.indexOf("Move " + ahead.number() + " on"))
                .isPositive()
                .isLessThan(page.indexOf("Decide nonconformity 1 of " + behind.number()));
    }

    @Test
    void a_call_for_which_work_stands_still_takes_the_station_down() {
        ahead.say(new HelpCalled(
                1,
                Help.SAFETY,
                Optional.of("fitting"),
                Optional.of("ST-2"),
                Optional.of("Coolant on the floor"),
                true));
        assertThat(state("ST-2")).isEqualTo("DOWN");
        String page = page();
        assertThat(page).contains("<span>down</span>", "Help called: safety", "Coolant on the floor");
        assertThat(page.indexOf("Answer the call for safety at " + ahead.number()))
                .isPositive()
                .isLessThan(page.indexOf("somebody may be in danger"));
    }

    @Test
    void an_empty_station_that_is_stopped_is_down_and_the_cause_of_those_that_starve_behind_it() {
        ahead.out();
        UUID id = UUID.randomUUID();
        stopping.stop(
                new Stopping.ToStop(id, Optional.empty(), Optional.of("ST-2"), Optional.empty()),
                Actor.of(Cast.TECHNICIAN.number(), clock));
        try {
            behind.signed();
            assertThat(state("ST-2")).isEqualTo("DOWN");
            assertThat(page())
                    .contains("The gate is signed; Fitting station is down, and nothing can go there.")
                    .contains("Nothing comes from Fitting station: it is down.");
        } finally {
            int number = StopRow.open().stream()
                    .filter(row -> "ST-2".equals(row.station))
                    .findFirst()
                    .orElseThrow()
                    .number;
            stopping.lift(
                    new Stopping.ToLift(UUID.randomUUID(), number, "test over"),
                    Actor.of(Cast.QUALITY_ENGINEER.number(), clock));
        }
    }

    @Test
    void time_at_the_station_items_and_what_the_day_made_are_shown() {
        String page = page();
        assertThat(page)
                .contains("shift to", "made today", "handed over today", "in the works")
                .containsPattern("0 of \\d+")
                .containsPattern("/ \\d+ min");
        long before = made(page);
        ahead.out();
        assertThat(made(page())).isEqualTo(before + 1);
    }

    @Test
    void the_part_that_refreshes_keeps_an_id_at_every_link() {
        String part = Browsing.as(Cast.LINE_MANAGER).page("/line/stations");
        assertThat(part).doesNotContain("<html").contains("data-live=\"/line/events\"");
        assertThat(part.split("<a ")).hasSizeGreaterThan(5);
        assertThat(part.replaceAll("(?s)<a [^>]*\\bid=\"[^\"]+\"[^>]*>", "")).doesNotContain("<a ");
    }

    /** Each vehicle on the line is one stream more to read; what stands in the yard costs nothing more. */
    @Test
    void drawing_the_line_asks_the_database_no_more_than_once_for_a_vehicle() {
        look.at(clock.instant());
        long two = statements();
        OnRecord.accepted();
        assertThat(statements()).isEqualTo(two);
        OnRecord third = OnRecord.accepted().at("strip", "ST-1B").at("commissioning", "ST-3");
        try {
            assertThat(statements()).isBetween(two + 1, two + 2);
        } finally {
            third.out();
        }
    }

    private long statements() {
        Statistics statistics = sessions.getStatistics();
        look.at(clock.instant());
        long before = statistics.getPrepareStatementCount();
        look.at(clock.instant());
        return statistics.getPrepareStatementCount() - before;
    }

    private String page() {
        return Browsing.as(Cast.LINE_MANAGER).page("/line");
    }

    private static long made(String page) {
        var found = java.util.regex.Pattern.compile("made today (\\d+)").matcher(page);
        assertThat(found.find()).isTrue();
        return Long.parseLong(found.group(1));
    }

    private static String state(String station) {
        List<Map<String, Object>> stations =
                Cast.AUDITOR.asks().get("/api/v1/line").jsonPath().getList("stations");
        return (String) stations.stream()
                .filter(one -> one.get("station").equals(station))
                .findFirst()
                .orElseThrow()
                .get("state");
    }
}
