package wainbook.process.draft;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import wainbook.house.Browsing;
import wainbook.house.Cast;
import wainbook.house.Donor;
import wainbook.process.Releases;
import wainbook.process.joint.Joint;

/** Joints from a draft to the wrench: with a joint of the test's own, asked for by a sheet of its own. */
@QuarkusTest
@Tag("database")
class JointsToReleaseTest {

    private static final Paper JOINTS = new Paper("joints/works");

    @Inject
    Releases releases;

    private final String clamp = Paper.unique("CLAMP-");
    private JsonNode before;

    @BeforeEach
    void the_joints_as_they_are() {
        Cast.assemble();
        before = JOINTS.what();
    }

    @AfterEach
    void the_joints_as_they_were() {
        JOINTS.restored(before);
    }

    @Test
    void a_wider_tolerance_holds_at_a_vehicle_in_the_works_once_a_second_person_released_it() {
        JOINTS.released(and(before, clamp("18", "22")));
        Donor donor = donorWhoseSurveyTightens();
        donor.send(
                        Cast.TECHNICIAN,
                        "/entries",
                        Map.of(
                                "id",
                                Donor.id(),
                                "item",
                                "clamp",
                                "instrument",
                                "TW-105",
                                "reply",
                                Map.of("boltsNm", List.of("200"))))
                .then()
                .statusCode(422)
                .body("reasons[0].text", containsString("did you mean 20 N·m?"));
        assertThat(status(donor, "clamp")).as("asked before anything is kept").isEqualTo("OPEN");
        recorded(donor, "clamp", Map.of("boltsNm", List.of("200"), "sure", true));
        assertThat(status(donor, "clamp"))
                .as("kept as typed by whoever is sure")
                .isEqualTo("FAILED");
        assertThat(verdict(donor, "25")).isEqualTo("FAIL");

        ObjectNode wider = JOINTS.what();
        ObjectNode limits = (ObjectNode)
                Paper.part(wider.get("joints"), "code", clamp).get("torque").get("limitsNm");
        limits.put("upper", 30);
        JOINTS.keep(wider).then().statusCode(201);
        assertThat(JOINTS.page())
                .containsSubsequence("What it changes", clamp, "Torque limits", "<del>18 to 22", "<ins>18 to 30")
                .containsOnlyOnce("<del>");
        assertThat(Paper.keys(JOINTS.release(Cast.QUALITY_ENGINEER))).containsExactly("process.notProposed");
        JOINTS.propose().then().statusCode(201);
        assertThat(Paper.keys(JOINTS.release(Cast.WORKS_ENGINEER))).containsExactly("process.ownDraft");
        assertThat(verdict(donor, "25")).as("until it is released").isEqualTo("FAIL");

        assertThat(JOINTS.pageOfTheSecond()).contains("at vehicles that are being worked as well");
        JOINTS.release(Cast.QUALITY_ENGINEER).then().statusCode(201);
        assertThat(releases.joint(clamp)
                        .map(Joint::torque)
                        .orElseThrow()
                        .limitsNm()
                        .upper())
                .isEqualByComparingTo("30");
        assertThat(verdict(donor, "25")).isEqualTo("PASS");
        withoutTheClamp(sheet(donor));
        goesOn(donor);
    }

