package wainbook.engineering;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PlainTest {

    @ParameterizedTest
    @CsvSource({"0.073, 0.073", "350000, 350000", "1e6, 1000000", "-0.0, 0", "0.09999999999999999, 0.1", "1e-30, 1E-30"
    })
    void writes_numbers_as_people_do(double value, String written) {
        assertThat(Plain.text(value)).isEqualTo(written);
    }

    @Test
    void never_writes_a_value_as_the_limit_it_is_not() {
        assertThat(Plain.beside(0.1, 0.0730004)).isEqualTo("0.0730004");
        assertThat(Plain.beside(0.1, 0.07312345678)).isEqualTo("0.0731235");
        assertThat(Plain.beside(0.1, 0.0999999999)).isEqualTo("0.0999999999");
        assertThat(Plain.beside(0.1, 0.02 / 0.2)).isEqualTo("0.1");
    }

    @Test
    void writes_what_is_no_number_without_breaking() {
        assertThat(Plain.beside(1, Double.NaN)).isEqualTo("NaN");
        assertThat(Plain.text(Double.POSITIVE_INFINITY)).isEqualTo("Infinity");
    }
}
