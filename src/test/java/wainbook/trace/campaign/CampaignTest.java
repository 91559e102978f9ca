package wainbook.trace.campaign;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.http.ContentType;
import io.restassured.path.json.JsonPath;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.time.Clock;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import wainbook.house.Browsing;
import wainbook.house.Cast;
import wainbook.house.OnRecord;
import wainbook.ledger.Entry;
import wainbook.ledger.Ledger;
import wainbook.ledger.Subject;
import wainbook.ledger.evidence.EvidenceFiles;
import wainbook.order.OrderSaying.HandedOver;
import wainbook.order.OrderSaying.Stops;
import wainbook.order.WorkOrder;
import wainbook.print.Validated;
import wainbook.process.Releases;
import wainbook.process.sheet.Condition;
import wainbook.station.StationSaying.About;
import wainbook.station.StationSaying.Basis;
import wainbook.station.StationSaying.LotUsed;
import wainbook.station.StationSaying.Voided;
import wainbook.works.shift.WorksDay;

/** From a bad lot to the last vehicle that was put right. */
@QuarkusTest
@Tag("database")
class CampaignTest {

    private static final String OPERATOR = "Vale and Fen Community Buses";

    @Inject
    Releases releases;

    @Inject
    Ledger ledger;

    @Inject
    EvidenceFiles files;

    @Inject
    WorksDay day;

    @Inject
    Clock clock;

    private OnRecord gone;
    private OnRecord here;
    private String lot;
    private String number;

    @BeforeEach
    void two_buses_with_a_bad_lot_one_of_them_handed_over() {
        Cast.assemble();
        Cast.HANDOVER_CLERK.give("SIGNATORY", 0);
        Cast.QUALITY_ENGINEER.give("SIGNATORY", 0);
        String unique = UUID.randomUUID().toString().substring(0, 8).toUpperCase(Locale.ROOT);
        lot = "LC-" + unique;
        number = "FA-" + unique;
        gone = OnRecord.accepted();
        gone.say(lotUsed());
        gone.say(new HandedOver("The yard master", List.of()));
        here = OnRecord.accepted().at("strip", "ST-1");
        here.say(lotUsed());
    }

    @AfterEach
    void the_station_is_free_again() {
        here.out();
    }

    @Test
    void before_anything_is_kept_it_is_shown_which_vehicles_it_would_be_about() {
        String page = Browsing.as(Cast.QUALITY_ENGINEER)
                .page("/campaigns/new?number=" + number + "&sort1=LOT&code1=" + lot.toLowerCase(Locale.ROOT));
        assertThat(page)
                .contains("2 vehicles would be in scope", "1 of them is not handed over", gone.number(), here.number())
                .contains("/orders/" + gone.number() + "#entry-");
        assertThat(ledger.history(Subject.campaign(number)).isEmpty()).isTrue();
        assertThat(Cast.QUALITY_ENGINEER
                        .asks()
                        .contentType(ContentType.JSON)
                        .body(query())
                        .post("/api/v1/campaigns/preview")
                        .jsonPath()
                        .getList("order"))
                .containsExactlyInAnyOrder(gone.number(), here.number());
    }

    @Test
    void the_scope_is_kept_with_where_each_record_stood_and_what_comes_later_is_shown_apart() {
        long head = gone.history().number();
        open();
        here.say(lotUsed());
        OnRecord later = OnRecord.accepted();
        later.say(lotUsed());
        JsonPath found = one();
        assertThat(found.getList("opened.vehicles.order")).containsExactlyInAnyOrder(gone.number(), here.number());
        assertThat(found.getInt("opened.vehicles.find { it.order == '" + gone.number() + "' }.head"))
                .isEqualTo((int) head);
        assertThat(found.getString("opened.vehicles.find { it.order == '" + gone.number() + "' }.hash"))
                .isEqualTo(gone.history().entries().get((int) head - 1).hash());
        assertThat(found.getList("matchesSince.order")).containsExactly(later.number());
        assertThat(Browsing.as(Cast.AUDITOR).page("/campaigns/" + number))
                .contains("1 vehicle fits the query now and is not in scope");
        post("/vehicles", Map.of("id", id(), "orders", List.of(later.number()), "reason", "Found since"))
                .then()
                .statusCode(201);
        assertThat(one().getList("matchesSince")).isEmpty();
        assertThat(standing(later)).isEqualTo("IN_SCOPE");
        assertThat(WorkOrder.of(later.history()).orElseThrow().holds()).hasSize(1);
    }

