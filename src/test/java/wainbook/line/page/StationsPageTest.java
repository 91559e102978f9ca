package wainbook.line.page;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import wainbook.house.Browsing;
import wainbook.house.Cast;
import wainbook.house.OnRecord;

/** A tablet keeps the address of its station, and technicians find theirs. */
@QuarkusTest
class StationsPageTest {

    private OnRecord bus;

    @BeforeEach
    void a_bus_at_the_first_station() {
        Cast.assemble();
        bus = OnRecord.accepted().at("strip", "ST-1");
    }

    @AfterEach
    void the_station_is_free_again() {
        bus.out();
    }

    @Test
    void a_stations_address_leads_to_the_vehicle_that_stands_there() {
        Response answer = Browsing.as(Cast.TECHNICIAN).get("/stations/ST-1");
        assertThat(answer.statusCode()).isEqualTo(303);
        assertThat(answer.header("Location")).endsWith("/station/" + bus.number());
    }

    @Test
    void an_empty_station_says_so_and_looks_again() {
        Response answer = Browsing.as(Cast.TECHNICIAN).get("/stations/ST-3");
        assertThat(answer.statusCode()).isEqualTo(200);
        assertThat(answer.header("Refresh")).isEqualTo("15");
        assertThat(answer.asString()).contains("No vehicle stands at");
    }

    @Test
    void a_station_that_the_works_has_not_is_not_found() {
        assertThat(Browsing.as(Cast.TECHNICIAN).get("/stations/ST-99").statusCode())
                .isEqualTo(404);
    }

    @Test
    void stations_are_chosen_in_the_order_in_which_vehicles_pass_them() {
        String page = Browsing.as(Cast.TECHNICIAN).page("/stations");
        assertThat(page).contains(bus.number());
        assertThat(page.indexOf("/stations/ST-1\"")).isPositive().isLessThan(page.indexOf("/stations/ST-2\""));
        assertThat(page.indexOf("/stations/ST-2\"")).isLessThan(page.indexOf("/stations/ST-3\""));
    }
}
