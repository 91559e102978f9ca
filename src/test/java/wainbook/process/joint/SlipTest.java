package wainbook.process.joint;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import wainbook.process.joint.Joint.Torque;
import wainbook.process.joint.Joint.Window;
import wainbook.process.joint.Slip.Sort;

/** Readings at a joint of 120 N·m, 108 to 132. */
class SlipTest {

    @ParameterizedTest(name = "{0} may have been {2} N·m: {1}")
    @CsvSource({
        "191, DIGITS_SWAPPED, 119",
        "11.9, TENTH, 119",
        "1250, TENFOLD, 125",
        "1.2, HUNDREDTH, 120",
        "11900, HUNDREDFOLD, 119",
        "88.5, POUND_FEET, 120",
        "1062, POUND_INCHES, 120",
        "12.24, KILOGRAM_METRES, 120.03",
    })
    void a_torque_typed_wrong_is_asked_about(String typed, Sort sort, String meant) {
        Slip slip = slip(typed).orElseThrow();
        assertThat(slip.sort()).isEqualTo(sort);
        assertThat(slip.meant()).isEqualByComparingTo(meant);
        assertThat(slip.inWords()).contains("did you mean " + meant + " N·m?", typed);
    }

    @ParameterizedTest
    @ValueSource(strings = {"108", "120", "132", "107", "100", "140", "60", "0"})
    void a_torque_inside_its_limits_or_merely_bad_is_not(String typed) {
        assertThat(slip(typed)).isEmpty();
    }

    private static Optional<Slip> slip(String typed) {
        return Slip.of(
                new Torque(new BigDecimal("120"), new Window(new BigDecimal("108"), new BigDecimal("132"))),
                new BigDecimal(typed));
    }
}
