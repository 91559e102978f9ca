package wainbook.process.joint;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import wainbook.act.Reason;
import wainbook.page.Words;
import wainbook.works.instruments.Instrument;

class ServingTest {

    @Test
    void a_class_A_joint_is_accepted_inside_its_limits_by_the_whole_uncertainty() {
        var acceptance = new Acceptance(joint(JointClass.A, "120", "108", "132"), new BigDecimal("1.8")).guarded();
        assertThat(acceptance.lowerNm()).isEqualTo(109.944);
        assertThat(acceptance.upperNm()).isEqualTo(129.624);
        assertThat(acceptance.lowerShown() + " " + acceptance.upperShown())
                .as("rounded inwards, so that what is shown passes")
                .isEqualTo("109.95 129.62");
    }

    @Test
    void a_wrench_that_takes_more_than_a_third_of_half_the_tolerance_does_not_serve_class_A() {
        Joint joint = joint(JointClass.A, "6", "5.1", "6.9");
        assertThat(new Acceptance(joint, new BigDecimal("6")).ratio()).isEqualTo(0.4);
        assertThat(new Acceptance(joint, new BigDecimal("6")).serves()).isFalse();
        assertThat(new Acceptance(joint, new BigDecimal("5")).serves()).isTrue();
        assertThat(new Acceptance(joint, new BigDecimal("5")).ratioAsWanted()).isFalse();
        assertThat(new Acceptance(joint, new BigDecimal("3")).ratioAsWanted()).isTrue();
    }

    @Test
    void what_would_serve_a_tolerance_that_no_wrench_serves_is_said() {
        Joint joint = joint(JointClass.A, "100", "95", "105");
        assertThat(refusal(joint, wrench("TW-120", "20", "200", "2"), wrench("TW-121", "20", "200", "2.4")))
                .isEqualTo("Joint J is of class A, and no tool in date serves its limits of 95 to 105 N·m: TW-120, the"
                        + " finest that covers them, has an uncertainty of 2 %. TW-120 would serve from ± 6 %. Or register"
                        + " an indicating tool of at most 1.6 % over 95 to 105 N·m.");
        assertThat(refusal(joint, wrench("TW-120", "20", "200", "1.6"))).isEmpty();
    }

    @Test
    void a_wrench_that_does_not_cover_the_limits_or_says_no_uncertainty_serves_nothing() {
        Joint joint = joint(JointClass.A, "100", "90", "110");
        assertThat(refusal(joint, wrench("SHORT", "20", "100", "1"), wrench("UNSAID", "20", "200", null)))
                .contains("no torque-indicating in date covers")
                .contains("at most 3.3 % over 90 to 110 N·m");
    }

    @Test
    void a_click_serves_class_A_never_and_class_B_only_inside_the_limits_with_all_its_uncertainty() {
        assertThat(clicked(JointClass.A, "45", "55", "4")).contains("class A, which takes a reading at every fastener");
        assertThat(clicked(JointClass.B, "45", "55", "4")).isEmpty();
        assertThat(clicked(JointClass.B, "45", "55", "5.5")).isEmpty();
        assertThat(clicked(JointClass.B, "47.5", "52.5", "5.5")).contains("would serve from ± 5.5 %");
        assertThat(clicked(JointClass.C, "49.9", "50.1", "5.5")).isEmpty();
    }

    @Test
    void a_class_B_joint_read_from_a_coarse_wrench_is_remarked_and_released() {
        var serving = new Serving(joint(JointClass.B, "100", "95", "105"), List.of(wrench("TW", "20", "200", "2")));
        assertThat(serving.refusal()).isEmpty();
        assertThat(serving.remark()).isPresent();
    }

