package wainbook.line.forecast.page;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.http.ContentType;
import io.restassured.path.json.JsonPath;
import io.restassured.response.Response;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import wainbook.house.Browsing;
import wainbook.house.Cast;
import wainbook.house.OnRecord;

@QuarkusTest
class WhatIfPageTest {

    private OnRecord ahead;
    private OnRecord waits;

    @BeforeEach
    void a_bus_is_on_the_line_and_a_donor_waits() {
        Cast.assemble();
        ahead = OnRecord.accepted().at("strip", "ST-1");
        waits = OnRecord.accepted();
    }

    @AfterEach
    void the_station_is_free_again() {
        ahead.out();
    }

    @Test
    void the_address_holds_the_question_and_the_page_before_and_after() {
        Browsing auditor = Browsing.as(Cast.AUDITOR);

        assertThat(auditor.page("/forecast")).contains("href=\"/forecast/what-if\"");
        assertThat(auditor.page("/forecast/what-if")).contains("What if: ask the forecast", "0.8 is our assumption");
        assertThat(auditor.page("/forecast/what-if?handsStage=strip&factor=0.7&vehicle=" + waits.number()))
                .contains("Before and after", ahead.number(), "Summed lateness:", "value=\"0.7\"");
    }

    @Test
    void what_cannot_be_read_or_is_out_of_range_is_told_at_its_field_and_stays_in_it() {
        Response page = Browsing.as(Cast.AUDITOR).get("/forecast/what-if?days=tomorrow&by=2027-13-01");

        assertThat(page.statusCode()).isEqualTo(422);
        assertThat(page.asString()).contains("tomorrow is no date", "2027-13-01 is no date", "value=\"tomorrow\"");

        Response unknown = Browsing.as(Cast.AUDITOR).get("/forecast/what-if?secondStation=nowhere");
        assertThat(unknown.statusCode()).isEqualTo(422);
        assertThat(unknown.asString()).contains("The line has no stage nowhere");
    }

    @Test
    void scripts_get_before_and_after_with_the_difference_and_its_interval() {
        JsonPath answer = Cast.AUDITOR
                .asks()
                .contentType(ContentType.JSON)
                .body("{\"hands\": {\"stage\": \"strip\", \"factor\": 0.5}}")
                .post("/api/v1/forecast/what-if")
                .then()
                .statusCode(200)
                .extract()
                .jsonPath();

        assertThat(answer.<String>getList("vehicles.order")).contains(ahead.number(), waits.number());
        assertThat(answer.getInt("replications")).isEqualTo(2000);
        assertThat(answer.getDouble("savedLateMinutes.pairs")).isEqualTo(2000);
        Cast.AUDITOR
                .asks()
                .contentType(ContentType.JSON)
                .body("{\"secondStation\": \"nowhere\"}")
                .post("/api/v1/forecast/what-if")
                .then()
                .statusCode(422);
    }
}
