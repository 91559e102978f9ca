package wainbook.book.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.startsWith;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import wainbook.house.Browsing;
import wainbook.house.Cast;

/** One vehicle from its order onto the line, as its page, the line page and the list of open matters show it. */
@QuarkusTest
@Tag("database")
class VehiclePageTest {

    private static final String STATION = "ST-1";

    private String number;

    @BeforeEach
    void an_order_stands() {
        Cast.assemble();
        Cast.INSPECTOR.give("gate-inspection", 0);
        number = "VP-" + UUID.randomUUID().toString().substring(0, 8);
        Cast.WORKS_ENGINEER
                .asks()
                .contentType("application/json")
                .body(Map.of(
                        "id", UUID.randomUUID(),
                        "number", number,
                        "operator", "Vale <and> Fen",
                        "variant", "bus-12m",
                        "route", "BUS-12M",
                        "promisedOn", "2027-02-12",
                        "facts", List.of()))
                .post("/api/v1/orders")
                .then()
                .statusCode(201);
    }

    @Test
    void tells_the_whole_of_a_vehicle_and_never_becomes_markup() {
        String page = Browsing.as(Cast.AUDITOR).page("/orders/" + number);
        assertThat(page)
                .contains(number, "ordered, no donor yet", "Nothing is open", "The record", "id=\"entry-1\"")
                .contains("Vale &lt;and&gt; Fen", "Wes Enright")
                .doesNotContain("Vale <and>", "/orders/" + number + "/hold\"");
    }

    @Test
    void gives_its_record_as_stored_to_those_who_prove_it() throws NoSuchAlgorithmException {
        Browsing auditor = Browsing.as(Cast.AUDITOR);
        String path = "/orders/" + number + "/record.ndjson";
        String lines = auditor.get(path).then().statusCode(200).extract().asString();
        List<String> all = lines.lines().toList();
        assertThat(all).hasSize(3).allMatch(line -> line.contains("work-order/" + number));
        String hash = HexFormat.of()
                .formatHex(
                        MessageDigest.getInstance("SHA-256").digest(all.get(2).getBytes(StandardCharsets.UTF_8)));
        assertThat(auditor.page("/orders/" + number)).contains(path, hash, "Entry 3 is the last");
        assertThat(Browsing.as(Cast.TECHNICIAN).page("/orders/" + number)).doesNotContain(path);
        assertThat(Browsing.as(Cast.TECHNICIAN).get(path).statusCode()).isEqualTo(403);
        assertThat(auditor.get("/orders/NONE-1/record.ndjson").statusCode()).isEqualTo(404);
    }

    @Test
    void offers_each_what_their_duties_allow() {
        assertThat(Browsing.as(Cast.TECHNICIAN).page("/orders/" + number))
                .contains("/donor\"", "/hold\"", "/report\"")
                .doesNotContain("/move\"");
        assertThat(Browsing.as(Cast.HANDOVER_CLERK).page("/orders/" + number))
                .doesNotContain("/donor\"", "/hold\"", "/report\"", "/move\"");
    }

    @Test
    void is_filtered_by_kind_in_the_address() {
        report("Bracket bent");
        assertThat(Browsing.as(Cast.AUDITOR).page("/orders/" + number + "?kind=matter"))
                .contains("id=\"entry-4\"", "Nonconformity 1 opened (reported): Bracket bent")
                .doesNotContain("id=\"entry-1\"");
        assertThat(Browsing.as(Cast.AUDITOR).page("/orders/" + number + "?kind=gate"))
                .contains("No entry of this kind");
    }

    @Test
    void what_is_reported_is_open_until_another_quality_engineer_decides() {
        report("Bracket bent");
        Browsing quality = Browsing.as(Cast.QUALITY_ENGINEER);
        assertThat(quality.page("/matters?search=" + number)).contains("Nonconformity 1", "Bracket bent");
        assertThat(quality.page("/matters.csv?search=" + number)).contains(number + ",\"Nonconformity 1\"");
        String path = "/orders/" + number + "/nonconformities/1/disposition";
        assertThat(Browsing.as(Cast.TECHNICIAN).get(path).statusCode()).isEqualTo(403);
        Map<String, Object> form = quality.form(path);
        form.put("because", "The bracket can be straightened");
        Response back = quality.send(path, form);
        assertThat(back.statusCode()).isEqualTo(422);
        assertThat(back.asString()).contains("disposition-fault", "The bracket can be straightened");
        form.put("disposition", "REWORK");
        assertThat(quality.send(path, form).statusCode()).isEqualTo(303);
        assertThat(quality.send(path, form).statusCode()).isEqualTo(303);
        assertThat(quality.page("/matters?search=" + number)).contains("No open matter fits");
        assertThat(quality.page(path)).contains("cannot be decided again").doesNotContain("name=\"because\"");
    }

