package wainbook.line.balance.page;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.RestAssured;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import jakarta.inject.Inject;
import java.time.Clock;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.hamcrest.Matchers;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wainbook.house.Browsing;
import wainbook.house.Cast;
import wainbook.line.balance.BalanceSearch;
import wainbook.line.balance.BalanceSearch.Standing;

@QuarkusTest
@Tag("database")
class BalancePageTest {

    @Inject
    Clock clock;

    private Browsing engineer;

    @BeforeEach
    void the_engineer_looks() {
        Cast.assemble();
        engineer = Browsing.as(Cast.WORKS_ENGINEER);
    }

    @AfterEach
    void the_drafts_are_dropped() {
        for (String sheet : List.of("STRIP-BUS12", "FIT-BUS12", "COMM-BUS12")) {
            String path = "/process/sheets/" + sheet + "/draft";
            if (engineer.page(path).contains("/discard")) {
                engineer.send(path + "/discard", engineer.form(path));
            }
        }
    }

    @Test
    void the_load_of_each_stage_stands_against_the_takt() {
        String page = Browsing.as(Cast.TECHNICIAN).page("/balance");

        assertThat(page).contains("<svg", "1 Strip and decommission", "planned minutes");
        assertThat(page).doesNotContain("Seconds for the search");
        assertThat(engineer.page("/balance/balance.csv"))
                .contains("number,stage,stations,average_minutes", "Strip and decommission");
    }

    @Test
    void a_search_ends_with_its_bound_and_what_moves() {
        Response sent = engineer.send("/balance/search", asked("reach", "1"));
        assertThat(sent.statusCode()).isEqualTo(303);

        String page = ended();

        assertThat(page).contains("What moves", "which is proved");
    }

