package wainbook.process.draft;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import wainbook.act.Actor;
import wainbook.house.Cast;
import wainbook.house.Donor;
import wainbook.ledger.Asked;
import wainbook.ledger.Decision;
import wainbook.ledger.Ledger;
import wainbook.ledger.Saying;
import wainbook.ledger.Subject;
import wainbook.process.ProcessSaying.RouteReleased;
import wainbook.process.Releases;
import wainbook.process.Route;

/** A route from a draft to the orders that take it: a route of the test's own. */
@QuarkusTest
@Tag("database")
class RoutesToReleaseTest {

    @Inject
    Releases releases;

    @Inject
    Ledger ledger;

    @Inject
    Clock clock;

    private String code;
    private Paper route;

    @BeforeEach
    void a_route_in_force() {
        Cast.assemble();
        code = Paper.unique("WAY-");
        route = new Paper("routes/" + code);
        ObjectNode copy = new Paper("routes/BUS-12M").what();
        ((ObjectNode) copy.get("route")).put("code", code);
        route.released(copy);
    }

    @Test
    void new_orders_take_the_new_way_and_a_vehicle_in_the_works_keeps_its_own() {
        Donor earlier = Donor.received(code);
        ObjectNode shorter = route.what();
        Paper.takeOut(legs(shorter), "stage", "strip");
        route.keep(shorter).then().statusCode(201);
        assertThat(route.page()).containsSubsequence("What it changes", "gone", "<del>STRIP-BUS12</del>");
        route.propose().then().statusCode(201);
        assertThat(Paper.keys(route.release(Cast.WORKS_ENGINEER))).containsExactly("process.ownDraft");
        assertThat(stages(Donor.received(code))).containsExactly("strip", "fitting", "commissioning");
        assertThat(route.pageOfTheSecond()).contains("Vehicles that are ordered keep the stages");
        route.release(Cast.QUALITY_ENGINEER).then().statusCode(201);

        assertThat(route.revision()).isEqualTo(2);
        assertThat(stages(Donor.received(code))).containsExactly("fitting", "commissioning");
        assertThat(stages(earlier)).containsExactly("strip", "fitting", "commissioning");
        assertThat(againstMovingOntoTheLine(earlier))
                .contains("line.cannotFromHere")
                .doesNotContain("line.noSheet");
        assertThat(releases.leg(code, "strip").orElseThrow().checkSheet()).isEqualTo("STRIP-BUS12");
    }

    @Test
    void a_stage_put_back_is_worked_by_the_sheet_named_last() {
        ObjectNode shorter = route.what();
        Paper.takeOut(legs(shorter), "stage", "strip");
        ObjectNode whole = route.what();
        route.released(shorter);
        route.released(whole);
        assertThat(route.revision()).isEqualTo(3);
        assertThat(stages(Donor.received(code))).containsExactly("strip", "fitting", "commissioning");
    }

    @Test
    void a_leg_that_no_vehicle_could_go_is_refused() {
        ObjectNode faulty = route.what();
        Paper.part(legs(faulty), "stage", "fitting").put("checkSheet", "COMM-BUS12");
        Paper.part(legs(faulty), "stage", "commissioning").put("checkSheet", "NO-SUCH");
        legs(faulty).addObject().put("stage", "paint").put("checkSheet", "FIT-BUS12");
        assertThat(route.faults(faulty))
                .containsExactlyInAnyOrder(
                        "process.sheetOfOtherStage",
                        "process.unknownSheet",
                        "process.unknownLegStage",
                        "process.sheetOfOtherStage");
        assertThat(Paper.keys(route.propose())).contains("process.unknownLegStage");
        assertThat(route.page()).contains("names the sheet COMM-BUS12, which is written for stage commissioning");
    }

    @Test
    void a_survey_on_the_way_itself_is_refused() {
        ObjectNode surveyed = route.what();
        ((ObjectNode) surveyed.get("route")).put("intakeSheet", "STRIP-BUS12");
        assertThat(route.faults(surveyed)).containsExactly("process.surveyOnTheWay");
        ((ObjectNode) surveyed.get("route")).put("intakeSheet", "NO-SUCH");
        assertThat(route.faults(surveyed)).containsExactly("process.unknownSheet");
    }

    @Test
    void a_sheet_that_a_route_names_stays_at_its_stage() {
        var sheet = new Paper("sheets/FIT-BUS12");
        JsonNode before = sheet.what();
        try {
            ObjectNode elsewhere = before.deepCopy();
            ((ObjectNode) elsewhere.get("sheet")).put("stage", "strip");
            assertThat(sheet.faults(elsewhere))
                    .contains("process.sheetLeavesRoute")
                    .doesNotContain("process.unknownStage");
            assertThat(sheet.page()).contains("in force names this sheet at stage fitting");
        } finally {
            sheet.restored(before);
        }
    }

    @Test
    void a_route_passes_a_stage_once_and_changes_something() {
        ObjectNode twice = route.what();
        legs(twice).addObject().put("stage", "strip").put("checkSheet", "STRIP-BUS12");
        assertThat(route.keep(twice).statusCode()).isEqualTo(400);
        route.keep(route.what()).then().statusCode(201);
        assertThat(Paper.keys(route.propose())).containsExactly("process.nothingChanged");
    }

    @Test
    void a_proposal_that_was_overtaken_is_not_released() {
        ObjectNode mine = route.what();
        ((ObjectNode) mine.get("route")).put("title", "Mine");
        route.keep(mine).then().statusCode(201);
        route.propose().then().statusCode(201);
        Route now = releases.route(code).orElseThrow();
        releasedByFiles(new Route(code, "From a folder", now.legs(), now.vehicleKind(), now.intakeSheet()));
        assertThat(Paper.keys(route.release(Cast.QUALITY_ENGINEER))).containsExactly("process.baseChanged");
        assertThat(route.page()).contains("Meanwhile revision 2 came into force");
        route.keep(mine, 2).then().statusCode(201);
        assertThat(route.page()).contains("<del>From a folder</del>", "<ins>Mine</ins>");
        route.propose().then().statusCode(201);
        route.release(Cast.QUALITY_ENGINEER).then().statusCode(201);
        assertThat(route.revision()).isEqualTo(3);
    }

    private void releasedByFiles(Route next) {
        var asked = new Told(UUID.randomUUID(), List.of(Subject.works()), RouteReleased.class);
        ledger.write(
                        asked,
                        Actor.of(Cast.ADMINISTRATOR.number(), clock),
                        reading -> Decision.say(Subject.works(), new RouteReleased(next, 2)))
                .fold(entry -> entry, reasons -> {
                    throw new AssertionError(reasons);
                });
    }

    private record Told(UUID id, List<Subject> writes, Class<? extends Saying> says) implements Asked {}

    private static ArrayNode legs(ObjectNode what) {
        return (ArrayNode) what.get("route").get("legs");
    }

    private static List<String> stages(Donor donor) {
        return Cast.AUDITOR
                .asks()
                .get("/api/v1/orders/" + donor.number())
                .jsonPath()
                .getList("order.ordered.stages");
    }

    private static List<String> againstMovingOntoTheLine(Donor donor) {
        return Paper.keys(donor.send(
                Cast.LINE_MANAGER,
                "/moves",
                Map.of(
                        "id",
                        Donor.id(),
                        "direction",
                        "ONTO_LINE",
                        "to",
                        "ST-1",
                        "confirmed",
                        List.of("people-and-tools-clear", "steering-and-brakes-or-tow-plan"))));
    }
}