    @Test
    void a_vehicle_in_the_works_is_held_at_its_gate_and_one_that_was_handed_over_is_not() {
        open();
        assertThat(WorkOrder.of(here.history()).orElseThrow().holdsThatStop(Stops.SIGN))
                .hasSize(1);
        assertThat(WorkOrder.of(here.history()).orElseThrow().holdsThatStop(Stops.WORK))
                .isEmpty();
        assertThat(WorkOrder.of(gone.history()).orElseThrow().holds()).isEmpty();
        assertThat(Browsing.as(Cast.TECHNICIAN).page("/orders/" + here.number()))
                .contains("Campaign " + number, "/campaigns/" + number, "Sealant that may not cure");
        assertThat(Browsing.as(Cast.TECHNICIAN).page("/matters?search=" + number))
                .contains("2 of 2 vehicles open");
    }

    @Test
    void asking_twice_with_one_id_opens_one_campaign_and_another_cannot_take_its_number() {
        Map<String, Object> asked = asked();
        Cast.QUALITY_ENGINEER
                .asks()
                .contentType(ContentType.JSON)
                .body(asked)
                .post("/api/v1/campaigns")
                .then()
                .statusCode(201);
        Cast.QUALITY_ENGINEER
                .asks()
                .contentType(ContentType.JSON)
                .body(asked)
                .post("/api/v1/campaigns")
                .then()
                .statusCode(200);
        assertThat(ledger.history(Subject.campaign(number)).number()).isEqualTo(1);
        assertThat(WorkOrder.of(here.history()).orElseThrow().holds()).hasSize(1);
        Map<String, Object> other = new HashMap<>(asked);
        other.put("id", id());
        Response refused = Cast.QUALITY_ENGINEER
                .asks()
                .contentType(ContentType.JSON)
                .body(other)
                .post("/api/v1/campaigns");
        assertThat(refused.statusCode()).isEqualTo(422);
        assertThat(refused.asString()).contains("campaign.numberTaken");
    }

    @Test
    void one_letter_goes_to_an_operator_with_its_vehicles_and_is_kept_as_it_was_sent() throws Exception {
        open();
        Browsing clerk = Browsing.as(Cast.HANDOVER_CLERK);
        String path = "/campaigns/" + number + "/letter?operator=" + OPERATOR;
        assertThat(clerk.page(path))
                .contains(gone.vin(), "Reference " + number + "/1")
                .doesNotContain(here.vin());
        assertThat(clerk.get(path.replace("/letter?", "/letter/letter.pdf?")).contentType())
                .isEqualTo("application/pdf");
        assertThat(answered(gone, "REACHED").statusCode()).isEqualTo(409);
        sent().then().statusCode(201);
        String sha256 = one().getString("letters[0].file.sha256");
        Validated.passes(files.bytes(sha256).orElseThrow());
        assertThat(standing(gone)).isEqualTo("LETTER_SENT");
        answered(gone, "REACHED").then().statusCode(201);
        assertThat(standing(gone)).isEqualTo("ANSWERED");
        assertThat(answered(here, "REACHED").asString()).contains("campaign.stillHere");
    }

    @Test
    void the_works_puts_the_letter_in_its_own_words_and_a_letter_read_before_that_is_not_noted() {
        open();
        long seen = one().getLong("seen");
        post("/letters/text", Map.of("id", id(), "text", "Please ring us.\n\nBring the keys."))
                .then()
                .statusCode(201);
        Response stale = post("/letters", letter(Map.of("seen", seen)));
        assertThat(stale.statusCode()).isEqualTo(409);
        assertThat(Browsing.as(Cast.HANDOVER_CLERK).page("/campaigns/" + number + "/letter?operator=" + OPERATOR))
                .contains("<p>Please ring us.</p>", "<p>Bring the keys.</p>");
    }

