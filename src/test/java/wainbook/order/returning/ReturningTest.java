package wainbook.order.returning;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.http.ContentType;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import wainbook.book.BookSaying.SetFrozen;
import wainbook.book.chapter.BuildBook;
import wainbook.handover.HandoverSaying.DocumentNoted;
import wainbook.handover.HandoverSaying.State;
import wainbook.house.Browsing;
import wainbook.house.Cast;
import wainbook.house.OnRecord;
import wainbook.isolation.Isolation;
import wainbook.isolation.IsolationSaying.SourceRecorded;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.ledger.Ledger;
import wainbook.ledger.Rebuild;
import wainbook.ledger.Subject;
import wainbook.ledger.evidence.EvidenceFile;
import wainbook.ledger.evidence.EvidenceFiles;
import wainbook.order.OrderSaying.FactStated;
import wainbook.order.OrderSaying.HandedOver;
import wainbook.order.WorkOrder;
import wainbook.order.WorkOrderRow;
import wainbook.print.Validated;
import wainbook.process.sheet.Condition;
import wainbook.station.StationSaying.About;
import wainbook.station.StationSaying.Basis;
import wainbook.station.StationSaying.SerialRead;
import wainbook.station.serial.PartSerial;
import wainbook.station.serial.StandingSerials;
import wainbook.station.serial.StandingSerials.Serial;

/** A vehicle that was handed over comes back under a new order. */
@QuarkusTest
@Tag("database")
class ReturningTest {

    private static final String PART = "PACK-65";

    @Inject
    Ledger ledger;

    @Inject
    Rebuild rebuild;

    @Inject
    BuildBook buildBook;

    @Inject
    EvidenceFiles files;

    private OnRecord bus;
    private String serial;
    private String next;

    @BeforeEach
    void a_bus_was_handed_over_with_a_pack() {
        Cast.assemble();
        serial = "RT-" + UUID.randomUUID();
        bus = OnRecord.accepted();
        bus.say(new FactStated("packs", "4"));
        bus.say(new SerialRead(
                new About("intake", "INTAKE-BUS", 1, "engine-number", List.of()),
                new Basis(Condition.DEAD, Optional.empty(), Optional.empty()),
                PART,
                serial));
        bus.say(new SourceRecorded("PACK-1"));
        next = bus.number() + "-2";
    }

    @Test
    void the_vehicle_comes_back_with_its_facts_its_parts_and_its_sources() {
        handedOver();
        Entry last = last(bus.history());
        returned(Map.of()).then().statusCode(201);
        History now = history(next);
        WorkOrder order = WorkOrder.of(now).orElseThrow();
        var from = order.links().from().orElseThrow();
        assertThat(from.earlier()).isEqualTo(bus.number());
        assertThat(from.carriesOn()).isEqualTo(last.number());
        assertThat(from.head()).isEqualTo(last.hash());
        assertThat(from.vin()).isEqualTo(bus.vin());
        assertThat(order.facts()).containsEntry("packs", "4");
        assertThat(order.phase()).isEqualTo(WorkOrder.Phase.ORDERED);
        assertThat(StandingSerials.of(now).brought()).containsExactly(new Serial(PART, serial));
        assertThat(Isolation.of(now).aboard()).containsExactly("PACK-1");
        assertThat(WorkOrder.of(bus.history()).orElseThrow().links().onward()).contains(next);
        assertThat(Browsing.as(Cast.WORKS_ENGINEER).page("/orders/" + bus.number()))
                .contains("The record goes on under " + next);
        assertThat(Browsing.as(Cast.WORKS_ENGINEER).page("/orders/" + next))
                .contains("The record goes on from " + bus.number(), serial);
    }

    @Test
    void the_part_is_on_the_newest_order_alone_also_when_all_tables_are_made_again() {
        handedOver();
        assertThat(PartSerial.ordersWith(serial)).containsExactly(bus.number());
        returned(Map.of()).then().statusCode(201);
        assertThat(PartSerial.ordersWith(serial)).containsExactly(next);
        received(next, bus.vin()).then().statusCode(201);
        rebuild.everything();
        assertThat(PartSerial.ordersWith(serial)).containsExactly(next);
        WorkOrderRow row = WorkOrderRow.findById(next);
        assertThat(row.vehicleNow).isEqualTo(bus.vin());
        assertThat(WorkOrderRow.<WorkOrderRow>findById(bus.number()).vehicleNow).isNull();
    }

