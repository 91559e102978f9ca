package wainbook.walk;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static wainbook.walk.WholeWay.done;
import static wainbook.walk.WholeWay.refused;

import io.quarkus.test.junit.QuarkusTest;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import wainbook.house.Browsing;
import wainbook.house.Cast;

/** What interrupts an isolation, on a stripped bus: breaks, shift ends, danger, take-overs, and locks of people who are away. */
@QuarkusTest
@Tag("database")
class IsolationByApiTest {

    private static final List<String> SOURCES = List.of("INLET-DC", "LV-24V", "WHEELS", "CAPACITORS");
    private static final List<String> POINTS = List.of("TP-INLET", "TP-BUS", "TP-INV", "TP-MOTOR");

    private static int count;

    private WalkClock clock;
    private Vehicle bus;
    private ApiHands hands;
    private Isolating isolation;

    @BeforeEach
    void aBusStandsAtTheStripStation() {
        Cast.assemble();
        count++;
        clock = Stage.morning(10 + count);
        bus = new Vehicle("WB-ISO-" + count, "WBKZZZ55555555" + (100 + count));
        hands = new ApiHands(bus, clock);
        isolation = new Isolating(hands, clock);
        done(hands.order("ingrid", Map.of()));
        done(hands.donor("amara", bus.vin(), "VF14 GHI", 400_000));
        WholeWay.survey(hands, bus.vin());
        done(hands.entry("amara", "hazards", Map.of("words", "none")));
        done(hands.sign("mateo", "intake", ApiHands.PASSWORD));
        done(hands.move("fatima", "ONTO_LINE", "ST-1"));
    }

    @AfterEach
    void theStationIsFreeAgain() {
        for (int hold = 1; hold <= 4; hold++) {
            hands.release("kofi", hold, "the test is over");
        }
        for (String[] lock : new String[][] {{"amara", "LK-01"}, {"linh", "LK-03"}, {"arjun", "LK-06"}}) {
            hands.step(lock[0], "lock-off", Map.of("lock", lock[1]));
        }
        done(hands.move("fatima", "OFF_LINE", "BAY-1"));
    }

    @Test
    void after_a_break_the_points_of_work_are_proved_and_the_permit_is_endorsed() {
        inForce();
        isolation.does("linh", "stop", Map.of("cause", "BREAK"));
        assertThat(state()).isEqualTo("STOPPED");
        clock.pass(Duration.ofMinutes(20));
        refused(resume(), "isolation.pointsNotProved");
        proved("POINTS_OF_WORK", List.of("TP-BUS"));
        refused(hands.step("ewa", "resume", resuming(List.of("LK-01"))), "isolation.locksNotSeen");
        done(resume());
        assertThat(state()).isEqualTo("IN_FORCE");
    }

    @Test
    void after_the_end_of_a_shift_a_short_proof_will_not_do() {
        inForce();
        isolation.does("arjun", "stop", Map.of("cause", "SHIFT_END"));
        refused(hands.step("amara", "prove-tester-before", tester("POINTS_OF_WORK")), "isolation.everyPointDue");
        proved("ALL_POINTS", POINTS);
        assertThat(state()).isEqualTo("PROVED_DEAD");
    }

    @Test
    void a_permit_that_has_run_out_stops_the_work_by_the_clock_and_voids_nothing() {
        inForce();
        clock.pass(Duration.ofHours(2));
        assertThat(state()).isEqualTo("STOPPED");
        assertThat(entries()).last().asString().contains("isolation.paperRead/1");
    }

    @Test
    void a_voltage_where_none_should_be_voids_and_holds_the_vehicle() {
        secured();
        isolation.testerProvedBefore();
        clock.pass(Duration.ofSeconds(6));
        done(hands.step("amara", "measure-point", Isolating.reading("TP-BUS", "412")));
        assertThat(state()).isEqualTo("VOID");
        assertThat(entries()).last().asString().contains("order.held/1", "SAFETY", "TP-BUS");
        refused(hands.entry("amara", "starter-batteries", Map.of("quantity", "110")), "station.held");
    }

