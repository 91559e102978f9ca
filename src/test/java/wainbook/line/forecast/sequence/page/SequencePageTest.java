package wainbook.line.forecast.sequence.page;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.http.ContentType;
import io.restassured.path.json.JsonPath;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import wainbook.engineering.flow.score.PairedDifference;
import wainbook.engineering.flow.sequence.Found.Ending;
import wainbook.engineering.flow.sequence.Found.Verdict;
import wainbook.house.Browsing;
import wainbook.house.Cast;
import wainbook.house.OnRecord;
import wainbook.line.forecast.sequence.EntrySearch;
import wainbook.line.forecast.sequence.EntrySearch.Standing;
import wainbook.line.forecast.sequence.Proposal;

@QuarkusTest
@Tag("database")
class SequencePageTest {

    private static final String PAGE = "/forecast/sequence";
    private static final String API = "/api/v1/forecast/sequence";
    private static final PairedDifference GAIN = new PairedDifference(300, 20, 2000);
    private static final PairedDifference LIKELIER = new PairedDifference(0.4, 0.02, 2000);

    @Inject
    Clock clock;

    @Inject
    ObjectMapper mapper;

    private OnRecord one;
    private OnRecord other;
    private Browsing manager;

    @BeforeEach
    void two_donors_wait() {
        Cast.assemble();
        one = OnRecord.accepted();
        other = OnRecord.accepted();
        manager = Browsing.as(Cast.LINE_MANAGER);
        forgotten();
    }

    @AfterEach
    void nothing_is_left_for_others() {
        Optional.ofNullable(today().getList("lastSet.orders"))
                .filter(set -> !set.isEmpty())
                .ifPresent(set -> set(last(), List.of()));
        forgotten();
    }

    @Test
    void those_that_wait_are_shown_in_todays_order_to_everybody() {
        Browsing auditor = Browsing.as(Cast.AUDITOR);

        assertThat(auditor.page("/forecast")).contains("href=\"/forecast/sequence\"");
        assertThat(auditor.page("/forecast/what-if")).contains("href=\"/forecast/sequence\"");
        assertThat(auditor.page(PAGE))
                .contains("Order of entry: which vehicle next", one.number(), other.number(), "No search was made yet")
                .doesNotContain("<button>Search for a better order");
        assertThat(auditor.page("/forecast/sequence.csv"))
                .startsWith("place,place_today,order,kind,donor_here,promised_on")
                .contains(one.number());
    }

    /** Other tests may have left many vehicles in front of the line: it is cancelled, so that it ends soon. */
    @Test
    void a_search_runs_behind_the_page_and_what_it_found_until_it_was_cancelled_is_kept() {
        Response sent = manager.send(PAGE + "/searches", manager.form(PAGE));
        assertThat(sent.statusCode()).isEqualTo(303);
        UUID id = newest().id;
        manager.send(PAGE + "/searches/" + id + "/cancel", manager.form(PAGE));

        ended();

        JsonPath found = today();
        assertThat(found.getString("search.standing")).isIn("CANCELLED", "ENDED");
        assertThat(found.getInt("search.proposal.compared")).isEqualTo(2000);
        assertThat(found.<String>getList("search.proposal.places.order"))
                .containsExactlyInAnyOrderElementsOf(found.<String>getList("today"));
        assertThat(Browsing.as(Cast.AUDITOR).page(PAGE)).contains("promised days", "Made for the line as it stood on");
    }

    @Test
    void the_same_search_sent_twice_begins_once() {
        String id = UUID.randomUUID().toString();
        search(id, 202);
        search(id, 200);
        manager.send(PAGE + "/searches/" + id + "/cancel", manager.form(PAGE));
        ended();
    }

    @Test
    void a_search_that_a_restart_ended_is_told_as_interrupted() {
        keep(Standing.INTERRUPTED, null);

        assertThat(manager.page(PAGE)).contains("interrupted by a restart");
    }

    @Test
    void another_order_is_shown_with_what_it_gains_and_for_whom() {
        keep(Standing.ENDED, proposed());

        String page = Browsing.as(Cast.AUDITOR).page(PAGE);

        assertThat(page)
                .contains(
                        "another order saves about 300 late minutes",
                        "95 % interval 280 to 320",
                        "likelier kept",
                        "heuristic")
                .doesNotContain("Set this order");
        assertThat(manager.page(PAGE)).contains("Set this order");
    }

