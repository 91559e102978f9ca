package wainbook.handover;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import java.math.BigDecimal;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import wainbook.handover.record.SignedReceipt;
import wainbook.house.Cast;
import wainbook.quality.QualitySaying.About;
import wainbook.quality.QualitySaying.Doubted;
import wainbook.quality.QualitySaying.Gravity;
import wainbook.quality.QualitySaying.Ground;
import wainbook.quality.QualitySaying.ReadingsDoubted;
import wainbook.quality.QualitySaying.Sort;
import wainbook.quality.QualitySaying.Sureness;

/** Documents and handing over by the API. */
@QuarkusTest
@Tag("database")
class HandingOverTest {

    /** What a plain 12 m bus needs, by rules that may bar, before it is handed over. */
    private static final List<String> BARRING =
            List.of("GB-01", "GB-03", "GB-10", "GB-11", "GB-15", "GB-27", "GB-28", "GB-29", "GB-30", "GB-31");

    private String number;

    @BeforeEach
    void a_finished_bus_stands_in_the_yard() {
        Cast.assemble();
        number = "HO-" + UUID.randomUUID().toString().substring(0, 8).toUpperCase(java.util.Locale.ROOT);
        FinishedVehicle.build(number, FinishedVehicle.plainFacts());
    }

    @Test
    void a_plain_bus_needs_ten_documents_before_it_leaves() {
        var known = Cast.AUDITOR.asks().get(orders("/documents")).jsonPath();
        assertThat(known.getList("documents.findAll { it.bars }.id", String.class))
                .containsExactlyElementsOf(BARRING);
        assertThat(known.getList("against.key", String.class))
                .hasSize(BARRING.size() + 1)
                .containsOnly("handover.documentMissing", "handover.recordNoReceipt");
        assertThat(known.getString("documents.find { it.id == 'GB-02' }.due")).isEqualTo("may-follow");
        assertThat(known.getString("documents.find { it.id == 'GB-09' }.standing"))
                .isEqualTo("NEEDED");
        assertThat(known.getString("against[1].lift")).isEqualTo("/handover/" + number + "/documents/GB-01");
    }

    @Test
    void the_bus_is_handed_over_once_its_documents_are_in_hand() {
        refused(handOver(), 409, "handover.documentMissing");
        BARRING.forEach(id -> inHand(id).then().statusCode(201));
        SignedReceipt.of(number);
        Map<String, Object> given = given();
        send(Cast.HANDOVER_CLERK, "/handover", given).then().statusCode(201).extract();
        send(Cast.HANDOVER_CLERK, "/handover", given).then().statusCode(200);
        assertThat(Cast.AUDITOR.asks().get(orders("")).jsonPath().getString("order.phase"))
                .isEqualTo("HANDED_OVER");
        List<String> lines = Cast.AUDITOR
                .asks()
                .get("/api/v1/ledger/streams/work-order/" + number)
                .jsonPath()
                .getList("lines", String.class);
        assertThat(lines.get(lines.size() - 2)).contains("order.handedOver/1", "\"GB-31\"", "receipt 4711");
        assertThat(lines.get(lines.size() - 1)).contains("handover.setJudged/1", "\"NOT_NEEDED\"", "\"revision\":3");
        refused(handOver(), 409, "handover.handedOverAlready");
    }

    @Test
    void what_the_works_asks_for_after_the_line_is_passed_first() {
        number = number + "L";
        FinishedVehicle.offTheLine(number, FinishedVehicle.plainFacts())
                .driven()
                .recorded();
        BARRING.forEach(id -> inHand(id).then().statusCode(201));
        SignedReceipt.of(number);

        Response refused = handOver();
        refused(refused, 409, "handover.appointmentOpen");
        assertThat(refused.jsonPath().getList("reasons.lift", String.class))
                .containsOnly("/orders/" + number + "/appointments");

        send(
                Cast.HANDOVER_CLERK,
                "/appointments/LANE/attended",
                Map.of("id", UUID.randomUUID(), "passed", true, "remark", ""));
        send(
                Cast.HANDOVER_CLERK,
                "/appointments/ROAD/attended",
                Map.of("id", UUID.randomUUID(), "passed", false, "remark", "Pulls to the left"));
        assertThat(handOver().jsonPath().getList("reasons.arguments[0]", String.class))
                .containsExactly("Road test");
        send(
                Cast.HANDOVER_CLERK,
                "/appointments/ROAD/attended",
                Map.of("id", UUID.randomUUID(), "passed", true, "remark", ""));
        handOver().then().statusCode(201);
    }