    @Test
    void a_reading_nearer_to_the_limit_than_the_wrench_can_tell_is_not_shown_to_conform() {
        JOINTS.released(and(before, clamp("18", "22")));
        Donor donor = donorWhoseSurveyTightens();
        assertThat(verdict(donor, "21.9")).isEqualTo("FAIL");

        String page = Browsing.as(Cast.TECHNICIAN).page("/station/" + donor.number() + "?item=clamp");
        assertThat(page)
                .as("before a reading is taken, for the wrench in hand")
                .contains("With TW-105, uncertainty 1.8 %: accepted from 18.27 to 21.67 N·m")
                .contains(
                        "readingNm=20&amp;lowerNm=18&amp;upperNm=22&amp;intervalPercent=1.8&amp;decisionFactor=0.8224")
                .as("after it")
                .contains("bolt 1 at 21.9 N·m, not shown to conform", "readingNm=21.9&amp;")
                .contains("1 bolt not shown to conform");
        assertThat(Cast.TECHNICIAN
                        .asks()
                        .get("/api/v1/orders/" + donor.number() + "/sheet")
                        .jsonPath()
                        .getString("items.find { it.item == 'clamp' }.findings[0]"))
                .startsWith("bolt 1 at 21.9 N·m, not shown to conform");
        assertThat(verdict(donor, "20")).isEqualTo("PASS");
        withoutTheClamp(sheet(donor));
        goesOn(donor);
    }

    @Test
    void a_tightened_joint_is_checked_again_by_limits_of_its_own() {
        ObjectNode joints = and(before, clamp("18", "22"));
        Paper.part(joints.get("joints"), "code", clamp).set("residualNm", Paper.tree("{\"lower\": 12, \"upper\": 30}"));
        JOINTS.released(joints);
        Donor donor = donorWhoseSurvey(
                item("clamp", "{\"kind\": \"tighten\", \"joint\": \"" + clamp + "\"}"),
                item("again", "{\"kind\": \"recheck\", \"joint\": \"" + clamp + "\"}"));
        assertThat(verdict(donor, "20")).isEqualTo("PASS");
        recorded(donor, "again", Map.of("boltsNm", List.of("11")));
        assertThat(status(donor, "again")).isEqualTo("FAILED");
        assertThat(status(donor, "clamp")).as("the tightening stands as it was").isEqualTo("PASSED");
        assertThat(Browsing.as(Cast.TECHNICIAN).page("/station/" + donor.number() + "?item=again"))
                .contains("Residual torque 12 to 30 N·m", "This is no tightening")
                .contains("fastener 1 moved at 11 N·m already, below its residual limits");
        recorded(donor, "again", Map.of("boltsNm", List.of("25")));
        assertThat(status(donor, "again")).isEqualTo("PASSED");
        without(sheet(donor), "clamp", "again");
        goesOn(donor);
    }

    @Test
    void a_marked_electrical_joint_is_asked_for_its_mark_and_never_for_its_torque() {
        ObjectNode joints = and(before, clamp("18", "22"));
        Paper.part(joints.get("joints"), "code", clamp).put("highVoltage", true);
        JOINTS.released(joints);
        Donor donor = donorWhoseSurvey(
                item("again", "{\"kind\": \"recheck\", \"joint\": \"" + clamp + "\"}")
                        .replace("NONE", "NO_SOURCE_ABOARD"),
                item(
                                "contact",
                                "{\"kind\": \"measure\", \"quantity\": \"contact resistance\", \"unit\": \"mΩ\","
                                        + " \"works\": {\"upper\": 0.5, \"strict\": false}, \"instrumentKind\": \"bonding-ohmmeter\"}")
                        .replace("\"after\": []", "\"after\": [\"again\"]")
                        .replace("NONE", "NO_SOURCE_ABOARD"));
        assertThat(Browsing.as(Cast.TECHNICIAN).page("/station/" + donor.number() + "?item=again"))
                .contains("Never 20 N·m", "Mark whole, nothing moved", "Moved at the check")
                .doesNotContain("name=\"bolt1\"");
        without(sheet(donor), "again", "contact");
        goesOn(donor);
    }

