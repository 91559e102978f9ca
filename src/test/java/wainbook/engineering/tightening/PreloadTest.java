package wainbook.engineering.tightening;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static wainbook.engineering.Answers.faultyFields;
import static wainbook.engineering.Answers.results;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import wainbook.engineering.Answer;

class PreloadTest {

    @Test
    void leads_from_torque_to_utilisation_and_back() {
        var from = results(of(Optional.of(50.0), Optional.empty(), 1.5));
        var back = results(of(Optional.empty(), Optional.of(from.utilisation()), 1.5));

        assertThat(back.torqueNm()).isCloseTo(50, within(1e-9));
        assertThat(back.preloadN()).isCloseTo(from.preloadN(), within(1e-6));
    }

    @Test
    void wants_torque_or_utilisation_and_not_both() {
        assertThat(faultyFields(of(Optional.empty(), Optional.empty(), 1.5)))
                .containsExactly("torqueNm", "utilisation");
        assertThat(faultyFields(of(Optional.of(1.0), Optional.of(0.9), 1.5)))
                .containsExactly("torqueNm", "utilisation");
    }

    @Test
    void refuses_a_pitch_that_leaves_no_core() {
        assertThat(faultyFields(of(Optional.of(50.0), Optional.empty(), 8.2))).containsExactly("pitchMm");
    }

    private static Answer<Preload.Results> of(Optional<Double> torqueNm, Optional<Double> utilisation, double pitchMm) {
        return new Preload().of(new Preload.Inputs(torqueNm, utilisation, 10, pitchMm, 640, 0.12, 0.12, 12.815));
    }
}
