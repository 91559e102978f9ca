package wainbook.process.draft;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import wainbook.house.Browsing;
import wainbook.house.Cast;
import wainbook.house.Donor;
import wainbook.house.OnRecord;
import wainbook.order.OrderSaying.Binding;
import wainbook.order.OrderSaying.Direction;
import wainbook.order.OrderSaying.DonorAccepted;
import wainbook.order.OrderSaying.DonorReceived;
import wainbook.order.OrderSaying.Moved;
import wainbook.order.OrderSaying.Ordered;
import wainbook.order.OrderSaying.Place;
import wainbook.process.Releases;
import wainbook.process.plan.Plan;
import wainbook.process.plan.Point;
import wainbook.process.plan.Source;

/** An isolation plan from a draft to the vehicles that are isolated by it: of a variant of the test's own. */
@QuarkusTest
@Tag("database")
class PlansToReleaseTest {

    private static final Place YARD = new Place(Optional.empty(), "YARD");

    @Inject
    Releases releases;

    private String variant;
    private Paper plan;

    @BeforeEach
    void a_plan_in_force() {
        Cast.assemble();
        Cast.AUTHORISED.give("HV", 2);
        variant = Paper.unique("variant-");
        plan = new Paper("plans/" + variant);
        ObjectNode copy = new Paper("plans/bus-12m").what();
        copy.put("variant", variant).put("code", "ISO-" + variant);
        plan.released(copy);
    }

    @Test
    void a_source_and_its_point_are_added_and_stop_what_was_isolated_by_the_older_plan() {
        OnRecord vehicle = vehicleInTheBay();
        step(vehicle, "plan", Map.of("confirmed", List.of("DAMAGE_LOOKED_FOR", "AREA_BARRIERED")))
                .then()
                .statusCode(201);

        ObjectNode more = plan.what();
        addHeater(more);
        assertThat(plan.faults(more)).containsExactly("process.sourceProvedNowhere");
        assertThat(Paper.keys(plan.propose())).containsExactly("process.sourceProvedNowhere");
        assertThat(plan.page())
                .contains("Source HEATER is proved dead at no point")
                .doesNotContain("Propose for release");

        addHeatersPoint(more);
        plan.keep(more).then().statusCode(201);
        assertThat(plan.page())
                .containsSubsequence(
                        "What it changes", "Fuel-fired heater", "new", "<ins>Plug pulled", "TP-HEATER", "new");
        assertThat(Paper.keys(plan.release(Cast.QUALITY_ENGINEER))).containsExactly("process.notProposed");
        plan.propose().then().statusCode(201);
        assertThat(Paper.keys(plan.release(Cast.WORKS_ENGINEER))).containsExactly("process.ownDraft");
        assertThat(plan.pageOfTheSecond())
                .contains("A wrong isolation plan can kill", "Isolated at this moment", vehicle.number());
        plan.release(Cast.QUALITY_ENGINEER).then().statusCode(201);

        Plan inForce = releases.plan(variant).orElseThrow();
        assertThat(inForce.revision()).isEqualTo(2);
        assertThat(inForce.sources()).extracting(Source::code).contains("HEATER");
        assertThat(inForce.points()).extracting(Point::code).contains("TP-HEATER");
        assertThat(Paper.keys(shutDown(vehicle))).contains("isolation.planSuperseded");
        OnRecord next = vehicleInTheBay();
        step(next, "plan", Map.of("confirmed", List.of("DAMAGE_LOOKED_FOR", "AREA_BARRIERED")))
                .then()
                .statusCode(201);
        assertThat(shutDown(next).asString()).doesNotContain("planSuperseded");
        assertThat(Browsing.as(Cast.TECHNICIAN).page("/isolation/" + next.number()))
                .contains("Fuel-fired heater");
        assertThat(Browsing.as(Cast.TECHNICIAN).page("/isolation/" + vehicle.number()))
                .doesNotContain("Fuel-fired heater");
    }

    @Test
    void a_half_written_plan_is_kept_and_told_what_it_lacks() {
        ObjectNode half = plan.what();
        half.put("waitMinutes", 0).put("maximumVolt", 0);
        half.set("restoration", Paper.tree("[]"));
        ((ArrayNode) half.get("sources")).removeAll();
        Paper.part(half.get("points"), "code", "TP-PACK2").put("code", "TP-PACK1");
        assertThat(plan.faults(half))
                .contains(
                        "process.planWithoutSource",
                        "process.planWithoutWait",
                        "process.planWithoutVolts",
                        "process.planWithoutCheck",
                        "process.pointTwice",
                        "process.pointOfNoSource");
        assertThat(plan.propose().statusCode()).isEqualTo(409);
        assertThat(plan.page()).contains("The plan has no waiting time", "Two points have the code TP-PACK1");
    }

    @Test
    void no_plan_is_written_without_a_point_at_all() {
        ObjectNode none = plan.what();
        ((ArrayNode) none.get("points")).removeAll();
        List<String> expected = new ArrayList<>();
        none.get("sources").forEach(source -> expected.add("process.sourceProvedNowhere"));
        none.get("later").forEach(source -> expected.add("process.sourceProvedNowhere"));
        assertThat(plan.faults(none)).containsExactlyElementsOf(expected);
        assertThat(Paper.keys(plan.propose())).hasSameSizeAs(expected);
    }

