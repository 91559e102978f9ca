package wainbook.line.forecast.page;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.path.json.JsonPath;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import wainbook.house.Browsing;
import wainbook.house.Cast;
import wainbook.house.OnRecord;
import wainbook.order.OrderSaying.Held;
import wainbook.order.OrderSaying.HoldKind;
import wainbook.order.OrderSaying.Stops;

@QuarkusTest
class ForecastPageTest {

    private OnRecord ahead;
    private OnRecord behind;
    private OnRecord waits;

    @BeforeEach
    void two_buses_are_on_the_line_and_a_donor_waits() {
        Cast.assemble();
        ahead = OnRecord.accepted().at("strip", "ST-1").at("fitting", "ST-2");
        behind = OnRecord.accepted().at("strip", "ST-1");
        waits = OnRecord.accepted();
    }

    @AfterEach
    void the_stations_are_free_again() {
        ahead.out();
        behind.out();
    }

    @Test
    void every_vehicle_has_its_finish_its_promise_and_what_it_rests_on() {
        String page = Browsing.as(Cast.AUDITOR).page("/forecast");

        assertThat(page)
                .containsPattern("<h1>Forecast: (none|\\d+) of \\d+ will probably miss (its|their) day</h1>")
                .contains(ahead.number(), behind.number(), waits.number())
                .contains("12 Feb 2027", "ST-2, at work", "donor accepted, YARD")
                .contains("Rests on ", "Drawn ", "What the times rest on")
                .doesNotContain(">0\u00a0%", ">100\u00a0%");
    }

    @Test
    void in_the_order_of_the_line_the_vehicle_in_front_comes_first() {
        String page = Browsing.as(Cast.AUDITOR).page("/forecast?by=line");

        assertThat(page.indexOf(ahead.number()))
                .isPositive()
                .isLessThan(page.indexOf(behind.number()))
                .isLessThan(page.indexOf(waits.number()));
        assertThat(page.indexOf(behind.number())).isLessThan(page.indexOf(waits.number()));
    }

    @Test
    void scripts_get_the_same_vehicles_with_odds_that_are_never_certain() {
        JsonPath answer = Cast.AUDITOR.asks().get("/api/v1/forecast").jsonPath();

        assertThat(answer.getInt("replications")).isGreaterThanOrEqualTo(2000);
        assertThat(answer.<String>getList("vehicles.order")).contains(ahead.number(), behind.number(), waits.number());
        assertThat(answer.<Float>getList("vehicles.odds"))
                .allSatisfy(odds -> assertThat(odds).isStrictlyBetween(0f, 1f));
        Map<String, Object> first = of(answer, ahead);
        assertThat(first).containsEntry("doing", "WORK").containsEntry("stage", "fitting");
        assertThat((List<?>) first.get("stages")).isNotEmpty();
    }

    @Test
    void a_hold_is_seen_as_soon_as_it_stands() {
        ahead.say(new Held(1, HoldKind.QUALITY, List.of(Stops.WORK), "Crack suspected"));
        String page = Browsing.as(Cast.AUDITOR).page("/forecast");

        assertThat(page).contains("ST-2, at work, held", "480 working minutes");
    }

    @Test
    void the_table_comes_as_a_file() {
        String csv = Browsing.as(Cast.AUDITOR).page("/forecast.csv?by=line");

        assertThat(csv).startsWith("order,kind,where,").contains(ahead.number(), "2027-02-12");
    }

    @Test
    void the_line_leads_to_the_forecast() {
        assertThat(Browsing.as(Cast.AUDITOR).page("/line")).contains("href=\"/forecast\"");
    }

    private static Map<String, Object> of(JsonPath answer, OnRecord vehicle) {
        return answer.<Map<String, Object>>getList("vehicles").stream()
                .filter(one -> vehicle.number().equals(one.get("order")))
                .findFirst()
                .orElseThrow();
    }
}
