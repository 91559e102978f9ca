package wainbook.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wainbook.engineering.weights.weighing.AgainstPrediction;
import wainbook.engineering.weights.weighing.Height;
import wainbook.engineering.weights.weighing.Weighbridge;

/** Errors of a weighbridge of class III: SI 1995/1907, Schedule 2 paragraph 4, the same in OIML R 76 (read). The rest by a second hand. */
class WeighingTest {

    /** Half an interval up to 500 of them, one above; the table shows 500 in both rows, the lower was taken. */
    @ParameterizedTest
    @CsvSource({"9750, 10, 20", "10000, 10, 20", "10020, 20, 40", "18000, 20, 40", "44000, 30, 60"})
    void errors_of_a_weighbridge(double loadKg, double verificationKg, double serviceKg) {
        var bridge = new Weighbridge(20);

        assertThat(bridge.verificationErrorKg(loadKg)).isEqualTo(verificationKg);
        assertThat(bridge.serviceErrorKg(loadKg)).isEqualTo(serviceKg);
    }

    @ParameterizedTest
    @CsvSource({"9750, 10, 16.330", "5520, 15, 19.791"})
    void uncertainty_of_a_weighing(double loadKg, double repeatabilityKg, double uKg) {
        assertThat(new Weighbridge(20).uKg(loadKg, repeatabilityKg)).isCloseTo(uKg, within(0.001));
    }

    @Test
    void a_part_that_was_forgotten_shows_at_the_weighbridge() {
        var forgotten = new AgainstPrediction(5405.15, 37.48, 5520, 19.79);
        var within = new AgainstPrediction(5405.15, 37.48, 5460, 19.79);

        assertThat(forgotten.ratio()).isCloseTo(1.355, within(0.001));
        assertThat(forgotten.agrees()).isFalse();
        assertThat(within.ratio()).isCloseTo(0.647, within(0.001));
        assertThat(within.agrees()).isTrue();
    }

    /** However little is known, 100 kg at an axle are never taken without a reason. */
    @Test
    void wide_uncertainties_do_not_hide_a_hundred_kilograms() {
        var vague = new AgainstPrediction(5400, 80, 5501, 20);

        assertThat(vague.ratio()).isLessThan(1);
        assertThat(vague.agrees()).isFalse();
    }

    @ParameterizedTest
    @CsvSource({"1.60, 0.6406, 32.645, 0.001", "1.05, 0.976, 44.3, 0.05", "2.00, 0.5125, 27.1, 0.05"})
    void stability_of_a_rigid_body(double heightM, double factor, double degrees, double toDegrees) {
        assertThat(Height.stabilityFactor(2.05, heightM)).isCloseTo(factor, within(5e-4));
        assertThat(Height.rolloverDegrees(2.05, heightM)).isCloseTo(degrees, within(toDegrees));
    }

    @Test
    void the_height_by_its_parts() {
        var parts = new ArrayList<>(List.of(new Height.Mass(8500, 1.10)));
        double[][] changes = {
            {-980, 0.95},
            {-310, 0.80},
            {-185, 0.70},
            {-330, 0.75},
            {-60, 0.75},
            {-95, 1.10},
            {420, 0.75},
            {2240, 0.80},
            {310, 1.05},
            {240, 0.85}
        };
        for (double[] change : changes) {
            parts.add(new Height.Mass(change[0], change[1]));
        }

        assertThat(Height.byPartsM(parts)).isCloseTo(1.05446, within(1e-5));
    }

    @ParameterizedTest
    @CsvSource({"8, 5560, 1.076", "10, 5600, 1.078"})
    void the_height_by_tilting(double degrees, double tiltedKg, double heightM) {
        assertThat(Height.byTiltM(0.50, 5405.147, tiltedKg, 5.1, 9750, degrees)).isCloseTo(heightM, within(1e-3));
    }
}
