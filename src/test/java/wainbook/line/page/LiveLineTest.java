package wainbook.line.page;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import java.io.IOException;
import java.net.Socket;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import wainbook.house.Browsing;
import wainbook.house.Cast;
import wainbook.house.Listening;
import wainbook.house.OnRecord;
import wainbook.page.Globals;
import wainbook.station.StationSaying.Help;
import wainbook.station.StationSaying.HelpCalled;
import wainbook.works.PersonRow;

/** The line and the wall are told what happens while somebody looks at them. */
@QuarkusTest
@Tag("database")
@Timeout(120)
class LiveLineTest {

    @TestHTTPResource("/")
    URI app;

    private OnRecord bus;

    @BeforeEach
    void a_bus_stands_on_the_line() {
        Cast.assemble();
        bus = OnRecord.accepted().at("strip", "ST-1");
    }

    @AfterEach
    void the_station_is_free_again() {
        bus.out();
    }

    private void calls(int number, Help help) {
        bus.say(new HelpCalled(number, help, Optional.of("strip"), Optional.of("ST-1"), Optional.empty(), false));
    }

    private static void isGone(Cast person, boolean gone) {
        QuarkusTransaction.requiringNew().run(() -> PersonRow.<PersonRow>findById(person.number()).hasLeft = gone);
    }

    @Test
    void whoever_begins_to_listen_is_told_the_whole_part_and_of_which_version_it_is() {
        try (Listening line = Listening.as(Cast.LINE_MANAGER, app, "/line/events")) {
            Listening.Event first = line.next().orElseThrow();
            assertThat(first.name()).isEqualTo("message");
            assertThat(first.id()).isEqualTo(Globals.assets());
            assertThat(first.data())
                    .startsWith("<div id=\"announcements\"")
                    .contains("<div id=\"stations\"", bus.number());
        }
    }

    @Test
    void a_call_for_help_appears_on_line_and_wall() {
        try (Listening line = Listening.as(Cast.LINE_MANAGER, app, "/line/events");
                Listening wall = Listening.as(Cast.TECHNICIAN, app, "/wall/events")) {
            assertThat(line.next().orElseThrow().data()).doesNotContain("Help called: maintenance");
            assertThat(wall.next().orElseThrow().data()).doesNotContain("1 call for help");
            calls(1, Help.MAINTENANCE);
            assertThat(line.untilSays("Help called: maintenance").data()).contains(bus.number());
            assertThat(wall.untilSays("1 call for help").data()).contains(bus.number());
        }
    }

    @Test
    void work_that_is_stopped_is_announced_at_once_and_no_more_when_it_may_go_on() {
        Browsing manager = Browsing.as(Cast.LINE_MANAGER);
        try (Listening wall = Listening.as(Cast.TECHNICIAN, app, "/wall/events")) {
            assertThat(announced(wall.next().orElseThrow().data())).doesNotContain(bus.number());
            Map<String, Object> where = manager.form("/line");
            where.put("atOrder", bus.number());
            assertThat(manager.send("/safety/stop", where).statusCode()).isEqualTo(303);
            wall.until(event -> announced(event.data()).contains("Work is stopped")
                    && announced(event.data()).contains(bus.number()));
            Cast.QUALITY_ENGINEER
                    .asks()
                    .contentType("application/json")
                    .body(Map.of("id", UUID.randomUUID(), "reason", "Looked at, nobody was near"))
                    .post("/api/v1/orders/" + bus.number() + "/holds/1/release")
                    .then()
                    .statusCode(201);
            assertThat(wall.until(event -> event.name().equals("message")
                                    && !announced(event.data()).contains(bus.number()))
                            .data())
                    .contains(bus.number());
        }
    }

    /** Stops of other tests may stand meanwhile. */
    private static String announced(String part) {
        int from = Math.max(0, part.indexOf("<div id=\"announcements\""));
        return part.substring(from, Math.max(from, part.indexOf("</div>", from)));
    }

    @Test
    void whoever_was_away_is_told_what_happened_meanwhile() {
        try (Listening before = Listening.as(Cast.LINE_MANAGER, app, "/line/events")) {
            before.untilSays(bus.number());
        }
        calls(1, Help.TEAM_LEADER);
        try (Listening after = Listening.as(Cast.LINE_MANAGER, app, "/line/events")) {
            assertThat(after.next().orElseThrow().data()).contains("Help called: team leader");
        }
    }

    @Test
    void twenty_screens_show_the_same_though_one_of_them_never_reads() throws IOException {
        try (var deaf = new Socket(app.getHost(), app.getPort())) {
            deaf.getOutputStream()
                    .write(("GET /wall/events HTTP/1.1\r\nHost: wall\r\nCookie: " + cookie() + "\r\n\r\n")
                            .getBytes(StandardCharsets.UTF_8));
            List<Listening> screens = Stream.generate(() -> Listening.as(Cast.TECHNICIAN, app, "/wall/events"))
                    .limit(20)
                    .toList();
            try {
                calls(1, Help.QUALITY);
                List<String> shown = screens.stream()
                        .map(screen -> screen.untilSays("1 call for help").data())
                        .distinct()
                        .toList();
                assertThat(shown)
                        .isNotEmpty()
                        .allSatisfy(part -> assertThat(part).contains(bus.number()));
                calls(2, Help.QUALITY);
                screens.forEach(screen -> screen.untilSays("2 calls for help"));
            } finally {
                screens.forEach(Listening::close);
            }
        }
    }

    private static String cookie() {
        return "wainbook-session="
                + io.restassured.RestAssured.given()
                        .redirects()
                        .follow(false)
                        .formParam("j_username", Cast.TECHNICIAN.user())
                        .formParam("j_password", Cast.PASSWORD)
                        .post("/j_security_check")
                        .cookie("wainbook-session");
    }

    @Test
    void the_stream_ends_when_its_listener_signs_out_and_others_hear_on() {
        try (Listening auditor = Listening.as(Cast.AUDITOR, app, "/line/events");
                Listening manager = Listening.as(Cast.LINE_MANAGER, app, "/line/events")) {
            auditor.untilSays(bus.number());
            manager.untilSays(bus.number());
            Browsing out = Browsing.as(Cast.AUDITOR);
            assertThat(out.send("/sign-out", out.form("/line")).statusCode()).isEqualTo(303);
            auditor.until(event -> event.name().equals("ended"));
            assertThat(auditor.next()).isEmpty();
            calls(1, Help.MAINTENANCE);
            manager.untilSays("Help called: maintenance");
        }
    }

    @Test
    void the_stream_ends_at_the_next_change_when_the_listener_has_left_the_works() {
        try (Listening clerk = Listening.as(Cast.HANDOVER_CLERK, app, "/line/events")) {
            clerk.untilSays(bus.number());
            isGone(Cast.HANDOVER_CLERK, true);
            calls(1, Help.MAINTENANCE);
            Listening.Event last = clerk.until(event -> !event.name().equals("beat"));
            assertThat(last.name()).isEqualTo("ended");
            assertThat(clerk.next()).isEmpty();
        } finally {
            isGone(Cast.HANDOVER_CLERK, false);
        }
    }

    @Test
    void without_scripts_the_pages_load_themselves_anew() {
        Browsing manager = Browsing.as(Cast.LINE_MANAGER);
        assertThat(List.of(manager.page("/line"), manager.page("/wall")))
                .allSatisfy(page -> assertThat(page)
                        .contains("<noscript><meta http-equiv=\"refresh\" content=\"30\"></noscript>")
                        .contains("data-assets=\"" + Globals.assets() + "\""));
    }
}