    @Test
    void a_vehicle_is_taken_out_with_a_reason_and_by_a_second_person_and_its_hold_ends() {
        open();
        post("/vehicles/" + here.number() + "/out", Map.of("id", id(), "reason", "The tube was thrown away"))
                .then()
                .statusCode(201);
        Response own = post("/vehicles/" + here.number() + "/out/agreement", Map.of("id", id()));
        assertThat(own.asString()).contains("campaign.ownTakingOut");
        as(Cast.WORKS_ENGINEER, "/vehicles/" + here.number() + "/out/agreement", Map.of("id", id()))
                .then()
                .statusCode(201);
        assertThat(standing(here)).isEqualTo("TAKEN_OUT");
        assertThat(WorkOrder.of(here.history()).orElseThrow().holds()).isEmpty();
        post("/vehicles", Map.of("id", id(), "orders", List.of(here.number()), "reason", "It was not"))
                .then()
                .statusCode(201);
        assertThat(standing(here)).isEqualTo("IN_SCOPE");
        assertThat(WorkOrder.of(here.history()).orElseThrow().holds()).hasSize(1);
    }

    @Test
    void put_right_here_is_shown_by_an_entry_made_since_and_ends_the_hold() {
        open();
        Response before = settled(here, "PUT_RIGHT_HERE", Optional.of(1L));
        assertThat(before.asString()).contains("campaign.entryUnfit");
        Entry again = here.say(lotUsed());
        settled(here, "PUT_RIGHT_HERE", Optional.of(again.number())).then().statusCode(201);
        assertThat(standing(here)).isEqualTo("SETTLED");
        assertThat(WorkOrder.of(here.history()).orElseThrow().holds()).isEmpty();
    }

    @Test
    void a_vehicle_comes_back_under_a_rework_order_and_is_done_when_that_is_handed_over() {
        open();
        String next = gone.number() + "-2";
        Response noRoute = reworked(gone, next, "NO-SUCH-ROUTE");
        assertThat(noRoute.statusCode()).isIn(409, 422);
        assertThat(standing(gone)).isEqualTo("IN_SCOPE");
        reworked(gone, next, "BUS-12M-BACK").then().statusCode(201);
        assertThat(standing(gone)).isEqualTo("REWORK_ORDERED");
        assertThat(one().getList("matchesSince")).isEmpty();
        assertThat(post("/vehicles", Map.of("id", id(), "orders", List.of(next), "reason", "Twice"))
                        .asString())
                .contains("campaign.inScopeAlready");
        assertThat(WorkOrder.of(ledger.history(Subject.workOrder(next)))
                        .orElseThrow()
                        .earlierOrder())
                .contains(gone.number());
        assertThat(Browsing.as(Cast.AUDITOR).page("/orders/" + next)).contains("Campaign " + number);
        assertThat(reworked(gone, next + "X", "BUS-12M-BACK").asString()).contains("campaign.reworkOrderedAlready");
        new OnRecord(next, gone.vin()).say(new HandedOver("The yard master", List.of()));
        assertThat(standing(gone)).isEqualTo("DONE");
    }

    @Test
    void a_vehicle_that_came_back_for_another_reason_is_one_vehicle_under_its_newest_order() {
        String next = gone.number() + "-2";
        returned(next);
        open();
        assertThat(one().getList("opened.vehicles.order")).containsExactlyInAnyOrder(next, here.number());
        assertThat(one().getBoolean("opened.vehicles.find { it.order == '" + next + "' }.withOperator"))
                .isTrue();
        assertThat(Browsing.as(Cast.AUDITOR).page("/campaigns/" + number + "/vehicles/" + next))
                .contains("/orders/" + gone.number() + "#entry-");
        Map<String, Object> known =
                Map.of("id", id(), "rework", next, "route", "", "operator", OPERATOR, "promisedOn", "2027-03-01");
        post("/vehicles/" + next + "/rework", known).then().statusCode(201);
        assertThat(one().getString("vehicles.find { it.order == '" + next + "' }.standing"))
                .isEqualTo("REWORK_ORDERED");
    }