    @Test
    void a_dangerous_reading_by_somebody_who_may_not_measure_is_kept_and_voids_as_well() {
        secured();
        refused(hands.step("tomasz", "measure-point", Isolating.reading("TP-BUS", "-380")), "isolation.notAuthorised");
        assertThat(state()).isEqualTo("VOID");
        assertThat(entries()).last().asString().contains("order.held/1");
    }

    @Test
    void anybody_may_report_danger() {
        inForce();
        done(hands.step("leilani", "report-danger", Map.of("danger", "HEAT_OR_FIRE", "where", "front roof")));
        assertThat(state()).isEqualTo("VOID");
    }

    @Test
    void another_authorised_person_takes_over_and_every_point_is_proved_again() {
        inForce();
        refused(hands.step("arjun", "take-over", Map.of()), "isolation.ownLockMissing");
        isolation.locked("arjun", "LK-06", "TG-06");
        isolation.does("arjun", "take-over", Map.of());
        assertThat(state()).isEqualTo("STOPPED");
        isolation.does("amara", "lock-off", Map.of("lock", "LK-01"));
        assertThat(state()).isEqualTo("STOPPED");
    }

    @Test
    void a_lock_whose_owner_is_away_is_removed_by_a_manager_and_an_issuer_and_its_owner_told() {
        inForce();
        var away = Map.<String, Object>of(
                "lock",
                "LK-03",
                "reason",
                "went home ill",
                "confirmed",
                List.of("OWNER_NOT_ON_SITE", "OWNER_TRIED", "OWNER_WILL_BE_TOLD"));
        var removed =
                Map.<String, Object>of("lock", "LK-03", "confirmed", List.of("VEHICLE_INSPECTED", "PEOPLE_COUNTED"));
        refused(hands.step("tomasz", "report-abandoned-lock", away), "isolation.notForLocks");
        isolation.does("fatima", "report-abandoned-lock", away);
        refused(hands.step("fatima", "remove-abandoned-lock", removed), "isolation.sameTwice");
        isolation.does("ewa", "remove-abandoned-lock", removed);
        assertThat(state()).isEqualTo("VOID");
        isolation.does("amara", "lock-off", Map.of("lock", "LK-01"));
        isolation.planned();
        isolation.shutDown();
        isolation.opened(SOURCES);
        isolation.locked("amara", "LK-01", "TG-01");
        refused(lockOn("linh", "LK-03"), "isolation.lockUnknown");
        refused(lockOn("linh", "LK-21"), "isolation.ownerNotTold");
        isolation.does("fatima", "tell-owner", Map.of("lock", "LK-03"));
        done(lockOn("linh", "LK-21"));
        isolation.does("linh", "lock-off", Map.of("lock", "LK-21"));
    }

    @Test
    void a_step_sent_twice_is_taken_once_and_its_password_is_asked_each_time() {
        secured();
        proved("ALL_POINTS", POINTS);
        Map<String, Object> permit = Isolating.permit("linh", "look at the distribution unit", "TP-BUS");
        var body = Map.of(
                "id",
                UUID.randomUUID().toString(),
                "password",
                ApiHands.PASSWORD,
                "with",
                with(
                        permit,
                        "validUntil",
                        clock.instant().plus(Duration.ofHours(1)).toString()));
        assertThat(send("ewa", body)).isEqualTo(201);
        assertThat(send("ewa", body)).isEqualTo(200);
        assertThat(send("ewa", with(body, "password", "guessed"))).isEqualTo(422);
    }

    @Test
    void what_cannot_be_read_is_said_and_nothing_is_written() {
        long before = entries().size();
        assertThat(sent("amara", "plan", "{}")).isEqualTo(400);
        assertThat(sent("amara", "plan", "{\"id\":\"" + UUID.randomUUID() + "\",\"with\":{\"confirmed\":[\"HOPED\"]}}"))
                .isEqualTo(400);
        assertThat(sent("ewa", "issue-permit", "{\"id\":\"" + UUID.randomUUID() + "\",\"with\":{\"what\":\" \"}}"))
                .isEqualTo(400);
        assertThat(sent("amara", "dance", "{\"id\":\"" + UUID.randomUUID() + "\"}"))
                .isEqualTo(404);
        assertThat(entries()).hasSize((int) before);
    }