    @Test
    void its_book_is_a_further_volume_that_names_the_former_by_its_fingerprint() throws IOException {
        handedOver();
        EvidenceFile file = files.keep("a set".getBytes(StandardCharsets.UTF_8), "application/zip");
        Entry last = last(bus.history());
        bus.say(new SetFrozen(1, file, file, last.number(), last.hash()));
        last = last(bus.history());
        returned(Map.of()).then().statusCode(201);
        assertThat(Browsing.as(Cast.HANDOVER_CLERK).page("/orders/" + next + "/book"))
                .contains("Earlier volumes of this vehicle", "/orders/" + bus.number() + "/book/volumes/1/set.zip");
        byte[] pdf = buildBook.of(next).orElseThrow().pdf();
        Validated.passes(pdf);
        assertThat(Validated.text(pdf))
                .contains("Goes on from the book of " + bus.number() + ", entry " + last.number());
        JsonNode carriesOn = new ObjectMapper()
                .readTree(Validated.attachments(pdf).get("manifest.json"))
                .get("carriesOn");
        assertThat(carriesOn.get("subject").asText()).isEqualTo("work-order/" + bus.number());
        assertThat(carriesOn.get("head").asText()).isEqualTo(last.hash());
    }

    /** Streams are read by their codes: here the newest is read before the former. */
    @Test
    void tables_are_made_again_whichever_order_is_read_first() {
        next = "A-" + bus.number();
        bus.at("strip", "ST-1");
        bus.out();
        handedOver();
        returned(Map.of()).then().statusCode(201);
        received(next, bus.vin()).then().statusCode(201);
        rebuild.everything();
        assertThat(WorkOrderRow.<WorkOrderRow>findById(next).vehicleNow).isEqualTo(bus.vin());
        assertThat(WorkOrderRow.<WorkOrderRow>findById(bus.number()).vehicleNow).isNull();
        assertThat(PartSerial.ordersWith(serial)).containsExactly(next);
    }

    @Test
    void a_part_taken_off_is_free_for_another_vehicle() {
        handedOver();
        returned(Map.of()).then().statusCode(201);
        assertThat(off(Cast.TECHNICIAN, "pack renewed").statusCode()).isEqualTo(409);
        received(next, bus.vin()).then().statusCode(201);
        assertThat(keys(off(Cast.TECHNICIAN, " "))).containsExactly("station.takenOffReason");
        Browsing technician = Browsing.as(Cast.TECHNICIAN);
        assertThat(technician.page("/orders/" + next)).contains("/parts/off?part=" + PART);
        String path = "/orders/" + next + "/parts/off";
        Map<String, Object> form = technician.form(path + "?part=" + PART + "&serial=" + serial);
        form.put("reason", "renewed, into quarantine");
        assertThat(technician.send(path, form).statusCode()).isEqualTo(303);
        assertThat(technician.send(path, form).statusCode()).isEqualTo(303);
        assertThat(PartSerial.ordersWith(serial)).isEmpty();
        assertThat(Isolation.of(history(next)).aboard())
                .as("the place counts still")
                .containsExactly("PACK-1");
        assertThat(off(Cast.TECHNICIAN, "again").jsonPath().getList("reasons.key"))
                .containsExactly("station.notBrought");
    }

    @Test
    void another_vehicle_is_not_received_for_the_order() {
        handedOver();
        returned(Map.of()).then().statusCode(201);
        assertThat(received(next, OnRecord.accepted().vin()).jsonPath().getList("reasons.key"))
                .containsExactly("order.anotherVehicle");
    }

    @Test
    void a_vehicle_that_is_gone_is_not_received_as_a_donor_of_another_order() {
        handedOver();
        String other = bus.number() + "-X";
        Cast.WORKS_ENGINEER
                .asks()
                .contentType(ContentType.JSON)
                .body(Map.of(
                        "id",
                        UUID.randomUUID(),
                        "number",
                        other,
                        "operator",
                        "Vale",
                        "variant",
                        "bus-12m",
                        "route",
                        "BUS-12M",
                        "promisedOn",
                        "2027-05-01",
                        "facts",
                        List.of()))
                .post("/api/v1/orders")
                .then()
                .statusCode(201);
        assertThat(received(other, bus.vin()).jsonPath().getList("reasons.key"))
                .containsExactly("order.vehicleHasOrder");
    }

