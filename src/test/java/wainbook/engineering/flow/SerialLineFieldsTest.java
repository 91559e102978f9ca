package wainbook.engineering.flow;

import static org.assertj.core.api.Assertions.assertThat;
import static wainbook.engineering.Answers.faultyFields;
import static wainbook.engineering.Answers.results;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import wainbook.engineering.Answer;
import wainbook.engineering.flow.SerialLine.Inputs;
import wainbook.engineering.flow.SerialLine.Results;
import wainbook.engineering.flow.SerialLine.Station;
import wainbook.engineering.flow.simulation.Law;

class SerialLineFieldsTest {

    @Test
    void asks_for_the_scatter_of_a_lognormal_law_and_refuses_one_that_a_law_cannot_have() {
        assertThat(faultyFields(of(station(Law.LOGNORMAL, Optional.empty())))).containsExactly("stations[0].cv");
        assertThat(faultyFields(of(station(Law.UNIFORM, Optional.of(0.6))))).containsExactly("stations[0].cv");
        assertThat(faultyFields(of(station(Law.EXPONENTIAL, Optional.of(0.5))))).containsExactly("stations[0].cv");
        assertThat(faultyFields(of(station(Law.DETERMINISTIC, Optional.of(0.5)))))
                .containsExactly("stations[0].cv");
        assertThat(results(of(station(Law.EXPONENTIAL, Optional.of(1.0)))).perHour())
                .isPositive();
        assertThat(results(of(station(Law.UNIFORM, Optional.of(0.0)))).perHour())
                .isEqualTo(60);
    }

    @Test
    void names_every_faulty_field() {
        assertThat(faultyFields(new SerialLine()
                        .of(new Inputs(
                                List.of(new Station(Law.UNIFORM, 0, Optional.of(-1.0), 0)), List.of(-1), 0, -1, 0, 1))))
                .containsExactly(
                        "stations[0].meanMinutes",
                        "stations[0].cv",
                        "stations[0].servers",
                        "rooms[0]",
                        "vehicles",
                        "warmUp",
                        "replications");
        assertThat(faultyFields(new SerialLine()
                        .of(new Inputs(Collections.nCopies(3, exponential()), List.of(0), 10, 0, 1, 1))))
                .containsExactly("rooms");
    }

    @Test
    void does_not_begin_on_what_would_take_minutes() {
        assertThat(faultyFields(
                        new SerialLine().of(new Inputs(List.of(exponential()), List.of(), 10_000_000, 0, 10_000, 1))))
                .containsExactly("vehicles");
    }

    @Test
    void one_replication_of_times_that_vary_has_no_interval() {
        Results once = results(new SerialLine().of(new Inputs(List.of(exponential()), List.of(), 100, 0, 1, 1)));

        assertThat(once.perHourLow()).isEmpty();
        assertThat(once.perHourHigh()).isEmpty();
    }

    @Test
    void the_same_seed_gives_the_same_figures_and_another_seed_others() {
        assertThat(results(seeded(5))).isEqualTo(results(seeded(5))).isNotEqualTo(results(seeded(6)));
    }

    private static Answer<Results> seeded(long seed) {
        return new SerialLine().of(new Inputs(Collections.nCopies(3, exponential()), List.of(0, 1), 500, 50, 8, seed));
    }

    private static Answer<Results> of(Station station) {
        return new SerialLine().of(new Inputs(List.of(station), List.of(), 100, 0, 2, 1));
    }

    private static Station station(Law law, Optional<Double> cv) {
        return new Station(law, 1, cv, 1);
    }

    private static Station exponential() {
        return station(Law.EXPONENTIAL, Optional.empty());
    }
}
