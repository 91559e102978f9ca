package wainbook.handover.record;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import wainbook.handover.FinishedVehicle;
import wainbook.handover.record.RecordSaying.Wordlist;
import wainbook.house.Browsing;
import wainbook.house.Cast;
import wainbook.matter.OpenMatter;
import wainbook.matter.OpenMatters;

/** The handover record by API and page: names outside the ledger, receipts, snags that outlive the handover. */
@QuarkusTest
@Tag("database")
class HandoverRecordTest {

    @Inject
    OpenMatters matters;

    @Inject
    Clock clock;

    private String order;
    private String page;

    @BeforeEach
    void a_finished_bus_stands_at_the_handover_bay() {
        Cast.assemble();
        order = "HR-" + UUID.randomUUID().toString().substring(0, 8).toUpperCase(Locale.ROOT);
        page = "/handover/" + order + "/record";
        FinishedVehicle.build(order, FinishedVehicle.plainFacts());
    }

    @Test
    void a_name_lies_outside_the_ledger_and_can_be_deleted() {
        SignedReceipt.of(order);
        agreed("2099-01-31").then().statusCode(422);
        agreed(soon()).then().statusCode(201);
        assertThat(stream()).doesNotContain("Robin", "Invented").contains("\"token\":\"O-1\"", "\"token\":\"O-2\"");
        assertThat(Browsing.as(Cast.AUDITOR).page(page)).contains("Robin Invented, Depot foreman, Vale and Fen");
        long deleted = QuarkusTransaction.requiringNew().call(() -> OutsideName.delete("workOrder", order));
        assertThat(deleted).as("the refused one was taken back").isEqualTo(2);
        assertThat(Browsing.as(Cast.AUDITOR).page(page))
                .contains("O-1, Depot foreman", "agreed with O-2")
                .doesNotContain("Robin");
    }

    @Test
    void a_receipt_is_taken_once_and_ceases_to_count_when_the_record_changes() {
        Map<String, Object> signing = SignedReceipt.signing(order);
        SignedReceipt.send(order, "/receipts", signing).then().statusCode(201);
        SignedReceipt.send(order, "/receipts", signing).then().statusCode(200);
        assertThat(known("receipt")).isEqualTo("1");
        assertThat(Browsing.as(Cast.AUDITOR).page(page)).contains("receipt signed", "Receipt 1 counts");
        agreed(soon()).then().statusCode(201);
        assertThat(known("receipt")).isNull();
        assertThat(Browsing.as(Cast.AUDITOR).page(page))
                .contains("changed since the receipt", "Receipt 1 no longer counts", "Changed since: Agreed snags.");
        Map<String, Object> late = SignedReceipt.signing(order);
        agreed(soon()).then().statusCode(201);
        refused(SignedReceipt.send(order, "/receipts", late), 409, "handover.recordChangedMeanwhile");
    }

    @Test
    void a_drawn_signature_is_kept_as_a_picture_of_the_works_own_making() {
        Map<String, Object> signing = SignedReceipt.signing(order);
        signing.put("manner", "DRAWN");
        refused(SignedReceipt.send(order, "/receipts", signing), 422, "handover.recordNotDrawn");
        signing.put("strokes", List.of(List.of(List.of(1, 1), List.of(2000, 1))));
        refused(SignedReceipt.send(order, "/receipts", signing), 422, "handover.recordNotDrawn");
        signing.put("strokes", strokes());
        SignedReceipt.send(order, "/receipts", signing).then().statusCode(201);
        String html = Browsing.as(Cast.AUDITOR).page(page);
        String file = html.replaceAll("(?s).*class=\"signature\" src=\"(/evidence/[0-9a-f]{64})\".*", "$1");
        Response picture = Browsing.as(Cast.AUDITOR).get(file);
        assertThat(picture.contentType()).startsWith("image/svg+xml");
        assertThat(picture.header("Content-Security-Policy")).contains("sandbox");
        assertThat(picture.asString()).contains("M100 150 L140 80");
    }

    @Test
    void where_nobody_signs_a_second_person_of_the_works_says_so_too() {
        Map<String, Object> missing = new HashMap<>(Map.of(
                "id",
                UUID.randomUUID(),
                "content",
                SignedReceipt.content(order),
                "absence",
                "REFUSED",
                "reason",
                "Will not sign for the scratch",
                "witness",
                Cast.HANDOVER_CLERK.number(),
                "password",
                Cast.PASSWORD));
        refused(SignedReceipt.send(order, "/receipts/missing", missing), 422, "handover.recordWitness");
        missing.put("witness", Cast.LINE_MANAGER.number());
        missing.put("password", "wrong");
        refused(SignedReceipt.send(order, "/receipts/missing", missing), 422, "handover.recordWitnessPassword");
        missing.put("password", Cast.PASSWORD);
        SignedReceipt.send(order, "/receipts/missing", missing).then().statusCode(201);
        assertThat(Browsing.as(Cast.AUDITOR).page(page))
                .contains("complete, nobody signed", "Receipt 1: nobody signed, witnessed")
                .contains("Receipt refused: Will not sign for the scratch");
        assertThat(stream()).doesNotContain(Cast.PASSWORD);
    }

