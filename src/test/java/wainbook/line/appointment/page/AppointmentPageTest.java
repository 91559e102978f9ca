package wainbook.line.appointment.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.in;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import java.time.Clock;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.temporal.TemporalAdjusters;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import wainbook.house.Browsing;
import wainbook.house.Cast;
import wainbook.house.OnRecord;
import wainbook.line.LineSaying.AppointmentBooked;
import wainbook.page.Words;

@QuarkusTest
@Tag("database")
class AppointmentPageTest {

    /** A Tuesday two to three weeks ahead. */
    private final LocalDate soon =
            LocalDate.now(Clock.systemUTC()).plusWeeks(2).with(TemporalAdjusters.next(DayOfWeek.TUESDAY));

    private OnRecord bus;
    private String page;

    @BeforeEach
    void a_bus_has_left_the_line() {
        Cast.assemble();
        bus = OnRecord.accepted().at("strip", "ST-1");
        bus.out();
        page = "/orders/" + bus.number() + "/appointments";
    }

    private Response book(Cast who, String appointment, String on) {
        Browsing browser = Browsing.as(who);
        Map<String, Object> form = browser.form(page + "?open=" + appointment);
        form.put("on", on);
        return browser.send(page + "/" + appointment + "/booked", form);
    }

    private Response attend(String appointment, String passed, String remark) {
        Browsing clerk = Browsing.as(Cast.HANDOVER_CLERK);
        Map<String, Object> form = clerk.form(page + "?open=" + appointment);
        form.put("passed", passed);
        form.put("remark", remark);
        return clerk.send(page + "/" + appointment + "/attended", form);
    }

    private static String written(LocalDate day) {
        return DateTimeFormatter.ofPattern("d MMM yyyy", Words.LOCALE).format(day);
    }

    @Test
    void everything_the_works_asks_for_stands_there_to_be_booked() {
        assertThat(Browsing.as(Cast.AUDITOR).page(page))
                .contains("2 appointments are still to be passed", "Brake lane", "Road test", "to be booked")
                .doesNotContain("Book it");
    }

    @Test
    void the_clerk_books_one_and_moves_it() {
        assertThat(book(Cast.HANDOVER_CLERK, "LANE", soon + "T09:30").statusCode())
                .isEqualTo(303);
        assertThat(Browsing.as(Cast.HANDOVER_CLERK).page(page)).contains("booked for", written(soon), "Move it");

        book(Cast.HANDOVER_CLERK, "LANE", soon.plusDays(1) + "T10:30");
        assertThat(Browsing.as(Cast.HANDOVER_CLERK).page(page))
                .contains(written(soon.plusDays(1)))
                .doesNotContain(written(soon));
    }

    @Test
    void a_time_that_is_over_or_outside_its_hours_is_refused_at_its_field() {
        assertThat(book(Cast.HANDOVER_CLERK, "LANE", "2026-01-06T09:30").asString())
                .contains("This time is over");
        Response night = book(Cast.HANDOVER_CLERK, "ROAD", soon + "T14:30");
        assertThat(night.statusCode()).isEqualTo(422);
        assertThat(night.asString()).contains("Road test does not take place at this time", soon + "T14:30");
        assertThat(book(Cast.HANDOVER_CLERK, "LANE", soon.plusYears(1) + "T09:30")
                        .asString())
                .contains("more than 90 days ahead");
        assertThat(book(Cast.HANDOVER_CLERK, "LANE", "soon").asString()).contains("Give a day and a time");
    }

    @Test
    void one_that_was_not_passed_says_why_and_is_booked_again() {
        Response silent = attend("LANE", "no", "");
        assertThat(silent.statusCode()).isEqualTo(422);
        assertThat(silent.asString()).contains("Nothing is said of what was found");

        assertThat(attend("LANE", "no", "Second axle pulls left").statusCode()).isEqualTo(303);
        assertThat(Browsing.as(Cast.HANDOVER_CLERK).page(page))
                .contains("not passed, to be booked again", "Not passed once", "Second axle pulls left");

        attend("LANE", "yes", "");
        assertThat(Browsing.as(Cast.HANDOVER_CLERK).page(page)).contains("1 appointment is still to be passed");
    }

    @Test
    void what_is_passed_is_not_passed_again() {
        attend("LANE", "yes", "");
        var again = Map.of("id", UUID.randomUUID().toString(), "passed", true, "remark", "");
        Cast.HANDOVER_CLERK
                .asks()
                .contentType("application/json")
                .body(again)
                .post("/api/v1" + page + "/LANE/attended")
                .then()
                .statusCode(409);
    }

    @Test
    void a_vehicle_still_on_the_line_has_not_been_to_any() {
        OnRecord there = OnRecord.accepted().at("strip", "ST-1");
        var early = Map.of("id", UUID.randomUUID().toString(), "passed", true, "remark", "");
        String refusal = Cast.LINE_MANAGER
                .asks()
                .contentType("application/json")
                .body(early)
                .post("/api/v1/orders/" + there.number() + "/appointments/LANE/attended")
                .then()
                .statusCode(409)
                .extract()
                .asString();
        there.out();
        assertThat(refusal).contains("is still on the line or before it");
    }

    @Test
    void sent_twice_it_is_booked_once() {
        var asked = Map.of("id", UUID.randomUUID().toString(), "on", soon + "T09:30:00Z");
        for (int i = 0; i < 2; i++) {
            Cast.LINE_MANAGER
                    .asks()
                    .contentType("application/json")
                    .body(asked)
                    .post("/api/v1" + page + "/LANE/booked")
                    .then()
                    .statusCode(in(List.of(200, 201)));
        }
        assertThat(bus.history().saying(AppointmentBooked.class)).hasSize(1);
    }
}
