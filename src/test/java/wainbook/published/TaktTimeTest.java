package wainbook.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static wainbook.engineering.Answers.results;

import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wainbook.engineering.flow.Takt;

/**
 * Cycle time = available time / desired output, theoretical stations = work / cycle time rounded up: public lecture notes on
 * assembly line balancing. Numbers by hand.
 */
class TaktTimeTest {

    @ParameterizedTest
    @CsvSource({"104625, 950, 110.1315789474", "216000, 2400, 90"})
    void minutes_a_vehicle(double availableMinutes, double demand, double taktMinutes) {
        var found = results(new Takt().of(new Takt.Inputs(availableMinutes, demand, Optional.empty(), 1)));

        assertThat(found.taktMinutes()).isCloseTo(taktMinutes, within(1e-9));
    }

    /** 980 person-minutes shared by two people at a station are 490 station-minutes. */
    @ParameterizedTest
    @CsvSource({"1, 5", "0.9, 5", "0.8, 6"})
    void stations_for_a_work_content(double efficiency, long stations) {
        var found = results(new Takt().of(new Takt.Inputs(104_625, 950, Optional.of(490.0), efficiency)));

        assertThat(found.stationsAtLeast()).contains(stations);
    }
}