    @Test
    void a_vehicle_that_arrives_or_fits_later_is_held_by_rule_until_it_is_decided_about() {
        open();
        OnRecord later = OnRecord.accepted();
        assertThat(heldByRule(later.number())).isEmpty();
        later.say(lotUsed());
        assertThat(heldByRule(later.number())).containsExactly("/campaigns/" + number + "#since");
        assertThat(signing(later.number(), "intake")).contains("order.heldByRule");
        post("/vehicles", Map.of("id", id(), "orders", List.of(later.number()), "reason", "Found since"))
                .then()
                .statusCode(201);
        assertThat(heldByRule(later.number())).as("its own record holds it now").isEmpty();
        assertThat(WorkOrder.of(later.history()).orElseThrow().holds()).hasSize(1);
        settled(later, "NOT_NEEDED", Optional.empty()).then().statusCode(201);
        assertThat(heldByRule(later.number())).isEmpty();
    }

    @Test
    void a_vehicle_of_the_scope_that_comes_back_is_held_from_its_reception_but_not_under_its_rework_order() {
        open();
        String next = gone.number() + "-2";
        returned(next);
        assertThat(heldByRule(next)).as("its operator has it").isEmpty();
        received(next);
        assertThat(heldByRule(next)).containsExactly("/campaigns/" + number + "/vehicles/" + gone.number());
        assertThat(signing(next, "intake")).contains("order.heldByRule");
        assertThat(Browsing.as(Cast.AUDITOR).page("/orders/" + next))
                .contains("Campaign " + number + ": stops signing", "Sealant that may not cure");
        Map<String, Object> taken =
                Map.of("id", id(), "rework", next, "route", "", "operator", OPERATOR, "promisedOn", "2027-03-01");
        post("/vehicles/" + gone.number() + "/rework", taken).then().statusCode(201);
        assertThat(heldByRule(next)).as("it is here to be put right").isEmpty();
    }

    @Test
    void the_preview_marks_what_was_voided_since() {
        Entry used = here.say(lotUsed());
        here.say(new Voided(used.id(), "sealant", "Read from the wrong tube"));
        OnRecord only = OnRecord.accepted();
        Entry wrong = only.say(lotUsed());
        only.say(new Voided(wrong.id(), "sealant", "Another lot"));
        JsonPath found = Cast.QUALITY_ENGINEER
                .asks()
                .contentType(ContentType.JSON)
                .body(query())
                .post("/api/v1/campaigns/preview")
                .jsonPath();
        String mine = "find { it.order == '" + here.number() + "' }";
        assertThat(found.getList(mine + ".because")).hasSize(2);
        assertThat(found.getList(mine + ".voided.entry", Long.class)).containsExactly(used.number());
        assertThat(found.getBoolean(mine + ".onlyVoided")).isFalse();
        assertThat(found.getBoolean("find { it.order == '" + only.number() + "' }.onlyVoided"))
                .isTrue();
        assertThat(found.getList("find { it.order == '" + gone.number() + "' }.voided"))
                .isEmpty();
        assertThat(Browsing.as(Cast.QUALITY_ENGINEER).page("/campaigns/new?sort1=LOT&code1=" + lot))
                .contains("2 vehicles are found by an entry that was voided since", "by voided entries alone");
    }

    private List<String> heldByRule(String order) {
        return Cast.AUDITOR.asks().get("/api/v1/orders/" + order).jsonPath().getList("heldByRule.path", String.class);
    }

    private static List<String> signing(String order, String stage) {
        return Cast.INSPECTOR
                .asks()
                .get("/api/v1/orders/" + order + "/gates/" + stage)
                .jsonPath()
                .getList("against.key", String.class);
    }

