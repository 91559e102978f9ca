package wainbook.works.people;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.RestAssured;
import io.restassured.http.ContentType;
import io.restassured.response.Response;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import wainbook.house.Browsing;
import wainbook.house.Cast;

/** People are engaged, get and lose competences, change roles and leave; each test engages somebody of its own. */
@QuarkusTest
class PeoplePagesTest {

    private static final String PASSWORD = "long enough for a test";

    private String number;
    private Browsing administrator;

    @BeforeEach
    void somebody_new() {
        Cast.assemble();
        number = "P-" + UUID.randomUUID().toString().substring(0, 8);
        administrator = Browsing.as(Cast.ADMINISTRATOR);
        assertThat(engage(number, "user-" + number).statusCode()).isEqualTo(303);
    }

    @Test
    void somebody_engaged_is_listed_and_signs_in_with_the_password_given() {
        assertThat(administrator.page("/people?search=" + number)).contains("Nora Newcomer", "technician");
        assertThat(administrator.page("/people/people.csv?search=" + number)).contains(number + ",\"Nora Newcomer\"");
        RestAssured.given()
                .auth()
                .preemptive()
                .basic("user-" + number, PASSWORD)
                .get("/api/v1/people")
                .then()
                .statusCode(200);
    }

    @Test
    void a_number_and_a_user_name_are_one_persons_only() {
        Response sameNumber = engage(number, "other-" + number);
        assertThat(sameNumber.statusCode()).isEqualTo(422);
        assertThat(sameNumber.asString()).contains("is somebody’s already");
        Response sameUser = engage(number + "-2", "user-" + number);
        assertThat(sameUser.statusCode()).isEqualTo(422);
        assertThat(sameUser.asString()).contains("is somebody else’s");
        assertThat(administrator.get("/people/" + number + "-2").statusCode()).isEqualTo(404);
    }

    @Test
    void a_short_password_is_refused_and_never_sent_back() {
        Map<String, Object> form = administrator.form("/people/new");
        form.putAll(
                Map.of("number", number + "-3", "name", "Nora Newcomer", "user", "u-" + number, "password", "short"));
        Response back = administrator.send("/people/new", form);
        assertThat(back.statusCode()).isEqualTo(422);
        assertThat(back.asString()).contains("12 characters or more").doesNotContain("value=\"short\"");
    }

    @Test
    void a_competence_is_given_shown_in_the_matrix_and_withdrawn() {
        Browsing quality = Browsing.as(Cast.QUALITY_ENGINEER);
        Map<String, Object> form = quality.form("/people/" + number);
        form.putAll(competence("2026-01-01", "2026-12-01"));
        assertThat(quality.send("/people/" + number + "/competences", form).statusCode())
                .isEqualTo(303);
        assertThat(quality.page("/people/" + number)).contains("TRAINING-7", "1 Dec 2026");
        assertThat(quality.page("/people/competences")).contains("TRAINING-7", "/people/" + number);

        Map<String, Object> away = quality.form("/people/" + number);
        away.put("id", UUID.randomUUID());
        away.put("reason", "did not pass the refresher");
        assertThat(quality.send("/people/" + number + "/competences/TRAINING-7/withdrawal", away)
                        .statusCode())
                .isEqualTo(303);
        assertThat(quality.page("/people/" + number)).contains("withdrawn (was to 1 Dec 2026)");
    }

    @Test
    void a_renewal_is_filled_in_and_leaves_no_day_without_the_competence() {
        Browsing quality = Browsing.as(Cast.QUALITY_ENGINEER);
        Map<String, Object> form = quality.form("/people/" + number);
        form.putAll(competence("2026-01-01", "2099-12-01"));
        assertThat(quality.send("/people/" + number + "/competences", form).statusCode())
                .isEqualTo(303);
        assertThat(quality.page("/people/" + number)).contains("/people/" + number + "?renew=TRAINING-7#give");
        String renewing = "/people/" + number + "?renew=TRAINING-7";
        assertThat(quality.page(renewing)).contains("value=\"TRAINING-7\"", "value=\"2099-12-02\"");
        Map<String, Object> again = quality.form(renewing);
        again.putAll(competence("2099-12-02", "2100-12-01"));
        assertThat(quality.send("/people/" + number + "/competences", again).statusCode())
                .isEqualTo(303);
        assertThat(quality.page("/people/" + number)).contains("to 1 Dec 2100").doesNotContain("not yet valid");
    }

