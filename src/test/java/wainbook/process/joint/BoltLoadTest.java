package wainbook.process.joint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import wainbook.act.Reason;

class BoltLoadTest {

    /** Assembly preload and torque at 90 % of yield and µ 0.12: table A1 of VDI 2230-1, from memory. */
    @ParameterizedTest(name = "{0}: {1} kN at {2} N·m")
    @CsvSource({
        "M6 8.8, 10.2, 10.1",
        "M8 8.8, 18.6, 24.6",
        "M10 8.8, 29.6, 48",
        "M12 8.8, 43.0, 84",
        "M14 8.8, 59.1, 133",
        "M16 8.8, 80.9, 206",
        "M18 8.8, 102, 295",
        "M20 8.8, 130, 415",
        "M22 8.8, 162, 567",
        "M24 8.8, 188, 714",
        "M6 10.9, 14.9, 14.9",
        "M8 10.9, 27.3, 36.1",
        "M10 10.9, 43.4, 71",
        "M12 10.9, 63.2, 123",
        "M14 10.9, 86.7, 195",
        "M16 10.9, 118.8, 302",
        "M18 10.9, 145, 421",
        "M20 10.9, 186, 592",
        "M22 10.9, 231, 807",
        "M24 10.9, 267, 1017",
        "M6 12.9, 17.4, 17.4",
        "M8 12.9, 32.0, 42.2",
        "M10 12.9, 50.8, 83",
        "M12 12.9, 74.0, 144",
        "M14 12.9, 101.5, 229",
        "M16 12.9, 139.0, 354",
        "M18 12.9, 170, 492",
        "M20 12.9, 217, 692",
        "M22 12.9, 271, 945",
        "M24 12.9, 313, 1190",
    })
    void a_bolt_tightened_by_the_usual_table_is_at_its_preload_and_at_ninety_percent_of_yield(
            String thread, double preloadKn, String torqueNm) {
        BoltLoad load = load(thread, "1", "2000").orElseThrow();
        var results = load.at(new BigDecimal(torqueNm), 0.12);
        assertThat(results.preloadN() / 1000).isCloseTo(preloadKn, within(preloadKn * 0.011));
        assertThat(results.utilisation()).isCloseTo(0.9, within(0.011));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "M22x1.5 spigot, clean and lightly oiled",
                "M18x1.5 union, new sealing rings",
                "M6 stainless, grease",
                "M8 terminal clamp, dry",
                "M5 8.8 with washer, dry",
                "M27 10.9",
                "M12 10.95",
                "M12 x 2.5 10.9",
                "about M12 10.9",
                ""
            })
    void what_does_not_say_size_and_property_class_in_known_words_is_not_worked_out(String thread) {
        assertThat(load(thread, "40", "50")).isEmpty();
        assertThat(BoltLoad.inWords(joint(thread, "40", "50"))).startsWith("Not worked out");
    }

    @Test
    void a_fine_pitch_is_taken_as_written() {
        assertThat(load("M12x1.25 10.9 dry", "70", "80").orElseThrow().pitchMm())
                .isEqualTo(1.25);
        assertThat(load("M12 10.9 dry", "70", "80").orElseThrow().pitchMm()).isEqualTo(1.75);
    }

    @ParameterizedTest(name = "“{0}” has a friction of {1} to {2}")
    @CsvSource({
        "zinc flake with wax, 0.08, 0.16",
        "'zinc flake with wax, µ 0.10-0.14', 0.10, 0.14",
        "µ 0.09 – 0.15, 0.09, 0.15",
        "dry on copper, 0.14, 0.24",
        "new fasteners, 0.08, 0.24",
        "'dry, then oil on the head', 0.08, 0.24",
        "boiled, 0.08, 0.24",
    })
    void friction_is_as_stated_or_as_wide_as_its_words_leave_it(String words, double low, double high) {
        Friction friction = Friction.of(words);
        assertThat(friction.low()).isEqualTo(low);
        assertThat(friction.high()).isEqualTo(high);
    }

    @Test
    void a_bolt_that_may_yield_at_its_upper_limit_is_a_caution_and_one_near_it_a_remark() {
        assertThat(remark("M16 10.9 µ 0.12-0.16", "234", "302")).isEmpty();
        assertThat(remark("M16 10.9 µ 0.12-0.16", "234", "303")).contains("process.nearYield");
        assertThat(remark("M16 10.9 µ 0.12-0.16", "234", "336")).contains("process.nearYield");
        assertThat(remark("M16 10.9 µ 0.12-0.16", "234", "337")).contains("process.overYield");
    }

    @Test
    void the_joints_page_says_preload_and_use_at_both_limits_and_opens_the_worst_case() {
        Joint joint = joint("M10 8.8 µ 0.10-0.16", "45", "50");
        assertThat(BoltLoad.inWords(joint))
                .isEqualTo("At 45 N·m 21.4 to 32.0 kN, at 50 N·m 23.8 to 35.6 kN; 69 to 106 % of yield, at the friction"
                        + " stated, µ 0.1 to 0.16");
        assertThat(BoltLoad.of(joint).orElseThrow().calculation())
                .isEqualTo("/calculations/preload?torqueNm=50&diameterMm=10&pitchMm=1.5&yieldMPa=640&threadFriction=0.1"
                        + "&headFriction=0.1&bearingMeanMm=12.815");
    }

    private static Optional<String> remark(String thread, String lower, String upper) {
        return load(thread, lower, upper).flatMap(BoltLoad::remark).map(Reason::key);
    }

    private static Optional<BoltLoad> load(String thread, String lower, String upper) {
        return BoltLoad.of(joint(thread, lower, upper));
    }

    private static Joint joint(String thread, String lower, String upper) {
        return new Joint(
                "J",
                "Joint",
                JointClass.A,
                4,
                Joint.Order.LIST,
                new Joint.Torque(new BigDecimal(upper), new Joint.Window(new BigDecimal(lower), new BigDecimal(upper))),
                Optional.empty(),
                "torque-indicating",
                2,
                Optional.of(thread).filter(text -> !text.isEmpty()),
                false,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }
}
