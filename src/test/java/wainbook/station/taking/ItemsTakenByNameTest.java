package wainbook.station.taking;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.time.Instant;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import wainbook.act.Reason;
import wainbook.house.Browsing;
import wainbook.house.Cast;
import wainbook.house.Donor;
import wainbook.ledger.Ledger;
import wainbook.ledger.Subject;

/** Of several at one vehicle each knows what is in hand with whom. */
@QuarkusTest
@Tag("database")
class ItemsTakenByNameTest {

    @Inject
    Taking taking;

    @Inject
    Ledger ledger;

    private Donor donor;

    @BeforeEach
    void a_donor_at_its_survey() {
        Cast.assemble();
        donor = Donor.received();
    }

    @Test
    void who_has_an_item_records_it_and_nobody_else_does() {
        take(Cast.TECHNICIAN).then().statusCode(201);
        assertThat(keys(record(Cast.SECOND_TECHNICIAN))).containsExactly("station.taken");
        assertThat(keys(take(Cast.SECOND_TECHNICIAN))).containsExactly("station.taken");
        record(Cast.TECHNICIAN).then().statusCode(201);
    }

    @Test
    void a_recorded_item_is_in_nobodys_hands() {
        take(Cast.TECHNICIAN).then().statusCode(201);
        record(Cast.TECHNICIAN).then().statusCode(201);
        assertThat(keys(giveBack(Cast.TECHNICIAN))).containsExactly("station.notTaken");
        assertThat(keys(take(Cast.SECOND_TECHNICIAN))).containsExactly("station.passedAlready");
    }

    @Test
    void an_item_given_back_is_free_for_the_next() {
        take(Cast.TECHNICIAN).then().statusCode(201);
        assertThat(keys(giveBack(Cast.SECOND_TECHNICIAN))).containsExactly("station.takenByAnother");
        giveBack(Cast.TECHNICIAN).then().statusCode(201);
        take(Cast.SECOND_TECHNICIAN).then().statusCode(201);
    }

    @Test
    void a_team_leader_frees_the_item_of_somebody_who_went_home() {
        take(Cast.TECHNICIAN).then().statusCode(201);
        giveBack(Cast.TEAM_LEADER).then().statusCode(201);
        record(Cast.SECOND_TECHNICIAN).then().statusCode(201);
    }

    @Test
    void a_name_stands_for_half_an_hour_and_is_renewed_by_taking_again() {
        Instant noon = ledger.history(Subject.workOrder(donor.number()))
                .entries()
                .get(0)
                .moment()
                .at()
                .plusSeconds(3600);
        taken(Cast.TECHNICIAN, noon);
        taken(Cast.TECHNICIAN, noon.plusSeconds(1200));
        assertThat(refused(Cast.SECOND_TECHNICIAN, noon.plusSeconds(2999))).containsExactly("station.taken");
        taken(Cast.SECOND_TECHNICIAN, noon.plusSeconds(3000));
    }

    @Test
    void sending_it_twice_writes_once() {
        var once = Map.of("id", Donor.id(), "item", "frame");
        donor.send(Cast.TECHNICIAN, "/taken", once).then().statusCode(201);
        donor.send(Cast.TECHNICIAN, "/taken", once).then().statusCode(200);
    }

    @Test
    void the_page_says_who_has_it_and_offers_what_would_not_be_refused() {
        var first = Browsing.as(Cast.TECHNICIAN);
        String page = "/station/" + donor.number() + "?item=frame";
        assertThat(first.page(page)).contains("Take it").doesNotContain("Give it back");
        Response answer = first.send("/station/" + donor.number() + "/frame/taken", first.form(page));
        assertThat(answer.statusCode()).isEqualTo(303);
        assertThat(first.page(page))
                .contains("In hand with Tess Nichols until", "Give it back")
                .doesNotContain("Take it<");
        assertThat(Browsing.as(Cast.SECOND_TECHNICIAN).page(page))
                .contains("In hand with Tess Nichols until", "is in hand with person 7001")
                .doesNotContain("Take it<", "Give it back");
    }

    private Response take(Cast person) {
        return donor.send(person, "/taken", Map.of("id", Donor.id(), "item", "frame"));
    }

    private Response giveBack(Cast person) {
        return donor.send(person, "/given-back", Map.of("id", Donor.id(), "item", "frame"));
    }

    private Response record(Cast person) {
        return donor.record(person, "frame", Map.of("choice", "Sound"));
    }

    private void taken(Cast person, Instant at) {
        assertThat(refused(person, at)).isEmpty();
    }

    private java.util.List<String> refused(Cast person, Instant at) {
        var asked = new Taking.ToTake(UUID.randomUUID(), donor.number(), "frame");
        return taking.take(asked, person.at(at))
                .fold(
                        entry -> java.util.List.<String>of(),
                        reasons -> reasons.stream().map(Reason::key).toList());
    }

    private static java.util.List<String> keys(Response response) {
        assertThat(response.statusCode()).isEqualTo(409);
        return response.jsonPath().getList("reasons.key");
    }
}
