package wainbook.order.returning;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.http.ContentType;
import io.restassured.path.json.JsonPath;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import jakarta.persistence.EntityManager;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import wainbook.handover.record.RecordSaying.Outsider;
import wainbook.handover.record.RecordSaying.SnagAgreed;
import wainbook.handover.record.RecordSaying.SnagClosed;
import wainbook.house.Browsing;
import wainbook.house.Cast;
import wainbook.house.OnRecord;
import wainbook.ledger.NewerTables;
import wainbook.matter.MatterSaying.Cause;
import wainbook.matter.MatterSaying.Disposed;
import wainbook.matter.MatterSaying.NonconformityOpened;
import wainbook.order.OrderSaying.HandedOver;
import wainbook.order.OrderSaying.Held;
import wainbook.order.OrderSaying.HoldKind;
import wainbook.order.OrderSaying.HoldReleased;
import wainbook.order.OrderSaying.Stops;
import wainbook.order.WorkOrderRow;
import wainbook.quality.QualitySaying.About;
import wainbook.quality.QualitySaying.Disposition;
import wainbook.quality.QualitySaying.Doubted;
import wainbook.quality.QualitySaying.Gravity;
import wainbook.quality.QualitySaying.Ground;
import wainbook.quality.QualitySaying.Place;
import wainbook.quality.QualitySaying.ReadingsDecided;
import wainbook.quality.QualitySaying.ReadingsDoubted;
import wainbook.quality.QualitySaying.Sort;
import wainbook.quality.QualitySaying.Sureness;

/** What is open still from the former record of a vehicle that came back. */
@QuarkusTest
@Tag("database")
class OpenFromFormerTest {

    @Inject
    NewerTables newer;

    @Inject
    EntityManager entities;

    private OnRecord bus;
    private String next;

    @BeforeEach
    void a_bus_that_was_handed_over_stands_at_its_intake_again() {
        Cast.assemble();
        bus = OnRecord.accepted();
        bus.say(new HandedOver("Depot", List.of()));
        next = bus.number() + "-2";
        ordered("BUS-12M-BACK").then().statusCode(201);
        Cast.TECHNICIAN
                .asks()
                .contentType(ContentType.JSON)
                .body(Map.of(
                        "id", UUID.randomUUID(), "vin", bus.vin(), "registration", "LT51 AAA", "odometerKm", 412_000))
                .post("/api/v1/orders/" + next + "/donor")
                .then()
                .statusCode(201);
    }

    @Test
    void a_hold_of_the_former_order_stops_gate_move_and_work_until_it_is_released_there() {
        assertThat(against()).doesNotContain("order.heldByRule");
        bus.say(new Held(
                1, HoldKind.SAFETY, List.of(Stops.WORK, Stops.SIGN, Stops.MOVE), "Smell of solvent at the rear"));
        assertThat(against()).contains("order.heldByRule");
        assertThat(moved()).contains("order.heldByRule");
        assertThat(worked()).contains("order.heldByRule");
        JsonPath known = known();
        assertThat(known.getList("order.holds"))
                .as("its own record says nothing")
                .isEmpty();
        assertThat(known.getString("heldByRule[0].path")).isEqualTo("/orders/" + bus.number() + "#holds");
        assertThat(page())
                .contains(
                        "Open from the former record",
                        "Hold 1 of " + bus.number() + ", Safety",
                        "Smell of solvent at the rear",
                        "stops work, signing, moving here",
                        "Settled by: ")
                .doesNotContain("Nothing is open on this vehicle");
        bus.say(new HoldReleased(1, "Cleaned and aired"));
        assertThat(against()).doesNotContain("order.heldByRule");
        assertThat(moved()).doesNotContain("order.heldByRule");
        assertThat(worked()).doesNotContain("order.heldByRule");
        assertThat(page()).doesNotContain("Hold 1 of " + bus.number());
    }

    @Test
    void readings_in_doubt_under_the_former_order_hold_by_their_gravity_until_they_are_decided() {
        Doubted grave = doubted(Gravity.A);
        Doubted light = doubted(Gravity.C);
        bus.say(new ReadingsDoubted("I-TW-1-1", wrench(), List.of(grave, light), Optional.empty()));
        assertThat(against()).contains("order.heldByRule");
        assertThat(moved()).contains("order.heldByRule");
        assertThat(page())
                .contains(
                        "Containment I-TW-1-1 of " + bus.number(),
                        "2 readings are in doubt for TW-1",
                        "/quality/containments/I-TW-1-1/vehicles/" + bus.number());
        decided(grave);
        assertThat(moved()).as("without danger only gates wait").doesNotContain("order.heldByRule");
        assertThat(against()).contains("order.heldByRule");
        decided(light);
        assertThat(against()).doesNotContain("order.heldByRule");
    }

    @Test
    void a_nonconformity_of_the_former_order_bars_gates_until_it_is_decided() {
        bus.say(new NonconformityOpened(
                1, "strip", Optional.empty(), Cause.REPORTED, "Frame is scored", Optional.empty()));
        assertThat(against()).contains("order.heldByRule");
        assertThat(moved()).doesNotContain("order.heldByRule");
        assertThat(page()).contains("Nonconformity 1 of " + bus.number(), "Frame is scored");
        bus.say(new Disposed(1, wainbook.matter.MatterSaying.Disposition.REWORK, "Dressed and painted"));
        assertThat(against()).doesNotContain("order.heldByRule");
    }