    @Test
    void danger_is_reported_by_one_touch_without_filling_anything_in() {
        Browsing page = Browsing.as(Cast.OUTSIDER);
        String path = "/isolation/" + bus.order();
        assertThat(page.page(path)).containsPattern("name=\"danger\" value=\"OTHER\" checked");
        Map<String, Object> fields = new java.util.HashMap<>(page.form(path));
        assertThat(page.send(path + "/report-danger", fields).statusCode()).isEqualTo(303);
        assertThat(entries()).last().asString().contains("order.held/1", "SAFETY");
    }

    @Test
    void a_form_with_what_no_page_offers_comes_back_and_breaks_nothing() {
        Browsing page = Browsing.as(Cast.TECHNICIAN);
        String path = "/isolation/" + bus.order();
        for (Map<String, String> odd : List.of(
                Map.of("cause", "WEATHER"),
                Map.of("cause", "BREAK", "note", "x".repeat(4000)),
                Map.<String, String>of())) {
            Map<String, Object> fields = new java.util.HashMap<>(page.form(path));
            fields.putAll(odd);
            assertThat(page.send(path + "/stop", fields).statusCode())
                    .as(odd.toString())
                    .isIn(303, 422);
        }
        Map<String, Object> fields = new java.util.HashMap<>(page.form(path));
        fields.put("paper", "the yellow one");
        assertThat(page.send(path + "/read-paper", fields).statusCode()).isEqualTo(422);
        fields.put("confirmed", List.of("HOPED"));
        assertThat(page.send(path + "/plan", fields).statusCode()).isEqualTo(422);
    }

    private void secured() {
        isolation.secured(SOURCES);
        isolation.locked("linh", "LK-03", "TG-03");
        clock.pass(Duration.ofMinutes(10));
    }

    private void inForce() {
        secured();
        proved("ALL_POINTS", POINTS);
        isolation.permitOut(1, "look at the distribution unit", "TP-BUS");
        assertThat(state()).isEqualTo("IN_FORCE");
    }

    private void proved(String scope, List<String> points) {
        isolation.does("amara", "prove-tester-before", tester(scope));
        isolation.pointsMeasured(points);
        isolation.testerProvedAfter();
        isolation.does("arjun", "witness-proof", Map.of());
    }

    private Hands.Answer resume() {
        return hands.step("ewa", "resume", resuming(List.of("LK-01", "LK-03")));
    }

    private static Map<String, Object> resuming(List<String> locks) {
        return Map.of("permit", "1", "locksSeen", locks, "confirmed", List.of("PLAN_READ_AGAIN", "AREA_NEVER_LEFT"));
    }

    private Hands.Answer lockOn(String user, String lock) {
        return hands.step(user, "lock-on", Map.of("lock", lock, "tag", "TG-07"));
    }

    private static Map<String, Object> tester(String scope) {
        return Map.of(
                "scope",
                scope,
                "testerCode",
                "VT-01",
                "sourceCode",
                "PU-01",
                "sourceVolt",
                "240",
                "readingVolt",
                "239");
    }

    private static Map<String, Object> with(Map<String, ?> fields, String name, Object value) {
        var more = new java.util.HashMap<String, Object>(fields);
        more.put(name, value);
        return more;
    }

    private int send(String user, Map<String, ?> body) {
        return ApiHands.as(user)
                .body(body)
                .post("/api/v1/orders/" + bus.order() + "/isolation/issue-permit")
                .statusCode();
    }

    private int sent(String user, String step, String body) {
        return ApiHands.as(user)
                .body(body)
                .post("/api/v1/orders/" + bus.order() + "/isolation/" + step)
                .statusCode();
    }

    private String state() {
        return ApiHands.as("amara")
                .get("/api/v1/orders/" + bus.order() + "/isolation")
                .jsonPath()
                .getString("state");
    }

    private List<String> entries() {
        return given().auth()
                .preemptive()
                .basic("ruben", ApiHands.PASSWORD)
                .get("/api/v1/ledger/streams/work-order/" + bus.order())
                .jsonPath()
                .getList("lines", String.class);
    }
}