    @Test
    void a_class_A_joint_whose_finest_wrench_takes_more_than_a_fifth_is_remarked() {
        Joint joint = joint(JointClass.A, "100", "90", "110");
        var coarse = new Serving(joint, List.of(wrench("TW", "20", "200", "2.1")));
        assertThat(coarse.refusal()).isEmpty();
        assertThat(coarse.remark()).map(Reason::key).contains("process.ratioAboveWanted");
        assertThat(new Serving(joint, List.of(wrench("TW", "20", "200", "2"))).remark())
                .isEmpty();
    }

    @Test
    void a_target_on_its_own_limit_is_refused_since_no_wrench_could_bring_it_to_pass() {
        assertThat(refusal(joint(JointClass.A, "90", "90", "110"), wrench("TW", "20", "200", "0.1")))
                .contains("lies on one of its limits");
    }

    @Test
    void the_accepted_range_shrinks_as_the_uncertainty_grows() {
        Joint joint = joint(JointClass.A, "120", "108", "132");
        var random = new Random(20260302);
        for (int i = 0; i < 1_000; i++) {
            double one = random.nextDouble() * 20;
            double other = random.nextDouble() * 20;
            var finer = new Acceptance(joint, BigDecimal.valueOf(Math.min(one, other)));
            var coarser = new Acceptance(joint, BigDecimal.valueOf(Math.max(one, other)));
            assertThat(coarser.guarded().lowerNm())
                    .isGreaterThanOrEqualTo(finer.guarded().lowerNm());
            assertThat(coarser.guarded().upperNm())
                    .isLessThanOrEqualTo(finer.guarded().upperNm());
            assertThat(coarser.serves()).isIn(false, finer.serves());
        }
    }

    @Test
    void a_tool_that_serves_a_joint_brings_its_target_to_pass() {
        var random = new Random(20260303);
        int served = 0;
        for (int i = 0; i < 1_000; i++) {
            double target = 100 + random.nextDouble() * 39;
            Joint joint = joint(JointClass.A, String.valueOf(target), "99.5", "140");
            var acceptance = new Acceptance(joint, BigDecimal.valueOf(random.nextDouble() * 8));
            if (acceptance.serves()) {
                served++;
                assertThat(target)
                        .isBetween(
                                acceptance.guarded().lowerNm() - 1e-9,
                                acceptance.guarded().upperNm() + 1e-9);
            }
        }
        assertThat(served).isBetween(200, 900);
    }

    private static String clicked(JointClass jointClass, String lower, String upper, String percent) {
        Instrument clicks = new Instrument(
                "TW-202",
                "torque-setting",
                "Wrench",
                "N·m",
                new BigDecimal("10"),
                new BigDecimal("100"),
                Optional.of(new BigDecimal(percent)),
                Optional.of(LocalDate.EPOCH),
                Optional.empty(),
                Optional.empty());
        return refusal(joint(jointClass, "50", lower, upper).tightenedWith("torque-setting"), clicks);
    }

    private static String refusal(Joint joint, Instrument... tools) {
        Optional<Reason> refusal = new Serving(joint, List.of(tools)).refusal();
        return refusal.map(reason -> Words.of(reason.key(), reason.arguments().toArray()))
                .orElse("");
    }

    private static Instrument wrench(String code, String lower, String upper, String percent) {
        return new Instrument(
                code,
                "torque-indicating",
                "Wrench",
                "N·m",
                new BigDecimal(lower),
                new BigDecimal(upper),
                Optional.ofNullable(percent).map(BigDecimal::new),
                Optional.of(LocalDate.EPOCH),
                Optional.empty(),
                Optional.empty());
    }

    private static Joint joint(JointClass jointClass, String target, String lower, String upper) {
        return new Joint(
                "J",
                "Joint",
                jointClass,
                4,
                Joint.Order.LIST,
                new Joint.Torque(
                        new BigDecimal(target), new Joint.Window(new BigDecimal(lower), new BigDecimal(upper))),
                Optional.empty(),
                "torque-indicating",
                2,
                Optional.empty(),
                false,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }
}
