package wainbook.line.stringline.page;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import wainbook.house.Browsing;
import wainbook.house.Cast;
import wainbook.house.OnRecord;

@QuarkusTest
class StringLinePageTest {

    private OnRecord ahead;
    private OnRecord waits;

    @BeforeEach
    void a_bus_is_on_the_line_and_a_donor_waits() {
        Cast.assemble();
        ahead = OnRecord.accepted().at("strip", "ST-1").at("fitting", "ST-2");
        waits = OnRecord.accepted();
    }

    @AfterEach
    void the_station_is_free_again() {
        ahead.out();
    }

    @Test
    void every_vehicle_is_a_line_that_leads_to_it_with_the_same_in_a_table() {
        String page = Browsing.as(Cast.AUDITOR).page("/line/over-time");

        assertThat(page)
                .contains("<a class=\"strand", "href=\"/orders/" + ahead.number() + "\"", "by its promised day")
                .contains("href=\"/orders/" + waits.number() + "\"")
                .contains("class=\"ahead\"", "class=\"band\"", ">now<", "the same as a table");
    }

    @Test
    void one_vehicle_has_a_picture_of_its_own() {
        String page = Browsing.as(Cast.AUDITOR).page("/line/over-time/" + ahead.number());

        assertThat(page).contains(ahead.number() + " over time").doesNotContain(waits.number());
    }

    @Test
    void an_order_that_is_not_there_has_nothing_to_show() {
        assertThat(Browsing.as(Cast.AUDITOR).page("/line/over-time/WB-NONE")).contains("Nothing was on the line");
    }

    @Test
    void the_line_the_forecast_and_the_vehicle_show_it() {
        Browsing auditor = Browsing.as(Cast.AUDITOR);
        assertThat(auditor.page("/line")).contains("hx-get=\"/line/over-time/shortly\"");
        assertThat(auditor.page("/forecast")).contains("hx-get=\"/line/over-time\"");
        assertThat(auditor.page("/orders/" + ahead.number()))
                .contains("hx-get=\"/line/over-time/" + ahead.number() + "\"");
    }
}
