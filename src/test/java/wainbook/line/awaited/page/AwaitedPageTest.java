package wainbook.line.awaited.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.in;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import wainbook.house.Browsing;
import wainbook.house.Cast;
import wainbook.house.OnRecord;
import wainbook.line.LineSaying.PartAwaited;
import wainbook.line.LineSaying.PartCame;
import wainbook.page.Formats;
import wainbook.station.StationSaying.About;
import wainbook.station.StationSaying.Bar;
import wainbook.station.StationSaying.ReSequenced;

/** A part is missing for a bus that stands at strip. */
@QuarkusTest
@Tag("database")
class AwaitedPageTest {

    @Inject
    Clock clock;

    private LocalDate today;
    private OnRecord bus;
    private String page;

    @BeforeEach
    void a_bus_on_the_line() {
        Cast.assemble();
        today = LocalDate.ofInstant(clock.instant(), ZoneId.of("Europe/London"));
        bus = OnRecord.accepted().at("strip", "ST-1");
        page = "/orders/" + bus.number() + "/awaited";
    }

    @AfterEach
    void the_station_is_free_again() {
        bus.out();
    }

    private Response miss(String stage, String what, String part, String expected) {
        Browsing manager = Browsing.as(Cast.LINE_MANAGER);
        Map<String, Object> form = manager.form(page);
        form.put("stage", stage);
        form.put("what", what);
        form.put("part", part);
        form.put("expectedOn", expected);
        return manager.send(page, form);
    }

    private Response note(int number, String act, String field, String value) {
        Browsing manager = Browsing.as(Cast.LINE_MANAGER);
        Map<String, Object> form = manager.form(page + "?open=" + number);
        form.put(field, value);
        return manager.send(page + "/" + number + "/" + act, form);
    }

    private String seen() {
        return Browsing.as(Cast.LINE_MANAGER).page(page);
    }

    @Test
    void without_a_missing_part_the_page_says_so_and_only_who_may_is_asked() {
        assertThat(Browsing.as(Cast.AUDITOR).page(page))
                .contains("no part is awaited", "No part is missing for this vehicle")
                .doesNotContain("Wait for it");
        assertThat(seen()).contains("Wait for it", "MOTOR (High-voltage fitting)");
    }

    @Test
    void a_part_is_missed_moved_and_comes() {
        LocalDate later = today.plusDays(6);
        assertThat(miss("fitting", "Motor, left", "MOTOR", today.plusDays(2).toString())
                        .statusCode())
                .isEqualTo(303);
        assertThat(seen())
                .contains("1 part is awaited", "Motor, left (MOTOR)", "Needed at High-voltage fitting")
                .contains("expected " + Formats.day(today.plusDays(2)));

        note(1, "expected", "expectedOn", later.toString());
        assertThat(seen()).contains("expected " + Formats.day(later)).doesNotContain(Formats.day(today.plusDays(2)));

        note(1, "came", "remark", "Lot 77-B");
        assertThat(seen()).contains("no part is awaited", "came", "Lot 77-B");
        assertThat(note(1, "came", "remark", "").asString()).contains("This part came already: Motor, left");
        assertThat(bus.history().saying(PartAwaited.class)).hasSize(2);
        assertThat(bus.history().saying(PartCame.class)).hasSize(1);
    }

    @Test
    void the_vehicle_and_the_line_say_what_is_awaited_where_it_stands() {
        miss("strip", "Lifting eye", "", today.plusDays(2).toString());
        miss("fitting", "Motor, left", "MOTOR", today.plusDays(3).toString());
        Browsing manager = Browsing.as(Cast.LINE_MANAGER);
        String here = "Part awaited: Lifting eye, expected " + Formats.day(today.plusDays(2));
        String ahead = "Part awaited: Motor, left (MOTOR), expected " + Formats.day(today.plusDays(3));

        assertThat(manager.page("/orders/" + bus.number())).contains(here, ahead, "Part 1 missing for Strip");
        assertThat(manager.page("/line")).contains(here).doesNotContain(ahead);
        assertThat(manager.page("/forecast"))
                .contains("waiting for parts", "Lifting eye, expected", "Where a part is missing");
    }

    @Test
    void what_cannot_be_is_refused_at_its_field_and_nothing_typed_is_lost() {
        Response wrong =
                miss("fitting", "Motor, left", "PACK-9", today.minusDays(1).toString());
        assertThat(wrong.statusCode()).isEqualTo(422);
        assertThat(wrong.asString())
                .contains("No item of the check sheet of High-voltage fitting names part PACK-9", "This day is over")
                .contains("Motor, left");
        assertThat(miss("paint", "Lacquer", "", today.toString()).asString())
                .contains("This stage is not on the way of " + bus.number());
        assertThat(miss("fitting", " ", "", today.toString()).asString())
                .contains("Nothing is said of what is missing");
        assertThat(miss("fitting", "Motor", "", today.plusYears(2).toString()).asString())
                .contains("more than 180 days ahead");
        assertThat(miss("fitting", "Motor", "", "soon").asString()).contains("Give a day, such as");
        assertThat(note(7, "came", "remark", "").asString()).contains("No such part is awaited for " + bus.number());
        assertThat(bus.history().saying(PartAwaited.class)).isEmpty();
    }

    @Test
    void a_part_of_work_that_was_put_off_is_missing_where_it_went() {
        String day = today.plusDays(2).toString();
        assertThat(miss("commissioning", "Motor, left", "MOTOR", day).asString())
                .contains(
                        "No item of the check sheet of Electrical commissioning and final inspection names part MOTOR");
        bus.say(new ReSequenced(
                new About("fitting", "FIT-BUS12", 1, "motor-fit", List.of()),
                "commissioning",
                List.of(Bar.DRIVING),
                "Motor not delivered"));
        assertThat(miss("commissioning", "Motor, left", "MOTOR", day).statusCode())
                .isEqualTo(303);
    }

    @Test
    void nothing_is_missing_at_a_stage_whose_gate_is_signed() {
        bus.signed();
        assertThat(miss("strip", "Lifting eye", "", today.toString()).asString())
                .contains("is signed, so that nothing is missing there");
    }

    @Test
    void sent_twice_it_is_missed_once_and_moved_by_its_number() {
        var asked = Map.of(
                "id",
                UUID.randomUUID().toString(),
                "stage",
                "fitting",
                "what",
                "Motor, left",
                "expectedOn",
                today.plusDays(2).toString());
        for (int i = 0; i < 2; i++) {
            Cast.LINE_MANAGER
                    .asks()
                    .contentType("application/json")
                    .body(asked)
                    .post("/api/v1" + page)
                    .then()
                    .statusCode(in(List.of(200, 201)));
        }
        Cast.LINE_MANAGER
                .asks()
                .contentType("application/json")
                .body(Map.of(
                        "id",
                        UUID.randomUUID().toString(),
                        "expectedOn",
                        today.plusDays(9).toString()))
                .post("/api/v1" + page + "/1/expected")
                .then()
                .statusCode(201);

        assertThat(Cast.AUDITOR.asks().get("/api/v1" + page).jsonPath().getList("expectedOn"))
                .isEqualTo(List.of(today.plusDays(9).toString()));
    }
}