    @Test
    void a_snag_stays_open_after_handing_over_until_somebody_closes_it() {
        agreed(soon()).then().statusCode(201);
        assertThat(open()).containsExactly("Scratch in the paint. To do: Touch it up.");
        FinishedVehicle.handedOver(order);
        refused(agreed(soon()), 409, "handover.recordClosed");
        assertThat(Browsing.as(Cast.AUDITOR).page("/orders/" + order))
                .contains("Scratch in the paint, Offside", "Conversion, 24 months");
        close(2, "Touched up").then().statusCode(409);
        close(1, " ").then().statusCode(422);
        close(1, "Touched up").then().statusCode(201);
        refused(close(1, "Touched up"), 409, "handover.recordNoSnag");
        assertThat(open()).isEmpty();
        assertThat(Browsing.as(Cast.AUDITOR).page(page)).contains("Done: Touched up");
    }

    @Test
    void what_cannot_be_is_said_at_its_field() {
        Response state = SignedReceipt.send(
                order, "/state", Map.of("id", UUID.randomUUID(), "odometerKm", 1, "chargePercent", 101, "bay", ""));
        refused(state, 422, "handover.roadOdometerBack", "handover.recordChargeFault", "handover.recordMissing");
        refused(
                SignedReceipt.send(order, "/things", Map.of("id", UUID.randomUUID(), "things", List.of())),
                422,
                "handover.recordThingsOrNothing");
        refused(
                SignedReceipt.send(
                        order,
                        "/pictures",
                        Map.of("id", UUID.randomUUID(), "place", "Nearside", "sha256", "0".repeat(64))),
                422,
                "handover.recordPhotographMissing");
    }

    @Test
    void what_was_typed_comes_back_with_its_faults() {
        Browsing clerk = Browsing.as(Cast.HANDOVER_CLERK);
        Map<String, Object> form = clerk.form(page);
        form.putAll(Map.of("form", "state", "odometerKm", "soon", "chargePercent", "84", "bay", "Bay 7"));
        Response back = clerk.send(page + "/state", form);
        assertThat(back.statusCode()).isEqualTo(422);
        assertThat(back.asString()).contains("odometerKm-fault", "value=\"Bay 7\"");
        form.put("odometerKm", "400040");
        assertThat(clerk.send(page + "/state", form).header("Location")).endsWith(page + "#state");
        assertThat(clerk.page(page)).contains("400040", "Bay 7");
    }

    @Test
    void the_works_words_its_own_lists() {
        Browsing engineer = Browsing.as(Cast.WORKS_ENGINEER);
        String lists = "/process/handover-lists";
        Map<String, Object> form = engineer.form(lists);
        form.putAll(Map.of("wordlist", "TOPICS", "TOPICS", "Charging\n\nTowing, only by low loader\nCharging"));
        assertThat(engineer.send(lists, form).statusCode()).isEqualTo(303);
        assertThat(Browsing.as(Cast.HANDOVER_CLERK).page(page))
                .contains("Towing, only by low loader")
                .doesNotContain("Fire, water and accident");
        form.putAll(Map.of("id", UUID.randomUUID().toString(), "TOPICS", " "));
        assertThat(engineer.send(lists, form).statusCode()).isEqualTo(422);
        assertThat(Browsing.as(Cast.TECHNICIAN).send(lists, form).statusCode()).isEqualTo(403);
        form.putAll(Map.of(
                "id", UUID.randomUUID().toString(), "TOPICS", String.join("\n", Wordlists.brought(Wordlist.TOPICS))));
        assertThat(engineer.send(lists, form).statusCode()).isEqualTo(303);
    }

    private static List<List<List<Integer>>> strokes() {
        return Strokes.read(StrokesTest.SIGNED).orElseThrow().all();
    }

    private List<String> open() {
        return matters.all(clock.instant()).stream()
                .filter(matter -> matter.order().equals(order))
                .filter(matter -> matter.sort() == OpenMatter.Sort.SNAG)
                .map(OpenMatter::what)
                .toList();
    }

    private Response close(int snag, String done) {
        return SignedReceipt.send(order, "/snags/" + snag + "/closing", Map.of("id", UUID.randomUUID(), "done", done));
    }

    private Response agreed(String dueOn) {
        return SignedReceipt.send(
                order,
                "/snags",
                Map.of(
                        "id",
                        UUID.randomUUID(),
                        "defect",
                        "Scratch in the paint",
                        "place",
                        "Offside",
                        "withName",
                        "Robin Invented",
                        "owner",
                        Cast.TEAM_LEADER.number(),
                        "remedy",
                        "Touch it up",
                        "dueOn",
                        dueOn));
    }

    private String soon() {
        return LocalDate.ofInstant(clock.instant(), ZoneOffset.UTC).plusDays(30).toString();
    }

    private String known(String field) {
        return Cast.AUDITOR
                .asks()
                .get("/api/v1/orders/" + order + "/handover-record")
                .jsonPath()
                .getString(field);
    }

    private String stream() {
        return Cast.AUDITOR
                .asks()
                .get("/api/v1/ledger/streams/work-order/" + order)
                .asString()
                .replace("\\\"", "\"");
    }

    private static void refused(Response response, int status, String... keys) {
        assertThat(response.statusCode()).as(response.asString()).isEqualTo(status);
        assertThat(response.jsonPath().getList("reasons.key", String.class)).contains(keys);
    }
}