    @Test
    void set_by_the_line_manager_it_is_the_forecasts_order_until_it_is_taken_back() {
        List<String> before = today().getList("today");
        List<String> proposed = proposed();
        UUID id = keep(Standing.ENDED, proposed);

        Response set = manager.send(PAGE + "/searches/" + id + "/setting", form());

        assertThat(set.statusCode()).isEqualTo(303);
        assertThat(today().<String>getList("today")).isEqualTo(proposed);
        assertThat(manager.page(PAGE))
                .contains("Order of entry set by Lina Mander on", "the proposed order is in force");
        assertThat(manager.page("/forecast")).contains("in the order that Lina Mander set on");

        assertThat(manager.send(PAGE + "/order/taken-back", form()).statusCode())
                .isEqualTo(303);
        assertThat(today().<String>getList("today")).isEqualTo(before);
        assertThat(manager.page(PAGE)).doesNotContain("Order of entry set by");
    }

    @Test
    void once_others_wait_a_proposal_is_out_of_date() {
        keep(Standing.ENDED, proposed());
        OnRecord third = OnRecord.accepted();

        assertThat(manager.page(PAGE))
                .contains("This is out of date", "Search again", other.number())
                .doesNotContain("Set this order")
                .doesNotContain(third.number());
    }

    @Test
    void an_order_set_over_one_that_was_not_seen_or_with_one_that_does_not_wait_is_refused() {
        long last = last();
        assertThat(set(last, List.of(other.number())).statusCode()).isEqualTo(201);

        Response unseen = set(last, List.of(one.number()));
        assertThat(unseen.statusCode()).isEqualTo(409);
        assertThat(unseen.asString()).contains("Another one was set or taken back");

        Response unknown = set(last(), List.of("NOT-HERE"));
        assertThat(unknown.statusCode()).isEqualTo(409);
        assertThat(unknown.asString()).contains("NOT-HERE cannot be put in order");
    }

    private Map<String, Object> form() {
        Map<String, Object> form = manager.form(PAGE);
        form.put("id", UUID.randomUUID().toString());
        form.put("replaces", String.valueOf(last()));
        return form;
    }

    private static long last() {
        return Optional.ofNullable((Integer) today().get("lastSet.entry")).orElse(0);
    }

    private static Response set(long replaces, List<String> orders) {
        return Cast.LINE_MANAGER
                .asks()
                .contentType(ContentType.JSON)
                .body(Map.of("id", UUID.randomUUID().toString(), "replaces", replaces, "orders", orders))
                .post(API + "/order");
    }

    private static void search(String id, int status) {
        Cast.LINE_MANAGER
                .asks()
                .contentType(ContentType.JSON)
                .body(Map.of("id", id))
                .post(API + "/searches")
                .then()
                .statusCode(status);
    }

    private static JsonPath today() {
        return Cast.AUDITOR.asks().get(API).then().statusCode(200).extract().jsonPath();
    }

    private void ended() {
        for (int looks = 0; manager.page(PAGE).contains("Cancel the search"); looks++) {
            assertThat(looks).as("looks at a search that does not end").isLessThan(20_000);
        }
    }

    /** Today's order with the first two donors in the yard the other way round. */
    private static List<String> proposed() {
        List<String> orders = new ArrayList<>(today().<String>getList("today"));
        Collections.swap(orders, 0, 1);
        return orders;
    }

    private UUID keep(Standing standing, List<String> orders) {
        return QuarkusTransaction.requiringNew().call(() -> {
            var row = new EntrySearch();
            row.id = UUID.randomUUID();
            row.askedBy = "7008";
            row.begun = clock.instant();
            row.standing = standing;
            row.outcome = orders == null ? null : outcome(orders);
            row.persist();
            return row.id;
        });
    }

    private String outcome(List<String> orders) {
        List<String> today = today().getList("today");
        try {
            return mapper.writeValueAsString(new Proposal(
                    clock.instant(),
                    0,
                    Verdict.BETTER,
                    Ending.NO_MOVE_BETTERS,
                    99,
                    5040,
                    200,
                    2000,
                    1,
                    500,
                    200,
                    GAIN,
                    orders.size(),
                    3,
                    LIKELIER,
                    1,
                    0,
                    orders.stream()
                            .map(order -> new Proposal.Place(
                                    order,
                                    "bus-12m",
                                    LocalDate.of(2027, 2, 12),
                                    true,
                                    today.indexOf(order) + 1,
                                    0.5,
                                    0.9,
                                    LIKELIER,
                                    Optional.of(clock.instant()),
                                    Optional.empty(),
                                    OptionalDouble.of(-40)))
                            .toList()));
        } catch (JsonProcessingException unwritten) {
            throw new IllegalStateException(unwritten);
        }
    }

    private static EntrySearch newest() {
        return QuarkusTransaction.requiringNew().call(() -> EntrySearch.newest().orElseThrow());
    }

    private static void forgotten() {
        QuarkusTransaction.requiringNew().run(() -> EntrySearch.deleteAll());
    }
}
