package wainbook.station.rebinding;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import wainbook.house.Browsing;
import wainbook.house.Cast;
import wainbook.house.Donor;
import wainbook.house.OwnSheet;
import wainbook.process.sheet.Ask;

/** A vehicle goes on by a newer revision of its sheet, and keeps what that revision left as it was. */
@QuarkusTest
@Tag("database")
class NewerSheetAtAVehicleTest {

    private static final Ask TICK = new Ask.Confirm(Optional.empty());

    private OwnSheet sheet;
    private Donor donor;

    @BeforeEach
    void a_donor_bound_to_the_first_revision() {
        Cast.assemble();
        sheet = OwnSheet.released(
                OwnSheet.item("frame", "Look over the frame", TICK, 5),
                OwnSheet.item("doors", "Look at the doors", TICK, 5),
                OwnSheet.item("seats", "Count the seats", TICK, 5));
        donor = Donor.received(sheet.route());
        List.of("frame", "doors", "seats").forEach(key -> record(key).then().statusCode(201));
    }

    @Test
    void entries_stay_for_what_did_not_change_and_all_else_is_open() {
        releaseSecond();
        assertThat(states()).as("until it is rebound").containsOnlyKeys("frame", "doors", "seats");

        rebind(2).then().statusCode(201);

        assertThat(states())
                .containsExactlyInAnyOrderEntriesOf(Map.of("frame", "PASSED", "doors", "OPEN", "lamps", "OPEN"));
        record("frame").then().statusCode(409);
        record("doors").then().statusCode(201);
        record("lamps").then().statusCode(201);
        assertThat(states()).containsEntry("doors", "PASSED").containsEntry("lamps", "PASSED");
    }

    @Test
    void there_is_nothing_to_go_on_to_while_the_sheet_is_the_one_in_force() {
        assertThat(keys(rebind(1))).containsExactly("station.newestSheet");
        releaseSecond();
        rebind(2).then().statusCode(201);
        assertThat(keys(rebind(2))).containsExactly("station.newestSheet");
    }

    @Test
    void a_revision_that_is_not_in_force_is_not_taken() {
        releaseSecond();
        assertThat(keys(rebind(3))).containsExactly("station.otherRevision");
    }

    @Test
    void sending_it_twice_writes_once() {
        releaseSecond();
        var once = Map.of("id", Donor.id(), "revision", 2);
        donor.send(Cast.WORKS_ENGINEER, "/rebinding", once).then().statusCode(201);
        donor.send(Cast.WORKS_ENGINEER, "/rebinding", once).then().statusCode(200);
    }

    @Test
    void the_page_shows_what_stays_and_what_opens_before_it_is_done() {
        String path = "/orders/" + donor.number() + "/rebinding";
        var engineer = Browsing.as(Cast.WORKS_ENGINEER);
        assertThat(engineer.page(path)).contains("is the one in force").doesNotContain("Go on by revision");
        releaseSecond();
        assertThat(engineer.page(path))
                .containsSubsequence(
                        "from revision 1 to revision 2",
                        "Open again",
                        "Look at the doors and their hinges",
                        "not begun",
                        "Try the lamps",
                        "No longer asked",
                        "Count the seats",
                        "Stay as they are",
                        "Look over the frame");
        Map<String, Object> form = engineer.form(path);
        assertThat(engineer.send(path, form).header("Location")).endsWith("/station/" + donor.number());
        assertThat(states()).containsEntry("doors", "OPEN");
        assertThat(engineer.page("/orders/" + donor.number())).contains("Goes on by a newer sheet");
    }

    @Test
    void what_was_recorded_meanwhile_is_looked_at_first() {
        releaseSecond();
        String path = "/orders/" + donor.number() + "/rebinding";
        var engineer = Browsing.as(Cast.WORKS_ENGINEER);
        Map<String, Object> form = engineer.form(path);
        donor.send(
                        Cast.WORKS_ENGINEER,
                        "/facts",
                        Map.of("id", Donor.id(), "fact", "air_conditioning", "stated", "true"))
                .then()
                .statusCode(201);
        Response answer = engineer.send(path, form);
        assertThat(answer.statusCode()).isEqualTo(409);
        assertThat(answer.asString()).contains("changed since");
        assertThat(states()).containsEntry("seats", "PASSED");
    }

    /** Doors get other words, lamps are new, seats are gone; the frame's planned time alone changes nothing. */
    private void releaseSecond() {
        sheet.next(
                OwnSheet.item("frame", "Look over the frame", TICK, 30),
                OwnSheet.item("doors", "Look at the doors and their hinges", TICK, 5),
                OwnSheet.item("lamps", "Try the lamps", TICK, 5));
    }

    private Response record(String item) {
        return donor.record(Cast.TECHNICIAN, item, Map.of());
    }

    private Response rebind(int revision) {
        return donor.send(Cast.WORKS_ENGINEER, "/rebinding", Map.of("id", Donor.id(), "revision", revision));
    }

    private Map<String, String> states() {
        List<Map<String, Object>> items = Cast.TECHNICIAN
                .asks()
                .get("/api/v1/orders/" + donor.number() + "/sheet")
                .jsonPath()
                .getList("items");
        var states = new LinkedHashMap<String, String>();
        new ArrayList<>(items).forEach(item -> states.put((String) item.get("item"), (String) item.get("status")));
        return states;
    }

    private static List<String> keys(Response response) {
        assertThat(response.statusCode()).isEqualTo(409);
        return response.jsonPath().getList("reasons.key");
    }
}