    @Test
    void what_is_reported_on_the_brakes_or_against_a_legal_limit_is_never_conceded() {
        reportOn("COMM-BUS12/brake-report");
        reportOn("COMM-BUS12/bonding-pack1");
        reportOn("COMM-BUS12/labels");
        Browsing quality = Browsing.as(Cast.QUALITY_ENGINEER);
        String path = "/orders/" + number + "/nonconformities/";
        assertThat(quality.page(path + "1/disposition"))
                .contains("<dt>No concession for</dt><dd>brakes</dd>")
                .doesNotContain("value=\"CONCESSION\"");
        assertThat(quality.page(path + "2/disposition"))
                .contains("<dt>No concession for</dt><dd>legal limit</dd>")
                .doesNotContain("value=\"CONCESSION\"");
        assertThat(quality.page(path + "3/disposition"))
                .contains("value=\"CONCESSION\"")
                .doesNotContain("No concession for");
        Cast.QUALITY_ENGINEER
                .asks()
                .contentType("application/json")
                .body(Map.of("id", UUID.randomUUID(), "disposition", "CONCESSION", "because", "It will do"))
                .post("/api/v1/orders/" + number + "/nonconformities/1/disposition")
                .then()
                .statusCode(409)
                .body("reasons.key", hasItem("matter.noConcession"))
                .body("detail", startsWith("No concession can be given for nonconformity 1 (brakes)."));
    }

    @Test
    void who_reported_it_finds_the_reason_instead_of_the_form() {
        Browsing quality = Browsing.as(Cast.QUALITY_ENGINEER);
        String path = "/orders/" + number + "/report";
        Map<String, Object> form = quality.form(path);
        form.put("what", "Rust on the frame");
        assertThat(quality.send(path, form).statusCode()).isEqualTo(303);
        assertThat(quality.page("/orders/" + number + "/nonconformities/1/disposition"))
                .contains("Ask another quality engineer")
                .doesNotContain("name=\"because\"");
    }

    @Test
    void a_decision_on_what_changed_meanwhile_is_refused_with_what_was_typed() {
        report("Bracket bent");
        Browsing quality = Browsing.as(Cast.QUALITY_ENGINEER);
        String path = "/orders/" + number + "/nonconformities/1/disposition";
        Map<String, Object> form = quality.form(path);
        report("Second bracket bent");
        form.putAll(Map.of("disposition", "REWORK", "because", "Can be straightened"));
        Response back = quality.send(path, form);
        assertThat(back.statusCode()).isEqualTo(409);
        assertThat(back.asString())
                .contains("Can be straightened", "nonconformityOpened by " + Cast.TECHNICIAN.number());
    }

    @Test
    void comes_onto_the_line_by_the_move_form_and_stands_on_the_line_page() {
        accepted();
        Browsing leader = Browsing.as(Cast.TEAM_LEADER);
        String path = "/orders/" + number + "/move";
        Map<String, Object> form = leader.form(path);
        form.put("way", "ONTO_LINE " + STATION);
        Response back = leader.send(path, form);
        assertThat(back.statusCode()).isEqualTo(422);
        assertThat(back.asString()).contains("people-and-tools-clear-fault", "This is not confirmed");
        form.put("confirmed", List.of("people-and-tools-clear", "steering-and-brakes-or-tow-plan"));
        assertThat(leader.send(path, form).statusCode()).isEqualTo(303);
        assertThat(leader.send(path, form).statusCode()).isEqualTo(303);
        assertThat(leader.page("/line"))
                .contains(number, "working", "items are open", "data-live=\"/line/events\"")
                .contains("starved");
        assertThat(leader.page("/line/stations")).contains(number).doesNotContain("<html");
        assertThat(leader.page(path)).contains("Not possible now", "The gate of stage strip is not signed");
        assertThat(leader.page("/orders/" + number)).contains("At ST-1: working", "/station/" + number);
        assertThat(Browsing.as(Cast.TECHNICIAN).get(path).statusCode()).isEqualTo(403);

        form = leader.form(path);
        form.putAll(Map.of("way", "OFF_LINE BAY-1", "reason", "Rework in the bay"));
        form.put("confirmed", List.of("people-and-tools-clear", "steering-and-brakes-or-tow-plan"));
        assertThat(leader.send(path, form).statusCode()).isEqualTo(303);
        assertThat(leader.page("/line")).contains("In a bay", "Rework in the bay");
        assertThat(leader.page("/orders/" + number)).contains("It stands at BAY-1: off the line");
    }

