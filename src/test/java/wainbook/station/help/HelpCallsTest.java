package wainbook.station.help;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import wainbook.house.Browsing;
import wainbook.house.Cast;
import wainbook.house.Donor;

/** Help is called in one touch, and nobody who calls, comes or settles is sent away. */
@QuarkusTest
class HelpCallsTest {

    private Donor donor;

    @BeforeEach
    void a_donor_at_its_survey() {
        Cast.assemble();
        donor = Donor.received();
    }

    @Test
    void one_touch_on_the_station_page_calls_and_whoever_comes_settles_it() {
        Browsing technician = Browsing.as(Cast.TECHNICIAN);
        Map<String, Object> form = technician.form("/station/" + donor.number());
        form.put("help", "MAINTENANCE");
        Response answer = technician.send("/orders/" + donor.number() + "/help", form);
        assertThat(answer.statusCode()).isEqualTo(303);
        assertThat(answer.header("Location")).endsWith("/station/" + donor.number());
        assertThat(technician.page("/station/" + donor.number())).contains("Help called: maintenance", "Settle");

        Browsing leader = Browsing.as(Cast.TEAM_LEADER);
        String call = "/orders/" + donor.number() + "/help/1";
        assertThat(technician.page(call)).doesNotContain("I am coming");
        assertThat(leader.page(call)).contains("I am coming", "nobody yet", "Tess Nichols");
        assertThat(leader.page("/station/" + donor.number()))
                .contains("action=\"" + call + "/answered\"", "I am coming");
        assertThat(leader.send(call + "/answered", leader.form("/station/" + donor.number()))
                        .statusCode())
                .isEqualTo(303);
        assertThat(technician.page("/station/" + donor.number())).contains("Tom Leary comes");
        Map<String, Object> settled = leader.form(call);
        settled.put("words", "Lift lowered by hand");
        assertThat(leader.send(call + "/resolved", settled).statusCode()).isEqualTo(303);
        assertThat(leader.page(call))
                .contains("Settled", "Lift lowered by hand")
                .doesNotContain("It is settled");
        assertThat(technician.page("/station/" + donor.number())).doesNotContain("Help called");
        assertThat(technician.page("/orders/" + donor.number()))
                .contains("Help call 1: maintenance", "Help call 1 answered", "settled: Lift lowered by hand");
    }

    @Test
    void a_call_sent_twice_is_written_once() {
        var once = Map.of("id", Donor.id(), "help", "QUALITY");
        donor.send(Cast.TECHNICIAN, "/help-calls", once).then().statusCode(201);
        donor.send(Cast.TECHNICIAN, "/help-calls", once).then().statusCode(200);
        assertThat(calls()).hasSize(1);
    }

    @Test
    void whoever_has_no_role_may_call_too() {
        donor.send(Cast.OUTSIDER, "/help-calls", Map.of("id", Donor.id(), "help", "SAFETY"))
                .then()
                .statusCode(201);
    }

    @Test
    void who_comes_or_settles_second_is_on_record_but_the_first_stands() {
        donor.send(Cast.TECHNICIAN, "/help-calls", Map.of("id", Donor.id(), "help", "QUALITY"))
                .then()
                .statusCode(201);
        for (Cast person : List.of(Cast.TEAM_LEADER, Cast.QUALITY_ENGINEER)) {
            donor.send(person, "/help-calls/1/answered", Map.of("id", Donor.id()))
                    .then()
                    .statusCode(201);
        }
        for (Cast person : List.of(Cast.QUALITY_ENGINEER, Cast.TEAM_LEADER)) {
            donor.send(person, "/help-calls/1/resolved", Map.of("id", Donor.id()))
                    .then()
                    .statusCode(201);
        }
        donor.send(Cast.TEAM_LEADER, "/help-calls/1/answered", Map.of("id", Donor.id()))
                .then()
                .statusCode(201);
        assertThat(calls())
                .extracting(call -> String.valueOf(((Map<?, ?>) call.get("answered")).get("who")))
                .containsExactly(Cast.TEAM_LEADER.number());
        assertThat(calls())
                .extracting(call -> String.valueOf(((Map<?, ?>) call.get("resolved")).get("who")))
                .containsExactly(Cast.QUALITY_ENGINEER.number());
    }

    @Test
    void a_call_that_was_never_made_is_not_found() {
        donor.send(Cast.TEAM_LEADER, "/help-calls/9/answered", Map.of("id", Donor.id()))
                .then()
                .statusCode(409);
        assertThat(Browsing.as(Cast.TEAM_LEADER)
                        .get("/orders/" + donor.number() + "/help/9")
                        .statusCode())
                .isEqualTo(404);
    }

    private List<Map<String, Object>> calls() {
        return Cast.AUDITOR
                .asks()
                .get("/api/v1/orders/" + donor.number() + "/help-calls")
                .jsonPath()
                .getList("$");
    }
}
