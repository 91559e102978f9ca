package wainbook.order.calibration;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import wainbook.act.Reason;
import wainbook.order.calibration.Comparison.Verdict;
import wainbook.order.calibration.Comparison.Which;
import wainbook.order.calibration.ControllersRead.Read;
import wainbook.page.Words;
import wainbook.process.CalibrationLibrary;
import wainbook.process.calibration.Calibration;
import wainbook.process.calibration.Calibration.Standing;
import wainbook.process.calibration.Setting;

/** Invented calibrations of an invented truck. */
class ComparisonTest {

    private static final String SHA = "0123456789abcdef".repeat(4);
    private static final String TRUCK = "hookloader-26t";
    private static final Wish SPEED = wish(Setting.ROAD_SPEED_LIMIT, "80", "0.5");
    private static final Wish ACCELERATION = wish(Setting.ACCELERATION_LIMIT, "0.8", "0.05");

    @Test
    void where_nothing_is_asked_nothing_is_compared_and_nothing_bars() {
        Comparison none = compared(List.of(), nothing(), yard(Standing.RELEASED));

        assertThat(none.which()).isEqualTo(Which.NOTHING_ASKED);
        assertThat(none.against()).isEmpty();
    }

    @Test
    void the_released_calibration_with_its_file_and_values_is_what_was_asked() {
        Comparison compared = compared(List.of(SPEED, ACCELERATION), read("80", "0.8"), yard(Standing.RELEASED));

        assertThat(compared.agrees()).isTrue();
        assertThat(compared.against()).isEmpty();
    }

    @Test
    void a_vehicle_that_differs_says_by_how_much_and_what_lifts_it() {
        Comparison compared = compared(List.of(SPEED), read("84.5", "0.8"), yard(Standing.RELEASED));

        assertThat(compared.lines().get(0).verdict()).isEqualTo(Verdict.READ_DIFFERS);
        assertThat(compared.lines().get(0).off()).contains(new BigDecimal("4.5"));
        assertThat(texts(compared))
                .singleElement()
                .asString()
                .contains("80 km/h ± 0.5 is asked for", "differs by +4.5 km/h", "changed by who asked");
    }

    @Test
    void a_released_calibration_that_sets_another_value_differs_whatever_was_read() {
        Wish slower = wish(Setting.ROAD_SPEED_LIMIT, "70", "0.5");

        Comparison compared = compared(List.of(slower), read("70", "0.8"), yard(Standing.RELEASED));

        assertThat(compared.lines().get(0).verdict()).isEqualTo(Verdict.RELEASED_DIFFERS);
        assertThat(texts(compared)).singleElement().asString().contains("HOOK26-YARD/1 differs by +10 km/h");
    }

    @Test
    void a_value_that_the_calibration_does_not_set_or_nobody_read_is_missing() {
        Wish creep = wish(Setting.CREEP_SPEED, "4", "0.5");

        assertThat(compared(List.of(creep), read("80", "0.8"), yard(Standing.RELEASED))
                        .lines()
                        .get(0)
                        .verdict())
                .isEqualTo(Verdict.NOT_SET);
        assertThat(compared(List.of(SPEED), named("HOOK26-YARD/1", Map.of()), yard(Standing.RELEASED))
                        .lines()
                        .get(0)
                        .verdict())
                .isEqualTo(Verdict.NOT_READ);
    }

    @Test
    void a_calibration_that_is_unknown_withdrawn_of_another_kind_or_of_another_file_bars() {
        Read read = read("80", "0.8");

        assertThat(compared(List.of(SPEED), nothing(), yard(Standing.RELEASED)).which())
                .isEqualTo(Which.NOT_READ);
        assertThat(compared(List.of(SPEED), named("HOOK26-YARD/9", read.values()), yard(Standing.RELEASED))
                        .which())
                .isEqualTo(Which.NOT_RELEASED);
        assertThat(compared(List.of(SPEED), read, yard(Standing.WITHDRAWN)).which())
                .isEqualTo(Which.WITHDRAWN);
        assertThat(Comparison.of("WB-1", "bus-12m", List.of(SPEED), read, library(Standing.RELEASED))
                        .which())
                .isEqualTo(Which.OTHER_KIND);
        assertThat(compared(
                                List.of(SPEED),
                                new Read(read.calibration(), Optional.empty(), read.values()),
                                yard(Standing.RELEASED))
                        .which())
                .isEqualTo(Which.FILE_NOT_READ);
        for (String digits : List.of("99999999", "0123456", "")) {
            assertThat(compared(
                                    List.of(SPEED),
                                    new Read(read.calibration(), Optional.of(digits), read.values()),
                                    yard(Standing.RELEASED))
                            .which())
                    .isEqualTo(Which.OTHER_FILE);
        }
        assertThat(compared(
                                List.of(SPEED),
                                new Read(read.calibration(), Optional.of("0123 4567 89AB"), read.values()),
                                yard(Standing.RELEASED))
                        .which())
                .isEqualTo(Which.RELEASED);
    }

