package wainbook.process.joint;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wainbook.process.joint.Joint.Window;

/** Torque 64 to 78 N·m with 20 to 45 degrees from snug. The table is common practice, no source. */
class SuspectTest {

    @ParameterizedTest(name = "{0} N·m and {1}° let one suspect {2}")
    @CsvSource({
        "71, 12, ALREADY_TIGHT",
        "71, 60, YIELDING",
        "50, 60, STRIPPED",
        "50, 12, STOPPED_EARLY",
        "90, 12, SEIZED",
        "71, 4.9, SECOND_HIT",
        "71, 5, ALREADY_TIGHT",
        "50, 0, STOPPED_EARLY",
        "90, 0, SEIZED",
    })
    void torque_and_angle_name_a_suspect(String torqueNm, String degrees, Suspect suspect) {
        assertThat(suspect(torqueNm, degrees)).contains(suspect);
        assertThat(suspect.inWords()).isNotBlank();
    }

    @ParameterizedTest(name = "{0} N·m and {1}° say no more than one of them alone")
    @CsvSource({"71, 20", "64, 45", "90, 30", "50, 30", "90, 60"})
    void an_angle_in_its_window_or_both_above_name_none(String torqueNm, String degrees) {
        assertThat(suspect(torqueNm, degrees)).isEmpty();
    }

    @Test
    void a_window_that_begins_below_five_degrees_takes_a_short_turn_for_a_tightening() {
        var window = new Window(new BigDecimal("3"), new BigDecimal("10"));
        assertThat(Suspect.of(limits(), window, new BigDecimal("71"), new BigDecimal("4")))
                .isEmpty();
    }

    private static Optional<Suspect> suspect(String torqueNm, String degrees) {
        var window = new Window(new BigDecimal("20"), new BigDecimal("45"));
        return Suspect.of(limits(), window, new BigDecimal(torqueNm), new BigDecimal(degrees));
    }

    private static Window limits() {
        return new Window(new BigDecimal("64"), new BigDecimal("78"));
    }
}