    private void returned(String next) {
        Cast.WORKS_ENGINEER
                .asks()
                .contentType(ContentType.JSON)
                .body(Map.of(
                        "id",
                        id(),
                        "number",
                        next,
                        "route",
                        "BUS-12M-BACK",
                        "operator",
                        OPERATOR,
                        "promisedOn",
                        "2027-03-01",
                        "reason",
                        "Wipers"))
                .post("/api/v1/orders/" + gone.number() + "/return")
                .then()
                .statusCode(201);
    }

    private void received(String next) {
        Cast.TECHNICIAN
                .asks()
                .contentType(ContentType.JSON)
                .body(Map.of("id", id(), "vin", gone.vin(), "registration", "LT51 AAA", "odometerKm", 412_000))
                .post("/api/v1/orders/" + next + "/donor")
                .then()
                .statusCode(201);
    }

    @Test
    void it_is_closed_by_a_second_signatory_over_vehicles_that_are_all_over_and_opened_again_with_a_reason() {
        open();
        Response early = closed(Cast.HANDOVER_CLERK, Cast.PASSWORD);
        assertThat(early.statusCode()).isEqualTo(409);
        assertThat(early.asString()).contains("campaign.vehicleOpen", gone.number(), here.number());
        Entry again = here.say(lotUsed());
        settled(here, "PUT_RIGHT_HERE", Optional.of(again.number())).then().statusCode(201);
        settled(gone, "NOT_NEEDED", Optional.empty()).then().statusCode(201);
        assertThat(closed(Cast.QUALITY_ENGINEER, Cast.PASSWORD).asString()).contains("campaign.ownCampaign");
        assertThat(closed(Cast.HANDOVER_CLERK, "wrong").asString()).contains("works.passwordWrong");
        assertThat(closed(Cast.LINE_MANAGER, Cast.PASSWORD).asString()).contains("works.competenceMissing");
        closed(Cast.HANDOVER_CLERK, Cast.PASSWORD).then().statusCode(201);
        assertThat(one().getBoolean("closed")).isTrue();
        assertThat(Browsing.as(Cast.AUDITOR).page("/campaigns/" + number)).contains("It ended over 2 vehicles.");
        assertThat(settled(gone, "NOT_NEEDED", Optional.empty()).asString()).contains("campaign.closedAlready");
        post("/reopening", Map.of("id", id(), "reason", "The operator found another"))
                .then()
                .statusCode(201);
        assertThat(one().getBoolean("closed")).isFalse();
    }

    @Test
    void lists_and_files_name_it_and_a_campaign_that_is_not_there_is_not_found() {
        open();
        Browsing auditor = Browsing.as(Cast.AUDITOR);
        assertThat(auditor.page("/campaigns?search=" + number)).contains(number, "open, 0 of 2 done");
        assertThat(auditor.page("/campaigns.csv?search=" + number).lines()).hasSize(2);
        assertThat(auditor.page("/campaigns/" + number + "/vehicles.csv"))
                .contains(gone.number(), gone.vin(), "IN_SCOPE", "lot " + lot);
        assertThat(auditor.page("/campaigns/" + number + "/vehicles/" + gone.number()))
                .contains(lot);
        assertThat(auditor.get("/campaigns/NONE").statusCode()).isEqualTo(404);
        assertThat(auditor.get("/campaigns/" + number + "/vehicles/NONE").statusCode())
                .isEqualTo(404);
        assertThat(auditor.get("/campaigns/new").statusCode()).isEqualTo(403);
    }

