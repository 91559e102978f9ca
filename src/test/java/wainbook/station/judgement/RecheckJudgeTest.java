package wainbook.station.judgement;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import wainbook.act.Reason;
import wainbook.matter.MatterSaying.Cause;
import wainbook.process.joint.CheckWay;
import wainbook.process.joint.CheckWay.Found;
import wainbook.process.joint.Joint;
import wainbook.process.joint.JointClass;
import wainbook.process.sheet.Ask;
import wainbook.process.sheet.CheckItem;
import wainbook.process.sheet.Condition;
import wainbook.station.ItemState;
import wainbook.station.Reply;
import wainbook.station.SheetLine;
import wainbook.station.StationSaying.About;
import wainbook.station.StationSaying.Basis;
import wainbook.station.StationSaying.Rechecked;
import wainbook.station.StationSaying.Verdict;
import wainbook.station.joint.RecheckInWords;

/** Joints checked again: each in the way of its kind, and none of them tightened by it. */
class RecheckJudgeTest {

    private static final Joint LUG = joint(true, "20", "18", "22", null, null);
    private static final Joint WHEEL = joint(false, "600", "550", "650", "500", "700");
    private static final Joint BRACKET = joint(false, "100", "90", "110", null, null);

    @Test
    void a_marked_lug_is_checked_by_its_mark_and_at_eighty_percent() {
        Rechecked said = said(LUG, mark("16", Found.HELD, Found.HELD));
        assertThat(said.way()).isEqualTo(CheckWay.BY_MARK);
        assertThat(said.verdict()).isEqualTo(Verdict.PASS);
        assertThat(RecheckInWords.wanted(LUG)).contains("about 16 N·m", "Never 20 N·m");
    }

    @Test
    void a_marked_lug_is_never_turned_to_its_torque() {
        assertThat(refused(LUG, mark("20", Found.HELD, Found.HELD))).containsExactly("station.markedNotTurned");
        assertThat(refused(LUG, mark("17.1", Found.HELD, Found.HELD))).containsExactly("station.markedNotTurned");
        assertThat(refused(LUG, torques("20", "20"))).containsExactly("station.markedNeverTurned");
        assertThat(said(LUG, mark("17", Found.HELD, Found.HELD)).verdict()).isEqualTo(Verdict.PASS);
    }

    @Test
    void a_check_of_little_torque_or_of_some_lugs_only_shows_nothing() {
        assertThat(refused(LUG, mark("14.9", Found.HELD, Found.HELD))).containsExactly("station.checkTorqueLow");
        assertThat(refused(LUG, mark("16", Found.HELD))).containsExactly("station.foundMissing");
        assertThat(refused(LUG, Reply.done())).containsExactly("station.checkTorqueMissing");
    }

    @Test
    void a_lug_that_moved_or_whose_mark_is_displaced_is_a_nonconformity_at_once() {
        for (Found found : List.of(Found.MOVED, Found.MARK_DISPLACED)) {
            Rechecked said = said(LUG, mark("16", Found.HELD, found));
            assertThat(said.boltsFailing()).containsExactly(2);
            assertThat(NonconformityRules.cause(firstTry(), said)).contains(Cause.MOVED_AT_CHECK);
        }
        assertThat(RecheckInWords.findings(said(LUG, mark("16", Found.MOVED, Found.HELD))))
                .containsExactly("fastener 1 moved");
    }

    @Test
    void wheel_nuts_are_judged_by_the_limits_of_their_residual_torque_and_not_of_the_tightening() {
        assertThat(said(WHEEL, torques("520", "680")).verdict())
                .as("outside the limits of the tightening, inside those of the check")
                .isEqualTo(Verdict.PASS);
        assertThat(RecheckInWords.findings(said(WHEEL, torques("480", "720"))))
                .containsExactly(
                        "fastener 1 moved at 480 N·m already, below its residual limits: settled or loose",
                        "fastener 2 moved only at 720 N·m, above its residual limits: overtightened, corroded or glued");
        assertThat(RecheckInWords.findings(said(WHEEL, torques("505", "600"))))
                .as("2 % of 500 N·m are kept clear of the limit")
                .containsExactly(
                        "fastener 1 moved at 505 N·m, not shown to conform: accepted are 510 to 686 N·m with this tool");
    }

    @Test
    void a_joint_without_residual_limits_is_checked_by_first_motion() {
        assertThat(said(BRACKET, torques("81.6", "104")).verdict()).isEqualTo(Verdict.PASS);
        Rechecked early = said(BRACKET, torques("81.5", "104"));
        assertThat(early.boltsFailing()).containsExactly(1);
        assertThat(NonconformityRules.cause(firstTry(), early)).isEmpty();
        assertThat(refused(BRACKET, torques("90"))).containsExactly("station.movedMissing");
    }

    private static ItemState firstTry() {
        var item = new CheckItem(
                "check",
                "Check it again",
                new Ask.Recheck("J", Optional.empty(), Optional.empty()),
                Condition.DEAD,
                Optional.empty(),
                Optional.empty(),
                3,
                Optional.empty(),
                List.of(),
                List.of(),
                List.of(),
                Optional.empty(),
                3,
                Optional.empty());
        return new ItemState(
                new SheetLine("S", 1, item),
                ItemState.Status.OPEN,
                List.of(),
                0,
                Optional.empty(),
                Optional.empty(),
                List.of());
    }

    private static Reply mark(String atNm, Found... found) {
        return Reply.with().reading(new BigDecimal(atNm)).found(List.of(found)).build();
    }

    private static Reply torques(String... nm) {
        return Reply.with().boltsNm(Stream.of(nm).map(BigDecimal::new).toList()).build();
    }

    private static Rechecked said(Joint joint, Reply reply) {
        return judged(joint, reply).fold(said -> (Rechecked) said, reasons -> {
            throw new AssertionError(reasons);
        });
    }

    private static List<String> refused(Joint joint, Reply reply) {
        return judged(joint, reply)
                .fold(
                        said -> Collections.emptyList(),
                        reasons -> reasons.stream().map(Reason::key).toList());
    }

    private static Judged judged(Joint joint, Reply reply) {
        var about = new About("final", "FINAL", 1, "check", List.of());
        var basis = new Basis(Condition.NONE, Optional.empty(), Optional.empty());
        return new RecheckJudge(about, basis, joint, new BigDecimal("2")).of(reply);
    }

    private static Joint joint(
            boolean highVoltage,
            String target,
            String lower,
            String upper,
            String residualLower,
            String residualUpper) {
        return new Joint(
                "J",
                "Joint",
                JointClass.A,
                2,
                Joint.Order.LIST,
                new Joint.Torque(new BigDecimal(target), window(lower, upper)),
                Optional.empty(),
                "torque-indicating",
                1,
                Optional.empty(),
                highVoltage,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.ofNullable(residualLower).map(low -> window(low, residualUpper)));
    }

    private static Joint.Window window(String lower, String upper) {
        return new Joint.Window(new BigDecimal(lower), new BigDecimal(upper));
    }
}