    @Test
    void what_changed_since_the_clerk_looked_is_looked_at_again() {
        BARRING.forEach(id -> inHand(id).then().statusCode(201));
        Map<String, Object> given = given();
        state("engine_fate", "undecided");
        refused(send(Cast.HANDOVER_CLERK, "/handover", given), 409, "ledger.changedSince");
    }

    @Test
    void a_fact_that_nobody_knows_any_more_is_asked_for() {
        String other = number + "B";
        Map<String, String> facts = FinishedVehicle.plainFacts();
        facts.remove("charge_dc");
        facts.remove("waste_streams");
        FinishedVehicle.build(other, facts);
        number = other;
        Response refused = handOver();
        refused(refused, 409, "handover.factsMissing");
        assertThat(refused.jsonPath()
                        .getList("reasons.findAll { it.key == 'handover.factsMissing' }.lift", String.class))
                .containsExactly(
                        "/orders/" + number + "/facts?fact=charge_dc",
                        "/orders/" + number + "/facts?fact=waste_streams",
                        "/orders/" + number + "/facts?fact=waste_streams");
        refused(waive(Cast.LINE_MANAGER, "GB-30", "no charging point yet"), 409, "handover.factsBeforeWaiving");
        state("charge_dc", "true");
        inHand("GB-30").then().statusCode(201);
        assertThat(handOver().jsonPath().getList("reasons.arguments[0]", String.class))
                .doesNotContain("GB-30");
    }

    @Test
    void a_fact_that_changes_signed_work_changes_the_gate() {
        state("wheelchair_ramp", "true");
        refused(handOver(), 409, "handover.gateChanged");
    }

    @Test
    void a_hold_and_a_nonconformity_stand_in_the_way() {
        send(
                        Cast.INSPECTOR,
                        "/holds",
                        Map.of(
                                "id",
                                UUID.randomUUID(),
                                "kindOfHold",
                                "QUALITY",
                                "stops",
                                List.of("MOVE"),
                                "reason",
                                "paint"))
                .then()
                .statusCode(201);
        send(Cast.INSPECTOR, "/nonconformities", Map.of("id", UUID.randomUUID(), "what", "scratch"))
                .then()
                .statusCode(201);
        assertThat(handOver().jsonPath().getList("reasons.key", String.class))
                .contains("handover.held", "handover.nonconformityOpen", "handover.documentMissing");
    }

    @Test
    void an_order_without_a_vehicle_is_refused_with_every_reason() {
        number = number + "C";
        Cast.WORKS_ENGINEER
                .asks()
                .contentType("application/json")
                .body(Map.of(
                        "id",
                        UUID.randomUUID(),
                        "number",
                        number,
                        "operator",
                        "Vale and Fen",
                        "variant",
                        "bus-12m",
                        "route",
                        "BUS-12M",
                        "promisedOn",
                        "2027-02-12",
                        "facts",
                        List.of()))
                .post("/api/v1/orders")
                .then()
                .statusCode(201);
        assertThat(handOver().jsonPath().getList("reasons.key", String.class))
                .contains("handover.notFinished", "handover.gatesUnsigned", "handover.factsMissing");
    }