    @Test
    void the_matrix_is_filtered_by_competence_and_given_as_a_file() {
        Browsing quality = Browsing.as(Cast.QUALITY_ENGINEER);
        Map<String, Object> form = quality.form("/people/" + number);
        form.putAll(competence("2026-01-01", "2026-01-31"));
        quality.send("/people/" + number + "/competences", form);
        assertThat(quality.page("/people/competences?competence=TRAINING-7"))
                .contains("/people/" + number + "?renew=TRAINING-7#give");
        assertThat(quality.page("/people/competences?competence=NONE-SUCH")).doesNotContain("/people/" + number);
        assertThat(Browsing.as(Cast.TECHNICIAN).page("/people/competences")).doesNotContain("?renew=");
        assertThat(quality.page("/people/competences.csv?competence=TRAINING-7"))
                .contains(number + ",\"Nora Newcomer\",TRAINING-7,", "2026-01-01,2026-01-31,");
    }

    @Test
    void the_user_name_and_the_way_to_a_new_password_are_the_administrators_alone() {
        assertThat(administrator.page("/people/" + number)).contains("user-" + number, "/setup/passwords/" + number);
        assertThat(Browsing.as(Cast.WORKS_ENGINEER).page("/people/" + number))
                .doesNotContain("user-" + number, "/setup/passwords/");
        assertThat(administrator.page("/setup/passwords?search=user-" + number)).contains("/setup/passwords/" + number);
        assertThat(administrator.page("/setup/passwords?search=nobody-at-all")).contains("Nobody fits this search");
    }

    @Test
    void a_competence_that_ends_before_it_begins_is_refused_at_its_field() {
        Map<String, Object> form = administrator.form("/people/" + number);
        form.putAll(competence("2026-12-01", "2026-01-01"));
        Response back = administrator.send("/people/" + number + "/competences", form);
        assertThat(back.statusCode()).isEqualTo(422);
        assertThat(back.asString()).contains("id=\"validTo-fault\"", "certificate 77");
    }

    @ParameterizedTest
    @EnumSource(names = {"ADMINISTRATOR", "WORKS_ENGINEER", "QUALITY_ENGINEER"})
    void nobody_gives_themselves_a_competence(Cast person) {
        String path = "/people/" + person.number();
        assertThat(Browsing.as(person).page(path))
                .contains("You cannot give yourself a competence")
                .doesNotContain("name=\"validFrom\"");
        Response refused = person.asks()
                .contentType(ContentType.JSON)
                .body(Map.of(
                        "id", UUID.randomUUID(),
                        "competence", "HV",
                        "level", 1,
                        "validFrom", "2026-01-01",
                        "validTo", "2027-01-01",
                        "evidence", "own word"))
                .post("/api/v1/people/" + person.number() + "/competences");
        assertThat(refused.statusCode()).isEqualTo(409);
        assertThat(refused.jsonPath().getList("reasons.key")).containsExactly("works.ownCompetence");
    }

    @Test
    void roles_change_and_whoever_left_comes_in_no_more() {
        Map<String, Object> form = administrator.form("/people/" + number);
        form.put("roles", List.of("inspector", "auditor"));
        assertThat(administrator.send("/people/" + number + "/roles", form).statusCode())
                .isEqualTo(303);
        assertThat(administrator.page("/people/" + number)).contains("inspector, auditor");

        Map<String, Object> leaving = administrator.form("/people/" + number);
        leaving.put("reason", "moved away");
        assertThat(administrator.send("/people/" + number + "/leaving", leaving).statusCode())
                .isEqualTo(303);
        assertThat(administrator.page("/people/" + number)).contains("works here no longer");
        assertThat(administrator.page("/people?search=" + number)).doesNotContain("/people/" + number);
        assertThat(administrator.page("/people?left=yes&search=" + number)).contains("/people/" + number);
        RestAssured.given()
                .auth()
                .preemptive()
                .basic("user-" + number, PASSWORD)
                .get("/api/v1/people")
                .then()
                .statusCode(401);
    }

    @Test
    void an_administrator_stays_one_until_another_says_otherwise() {
        String own = "/people/" + Cast.ADMINISTRATOR.number();
        Map<String, Object> roles = administrator.form(own);
        roles.put("roles", "auditor");
        assertThat(administrator.send(own + "/roles", roles).statusCode()).isEqualTo(409);
        Map<String, Object> leaving = administrator.form(own);
        leaving.put("reason", "on a whim");
        assertThat(administrator.send(own + "/leaving", leaving).statusCode()).isEqualTo(409);
        assertThat(administrator.get("/people/new").statusCode()).isEqualTo(200);
    }

    private Response engage(String as, String user) {
        Map<String, Object> form = administrator.form("/people/new");
        form.putAll(Map.of("number", as, "name", "Nora Newcomer", "user", user, "password", PASSWORD));
        form.put("roles", "technician");
        return administrator.send("/people/new", form);
    }

    private static Map<String, Object> competence(String from, String to) {
        return Map.of(
                "competence", "TRAINING-7",
                "level", "0",
                "validFrom", from,
                "validTo", to,
                "evidence", "certificate 77");
    }
}