    @Test
    void a_snag_of_the_former_order_is_shown_and_bars_nothing() {
        bus.say(new SnagAgreed(
                1,
                "Seat torn",
                "row 4",
                new Outsider("O-1", "0".repeat(64)),
                Optional.of(Cast.TECHNICIAN.number()),
                "New cover",
                LocalDate.of(2026, 1, 5)));
        assertThat(page())
                .contains(
                        "Open from the former record",
                        "Seat torn, row 4",
                        "/handover/" + bus.number() + "/record#snag-1");
        assertThat(against()).doesNotContain("order.heldByRule");
        bus.say(new SnagClosed(1, "Cover changed", Optional.empty()));
        assertThat(page()).doesNotContain("Seat torn");
    }

    @Test
    void a_route_that_wants_no_source_aboard_is_for_donors() {
        OnRecord other = OnRecord.accepted();
        other.say(new HandedOver("Depot", List.of()));
        bus = other;
        next = other.number() + "-2";
        Response refused = ordered("BUS-12M");
        assertThat(refused.statusCode()).isIn(409, 422);
        assertThat(refused.jsonPath().getList("reasons.key")).containsExactly("order.routeForDonors");
        assertThat(refused.asString()).contains("Tighten the traction motor to its cradle", "FIT-BUS12");
        assertThat(Cast.WORKS_ENGINEER
                        .asks()
                        .get("/api/v1/orders/" + other.number() + "/return")
                        .jsonPath()
                        .getList("routes.code"))
                .containsExactly("BUS-12M-BACK");
        assertThat(Browsing.as(Cast.WORKS_ENGINEER).page("/orders/" + other.number() + "/return"))
                .contains("value=\"BUS-12M-BACK\"")
                .doesNotContain("value=\"BUS-12M\"");
        assertThat(Browsing.as(Cast.WORKS_ENGINEER).page("/process")).contains("a donor", "a vehicle brought back");
        ordered("BUS-12M-BACK").then().statusCode(201);
    }

    @Test
    void lists_say_that_it_came_back_and_a_works_of_before_has_it_at_its_first_start() {
        assertThat(Browsing.as(Cast.AUDITOR).page("/milestones?search=" + next)).contains("came back");
        assertThat(Browsing.as(Cast.AUDITOR).page("/milestones?search=" + bus.number()))
                .contains("came back");
        assertThat(earlier()).isEqualTo(bus.number());
        QuarkusTransaction.requiringNew().run(() -> {
            WorkOrderRow.update("earlier = null where number = ?1", next);
            entities.createNativeQuery("delete from made_by where tables = 'work_order'")
                    .executeUpdate();
        });
        assertThat(earlier()).isNull();
        assertThat(newer.make()).containsExactly("work_order");
        assertThat(earlier()).isEqualTo(bus.number());
        assertThat(newer.make()).isEmpty();
    }

    private String earlier() {
        return QuarkusTransaction.requiringNew().call(() -> WorkOrderRow.<WorkOrderRow>findById(next).earlier);
    }

    private Response ordered(String route) {
        return Cast.WORKS_ENGINEER
                .asks()
                .contentType(ContentType.JSON)
                .body(Map.of(
                        "id",
                        UUID.randomUUID(),
                        "number",
                        next,
                        "route",
                        route,
                        "operator",
                        "Vale",
                        "promisedOn",
                        "2027-05-01",
                        "reason",
                        "second pack renewed"))
                .post("/api/v1/orders/" + bus.number() + "/return");
    }

    private JsonPath known() {
        return Cast.AUDITOR.asks().get("/api/v1/orders/" + next).jsonPath();
    }

    private String page() {
        return Browsing.as(Cast.QUALITY_ENGINEER).page("/orders/" + next);
    }

    /** The reasons against signing the gate that it stands at. */
    private List<String> against() {
        return Cast.INSPECTOR
                .asks()
                .get("/api/v1/orders/" + next + "/gates/intake")
                .jsonPath()
                .getList("against.key", String.class);
    }

    private List<String> moved() {
        return Cast.LINE_MANAGER
                .asks()
                .contentType(ContentType.JSON)
                .body(Map.of(
                        "id", UUID.randomUUID(), "direction", "ONTO_LINE", "to", "NOWHERE", "confirmed", List.of()))
                .post("/api/v1/orders/" + next + "/moves")
                .jsonPath()
                .getList("reasons.key", String.class);
    }

    private List<String> worked() {
        JsonPath answer = Cast.TECHNICIAN
                .asks()
                .contentType(ContentType.JSON)
                .body(Map.of(
                        "id",
                        UUID.randomUUID(),
                        "item",
                        "engine-number",
                        "reply",
                        Map.of("serial", "EN-" + UUID.randomUUID())))
                .post("/api/v1/orders/" + next + "/entries")
                .jsonPath();
        List<String> reasons = answer.getList("reasons.key", String.class);
        return reasons == null ? List.of() : reasons;
    }

    private void decided(Doubted reading) {
        bus.say(new ReadingsDecided(
                "I-TW-1-1",
                List.of(new Place(reading.entry(), reading.place())),
                Disposition.RENEWED,
                "Tightened anew",
                Optional.empty()));
    }

    private static About wrench() {
        return new About(
                Sort.INSTRUMENT, "TW-1", Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
    }

    private static Doubted doubted(Gravity gravity) {
        return new Doubted(
                UUID.randomUUID(),
                3,
                1,
                Cast.ENGAGED_AT,
                Cast.TECHNICIAN.number(),
                "fitting",
                "FIT-BUS12/motor-fit",
                Optional.of("MOTOR-MOUNT"),
                gravity,
                "N·m",
                Optional.of(new BigDecimal("101")),
                Optional.of(new BigDecimal("99")),
                Optional.of(new BigDecimal("121")),
                false,
                false,
                Sureness.POSSIBLE,
                Ground.NO_FIGURES,
                Optional.empty());
    }
}