    @Test
    void a_bus_with_a_reading_in_doubt_is_not_handed_over() {
        var wrench = new About(
                Sort.INSTRUMENT, "TW-1", Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
        var doubted = new Doubted(
                UUID.randomUUID(),
                3,
                1,
                Cast.ENGAGED_AT,
                Cast.TECHNICIAN.number(),
                "packs",
                "PACKS-BUS12/frame-bolts",
                Optional.of("BUS-FRAME-FRONT"),
                Gravity.A,
                "N·m",
                Optional.of(new BigDecimal("101")),
                Optional.of(new BigDecimal("99")),
                Optional.of(new BigDecimal("121")),
                false,
                false,
                Sureness.POSSIBLE,
                Ground.NO_FIGURES,
                Optional.empty());
        FinishedVehicle.say(number, new ReadingsDoubted("I-TW-1-1", wrench, List.of(doubted), Optional.empty()));
        BARRING.forEach(id -> inHand(id).then().statusCode(201));
        SignedReceipt.of(number);
        assertThat(handOver().jsonPath().getList("reasons.key", String.class)).containsExactly("handover.doubtOpen");
    }

    @Test
    void a_market_without_rules_is_never_judged_by_another_one() {
        state("market", "FR");
        refused(handOver(), 409, "handover.noRules");
        assertThat(Cast.AUDITOR.asks().get(orders("/documents")).jsonPath().getList("documents"))
                .isEmpty();
        refused(inHand("GB-01"), 409, "handover.notInTheSet");
    }

    @Test
    void the_clerk_alone_waives_nothing() {
        refused(waive(Cast.HANDOVER_CLERK, "GB-29", "laboratory is late"), 409, "handover.mayNotWaive");
        refused(waive(Cast.LINE_MANAGER, "GB-29", " "), 422, "handover.whyMissing");
        refused(waive(Cast.LINE_MANAGER, "GB-05", "not ours"), 409, "handover.nothingToWaive");
        waive(Cast.QUALITY_ENGINEER, "GB-29", "assessed at the desk").then().statusCode(201);
        assertThat(standing("GB-29")).isEqualTo("WAIVED");
        refused(
                note(Cast.LINE_MANAGER, "GB-28", Map.of("state", "IN_HAND", "reference", "C-1")),
                409,
                "handover.mayNotNote");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "IN_HAND | '' | '' | handover.referenceMissing",
                "IN_HAND | R-1 | 2020-01-31 | handover.endedAlready",
                "REFUSED | '' | '' | handover.whyMissing"
            })
    void what_is_missing_is_said_at_its_field(String state, String reference, String until, String key) {
        Map<String, Object> body = new HashMap<>(Map.of("state", state, "reference", reference));
        if (!until.isEmpty()) {
            body.put("validUntil", until);
        }
        refused(note(Cast.HANDOVER_CLERK, "GB-01", body), 422, key);
        assertThat(standing("GB-01")).isEqualTo("NEEDED");
    }

    @Test
    void a_document_is_not_valid_for_longer_than_its_rule_says() {
        refused(
                note(
                        Cast.HANDOVER_CLERK,
                        "GB-09",
                        Map.of("state", "IN_HAND", "reference", "T-1", "validUntil", "2099-01-01")),
                422,
                "handover.validTooLong");
        note(Cast.HANDOVER_CLERK, "GB-09", Map.of("state", "APPLIED_FOR", "reference", "T-1"))
                .then()
                .statusCode(201);
        note(Cast.HANDOVER_CLERK, "GB-01", Map.of("state", "IN_HAND", "reference", "N-1", "validUntil", "2099-01-01"))
                .then()
                .statusCode(201);
    }

    @Test
    void a_file_handed_in_before_goes_with_the_note_and_an_unknown_one_does_not() {
        String sha256 = Cast.HANDOVER_CLERK
                .asks()
                .contentType("application/pdf")
                .body(("paper of " + number).getBytes(java.nio.charset.StandardCharsets.UTF_8))
                .post(orders("/files"))
                .then()
                .statusCode(200)
                .extract()
                .path("sha256");
        Map<String, Object> body = new HashMap<>(Map.of("state", "IN_HAND", "reference", "N-1", "sha256", sha256));
        note(Cast.HANDOVER_CLERK, "GB-01", body).then().statusCode(201);
        assertThat(Cast.AUDITOR
                        .asks()
                        .get(orders("/documents"))
                        .jsonPath()
                        .getString("documents.find { it.id == 'GB-01' }.noted.said.file.sha256"))
                .isEqualTo(sha256);
        body.put("sha256", "0".repeat(64));
        refused(note(Cast.HANDOVER_CLERK, "GB-01", body), 422, "handover.fileUnknown");
    }

    @Test
    void a_note_sent_twice_is_written_once_and_another_under_its_id_is_refused() {
        Map<String, Object> body = new HashMap<>(
                Map.of("id", UUID.randomUUID(), "state", "IN_HAND", "reference", "N-1", "validUntil", "2099-12-31"));
        send(Cast.HANDOVER_CLERK, "/documents/GB-01", body).then().statusCode(201);
        send(Cast.HANDOVER_CLERK, "/documents/GB-01", body).then().statusCode(200);
        body.put("reference", "N-2");
        refused(send(Cast.HANDOVER_CLERK, "/documents/GB-01", body), 409, "ledger.otherUnderSameId");
        body.put("reference", "N-1");
        refused(send(Cast.HANDOVER_CLERK, "/documents/GB-03", body), 409, "ledger.otherUnderSameId");
    }

