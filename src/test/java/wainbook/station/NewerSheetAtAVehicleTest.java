package wainbook.station;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.time.Clock;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import wainbook.act.Actor;
import wainbook.house.Browsing;
import wainbook.house.Cast;
import wainbook.house.Donor;
import wainbook.ledger.Asked;
import wainbook.ledger.Decision;
import wainbook.ledger.Ledger;
import wainbook.ledger.Saying;
import wainbook.ledger.Subject;
import wainbook.process.Ask;
import wainbook.process.CheckItem;
import wainbook.process.CheckSheet;
import wainbook.process.Condition;
import wainbook.process.Draft;
import wainbook.process.Known;
import wainbook.process.ProcessSaying.Released;
import wainbook.process.ProcessSaying.RouteReleased;
import wainbook.process.Releases;
import wainbook.process.Route;
import wainbook.process.VehicleFacts;

/** A vehicle goes on by a newer revision of its sheet, and keeps what that revision left as it was. */
@QuarkusTest
class NewerSheetAtAVehicleTest {

    private static final Known KNOWN = new Known(List.of(), Set.of("intake"), Set.of(), VehicleFacts.PREDICATES);

    @Inject
    Ledger ledger;

    @Inject
    Releases releases;

    @Inject
    Clock clock;

    private String sheet;
    private Donor donor;

    /** A route and a sheet of the test's own, so that no other test meets the newer revision. */
    @BeforeEach
    void a_donor_bound_to_the_first_revision() {
        Cast.assemble();
        String unique = UUID.randomUUID().toString().substring(0, 8).toUpperCase(Locale.ROOT);
        sheet = "SURVEY-" + unique;
        Route demo = releases.route("BUS-12M").orElseThrow();
        release(
                item("frame", "Look over the frame"),
                item("doors", "Look at the doors"),
                item("seats", "Count the seats"));
        say(
                Subject.works(),
                new RouteReleased(
                        new Route("ROUTE-" + unique, "Route of a test", demo.legs(), demo.vehicleKind(), sheet), 1));
        donor = Donor.received("ROUTE-" + unique);
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
        release(
                new CheckItem(
                        "frame",
                        "Look over the frame",
                        new Ask.Confirm(Optional.empty()),
                        Condition.NONE,
                        Optional.empty(),
                        Optional.empty(),
                        30,
                        Optional.empty(),
                        List.of(),
                        List.of(),
                        List.of(),
                        Optional.empty(),
                        1),
                item("doors", "Look at the doors and their hinges"),
                item("lamps", "Try the lamps"));
    }

    private void release(CheckItem... items) {
        var draft = new Draft(new CheckSheet(sheet, "Survey of a test", List.of(items), "intake"));
        Released released = draft.release(KNOWN, releases.sheetInForce(sheet)).fold(next -> next, reasons -> {
            throw new AssertionError(reasons);
        });
        say(Subject.checkSheet(sheet), released);
    }

    private static CheckItem item(String key, String title) {
        return new CheckItem(
                key,
                title,
                new Ask.Confirm(Optional.empty()),
                Condition.NONE,
                Optional.empty(),
                Optional.empty(),
                5,
                Optional.empty(),
                List.of(),
                List.of(),
                List.of(),
                Optional.empty(),
                1);
    }

    private void say(Subject subject, Saying saying) {
        var asked = new Told(UUID.randomUUID(), List.of(subject), saying.getClass());
        ledger.write(asked, Actor.of(Cast.WORKS_ENGINEER.number(), clock), reading -> Decision.say(subject, saying))
                .fold(entry -> entry, reasons -> {
                    throw new AssertionError(reasons);
                });
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

    private record Told(UUID id, List<Subject> writes, Class<? extends Saying> says) implements Asked {}
}
