package wainbook.station;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import wainbook.house.Browsing;
import wainbook.house.Cast;
import wainbook.house.Donor;
import wainbook.house.OwnSheet;
import wainbook.ledger.Ledger;
import wainbook.ledger.Subject;
import wainbook.process.sheet.Ask;
import wainbook.station.StationSaying.Attended;
import wainbook.station.StationSaying.Verdict;

/** Work that takes two: the entry names where it was done and who stood by. */
@QuarkusTest
class AttendedTest {

    @Inject
    Ledger ledger;

    private Donor bus;

    @BeforeEach
    void a_vehicle_that_moves_for_the_first_time() {
        Cast.assemble();
        bus = Donor.received(OwnSheet.released(OwnSheet.item(
                        "first-move",
                        "Move for the first time",
                        new Ask.Attended(List.of(
                                new Ask.Choice.Option("Brakes hold", true), new Ask.Choice.Option("Stopped", false))),
                        5))
                .route());
    }

    @Test
    void place_and_second_person_stand_in_the_entry_and_are_read_there() {
        said("Closed area", Cast.SECOND_TECHNICIAN.number()).then().statusCode(201);
        Attended said = ledger.history(Subject.workOrder(bus.number()))
                .last(Attended.class)
                .orElseThrow();
        assertThat(said.place()).isEqualTo("Closed area");
        assertThat(said.second()).isEqualTo(Cast.SECOND_TECHNICIAN.number());
        assertThat(said.verdict()).isEqualTo(Verdict.PASS);
        assertThat(Browsing.as(Cast.AUDITOR).page("/orders/" + bus.number()))
                .contains("at Closed area, with " + Cast.SECOND_TECHNICIAN.fullName() + " standing by");
    }

    @Test
    void nobody_is_their_own_second_person_and_a_stranger_is_none() {
        assertThat(keys(said("Closed area", Cast.TECHNICIAN.number()))).containsExactly("station.secondIsSelf");
        assertThat(keys(said("Closed area", "nobody"))).containsExactly("station.secondUnknown");
        assertThat(keys(said("Closed area", Cast.LEFT.number()))).containsExactly("station.secondUnknown");
        assertThat(ledger.history(Subject.workOrder(bus.number())).last(Attended.class))
                .isEmpty();
    }

    @Test
    void without_place_or_second_person_nothing_is_recorded() {
        assertThat(keys(bus.record(
                        Cast.TECHNICIAN,
                        "first-move",
                        Map.of(
                                "choice",
                                "Brakes hold",
                                "readings",
                                List.of(Map.of("name", "second", "value", Cast.SECOND_TECHNICIAN.number()))))))
                .containsExactly("station.placeMissing");
        assertThat(keys(bus.record(
                        Cast.TECHNICIAN,
                        "first-move",
                        Map.of(
                                "choice",
                                "Brakes hold",
                                "readings",
                                List.of(Map.of("name", "place", "value", "Closed area"))))))
                .containsExactly("station.secondMissing");
    }

    @Test
    void the_station_page_asks_for_both() {
        assertThat(Browsing.as(Cast.TECHNICIAN).page("/station/" + bus.number() + "?item=first-move"))
                .contains("Second person, with no other task", "name=\"place\"", Cast.SECOND_TECHNICIAN.fullName());
    }

    private Response said(String place, String second) {
        return bus.record(
                Cast.TECHNICIAN,
                "first-move",
                Map.of(
                        "choice",
                        "Brakes hold",
                        "readings",
                        List.of(Map.of("name", "place", "value", place), Map.of("name", "second", "value", second))));
    }

    private static List<String> keys(Response answer) {
        return answer.jsonPath().getList("reasons.key");
    }
}
