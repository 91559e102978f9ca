package wainbook.line.measure.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.quarkus.test.junit.QuarkusTest;
import io.restassured.path.json.JsonPath;
import jakarta.inject.Inject;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import wainbook.house.Browsing;
import wainbook.house.Cast;
import wainbook.house.OnRecord;
import wainbook.station.StationSaying.Help;
import wainbook.station.StationSaying.HelpCalled;
import wainbook.works.shift.WorksDay;

@QuarkusTest
class MeasuresPageTest {

    @Inject
    WorksDay day;

    @Inject
    Clock clock;

    private OnRecord gone;
    private OnRecord there;

    @BeforeEach
    void one_bus_has_left_the_line_and_one_is_on_it() {
        Cast.assemble();
        gone = OnRecord.accepted()
                .at("strip", "ST-1")
                .signed()
                .at("fitting", "ST-2")
                .signed();
        gone.out();
        there = OnRecord.accepted().at("strip", "ST-1");
    }

    @AfterEach
    void the_station_is_free_again() {
        there.out();
    }

    @Test
    void the_page_says_what_was_made_what_stations_did_and_how_each_figure_is_worked_out() {
        String page = page("/line/measures");

        assertThat(page)
                .containsPattern("<h1>Measures: \\d+ made( of [0-9.]+ planned)?, \\d+ \\w+ \\d+ to \\d+ \\w+ \\d+</h1>")
                .contains("Time on the line", "Work in progress at the end", "First pass yield (FPY)", "Rolled yield")
                .contains("Availability", "APT / PBT", "the text of the standard was not read")
                .contains("L = ∫ number on the line dt / working time")
                .contains("Last four weeks", "Shifts, takt, stations and routes are those in force today");
    }

    @Test
    void scripts_get_the_same_period_with_states_that_add_up_to_it() {
        JsonPath answer = Cast.AUDITOR
                .asks()
                .get("/api/v1/line/measures?from=" + today() + "&to=" + today())
                .jsonPath();

        assertThat(answer.getInt("made")).isPositive();
        assertThat(answer.<String>getList("onTheLine.order"))
                .contains(there.number())
                .doesNotContain(gone.number());
        double period = Duration.between(day.beginOfDay(clock.instant()), Instant.parse(answer.getString("end")))
                        .toMillis()
                / 60_000.0;
        for (Map<String, Float> minutes : answer.<Map<String, Float>>getList("stations.minutes")) {
            double sum =
                    minutes.values().stream().mapToDouble(Float::doubleValue).sum();
            assertThat(sum).isCloseTo(period, within(0.1));
        }
        assertThat(answer.<String>getList("gates.stage")).contains("strip", "fitting");
    }

    @Test
    void a_day_that_is_none_keeps_what_was_typed_and_scripts_are_told_where() {
        String page = page("/line/measures?from=yesterday&to=2026-11-25");

        assertThat(page).contains("value=\"yesterday\"", "This is no day. Write it as", "id=\"from-fault\"");
        Cast.AUDITOR.asks().get("/api/v1/line/measures?from=yesterday").then().statusCode(400);
        assertThat(page("/line/measures?from=2026-11-25&to=2026-11-01")).contains("The last day lies before the first");
        assertThat(page("/line/measures?from=2020-01-01&to=2026-11-01")).contains("No more than 400 days");
    }

    @Test
    void days_without_anything_on_the_line_say_so() {
        assertThat(page("/line/measures?from=2001-01-01&to=2001-01-05"))
                .contains("No vehicle was on the line in these days", "Measures: 0 made");
        assertThat(page("/line/measures?from=2101-01-01&to=2101-01-05")).contains("This day is still to come");
    }

    @Test
    void a_kind_narrows_what_vehicles_did_and_stays_in_every_link() {
        String page = page("/line/measures?from=" + today() + "&to=" + today() + "&kind=no-such-kind");

        assertThat(page).contains("Measures: 0 made", "&amp;kind=no-such-kind");
        assertThat(page("/line/measures?kind=bus-12m")).contains("<option value=\"bus-12m\" selected>");
    }

    @Test
    void calls_for_help_are_counted_and_the_oldest_open_one_is_linked() {
        there.say(new HelpCalled(
                1, Help.MAINTENANCE, Optional.of("strip"), Optional.of("ST-1"), Optional.empty(), false));
        String page = page("/line/measures?from=" + today() + "&to=" + today());

        assertThat(page).contains("Longest open of all:", "Calls of vehicles that were on the line in the period");
    }

    @Test
    void the_tables_come_as_files() {
        assertThat(page("/line/measures.csv")).startsWith("measure,value,unit,");
        assertThat(page("/line/measures/stations.csv"))
                .startsWith("station,stage,")
                .contains("ST-1,strip");
        assertThat(page("/line/measures/lost.csv")).startsWith("station,state,cause,");
        assertThat(page("/line/measures/calls.csv")).startsWith("help,calls,");
    }

    @Test
    void the_line_leads_to_its_measures_and_one_place_alone_is_open_there() {
        assertThat(page("/line")).contains("href=\"/line/measures\"");
        List<String> open = page("/line/measures")
                .lines()
                .filter(line -> line.strip().startsWith("<li><a href=\"/line") && line.contains("aria-current"))
                .toList();
        assertThat(open).hasSize(2);
        assertThat(open.get(1)).contains("/line/measures");
    }

    private LocalDate today() {
        return day.of(clock.instant());
    }

    private static String page(String path) {
        return Browsing.as(Cast.LINE_MANAGER).page(path);
    }
}
