package wainbook.handover.requirement;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import wainbook.house.Cast;

/** The calculation {@code documents}, from outside. */
@QuarkusTest
class NeededDocumentsTest {

    private static final String PATH = "/api/v1/calculations/documents";

    @BeforeEach
    void the_cast_is_there() {
        Cast.assemble();
    }

    /** The first of the worked cases that {@code DocumentsGreatBritainTest} works by hand, with the packs as a list. */
    private static Map<String, Object> goodsVehicle() {
        var facts = new LinkedHashMap<String, Object>();
        facts.put("category", "N3");
        facts.put("axles", 2);
        facts.put("gross_design", 20_000);
        facts.put("gross_plated_old", 18_000);
        facts.put("gross_plated_new", 20_000);
        facts.put("propulsion_changed", true);
        facts.put("tail_lift", true);
        facts.put("packs", List.of(Map.of("type", "E60", "serial", "1"), Map.of("type", "E60", "serial", "2")));
        facts.put("waste_streams", List.of("13 02 05*", "16 01 17"));
        return facts;
    }

    @Test
    void the_documents_of_the_fact_sheet_are_answered() {
        var answered = ask(goodsVehicle()).then().statusCode(200).extract().jsonPath();
        for (String id : "01 05 09 15 16 21 27 28 31 34 40".split(" ")) {
            assertThat(answered.getString("results.requirements.find { it.id == 'GB-" + id + "' }.answer"))
                    .as(id)
                    .isEqualTo("needed");
        }
        assertThat(answered.getList("results.requirements.id")).hasSize(40);
        assertThat(answered.getString("results.requirements.find { it.id == 'GB-21' }.because"))
                .isEqualTo("Needed because tail_lift = true.");
        assertThat(answered.getString("results.requirements.find { it.id == 'GB-21' }.source.document"))
                .isEqualTo("Lifting Operations and Lifting Equipment Regulations 1998");
        assertThat(answered.getString("results.requirements.find { it.id == 'GB-10' }.answer"))
                .isEqualTo("not-needed");
        assertThat(answered.getString("verdict")).isEqualTo("none");
        assertThat(answered.getInt("inputs.facts.axles")).isEqualTo(2);
        assertThat(answered.getList("cautions", String.class).get(0)).startsWith("This is no legal advice");
    }

    @Test
    void a_fact_left_out_or_null_is_a_question_and_never_a_no() {
        Map<String, Object> facts = goodsVehicle();
        facts.put("tail_lift", null);
        var answered = ask(facts).then().statusCode(200).extract().jsonPath();
        assertThat(answered.getString("results.requirements.find { it.id == 'GB-21' }.answer"))
                .isEqualTo("ask");
        assertThat(answered.getList("results.requirements.find { it.id == 'GB-21' }.missingFacts"))
                .containsExactly("tail_lift");
    }

    @ParameterizedTest
    @ValueSource(strings = {"FR", "gb", "", "../GB"})
    void a_set_without_rules_is_a_fault_that_names_those_there_are(String set) {
        var refused = post(Map.of("set", set, "on", "2026-11-25", "facts", Map.of()))
                .then()
                .statusCode(400)
                .contentType("application/problem+json")
                .extract()
                .jsonPath();
        assertThat(refused.getList("errors.field")).containsExactly("set");
        assertThat(refused.getString("errors[0].message")).isEqualTo("Only these are possible: GB, EU, DE.");
    }

    @ParameterizedTest
    @CsvSource({"EU, EU-01", "DE, DE-17"})
    void the_other_sets_are_asked_the_same_way(String set, String permit) {
        var answered = post(Map.of("set", set, "on", "2026-11-25", "facts", goodsVehicle()))
                .then()
                .statusCode(200)
                .extract()
                .jsonPath();
        assertThat(answered.getString("results.requirements.find { it.id == '" + permit + "' }.answer"))
                .isEqualTo("needed");
        assertThat(answered.getList("results.requirements.find { it.id == 'EU-06' }.missingFacts"))
                .containsExactly("packs_new");
        assertThat(answered.getString("results.requirements.find { it.id == 'EU-16' }.because"))
                .isEqualTo("Not needed on 2026-11-25: the rule is in force from 2026-12-09.");
    }

    @Test
    void every_fault_is_named_at_once() {
        var refused = post(Map.of(
                        "set", "FR", "facts", Map.of("axles", "two", "colour", "red", "packs", List.of(1)), "why", 1))
                .then()
                .statusCode(400)
                .extract()
                .jsonPath();
        assertThat(refused.getList("errors.field", String.class))
                .containsExactlyInAnyOrder("set", "on", "facts.axles", "facts.colour", "why");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "[]",
                "{\"set\": \"GB\", \"on\": \"2026-02-30\", \"facts\": {}}",
                "{\"set\": \"GB\", \"on\": \"2026-11-25\", \"facts\": []}",
                "{\"set\": \"GB\", \"on\": \"2026-11-25\", \"facts\": {\"axles\": 1e999}}",
                "{\"set\": \"GB\", \"on\": \"2026-11-25\", \"facts\": {\"axles\": 2.5}}",
                "{\"set\": \"GB\", \"on\": \"2026-11-25\", \"facts\": {\"tail_lift\": {\"is\": true}}}",
                "{\"set\": \"GB\", \"on\": \"2026-11-25\", \"facts\": {\"packs\": [null]}}"
            })
    void what_cannot_be_read_is_a_fault(String body) {
        Cast.AUDITOR
                .asks()
                .contentType("application/json")
                .body(body)
                .post(PATH)
                .then()
                .statusCode(400);
    }

    @Test
    void it_stands_in_the_list_with_its_sources() {
        var listed = Cast.AUDITOR
                .asks()
                .get("/api/v1/calculations")
                .then()
                .statusCode(200)
                .extract()
                .jsonPath();
        assertThat(listed.getList("find { it.name == 'documents' }.inputs.required"))
                .containsExactly("set", "on", "facts");
        assertThat(listed.getList("find { it.name == 'documents' }.sources.document"))
                .contains("SI 2002/2742", "UN R100");
    }

    private static Response ask(Map<String, Object> facts) {
        return post(Map.of("set", "GB", "on", "2026-11-25", "facts", facts));
    }

    private static Response post(Map<String, Object> body) {
        return Cast.AUDITOR.asks().contentType("application/json").body(body).post(PATH);
    }
}