    @Test
    void it_comes_back_once_and_only_after_it_was_handed_over() {
        assertThat(keys(returned(Map.of()))).containsExactly("order.notHandedOver");
        handedOver();
        assertThat(keys(returned(Map.of("reason", " ", "operator", " ", "route", "CURTAIN-18T"))))
                .containsExactly("order.routeUnknown", "order.operatorMissing", "order.returnReason");
        assertThat(keys(returned(Map.of("number", bus.number())))).containsExactly("order.numberTaken");
        UUID id = UUID.randomUUID();
        returned(Map.of("id", id)).then().statusCode(201);
        returned(Map.of("id", id)).then().statusCode(200);
        assertThat(keys(returned(Map.of("number", bus.number() + "-3")))).containsExactly("order.returnedAlready");
    }

    @Test
    void the_form_offers_the_operator_and_loses_nothing_of_a_faulty_one() {
        handedOver();
        Browsing engineer = Browsing.as(Cast.QUALITY_ENGINEER);
        String path = "/orders/" + bus.number() + "/return";
        assertThat(engineer.page(path)).contains("Vale and Fen Community Buses", bus.vin(), "BUS-12M-BACK");
        Map<String, Object> form = engineer.form(path);
        form.putAll(Map.of(
                "number",
                "no number",
                "route",
                "BUS-12M-BACK",
                "operator",
                "Vale",
                "promisedOn",
                "",
                "reason",
                "renew"));
        Response faulty = engineer.send(path, form);
        assertThat(faulty.statusCode()).isEqualTo(422);
        assertThat(faulty.asString()).contains("number-fault", "promisedOn-fault", "renew");
        form.put("number", next);
        form.put("promisedOn", "2027-05-01");
        assertThat(engineer.send(path, form).statusCode()).isEqualTo(303);
        assertThat(engineer.page(path)).contains("came back already, under " + next);
        assertThat(Browsing.as(Cast.TECHNICIAN).get(path).statusCode()).isEqualTo(403);
    }

    @Test
    void a_document_that_was_in_hand_is_offered_to_the_clerk_and_noted_by_nobody_else() {
        bus.say(new FactStated("market", "GB"));
        bus.say(new FactStated("propulsion_changed", "true"));
        bus.say(new DocumentNoted(
                "GB-01", "Notice", "GB", 2, State.IN_HAND, "N-4711", Optional.empty(), Optional.empty(), ""));
        handedOver();
        returned(Map.of()).then().statusCode(201);
        Browsing clerk = Browsing.as(Cast.HANDOVER_CLERK);
        String path = "/handover/" + next + "/documents/GB-01";
        assertThat(clerk.page(path)).contains("Under " + bus.number(), "N-4711", path + "?from=earlier");
        assertThat(history(next).saying(DocumentNoted.class)).isEmpty();
        assertThat(clerk.page(path + "?from=earlier")).contains("value=\"N-4711\"", "As under " + bus.number());
    }

    private void handedOver() {
        bus.say(new HandedOver("Depot", List.of()));
    }

    private History history(String order) {
        return ledger.history(Subject.workOrder(order));
    }

    private static Entry last(History history) {
        return history.entries().get(history.entries().size() - 1);
    }

    private Response returned(Map<String, Object> changed) {
        Map<String, Object> plain = Map.of(
                "id",
                UUID.randomUUID(),
                "number",
                next,
                "route",
                "BUS-12M-BACK",
                "operator",
                "Vale",
                "promisedOn",
                LocalDate.of(2027, 5, 1).toString(),
                "reason",
                "second pack renewed");
        return Cast.WORKS_ENGINEER
                .asks()
                .contentType(ContentType.JSON)
                .body(Stream.of(plain, changed)
                        .flatMap(map -> map.entrySet().stream())
                        .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue, (one, other) -> other)))
                .post("/api/v1/orders/" + bus.number() + "/return");
    }

    private static List<String> keys(Response refused) {
        assertThat(refused.statusCode()).isIn(409, 422);
        return refused.jsonPath().getList("reasons.key");
    }

    private static Response received(String order, String vin) {
        return Cast.TECHNICIAN
                .asks()
                .contentType(ContentType.JSON)
                .body(Map.of("id", UUID.randomUUID(), "vin", vin, "registration", "LT51 AAA", "odometerKm", 412_000))
                .post("/api/v1/orders/" + order + "/donor");
    }

    private Response off(Cast person, String reason) {
        return person.asks()
                .contentType(ContentType.JSON)
                .contentType(ContentType.JSON)
                .body(Map.of("id", UUID.randomUUID(), "part", PART, "serial", serial, "reason", reason))
                .post("/api/v1/orders/" + next + "/parts/off");
    }
}