    @Test
    void a_source_that_a_sheet_brings_aboard_stays_on_the_plan() {
        ObjectNode route = new Paper("routes/BUS-12M").what();
        String way = Paper.unique("WAY-");
        ((ObjectNode) route.get("route")).put("code", way).put("vehicleKind", variant);
        new Paper("routes/" + way).released(route);
        ObjectNode less = plan.what();
        Paper.takeOut(less.get("later"), "code", "PACK-2");
        Paper.takeOut(less.get("points"), "code", "TP-PACK2");
        assertThat(plan.faults(less)).containsExactly("process.sourceFitted");
        assertThat(Paper.keys(plan.propose())).containsExactly("process.sourceFitted");
        assertThat(plan.page()).contains("item pack2-mount of sheet FIT-BUS12 fits it");
    }

    @Test
    void a_plan_keeps_its_code_and_takes_nobody_elses() {
        ObjectNode other = plan.what();
        other.put("code", "ISO-BUS12");
        assertThat(plan.faults(other)).containsExactlyInAnyOrder("process.planCodeChanged", "process.planCodeTaken");
        assertThat(Browsing.as(Cast.WORKS_ENGINEER).page("/process/plans/" + variant + "/draft/head/head"))
                .contains("name=\"waitMinutes\"")
                .doesNotContain("name=\"code\"");
    }

    @Test
    void the_form_of_a_point_keeps_what_was_typed_and_names_the_field_that_is_wrong() {
        plan.keep(plan.what()).then().statusCode(201);
        var engineer = Browsing.as(Cast.WORKS_ENGINEER);
        String form = "/process/plans/" + variant + "/draft/point";
        assertThat(engineer.page(form)).contains("<option value=\"\">Choose</option>");
        Map<String, Object> typed = engineer.form(form);
        typed.putAll(Map.of("key", "TP 9", "provesSource", "", "where", "Behind the seat"));
        Response back = engineer.send(form, typed);
        assertThat(back.statusCode()).isEqualTo(422);
        assertThat(back.asString())
                .contains("id=\"key-fault\"", "id=\"provesSource-fault\"", "value=\"TP 9\"", "Behind the seat");
        typed.putAll(Map.of("key", "TP-9", "provesSource", "WHEELS", "phases", "yes"));
        assertThat(engineer.send(form, typed).header("Location")).endsWith("/draft#point-TP-9");
        assertThat(plan.page()).containsSubsequence("id=\"point-TP-9\"", "Behind the seat", "phase U to V");
    }

    private static void addHeater(ObjectNode what) {
        ((ArrayNode) what.get("sources"))
                .addObject()
                .put("code", "HEATER")
                .put("name", "Fuel-fired heater with its own battery")
                .put("howOpened", "Plug pulled")
                .put("lockedAt", "Plug in the lock box")
                .put("howShown", "Plug in the hand");
    }

    private static void addHeatersPoint(ObjectNode what) {
        JsonNode pairs = Paper.tree("[\"PLUS_MINUS\", \"PLUS_CHASSIS\", \"MINUS_CHASSIS\"]");
        ((ArrayNode) what.get("points"))
                .addObject()
                .put("code", "TP-HEATER")
                .put("source", "HEATER")
                .put("where", "Terminals of the heater")
                .set("pairs", pairs);
    }

    /** Off the line, where several may stand, and with its stage begun: it may be worked on and so isolated. */
    private OnRecord vehicleInTheBay() {
        String number = Paper.unique("PL-");
        var vehicle = new OnRecord(number, number.replace("-", "0").replace('O', '0') + "000001");
        vehicle.say(new Ordered(
                "Vale and Fen Community Buses",
                "bus-12m",
                variant,
                "BUS-12M",
                List.of("strip", "fitting", "commissioning"),
                LocalDate.of(2027, 2, 12)));
        vehicle.say(new DonorReceived(
                vehicle.vin(),
                "PL" + number.substring(3, 5) + " " + number.substring(5, 8),
                400_000,
                new Place(Optional.of("intake"), "IN-1"),
                new Binding("intake", "INTAKE-BUS", 1)));
        vehicle.say(new DonorAccepted("0".repeat(64), YARD));
        vehicle.say(new Moved(
                Direction.OFF_LINE,
                YARD,
                new Place(Optional.of("strip"), "BAY-1"),
                Optional.of(new Binding("strip", "STRIP-BUS12", 1)),
                List.of(),
                Optional.of("a test")));
        return vehicle;
    }

    private static Response shutDown(OnRecord vehicle) {
        return step(
                vehicle,
                "shut-down",
                Map.of(
                        "box",
                        "LB-3",
                        "keys",
                        List.of("KY-01"),
                        "confirmed",
                        List.of("STATIONARY", "WHEELS_CHOCKED", "INLET_UNPLUGGED", "CAB_EMPTY", "KEYS_IN_BOX")));
    }

    private static Response step(OnRecord vehicle, String step, Map<String, Object> with) {
        return new Donor(vehicle.number())
                .send(
                        Cast.AUTHORISED,
                        "/isolation/" + step,
                        Map.of("id", Donor.id(), "with", with, "password", Cast.PASSWORD));
    }
}
