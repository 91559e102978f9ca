package wainbook.engineering.statistics;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class SubgroupChartTest {

    @Test
    void a_point_on_a_control_limit_is_within_it_and_the_least_beyond_is_outside() {
        assertThat(SubgroupChart.outside(9, 9, 11)).isFalse();
        assertThat(SubgroupChart.outside(11, 9, 11)).isFalse();
        assertThat(SubgroupChart.outside(8.9999999, 9, 11)).isTrue();
        assertThat(SubgroupChart.outside(11.0000001, 9, 11)).isTrue();
        assertThat(SubgroupChart.outside(0.1 + 0.2, 0, 0.3))
                .as("the last bit of a double is not outside")
                .isFalse();
    }
}