    @Test
    void whoever_waived_a_document_does_not_hand_over_on_it() {
        var clerkAndManager = FinishedVehicle.rulesFor(number, Cast.LINE_MANAGER);
        assertThat(clerkAndManager).doesNotContain("handover.ownWaiver");
        waive(Cast.LINE_MANAGER, "GB-29", "assessed at the desk").then().statusCode(201);
        assertThat(FinishedVehicle.rulesFor(number, Cast.LINE_MANAGER)).contains("handover.ownWaiver");
        assertThat(FinishedVehicle.rulesFor(number, Cast.HANDOVER_CLERK)).doesNotContain("handover.ownWaiver");
    }

    @ParameterizedTest
    @EnumSource(names = {"TECHNICIAN", "INSPECTOR", "AUDITOR", "OUTSIDER", "LINE_MANAGER"})
    void nobody_but_the_clerk_hands_over(Cast person) {
        send(person, "/handover", given()).then().statusCode(403);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "/documents/GB-01 | {}",
                "/documents/GB-01 | {\"id\":\"x\",\"state\":\"IN_HAND\"}",
                "/documents/GB-01 | {\"id\":\"00000000-0000-4000-8000-000000000001\",\"state\":\"LOST\"}",
                "/documents/GB-01 | {\"id\":\"00000000-0000-4000-8000-000000000001\",\"state\":\"IN_HAND\","
                        + "\"validUntil\":\"soon\"}",
                "/documents/GB-01 | []",
                "/handover | {\"receivedBy\":\"depot\"}",
                "/handover | {\"id\":\"00000000-0000-4000-8000-000000000001\",\"seen\":1}"
            })
    void what_cannot_be_read_is_a_bad_request(String path, String body) {
        Cast.HANDOVER_CLERK
                .asks()
                .contentType("application/json")
                .body(body)
                .post(orders(path))
                .then()
                .statusCode(400);
    }

    @Test
    void an_order_that_is_not_there_is_not_found() {
        Cast.HANDOVER_CLERK.asks().get("/api/v1/orders/NONE-1/documents").then().statusCode(404);
        refused(note(Cast.HANDOVER_CLERK, "GB-99", Map.of("state", "APPLIED_FOR")), 409, "handover.notInTheSet");
    }

    private Response inHand(String id) {
        return note(Cast.HANDOVER_CLERK, id, Map.of("state", "IN_HAND", "reference", "N-" + id));
    }

    private Response waive(Cast person, String id, String why) {
        return note(person, id, Map.of("state", "WAIVED", "note", why));
    }

    private Response note(Cast person, String id, Map<String, Object> body) {
        Map<String, Object> whole = new HashMap<>(body);
        whole.put("id", UUID.randomUUID());
        return send(person, "/documents/" + id, whole);
    }

    private void state(String fact, String stated) {
        send(Cast.HANDOVER_CLERK, "/facts", Map.of("id", UUID.randomUUID(), "fact", fact, "stated", stated))
                .then()
                .statusCode(201);
    }

    private Response handOver() {
        return send(Cast.HANDOVER_CLERK, "/handover", given());
    }

    private Map<String, Object> given() {
        long seen = Cast.AUDITOR.asks().get(orders("/documents")).jsonPath().getLong("seen");
        return Map.of("id", UUID.randomUUID(), "receivedBy", "Depot foreman, receipt 4711", "seen", seen);
    }

    private String standing(String id) {
        return Cast.AUDITOR
                .asks()
                .get(orders("/documents"))
                .jsonPath()
                .getString("documents.find { it.id == '" + id + "' }.standing");
    }

    private Response send(Cast person, String path, Map<String, Object> body) {
        return person.asks().contentType("application/json").body(body).post(orders(path));
    }

    private String orders(String path) {
        return "/api/v1/orders/" + number + path;
    }

    private static void refused(Response response, int status, String key) {
        response.then().statusCode(status);
        assertThat(response.jsonPath().getList("reasons.key", String.class)).contains(key);
    }
}
