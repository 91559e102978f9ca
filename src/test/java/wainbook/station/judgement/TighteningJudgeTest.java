package wainbook.station.judgement;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import wainbook.act.Reason;
import wainbook.process.joint.Joint;
import wainbook.process.joint.JointClass;
import wainbook.process.sheet.Ask;
import wainbook.process.sheet.Condition;
import wainbook.station.Reply;
import wainbook.station.StationSaying.About;
import wainbook.station.StationSaying.Basis;
import wainbook.station.StationSaying.Tightened;
import wainbook.station.determination.GivenInputs;

class TighteningJudgeTest {

    @Test
    void a_class_A_reading_inside_the_limits_but_within_the_tools_uncertainty_of_one_does_not_pass() {
        assertThat(outside(JointClass.A, "18", "22", "2", "18.36", "21.56")).isEmpty();
        assertThat(outside(JointClass.A, "18", "22", "2", "18.35", "21.57")).containsExactly(1, 2);
    }

    @Test
    void a_class_C_reading_on_the_limit_passes() {
        assertThat(outside(JointClass.C, "18", "22", "2", "18", "22")).isEmpty();
    }

    @Test
    void a_tool_too_coarse_for_the_joint_passes_nothing() {
        assertThat(outside(JointClass.A, "19.9", "20.1", "5", "20", "20")).containsExactly(1, 2);
    }

    @Test
    void a_class_A_joint_cannot_be_ticked_off() {
        List<Reason> faults =
                judge(JointClass.A, "18", "22", "2").of(Reply.done()).fold(said -> List.of(), reasons -> reasons);
        assertThat(faults).extracting(Reason::key).containsExactly("station.classAByTick");
    }

    @Test
    void a_joint_whose_class_rose_is_ticked_off_no_more_by_an_older_sheet() {
        assertThat(ticked(JointClass.A)).containsExactly("station.notByTick");
        assertThat(ticked(JointClass.B)).containsExactly("station.notByTick");
        assertThat(ticked(JointClass.C)).isEmpty();
    }

    private static List<String> ticked(JointClass jointClass) {
        TighteningJudge of = judge(jointClass, "18", "22", "2");
        var judge = new Judge(
                of.about(),
                of.basis(),
                Optional.of(of.joint()),
                BigDecimal.ZERO,
                ask -> GivenInputs.of(ask, key -> Optional.empty()),
                sha -> Optional.empty());
        return judge.of(new Ask.Confirm(Optional.of("LUG")), Reply.done())
                .fold(
                        said -> List.of(),
                        reasons -> reasons.stream().map(Reason::key).toList());
    }

    private static List<Integer> outside(
            JointClass jointClass, String lower, String upper, String percent, String... torques) {
        var bolts = java.util.Arrays.stream(torques).map(BigDecimal::new).toList();
        return judge(jointClass, lower, upper, percent)
                .of(Reply.with().boltsNm(bolts).build())
                .fold(said -> ((Tightened) said).boltsOutside(), reasons -> List.of(-1));
    }

    private static TighteningJudge judge(JointClass jointClass, String lower, String upper, String percent) {
        var torque =
                new Joint.Torque(new BigDecimal("20"), new Joint.Window(new BigDecimal(lower), new BigDecimal(upper)));
        var joint = new Joint(
                "LUG",
                "Lug",
                jointClass,
                2,
                Joint.Order.LIST,
                torque,
                Optional.empty(),
                "torque-indicating",
                1,
                Optional.empty(),
                true,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
        var about = new About("fitting", "FIT", 1, "lug", List.of());
        var basis = new Basis(Condition.NONE, Optional.empty(), Optional.empty());
        return new TighteningJudge(about, basis, joint, new BigDecimal(percent));
    }
}