    @Test
    void a_voided_entry_stays_struck_through_with_its_correction_under_it() {
        received();
        String id = record("engine-number", Map.of("serial", "EN-7739"));
        Cast.TECHNICIAN
                .asks()
                .contentType("application/json")
                .body(Map.of("id", UUID.randomUUID(), "entry", id, "reason", "Read from the wrong block"))
                .post("/api/v1/orders/" + number + "/voids")
                .then()
                .statusCode(201);
        assertThat(Browsing.as(Cast.AUDITOR).page("/orders/" + number))
                .contains(
                        "entry-line voided",
                        "class=\"correction\" id=\"entry-6\"",
                        "Voided: Read from the wrong block");
    }

    @Test
    void its_electrical_state_stands_on_the_first_screen_and_its_isolation_is_told_in_the_record() {
        Browsing auditor = Browsing.as(Cast.AUDITOR);
        String link = "href=\"/isolation/" + number + "\"";
        assertThat(auditor.page("/orders/" + number)).doesNotContain(link);
        received();
        assertThat(auditor.page("/orders/" + number))
                .contains("class=\"stands\"><a " + link, "Live. No isolation is open");
        Cast.TECHNICIAN
                .asks()
                .contentType("application/json")
                .body(Map.of("id", UUID.randomUUID(), "with", Map.of("danger", "HEAT_OR_FIRE", "where", "engine bay")))
                .post("/api/v1/orders/" + number + "/isolation/report-danger")
                .then()
                .statusCode(201);
        assertThat(auditor.page("/orders/" + number + "?kind=isolation"))
                .contains("Danger reported: Heat, smoke, smell or fire. Where: engine bay", "<span>danger</span>");
    }

    @Test
    void an_order_that_is_not_there_is_said_to_be_missing() {
        Browsing anybody = Browsing.as(Cast.AUDITOR);
        assertThat(anybody.get("/orders/NONE-1").statusCode()).isEqualTo(404);
        assertThat(anybody.get("/orders/NONE-1").asString()).contains("There is no such page");
        assertThat(Browsing.as(Cast.TEAM_LEADER).get("/orders/NONE-1/move").statusCode())
                .isEqualTo(404);
    }

    private void report(String what) {
        Browsing technician = Browsing.as(Cast.TECHNICIAN);
        String path = "/orders/" + number + "/report";
        Map<String, Object> form = technician.form(path);
        form.put("what", what);
        assertThat(technician.send(path, form).statusCode()).isEqualTo(303);
        assertThat(technician.send(path, form).statusCode()).isEqualTo(303);
    }

    private void reportOn(String item) {
        Cast.TECHNICIAN
                .asks()
                .contentType("application/json")
                .body(Map.of("id", UUID.randomUUID(), "item", item, "what", "Looks wrong"))
                .post("/api/v1/orders/" + number + "/nonconformities")
                .then()
                .statusCode(201);
    }

    private void received() {
        String vin = ("WBVP" + number.substring(3).toUpperCase(java.util.Locale.ROOT) + "0000000000").substring(0, 17);
        Cast.TECHNICIAN
                .asks()
                .contentType("application/json")
                .body(Map.of("id", UUID.randomUUID(), "vin", vin, "registration", "FV39 KLO", "odometerKm", 412380))
                .post("/api/v1/orders/" + number + "/donor")
                .then()
                .statusCode(201);
    }

    private void accepted() {
        received();
        record("vin", Map.of("serial", "WBVP0000000000000"));
        record("engine-number", Map.of("serial", "EN-7739"));
        record("frame", Map.of("choice", "Sound"));
        record("tyres", Map.of("cells", List.of(7, 7, 7, 7, 7, 7, 7, 7)));
        Cast.TECHNICIAN
                .asks()
                .contentType("application/json")
                .body(Map.of(
                        "id",
                        UUID.randomUUID(),
                        "item",
                        "received-front",
                        "instrument",
                        "WP-01",
                        "reply",
                        Map.of("reading", 4210)))
                .post("/api/v1/orders/" + number + "/entries")
                .then()
                .statusCode(201);
        record("hazards", Map.of("words", "None found"));
        String gate = "/api/v1/orders/" + number + "/gates/intake";
        String fingerprint = Cast.INSPECTOR.asks().get(gate).jsonPath().getString("fingerprint");
        Cast.INSPECTOR
                .asks()
                .contentType("application/json")
                .body(Map.of("id", UUID.randomUUID(), "fingerprint", fingerprint, "password", Cast.PASSWORD))
                .post(gate + "/sign-off")
                .then()
                .statusCode(201);
    }

    private String record(String item, Map<String, Object> reply) {
        return Cast.TECHNICIAN
                .asks()
                .contentType("application/json")
                .body(Map.of("id", UUID.randomUUID(), "item", item, "reply", reply))
                .post("/api/v1/orders/" + number + "/entries")
                .then()
                .statusCode(201)
                .extract()
                .path("id");
    }
}
