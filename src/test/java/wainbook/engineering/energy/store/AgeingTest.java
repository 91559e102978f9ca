package wainbook.engineering.energy.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wainbook.engineering.energy.consumers.PackConditioning;

/** What packs lose with use, time and cold: straight lines, from memory; the figures of an invented data sheet. */
class AgeingTest {

    private static final Ageing PACK = new Ageing(0.05, 0.012);

    /** 0.05 · 200 / 1000 + 0.012 = 0.022 a year. */
    @ParameterizedTest
    @CsvSource({"0, 1", "1, 0.978", "5, 0.89", "10, 0.78", "45, 0.01", "46, 0"})
    void capacity_falls_in_a_straight_line_and_not_below_nought(double years, double health) {
        assertThat(PACK.stateOfHealth(200, years)).isCloseTo(health, within(1e-12));
    }

    /** 0.2 / 0.022. */
    @Test
    void a_state_of_health_is_reached_after_so_many_years() {
        assertThat(PACK.yearsTo(0.8, 200)).isCloseTo(9.0909090909, within(1e-9));
        assertThat(PACK.yearsTo(1.1, 200)).isCloseTo(-4.5454545455, within(1e-9));
        assertThat(new Ageing(0, 0).yearsTo(0.8, 200)).isInfinite();
    }

    /** 1 − 0.005 · (20 − T). */
    @ParameterizedTest
    @CsvSource({"25, 1", "20, 1", "19, 0.995", "0, 0.9", "-10, 0.85", "-40, 0.7"})
    void a_cold_pack_gives_half_a_percent_a_kelvin_less(double packC, double share) {
        assertThat(Window.coldShare(packC)).isCloseTo(share, within(1e-12));
    }

    @ParameterizedTest
    @CsvSource({"-10, 0.5", "4.9, 0.5", "5, 0", "18, 0"})
    void packs_are_kept_warm_below_five_degrees(double outsideC, double kw) {
        assertThat(PackConditioning.kw(outsideC)).isEqualTo(kw);
    }
}