    @Test
    void a_joint_stays_while_a_sheet_in_force_or_a_vehicle_asks_for_it() {
        JOINTS.released(and(before, clamp("18", "22")));
        Donor donor = donorWhoseSurveyTightens();
        assertThat(JOINTS.faults(before)).containsExactly("process.jointStillAsked");
        assertThat(Paper.keys(JOINTS.propose())).containsExactly("process.jointStillAsked");

        withoutTheClamp(sheet(donor));
        assertThat(JOINTS.faults())
                .as("of a vehicle bound to the older sheet")
                .containsExactly("process.jointAtVehicle");
        assertThat(verdict(donor, "20")).as("which is worked on by it").isEqualTo("PASS");

        goesOn(donor);
        assertThat(JOINTS.faults()).isEmpty();
        JOINTS.propose().then().statusCode(201);
        JOINTS.release(Cast.QUALITY_ENGINEER).then().statusCode(201);
        assertThat(releases.joint(clamp)).isEmpty();
    }

    @Test
    void a_draft_with_faults_is_kept_and_told_and_goes_no_further() {
        ObjectNode ghost = and(before, clamp("18", "22"));
        Paper.part(ghost.get("joints"), "code", clamp).put("toolKind", "spanner");
        ((ArrayNode) ghost.get("joints")).add(clamp("18", "22"));
        assertThat(JOINTS.faults(ghost)).containsExactlyInAnyOrder("process.unknownToolKind", "process.duplicateJoint");
        assertThat(Paper.keys(JOINTS.propose()))
                .containsExactlyInAnyOrder("process.unknownToolKind", "process.duplicateJoint");
        assertThat(JOINTS.page()).contains("part-fault", "instrument of the kind spanner");
    }

    @Test
    void a_class_A_tolerance_that_no_wrench_can_serve_is_refused_with_what_would() {
        ObjectNode close = and(before, clamp("19.5", "20.5"));
        Paper.part(close.get("joints"), "code", clamp).put("jointClass", "A");
        assertThat(JOINTS.faults(close)).containsExactly("process.noToolServes");
        assertThat(JOINTS.page())
                .contains("would serve from ± ", "an indicating tool of at most 0.83 % over 19.5 to 20.5 N·m");
        assertThat(Paper.keys(JOINTS.propose())).containsExactly("process.noToolServes");

        Paper.part(close.get("joints"), "code", clamp).put("toolKind", "torque-setting");
        assertThat(JOINTS.faults(close)).containsExactly("process.classAByClick");

        ObjectNode wide = and(before, clamp("18", "22"));
        Paper.part(wide.get("joints"), "code", clamp).put("jointClass", "A");
        assertThat(JOINTS.faults(wide)).isEmpty();
    }

    @Test
    void a_graver_class_is_refused_while_a_sheet_in_force_ticks_the_joint_off() {
        ObjectNode graver = JOINTS.what();
        Paper.part(graver.get("joints"), "code", "TRAY-CLIP")
                .put("jointClass", "A")
                .put("toolKind", "torque-indicating");
        assertThat(JOINTS.faults(graver)).containsExactly("process.jointBreaksSheet");
        assertThat(JOINTS.page()).contains("would make the sheet FIT-BUS12 in force faulty");
    }

    @Test
    void what_says_the_same_or_cannot_be_a_joint_is_refused() {
        JOINTS.keep(before).then().statusCode(201);
        assertThat(Paper.keys(JOINTS.propose())).containsExactly("process.nothingChanged");
        Response crossed = JOINTS.keep(and(before, clamp("22", "18")));
        assertThat(crossed.statusCode()).isEqualTo(400);
    }

    @Test
    void a_draft_names_truly_what_it_was_begun_from() {
        int revision = JOINTS.revision();
        JOINTS.released(and(before, clamp("18", "22")));
        JOINTS.keep(before).then().statusCode(201);
        assertThat(Paper.keys(JOINTS.keep(before, revision))).containsExactly("process.baseChanged");
        JOINTS.propose().then().statusCode(201);
        JOINTS.release(Cast.QUALITY_ENGINEER).then().statusCode(201);
        assertThat(JOINTS.what()).isEqualTo(before);
    }

    private static ObjectNode and(JsonNode joints, JsonNode joint) {
        ObjectNode more = joints.deepCopy();
        ((ArrayNode) more.get("joints")).add(joint);
        return more;
    }