    @Test
    void each_of_them_has_words_that_say_what_to_do() {
        for (Which which : Which.values()) {
            assertThat(Words.of("order.calibrationWhich." + which.name())).isNotBlank();
        }
        assertThat(texts(compared(List.of(SPEED, ACCELERATION), nothing(), yard(Standing.RELEASED))))
                .hasSize(3)
                .allMatch(text -> text.contains(". "));
    }

    /** So far above is as wrong as so far below; and a wider tolerance never refuses what a narrower one passes. */
    @Test
    void the_tolerance_is_symmetric_and_grows_no_refusal() {
        var random = new Random(26);
        for (int i = 0; i < 2000; i++) {
            BigDecimal value = figure(random, 120);
            BigDecimal tolerance = figure(random, 5);
            BigDecimal off = figure(random, 10);
            Wish wish = new Wish(
                    Setting.ROAD_SPEED_LIMIT, value, tolerance, Wish.By.OPERATOR, Optional.empty(), "for a test");
            Wish wider = new Wish(
                    Setting.ROAD_SPEED_LIMIT,
                    value,
                    tolerance.add(BigDecimal.ONE),
                    Wish.By.OPERATOR,
                    Optional.empty(),
                    "for a test");

            assertThat(wish.off(value.add(off)).isPresent())
                    .isEqualTo(wish.off(value.subtract(off)).isPresent())
                    .isEqualTo(off.compareTo(tolerance) > 0);
            assertThat(wish.off(value.add(off)).isEmpty()
                            && wider.off(value.add(off)).isPresent())
                    .isFalse();
        }
    }

    /** Whatever else is right: take away any one thing that was read, and it bars. */
    @Test
    void nothing_that_is_missing_passes() {
        Read whole = read("80", "0.8");
        List<Read> lacking = List.of(
                new Read(Optional.empty(), whole.file(), whole.values()),
                new Read(whole.calibration(), Optional.empty(), whole.values()),
                new Read(
                        whole.calibration(),
                        whole.file(),
                        Map.of(Setting.ROAD_SPEED_LIMIT, whole.values().get(Setting.ROAD_SPEED_LIMIT))),
                new Read(
                        whole.calibration(),
                        whole.file(),
                        Map.of(Setting.ACCELERATION_LIMIT, whole.values().get(Setting.ACCELERATION_LIMIT))));

        assertThat(lacking)
                .allSatisfy(read -> assertThat(compared(List.of(SPEED, ACCELERATION), read, yard(Standing.RELEASED))
                                .against())
                        .isNotEmpty());
    }

    private static BigDecimal figure(Random random, int most) {
        return BigDecimal.valueOf(random.nextInt(most * 10), 1);
    }

    private static List<String> texts(Comparison compared) {
        return compared.against().stream()
                .map((Reason reason) ->
                        Words.of(reason.key(), reason.arguments().toArray()))
                .toList();
    }

    private static Comparison compared(List<Wish> wishes, Read read, Calibration calibration) {
        return Comparison.of("WB-1", TRUCK, wishes, read, new CalibrationLibrary(List.of(calibration), 1));
    }

    private static CalibrationLibrary library(Standing standing) {
        return new CalibrationLibrary(List.of(yard(standing)), 1);
    }

    private static Read nothing() {
        return new Read(Optional.empty(), Optional.empty(), Map.of());
    }

    private static Read read(String kmh, String mps2) {
        return named(
                "HOOK26-YARD/1",
                Map.of(
                        Setting.ROAD_SPEED_LIMIT,
                        new BigDecimal(kmh),
                        Setting.ACCELERATION_LIMIT,
                        new BigDecimal(mps2)));
    }

    private static Read named(String name, Map<Setting, BigDecimal> values) {
        return new Read(Optional.of(name), Optional.of(SHA.substring(0, 8)), values);
    }

    private static Wish wish(Setting setting, String value, String tolerance) {
        return new Wish(
                setting,
                new BigDecimal(value),
                new BigDecimal(tolerance),
                Wish.By.OPERATOR,
                Optional.empty(),
                "for a test");
    }

    private static Calibration yard(Standing standing) {
        return new Calibration(
                "HOOK26-YARD",
                1,
                TRUCK,
                "Yard and tip roads",
                SHA,
                standing,
                Optional.of(new BigDecimal("80")),
                Optional.of(new BigDecimal("0.8")),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }
}
