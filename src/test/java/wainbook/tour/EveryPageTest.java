package wainbook.tour;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.net.URL;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Queue;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ConcurrentLinkedQueue;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import wainbook.house.Browsing;
import wainbook.ledger.Ledger;
import wainbook.ledger.Subject;
import wainbook.setup.DemoWorks;

/**
 * Every page of the program, with a works in full swing on it. A page that is added later is visited by itself, or fails
 * here until {@link Stops} knows an example of it. {@code -Plooks} looks at more sizes and keeps pictures.
 */
@QuarkusTest
@TestProfile(FullWorks.class)
class EveryPageTest {

    /** Whom the table's roles are in the demo works, the one first who sees most. */
    private static final Map<String, String> PEOPLE = new LinkedHashMap<>();

    static {
        PEOPLE.put("works-engineer", "ingrid");
        PEOPLE.put("quality-engineer", "kofi");
        PEOPLE.put("administrator", "nadia");
        PEOPLE.put("handover-clerk", "leilani");
        PEOPLE.put("line-manager", "fatima");
        PEOPLE.put("inspector", "mateo");
        PEOPLE.put("team-leader", "ewa");
        PEOPLE.put("auditor", "ruben");
        PEOPLE.put("technician", "amara");
    }

    /** Whose page it is, by how its address begins. */
    private static final Map<String, String> FITTING = Map.of(
            "/gates", "mateo",
            "/isolation", "amara",
            "/locks", "amara",
            "/station", "amara",
            "/handover", "leilani",
            "/line", "fatima",
            "/setup", "nadia",
            "/sign-in", Eyes.STRANGER);

    /** What never comes to an end: the stream of a page that is told anew. */
    private static final String STREAM = ".*/events";

    /** Not whole pages: a part of the line page, files of evidence, and what leads elsewhere once a works has begun. */
    private static final Set<String> NO_PAGE =
            Set.of("/line/stations", "/wall/posts", "/demo/play", "/evidence/{sha256}", "/", "/first-start");

    /** Where nothing to show is what there is. */
    private static final Set<String> MAY_BE_BARE = Set.of(
            "/tokens",
            "/looks",
            "/milestones/webhooks",
            "/quality/questions",
            Stops.EMPTY_STATION,
            "/people/" + StageSetting.LONG_PERSON);

    private static Eyes eyes;
    private static Stops stops;

    @TestHTTPResource
    URL base;

    @Inject
    Ledger ledger;

    @Inject
    Clock clock;

    @BeforeEach
    void begin() {
        if (eyes == null) {
            nothingIsPlayedAheadOfTime();
            List<Map<String, Object>> orders =
                    new Asking("ingrid").get("/orders").getList("$");
            StageSetting.set(orders.stream()
                    .filter(order -> "packs".equals(order.get("stage")) && "ON_LINE".equals(order.get("phase")))
                    .map(order -> (String) order.get("number"))
                    .findFirst()
                    .orElseThrow());
            stops = new Stops();
            eyes = new Eyes(base.toString(), DemoWorks.PASSWORD);
        }
        eyes.wrong().clear();
    }

    /** Else nothing could be recorded at such a vehicle until the clock has caught up. */
    private void nothingIsPlayedAheadOfTime() {
        Instant now = clock.instant();
        assertThat(ledger.subjects(Subject.Sort.WORK_ORDER))
                .isNotEmpty()
                .allSatisfy(order -> assertThat(ledger.history(order).entries())
                        .as(order.code())
                        .last()
                        .satisfies(last -> assertThat(last.moment().at()).isBeforeOrEqualTo(now)));
    }

    @AfterAll
    static void end() {
        if (eyes != null) {
            eyes.close();
        }
    }

    /** By two people at once, each with a browser of their own: it is the longest test of all. */
    @Test
    void everybody_can_read_every_page() {
        Queue<Visit> visits = visits();
        var second = CompletableFuture.supplyAsync(() -> {
            try (var others = new Eyes(base.toString(), DemoWorks.PASSWORD)) {
                others.lookAt(visits, MAY_BE_BARE);
                return others.wrong();
            }
        });
        eyes.lookAt(visits, MAY_BE_BARE);
        assertThat(eyes.wrong()).isEmpty();
        assertThat(second.join()).isEmpty();
    }

    private static Queue<Visit> visits() {
        Queue<Visit> visits = new ConcurrentLinkedQueue<>();
        for (Door door : pages()) {
            List<String> paths = stops.at(door);
            assertThat(paths).as("Stops knows no example of " + door.path()).isNotEmpty();
            paths.stream()
                    .filter(path -> path.matches(System.getProperty("looks.only", ".*")))
                    .forEach(path -> visits.add(new Visit(user(door), path)));
        }
        return visits;
    }

    @Test
    void what_the_tour_leaves_out_is_no_page() {
        for (Door door : Door.all()) {
            if (NO_PAGE.contains(door.path()) && !door.hasParameters()) {
                Response answer = Browsing.as("ingrid", DemoWorks.PASSWORD).get(door.path());
                assertThat(answer.asString()).as(door.path()).doesNotContain("<html");
            }
        }
    }

    @Test
    void the_longest_names_stay_on_the_page() {
        String order = "/orders/" + StageSetting.LONG_ORDER;
        Map<String, List<String>> where = Map.of(
                "ingrid",
                List.of(order, "/orders?search=LANGER", order + "/hold", "/process", "/people", "/gates", "/line"),
                "leilani",
                List.of("/handover", order + "/facts?fact=keeper"),
                "amara",
                List.of(order + "/donor", "/trace?q=" + StageSetting.LONG_ORDER));
        where.forEach((user, paths) -> paths.forEach(path -> eyes.look(user, path, List.of(Size.TELEPHONE))));
        assertThat(eyes.wrong()).isEmpty();
    }

    @Test
    @EnabledIfSystemProperty(named = "guides", matches = "true")
    void the_guides_get_their_pictures() {
        new GuidePictures(eyes, stops).take();
        assertThat(eyes.wrong()).isEmpty();
    }

    private static List<Door> pages() {
        var pages = new ArrayList<>(Door.all());
        pages.removeIf(
                door -> NO_PAGE.contains(door.path()) || door.path().matches(".*\\.(csv|zip|ndjson|pdf)|" + STREAM));
        assertThat(pages).hasSizeGreaterThan(50);
        return pages;
    }

    private static String user(Door door) {
        Optional<String> fitting = FITTING.entrySet().stream()
                .filter(entry -> door.path().startsWith(entry.getKey()))
                .map(Map.Entry::getValue)
                .findFirst();
        return fitting.filter(user -> user.equals(Eyes.STRANGER) || mayEnter(user, door))
                .or(() -> PEOPLE.entrySet().stream()
                        .filter(person -> door.roles().contains(person.getKey()))
                        .map(Map.Entry::getValue)
                        .findFirst())
                .orElseThrow();
    }

    private static boolean mayEnter(String user, Door door) {
        return PEOPLE.entrySet().stream()
                .anyMatch(
                        person -> person.getValue().equals(user) && door.roles().contains(person.getKey()));
    }
}
