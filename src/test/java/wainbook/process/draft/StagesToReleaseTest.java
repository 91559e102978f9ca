package wainbook.process.draft;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import wainbook.house.Browsing;
import wainbook.house.Cast;
import wainbook.house.Donor;
import wainbook.process.Releases;
import wainbook.process.Stage;

/** Stages and stations from a draft to every page that names them. What a test released is released back. */
@QuarkusTest
@Tag("database")
class StagesToReleaseTest {

    private static final Paper STAGES = new Paper("stages/works");

    @Inject
    Releases releases;

    private JsonNode before;

    @BeforeEach
    void the_stages_as_they_are() {
        Cast.assemble();
        before = STAGES.what();
    }

    @AfterEach
    void the_stages_as_they_were() {
        STAGES.restored(before);
    }

    @Test
    void another_title_stands_on_every_page_once_a_second_person_released_it() {
        Donor donor = Donor.received();
        int revision = STAGES.revision();
        ObjectNode renamed = STAGES.what();
        Paper.part(renamed.get("stages"), "code", "intake").put("title", "Survey of the donor");
        Paper.part(renamed.get("stations"), "code", "BAY-1").put("title", "Bay for rework");
        STAGES.keep(renamed).then().statusCode(201);
        assertThat(STAGES.page())
                .containsSubsequence(
                        "What it changes",
                        "<del>Donor intake</del>",
                        "<ins>Survey of the donor</ins>",
                        "<ins>Bay for rework</ins>");
        assertThat(Paper.keys(STAGES.release(Cast.QUALITY_ENGINEER))).containsExactly("process.notProposed");
        STAGES.propose().then().statusCode(201);
        assertThat(Paper.keys(STAGES.release(Cast.WORKS_ENGINEER))).containsExactly("process.ownDraft");
        assertThat(title("intake")).isEqualTo("Donor intake");
        assertThat(STAGES.pageOfTheSecond()).contains("for every vehicle and on every page");
        STAGES.release(Cast.QUALITY_ENGINEER).then().statusCode(201);

        assertThat(STAGES.revision())
                .as("one revision for all that was defined")
                .isEqualTo(revision + 1);
        assertThat(STAGES.drafted()).isFalse();
        assertThat(title("intake")).isEqualTo("Survey of the donor");
        assertThat(releases.station("BAY-1").orElseThrow().title()).isEqualTo("Bay for rework");
        assertThat(Browsing.as(Cast.WORKS_ENGINEER).page("/orders/" + donor.number()))
                .contains("Survey of the donor");
    }

    @Test
    void what_vehicles_stood_at_is_never_taken_away() {
        ObjectNode less = STAGES.what();
        Paper.takeOut(less.get("stages"), "code", "fitting");
        Paper.takeOut(less.get("stations"), "code", "IN-1");
        assertThat(STAGES.faults(less))
                .containsExactlyInAnyOrder(
                        "process.stationOfNoStage", "process.stageTakenAway", "process.stationTakenAway");
        assertThat(Paper.keys(STAGES.propose()))
                .containsExactlyInAnyOrder(
                        "process.stationOfNoStage", "process.stageTakenAway", "process.stationTakenAway");
    }

    @Test
    void a_station_under_a_vehicle_stays_at_its_stage() {
        Donor donor = Donor.received();
        ObjectNode moved = STAGES.what();
        Paper.part(moved.get("stations"), "code", "IN-1").put("stage", "strip");
        assertThat(STAGES.faults(moved)).containsExactly("process.stationTaken");
        assertThat(STAGES.page()).contains("Station IN-1 would belong to another stage");
        assertThat(donor.number()).isNotEmpty();
    }

    @Test
    void a_stage_on_a_route_keeps_a_station_and_the_works_a_place_off_the_line() {
        ObjectNode moved = STAGES.what();
        Paper.part(moved.get("stations"), "code", "ST-2").put("stage", "commissioning");
        assertThat(STAGES.faults(moved)).contains("process.stageLosesStations");
        ObjectNode all = STAGES.what();
        for (JsonNode station : all.get("stations")) {
            if (!station.hasNonNull("stage")) {
                ((ObjectNode) station).put("stage", "intake");
            }
        }
        assertThat(STAGES.faults(all)).contains("process.noPlaceOffTheLine");
    }

    @Test
    void two_stages_of_one_number_are_refused_and_so_is_a_station_of_none() {
        ObjectNode mixed = STAGES.what();
        Paper.part(mixed.get("stages"), "code", "fitting").put("number", 1);
        ((ArrayNode) mixed.get("stations"))
                .addObject()
                .put("code", "ST-9")
                .put("stage", "paint")
                .put("title", "Paint");
        assertThat(STAGES.faults(mixed))
                .containsExactlyInAnyOrder("process.stageNumberTwice", "process.stationOfNoStage");
        STAGES.keep(before).then().statusCode(201);
        assertThat(Paper.keys(STAGES.propose())).containsExactly("process.nothingChanged");
    }

    @Test
    void a_stage_added_by_mistake_is_taken_out_again_and_one_in_force_keeps_its_code() {
        STAGES.keep(before).then().statusCode(201);
        var engineer = Browsing.as(Cast.WORKS_ENGINEER);
        String draft = "/process/stages/works/draft";
        Map<String, Object> form = engineer.form(draft + "/stage");
        form.putAll(Map.of("key", "paint", "number", "77", "title", "Paint"));
        assertThat(engineer.send(draft + "/stage", form).header("Location")).endsWith(draft + "#stage-paint");
        assertThat(engineer.page(draft))
                .contains("/draft/stage/paint/removal")
                .doesNotContain("/draft/stage/fitting/removal");
        assertThat(engineer.page(draft + "/stage/paint")).contains("name=\"key\"");
        assertThat(engineer.page(draft + "/stage/fitting"))
                .contains("name=\"title\"")
                .doesNotContain("name=\"key\"");
        engineer.send(draft + "/stage/fitting/removal", engineer.form(draft));
        engineer.send(draft + "/stage/paint/removal", engineer.form(draft));
        assertThat(engineer.page(draft)).contains("id=\"stage-fitting\"").doesNotContain("id=\"stage-paint\"");
    }

    private String title(String stage) {
        return releases.stage(stage).map(Stage::title).orElse("");
    }
}
