package wainbook.engineering.flow;

import static org.assertj.core.api.Assertions.assertThat;
import static wainbook.engineering.Answers.faultyFields;
import static wainbook.engineering.Answers.refusal;
import static wainbook.engineering.Answers.results;
import static wainbook.engineering.Answers.working;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import wainbook.engineering.Answer;
import wainbook.engineering.Sentence;

class TaktTest {

    @Test
    void needs_no_station_more_for_the_last_bit_of_a_double() {
        assertThat(results(of(Optional.of(300.0), 1)).stationsAtLeast()).contains(3L);
        assertThat(results(of(Optional.of(Math.nextUp(300.0)), 1)).stationsAtLeast())
                .contains(3L);
        assertThat(results(of(Optional.of(300.0001), 1)).stationsAtLeast()).contains(4L);
    }

    @Test
    void needs_more_stations_when_less_of_the_takt_is_worked() {
        assertThat(results(of(Optional.of(300.0), 0.9)).stationsAtLeast()).contains(4L);
    }

    @Test
    void leaves_the_stations_out_where_no_work_content_is_given() {
        assertThat(results(of(Optional.empty(), 1)).stationsAtLeast()).isEmpty();
    }

    @Test
    void names_every_faulty_field() {
        assertThat(faultyFields(new Takt().of(new Takt.Inputs(0, -1, Optional.of(Double.NaN), 1.1))))
                .containsExactly("availableMinutes", "demand", "workMinutes", "efficiency");
        assertThat(faultyFields(of(Optional.empty(), 0))).containsExactly("efficiency");
    }

    @Test
    void says_the_takt_and_the_stations_where_there_is_work_to_share() {
        assertThat(working(of(Optional.of(300.0), 1)).because())
                .isEqualTo(Sentence.of("engineering.takt.stations", 100.0, 3L));
        assertThat(working(of(Optional.empty(), 1)).because()).isEqualTo(Sentence.of("engineering.takt.none", 100.0));
        assertThat(working(of(Optional.empty(), 1)).sources()).isNotEmpty();
        assertThat(new Takt().name()).isEqualTo("takt");
    }

    @Test
    void reckons_up_to_a_thousand_million_stations() {
        assertThat(results(of(Optional.of(100e9), 1)).stationsAtLeast()).contains(1_000_000_000L);
        assertThat(refusal(of(Optional.of(100.0001e9), 1))).isEqualTo("beyond-reckoning");
    }

    @Test
    void hands_out_no_number_of_stations_that_nobody_could_build() {
        assertThat(refusal(of(Optional.of(1e300), 1))).isEqualTo("beyond-reckoning");
        assertThat(refusal(new Takt().of(new Takt.Inputs(1e300, 1e-300, Optional.empty(), 1))))
                .isEqualTo("beyond-reckoning");
    }

    private static Answer<Takt.Results> of(Optional<Double> workMinutes, double efficiency) {
        return new Takt().of(new Takt.Inputs(1000, 10, workMinutes, efficiency));
    }
}