    @Test
    void a_form_that_is_refused_comes_back_with_everything_typed() {
        Browsing engineer = Browsing.as(Cast.QUALITY_ENGINEER);
        Map<String, Object> form = engineer.form("/campaigns/new?sort1=LOT&code1=" + lot);
        form.put("act", "preview");
        form.put("wrong", "Long ".repeat(390));
        assertThat(engineer.send("/campaigns/new", form).asString())
                .contains("2 vehicles would be in scope", "Long Long");
        form.put("act", "open");
        form.put("number", number);
        form.put("title", "Sealant that may not cure");
        form.put("wrong", "");
        form.put("remedy", "We seal again.");
        form.put("hazard", "STOP_USE");
        Response refused = engineer.send("/campaigns/new", form);
        assertThat(refused.statusCode()).isIn(409, 422);
        assertThat(refused.asString())
                .contains("We seal again.", "Sealant that may not cure", lot, "Something is missing here");
        form.put("wrong", "Too little hardener.");
        assertThat(engineer.send("/campaigns/new", form).header("Location")).endsWith("/campaigns/" + number);
        assertThat(WorkOrder.of(here.history()).orElseThrow().holdsThatStop(Stops.MOVE))
                .hasSize(1);
    }

    private void open() {
        Cast.QUALITY_ENGINEER
                .asks()
                .contentType(ContentType.JSON)
                .body(asked())
                .post("/api/v1/campaigns")
                .then()
                .statusCode(201);
    }

    private Map<String, Object> asked() {
        return Map.of(
                "id", id(),
                "number", number,
                "title", "Sealant that may not cure",
                "wrong", "Too little hardener.",
                "remedy", "We seal again.",
                "hazard", "AT_NEXT_SERVICE",
                "query", query());
    }

    private Map<String, Object> query() {
        return Map.of("match", "ANY", "terms", List.of(Map.of("sort", "LOT", "code", lot)));
    }

    private JsonPath one() {
        return Cast.AUDITOR
                .asks()
                .get("/api/v1/campaigns/" + number)
                .then()
                .statusCode(200)
                .extract()
                .jsonPath();
    }

    private String standing(OnRecord bus) {
        return one().getString("vehicles.find { it.order == '" + bus.number() + "' }.standing");
    }

    private Response post(String path, Map<String, ?> body) {
        return as(Cast.QUALITY_ENGINEER, path, body);
    }

    private Response as(Cast person, String path, Map<String, ?> body) {
        return person.asks().contentType(ContentType.JSON).body(body).post("/api/v1/campaigns/" + number + path);
    }

    private Response sent() {
        return post("/letters", letter(Map.of()));
    }

    private Map<String, Object> letter(Map<String, ?> more) {
        Map<String, Object> body =
                new HashMap<>(Map.of("id", id(), "operator", OPERATOR, "on", today(), "way", "POST"));
        body.putAll(more);
        return body;
    }

    private Response answered(OnRecord bus, String answer) {
        return post(
                "/vehicles/" + bus.number() + "/answers",
                Map.of("id", id(), "answer", answer, "on", today(), "words", "On any Tuesday"));
    }

    private Response settled(OnRecord bus, String end, Optional<Long> entry) {
        Map<String, Object> body = new HashMap<>(Map.of("id", id(), "end", end, "reason", "Looked at every joint"));
        entry.ifPresent(number -> body.put("entry", number));
        return post("/vehicles/" + bus.number() + "/end", body);
    }

    private Response reworked(OnRecord bus, String rework, String route) {
        return post(
                "/vehicles/" + bus.number() + "/rework",
                Map.of("id", id(), "rework", rework, "route", route, "operator", OPERATOR, "promisedOn", "2027-03-01"));
    }

    private Response closed(Cast person, String password) {
        return as(
                person,
                "/closing",
                Map.of("id", id(), "result", "Both looked at, one sealed again.", "password", password));
    }

    private String today() {
        return LocalDate.ofInstant(clock.instant(), day.zone()).toString();
    }

    private static String id() {
        return UUID.randomUUID().toString();
    }

    private LotUsed lotUsed() {
        String sheet = releases.route("BUS-12M")
                .orElseThrow()
                .leg("strip")
                .orElseThrow()
                .checkSheet();
        var about = new About(
                "strip", sheet, 1, releases.sheet(sheet, 1).items().get(0).key(), List.of());
        return new LotUsed(about, new Basis(Condition.NONE, Optional.empty(), Optional.empty()), "sealant", lot);
    }
}
