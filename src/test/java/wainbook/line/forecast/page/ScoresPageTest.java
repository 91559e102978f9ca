package wainbook.line.forecast.page;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.Clock;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import wainbook.act.Outcome;
import wainbook.house.Browsing;
import wainbook.house.Cast;
import wainbook.house.OnRecord;
import wainbook.ledger.Entry;
import wainbook.ledger.Ledger;
import wainbook.ledger.Subject;
import wainbook.line.LineSaying.ForecastKept;
import wainbook.line.forecast.kept.KeptForecasts;
import wainbook.works.shift.WorksDay;

@QuarkusTest
@Tag("database")
class ScoresPageTest {

    @Inject
    KeptForecasts kept;

    @Inject
    Ledger ledger;

    @Inject
    WorksDay day;

    @Inject
    Clock clock;

    private OnRecord bus;

    @BeforeEach
    void a_bus_is_on_the_line() {
        Cast.assemble();
        bus = OnRecord.accepted().at("strip", "ST-1");
    }

    @AfterEach
    void the_station_is_free_again() {
        bus.out();
    }

    @Test
    void a_forecast_is_kept_once_a_day_and_says_every_vehicle() {
        Outcome<Entry> first = kept.keep(clock);
        Outcome<Entry> again = kept.keep(clock);

        Entry entry = first.fold(said -> said, said -> said, reasons -> {
            throw new AssertionError(reasons);
        });
        String second = again.fold(said -> "done", said -> "already", reasons -> "refused");
        assertThat(second).isEqualTo("already");
        assertThat(kept.isKept(day.of(clock.instant()))).isTrue();
        assertThat(ledger.history(Subject.forecast(day.of(clock.instant()))).number())
                .isEqualTo(1);
        assertThat(entry.saying()).isInstanceOf(ForecastKept.class);
        assertThat(kept.lately())
                .isNotEmpty()
                .allSatisfy(one -> assertThat(one.finish()).isSorted());
    }

    @Test
    void the_page_says_what_was_kept_and_what_was_not_and_lists_the_scores_by_name() {
        String page = Browsing.as(Cast.AUDITOR).page("/forecast/scores");

        assertThat(page)
                .contains("How good forecasts were", "Worked out afterwards")
                .doesNotContain("/forecast/scores/back-test");
        assertThat(Browsing.as(Cast.AUDITOR).page("/forecast/scores.csv")).startsWith("how,\"working days ahead\"");
        assertThat(Browsing.as(Cast.WORKS_ENGINEER).page("/forecast/scores")).contains("/forecast/scores/back-test");
    }

    @Test
    void scripts_get_the_scores_by_horizon() {
        assertThat(Cast.AUDITOR.asks().get("/api/v1/forecast/scores").jsonPath().<Integer>getList("kept.days"))
                .containsExactly(1, 3, 5, 10);
    }
}
