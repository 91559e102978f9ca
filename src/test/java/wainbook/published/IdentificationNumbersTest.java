package wainbook.published;

import static org.assertj.core.api.Assertions.assertThat;
import static wainbook.engineering.Answers.results;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wainbook.engineering.measurement.CheckCharacter;
import wainbook.engineering.measurement.Scheme;
import wainbook.engineering.measurement.Vin;

class IdentificationNumbersTest {

    /**
     * Check digits by 49 CFR 565.15, its values and weights read there. The first is a widely printed example, the second the
     * regulation’s own sample, the third from the regulator’s guide; the others are invented numbers, by hand.
     */
    @ParameterizedTest
    @CsvSource({
        "1M8GDM9AXKP042788, X",
        "1G4AH59H45G118341, 4",
        "1J9RP1A36A1644345, 6",
        "11111111111111111, 1",
        "ZZ9BT4E240W123456, 4",
        "ZZ9BT4E260W123457, 6",
        "ZZ9BT4E250W132456, 5",
        "ZZ9TX3C42TA000117, 2"
    })
    void check_digit_of_a_vehicle(String vin, String check) {
        var found = results(new Vin().of(new Vin.Inputs(vin)));

        assertThat(found.computedCheck()).contains(check);
        assertThat(found.checkMatches()).isTrue();
    }

    /** The same source. */
    @Test
    void wrong_check_digit_is_well_formed_all_the_same() {
        var found = results(new Vin().of(new Vin.Inputs("1M8GDM9A0KP042788")));

        assertThat(found.wellFormed()).isTrue();
        assertThat(found.checkMatches()).isFalse();
    }

    /** 17 characters without I, O and Q: ISO 3779, as restated in overviews. */
    @ParameterizedTest
    @CsvSource({"ZZ9BT4E2400W123456", "1M8GDM9AXKP04278", "1M8GDM9AXKPO42788", "1M8GDM9AXKPI42788", "1M8GDM9AXKPQ42788"
    })
    void numbers_that_are_none(String vin) {
        assertThat(results(new Vin().of(new Vin.Inputs(vin))).wellFormed()).isFalse();
    }

    /**
     * ISO/IEC 7064: 079 and A12425GABC1234002 were read in the tests of open implementations; the others follow by hand.
     */
    @ParameterizedTest
    @CsvSource({
        "MOD11_2, 079, X",
        "MOD11_2, 0794, 0",
        "MOD11_2, 000000021825009, 7",
        "MOD11_2, 20260311042, 4",
        "MOD37_36, A12425GABC1234002, M",
        "MOD37_36, WB26PACK0001, C",
        "MOD37_36, WB26PACK0010, A",
        "MOD97_10, 794, 44"
    })
    void check_character_of_a_serial(Scheme scheme, String text, String check) {
        assertThat(results(new CheckCharacter().of(new CheckCharacter.Inputs(scheme, text)))
                        .check())
                .isEqualTo(check);
    }
}