    private JsonNode clamp(String lower, String upper) {
        return Paper.tree("""
                {"code": "%s", "title": "Clamp of a test", "jointClass": "B", "bolts": 1, "order": "LIST",
                 "torque": {"targetNm": 20, "limitsNm": {"lower": %s, "upper": %s}}, "angle": null,
                 "toolKind": "torque-indicating", "tries": 20, "thread": null, "highVoltage": false,
                 "place": null, "source": "a test"}""".formatted(clamp, lower, upper));
    }

    /** A vehicle at a survey by which the clamp is tightened; sheet and route are released the same way. */
    private Donor donorWhoseSurveyTightens() {
        return donorWhoseSurvey(item("clamp", "{\"kind\": \"tighten\", \"joint\": \"" + clamp + "\"}"));
    }

    private static Donor donorWhoseSurvey(String... items) {
        String code = Paper.unique("SURVEY-");
        var sheet = new Paper("sheets/" + code);
        sheet.released(
                Paper.tree("""
                {"kind": "sheet", "sheet": {"code": "%s", "title": "Survey of a test", "stage": "intake", "items": [
                  %s, %s]}}""".formatted(code, item("frame", "{\"kind\": \"confirm\"}"), String.join(", ", items))));
        ObjectNode route = new Paper("routes/BUS-12M").what();
        String way = code.replace("SURVEY", "WAY");
        ((ObjectNode) route.get("route")).put("code", way).put("intakeSheet", code);
        new Paper("routes/" + way).released(route);
        return Donor.received(way);
    }

    private static String item(String key, String asks) {
        return """
                {"key": "%s", "title": "Look at the %s", "asks": %s, "condition": "NONE", "plannedMinutes": 5,
                 "parts": [], "after": [], "dependsOn": [], "tries": 20}""".formatted(key, key, asks);
    }

    private static Paper sheet(Donor donor) {
        return new Paper("sheets/"
                + Cast.TECHNICIAN
                        .asks()
                        .get("/api/v1/orders/" + donor.number() + "/sheet")
                        .jsonPath()
                        .getString("sheet"));
    }

    private static void withoutTheClamp(Paper sheet) {
        without(sheet, "clamp");
    }

    private static void without(Paper sheet, String... items) {
        ObjectNode less = sheet.what();
        for (String item : items) {
            Paper.takeOut(less.get("sheet").get("items"), "key", item);
        }
        sheet.released(less);
    }

    /** By the newer sheet; until then the joint could not be taken out again. */
    private static void goesOn(Donor donor) {
        donor.send(Cast.WORKS_ENGINEER, "/rebinding", Map.of("id", Donor.id(), "revision", 2))
                .then()
                .statusCode(201);
    }

    private static String status(Donor donor, String item) {
        return Cast.TECHNICIAN
                .asks()
                .get("/api/v1/orders/" + donor.number() + "/sheet")
                .jsonPath()
                .getString("items.find { it.item == '" + item + "' }.status");
    }

    private static void recorded(Donor donor, String item, Map<String, Object> reply) {
        donor.send(
                        Cast.TECHNICIAN,
                        "/entries",
                        Map.of("id", Donor.id(), "item", item, "instrument", "TW-105", "reply", reply))
                .then()
                .statusCode(201);
    }

    private static String verdict(Donor donor, String nm) {
        donor.send(
                        Cast.TECHNICIAN,
                        "/entries",
                        Map.of(
                                "id",
                                Donor.id(),
                                "item",
                                "clamp",
                                "instrument",
                                "TW-105",
                                "reply",
                                Map.of("boltsNm", List.of(nm))))
                .then()
                .statusCode(201);
        String item = Cast.TECHNICIAN
                .asks()
                .get("/api/v1/orders/" + donor.number() + "/sheet")
                .jsonPath()
                .getString("items.find { it.item == 'clamp' }.status");
        return item.equals("PASSED") ? "PASS" : "FAIL";
    }
}
