package wainbook.station.joint;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import wainbook.process.joint.Joint;
import wainbook.process.joint.JointClass;
import wainbook.process.sheet.Condition;
import wainbook.station.StationSaying.About;
import wainbook.station.StationSaying.Basis;
import wainbook.station.StationSaying.Guard;
import wainbook.station.StationSaying.Tightened;
import wainbook.station.StationSaying.TightenedBefore;
import wainbook.station.StationSaying.Verdict;

class BoltReadingTest {

    private static final About ABOUT = new About("drive", "DRIVE", 1, "shaft", List.of());
    private static final Basis BASIS = new Basis(Condition.NONE, Optional.empty(), Optional.empty());

    @Test
    void each_bolt_that_does_not_pass_is_named_with_what_is_suspected() {
        Tightened said = said("71 30", "71 3", "50 10", "77.9 30");
        assertThat(BoltReading.findings(said))
                .hasSize(3)
                .anySatisfy(
                        bolt -> assertThat(bolt)
                                .startsWith(
                                        "bolt 2 turned 3 degrees, window 20 to 45 degrees; suspect: tight already, a second hit"))
                .anySatisfy(
                        bolt -> assertThat(bolt).isEqualTo("bolt 3 at 50 N·m, limit 64 N·m; suspect: stopped early"))
                .anySatisfy(bolt -> assertThat(bolt)
                        .isEqualTo("bolt 4 at 77.9 N·m, not shown to conform: accepted are 65.28 to 76.44 N·m with this"
                                + " tool"));
    }

    @Test
    void a_joint_is_not_shown_to_conform_only_if_nothing_in_it_fails() {
        assertThat(BoltReading.undecided(said("71 30", "77.9 30"))).isTrue();
        assertThat(BoltReading.undecided(said("79 30", "77.9 30"))).isFalse();
        assertThat(BoltReading.undecided(said("71 30"))).isFalse();
    }

    @Test
    void second_hits_are_no_tightening_unless_another_bolt_failed_in_earnest() {
        assertThat(BoltReading.onlySecondHits(said("71 3", "71 30"))).isTrue();
        assertThat(BoltReading.onlySecondHits(said("71 3", "50 30"))).isFalse();
        assertThat(BoltReading.onlySecondHits(said("71 30"))).isFalse();
    }

    @Test
    void the_calculation_opens_with_the_figures_that_were_judged() {
        assertThat(new BoltReading(said("77.9 30"), 1).calculation())
                .contains("/calculations/tightening?readingNm=77.9&lowerNm=64&upperNm=78&intervalPercent=2"
                        + "&decisionFactor=1");
    }

    @Test
    void an_entry_of_before_is_read_without_the_uncertainty_that_it_did_not_keep() {
        Tightened now = said("77.9 30");
        var before = new TightenedBefore(
                now.about(),
                now.basis(),
                now.joint(),
                now.jointClass(),
                now.torque(),
                now.angle(),
                now.boltsNm(),
                now.anglesDeg(),
                now.boltsOutside(),
                now.verdict());
        assertThat(before.newer().guard()).isEmpty();
        assertThat(new BoltReading(before.newer(), 1).calculation()).isEmpty();
        assertThat(BoltReading.findings(before.newer()))
                .containsExactly("bolt 1 at 77.9 N·m, nearer to the limit than this wrench can tell");
    }

    /** Torque and angle of each bolt, judged by a wrench of 2 %. */
    private static Tightened said(String... bolts) {
        List<BigDecimal> torques =
                Stream.of(bolts).map(bolt -> new BigDecimal(bolt.split(" ")[0])).toList();
        List<BigDecimal> angles =
                Stream.of(bolts).map(bolt -> new BigDecimal(bolt.split(" ")[1])).toList();
        List<Integer> outside = IntStream.range(0, bolts.length)
                .filter(bolt -> torques.get(bolt).doubleValue() < 65.28
                        || torques.get(bolt).doubleValue() > 76.44
                        || angles.get(bolt).doubleValue() < 20
                        || angles.get(bolt).doubleValue() > 45)
                .map(bolt -> bolt + 1)
                .boxed()
                .toList();
        return new Tightened(
                ABOUT,
                BASIS,
                "SHAFT",
                JointClass.A,
                new Joint.Torque(new BigDecimal("71"), window("64", "78")),
                Optional.of(new Joint.Angle(window("20", "45"))),
                Optional.of(new Guard(new BigDecimal("2"), BigDecimal.ONE)),
                torques,
                angles,
                outside,
                outside.isEmpty() ? Verdict.PASS : Verdict.FAIL);
    }

    private static Joint.Window window(String lower, String upper) {
        return new Joint.Window(new BigDecimal(lower), new BigDecimal(upper));
    }
}