    @Test
    void what_is_typed_wrongly_stays_and_is_told() {
        Map<String, Object> asked = asked("aim", "takt");
        asked.put("taktMinutes", "soon");
        asked.put("itemsThatStay", "no-such-item");

        Response answer = engineer.send("/balance/search", asked);

        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.asString())
                .contains(
                        "A whole number from 1 to 10000 is needed.", "No check item on the line is called no-such-item")
                .contains("value=\"soon\"");
    }

    @Test
    void rules_persons_and_recorded_times_are_asked_for_kept_and_told_with_what_the_rules_cost() {
        Map<String, Object> asked = asked("times", "RECORDED");
        rule(asked, 0, "labels", "TOGETHER", "ramp", "");
        rule(asked, 2, "cable-tray, coolant-flange", "DISTANCE", "brake-report", "1");
        asked.put("persons[fitting]", "2");

        assertThat(engineer.send("/balance/search", asked).statusCode()).isEqualTo(303);
        String page = ended();

        assertThat(page)
                .contains("labels at the same station as ramp.")
                .contains("cable-tray, coolant-flange at least 1 station before brake-report.")
                .contains("2 High-voltage fitting: 2 persons.", "Minutes as recorded.")
                .contains("It is not the work divided by the persons.")
                .contains("Recorded against planned minutes, by stage", "is our choice")
                .containsPattern("(Without the rules on items|The rules on items cost)");
        assertThat(page)
                .as("the form, as it was asked")
                .contains("value=\"cable-tray coolant-flange\"")
                .contains("value=\"RECORDED\" checked");
        assertThat(script().get("/api/v1/balance").jsonPath().getInt("search.question.persons.fitting"))
                .isEqualTo(2);
    }

    @Test
    void a_wrong_key_is_told_at_its_rule_and_nothing_typed_is_lost() {
        Map<String, Object> asked = asked("aim", "stations");
        rule(asked, 0, "labels", "APART", "lables", "");
        rule(asked, 1, "labels", "DISTANCE", "ramp", "soon");
        asked.put("persons[strip]", "none");

        Response answer = engineer.send("/balance/search", asked);

        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.asString())
                .contains("No check item on the line is called lables.", "href=\"#rules[0].other\"")
                .contains("A whole number from 1 to 2 is needed.", "A whole number from 1 to 9 is needed.")
                .contains("value=\"lables\"", "value=\"soon\"", "value=\"none\"");
    }

    @Test
    void rules_that_contradict_each_other_are_refused_by_their_numbers_and_nothing_is_begun() {
        Map<String, Object> asked = asked("aim", "stations");
        rule(asked, 0, "labels", "TOGETHER", "ramp", "");
        rule(asked, 1, "ramp", "APART", "labels", "");

        Response answer = engineer.send("/balance/search", asked);

        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.asString()).contains("Rule 2 contradicts rule 1 over ramp and labels.");
        assertThat(QuarkusTransaction.requiringNew()
                        .call(() -> BalanceSearch.findById(UUID.fromString((String) asked.get("id"))) == null))
                .isTrue();
    }

    @Test
    void a_script_is_refused_by_the_same_rules_with_their_fields() {
        script().contentType("application/json")
                .body(question("\"rules\":[{\"sort\":\"APART\",\"one\":[\"labels\"],\"other\":[\"lables\"]}],"
                        + "\"persons\":{\"nowhere\":2}"))
                .post("/api/v1/balance/searches")
                .then()
                .statusCode(422)
                .body("reasons.lift", Matchers.hasItems("#rules[0].other", "#persons[nowhere]"))
                .body("detail", Matchers.containsString("nowhere"));
    }

    @Test
    void a_script_asks_with_rules_and_reads_what_was_found() {
        script().contentType("application/json")
                .body(question("\"rules\":[{\"sort\":\"APART\",\"one\":[\"labels\"],\"other\":[\"ramp\"]}],"
                        + "\"times\":\"RECORDED\""))
                .post("/api/v1/balance/searches")
                .then()
                .statusCode(202)
                .body("search.question.rules[0].sort", Matchers.equalTo("APART"));
        ended();

        script().get("/api/v1/balance")
                .then()
                .body("search.proposal.proven", Matchers.equalTo(true))
                .body("search.proposal.paces.stage", Matchers.hasItem("fitting"))
                .body("search.proposal.withoutRules.proven", Matchers.equalTo(true));
    }

    @Test
    void what_was_found_before_there_were_rules_is_still_read() {
        QuarkusTransaction.requiringNew().run(() -> {
            BalanceSearch row = row(Standing.ENDED);
            row.outcome = "{\"cycleMinutes\":120.0,\"stations\":3,\"best\":120.0,\"lowerBound\":120.0,\"gap\":0.0,"
                    + "\"proven\":true,\"chosen\":true,"
                    + "\"loads\":[{\"stage\":\"strip\",\"beforeMinutes\":135.0,\"afterMinutes\":120.0}],"
                    + "\"moves\":[{\"key\":\"drain-coolant\",\"title\":\"Drain the coolant\",\"from\":\"strip\","
                    + "\"to\":\"fitting\",\"minutes\":{\"BUS-12M\":15}}]}";
            row.persist();
        });

        assertThat(engineer.page("/balance"))
                .contains("A takt of 120 min is possible", "Drain the coolant")
                .doesNotContain("It was asked with");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "{}",
                "{\"id\":\"7d0c8f0e-6a53-4d3c-9a64-0d1f6b3f1a11\"}",
                "{\"id\":\"7d0c8f0e-6a53-4d3c-9a64-0d1f6b3f1a11\",\"question\":{\"reach\":1,\"seconds\":0}}",
                "{\"id\":\"7d0c8f0e-6a53-4d3c-9a64-0d1f6b3f1a11\",\"question\":{\"reach\":1,\"stagesThatStay\":[],\"itemsThatStay\":[],\"leastChange\":true,\"seconds\":5,\"persons\":{\"strip\":0}}}",
                "{\"id\":\"7d0c8f0e-6a53-4d3c-9a64-0d1f6b3f1a11\",\"question\":{\"reach\":-1,\"stagesThatStay\":[],\"itemsThatStay\":[],\"leastChange\":true,\"seconds\":5}}"
            })
    void a_script_that_asks_out_of_range_is_told_so_and_begins_nothing(String body) {
        script().contentType("application/json")
                .body(body)
                .post("/api/v1/balance/searches")
                .then()
                .statusCode(400);
    }

    @Test
    void accepted_it_becomes_drafts_and_bars_itself_from_being_accepted_twice() {
        engineer.send("/balance/search", asked("reach", "1"));
        ended();
        String acceptance = "/balance/search/" + newest().id + "/acceptance";
        Map<String, Object> form = engineer.form("/balance");

        Response accepted = engineer.send(acceptance, form);
        assertThat(accepted.statusCode()).isEqualTo(303);
        assertThat(engineer.page("/process/sheets/STRIP-BUS12/draft")).contains("draft");

        Map<String, Object> again = new LinkedHashMap<>(form);
        again.put("id", UUID.randomUUID().toString());
        Response refused = engineer.send(acceptance, again);
        assertThat(refused.statusCode()).isEqualTo(409);
        assertThat(refused.asString()).contains("It has a draft already.");
    }

    @Test
    void only_a_works_engineer_makes_drafts_of_it() {
        engineer.send("/balance/search", asked("reach", "1"));
        ended();

        assertThat(Browsing.as(Cast.LINE_MANAGER).page("/balance"))
                .contains("Seconds for the search")
                .doesNotContain("Make drafts of it");
    }

    @Test
    void a_search_that_a_restart_ended_is_told_as_interrupted() {
        QuarkusTransaction.requiringNew().run(() -> row(Standing.INTERRUPTED).persist());

        assertThat(engineer.page("/balance")).contains("interrupted by a restart");
    }

    /** As it was kept before there were rules. */
    private BalanceSearch row(Standing standing) {
        var row = new BalanceSearch();
        row.id = UUID.randomUUID();
        row.askedBy = "7009";
        row.begun = clock.instant();
        row.standing = standing;
        row.question = "{\"reach\":1,\"stagesThatStay\":[],\"itemsThatStay\":[],\"leastChange\":false,\"seconds\":5}";
        return row;
    }

    private static RequestSpecification script() {
        return RestAssured.given().auth().preemptive().basic(Cast.WORKS_ENGINEER.user(), Cast.PASSWORD);
    }

    private static String question(String more) {
        return "{\"id\":\"" + UUID.randomUUID()
                + "\",\"question\":{\"reach\":1,\"stagesThatStay\":[],\"itemsThatStay\":[],\"leastChange\":true,"
                + "\"seconds\":20," + more + "}}";
    }

    private static void rule(Map<String, Object> asked, int i, String one, String sort, String other, String stations) {
        asked.put("rules[" + i + "].one", one);
        asked.put("rules[" + i + "].sort", sort);
        asked.put("rules[" + i + "].other", other);
        asked.put("rules[" + i + "].stations", stations);
    }

    private Map<String, Object> asked(String field, String value) {
        Map<String, Object> asked = new LinkedHashMap<>(engineer.form("/balance"));
        asked.put("id", UUID.randomUUID().toString());
        asked.put("aim", "stations");
        asked.put("reach", "1");
        asked.put("then", "smoothest");
        asked.put("seconds", "20");
        asked.put(field, value);
        return asked;
    }

    /** The page once the search has ended; a search of the small works takes a moment. */
    private String ended() {
        String page = engineer.page("/balance");
        for (int looks = 0; page.contains("Cancel the search"); looks++) {
            assertThat(looks).as("looks at a search that does not end").isLessThan(20_000);
            page = engineer.page("/balance");
        }
        return page;
    }

    private static BalanceSearch newest() {
        return QuarkusTransaction.requiringNew()
                .call(() -> BalanceSearch.newest().orElseThrow());
    }
}
