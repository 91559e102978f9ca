package wainbook.station.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import wainbook.process.joint.Joint;
import wainbook.process.joint.Joint.Window;
import wainbook.process.joint.JointClass;
import wainbook.process.sheet.Condition;
import wainbook.process.sheet.Limits;
import wainbook.station.StationSaying;
import wainbook.station.StationSaying.About;
import wainbook.station.StationSaying.Basis;
import wainbook.station.StationSaying.Measured;
import wainbook.station.StationSaying.Tightened;
import wainbook.station.StationSaying.Verdict;

/** Whoever reads that something is outside reads what, and which limit. */
class OutsideLimitsTest {

    private static final About ABOUT = new About("fitting", "FIT", 1, "lug", List.of());
    private static final Basis BASIS = new Basis(Condition.NONE, Optional.empty(), Optional.empty());

    @Test
    void a_bolt_is_named_with_its_torque_and_the_limit_that_it_missed() {
        assertThat(tightened("24", "75")).isEqualTo("bolt 1 at 24 N·m, limit 22 N·m");
        assertThat(tightened("17.9", "75")).isEqualTo("bolt 1 at 17.9 N·m, limit 18 N·m");
    }

    @Test
    void a_bolt_whose_angle_missed_says_the_angle() {
        assertThat(tightened("20", "95"))
                .startsWith("bolt 1 turned 95 degrees, window 60 to 90 degrees; suspect: washer or part missing");
    }

    @Test
    void a_bolt_inside_its_limits_that_the_wrench_cannot_tell_from_outside_says_so() {
        assertThat(tightened("21.9", "75"))
                .isEqualTo("bolt 1 at 21.9 N·m, not shown to conform: accepted are 18.36 to 21.56 N·m with this tool");
    }

    @Test
    void a_reading_that_misses_the_laws_limit_names_that_one() {
        var works = Limits.atMost(new BigDecimal("0.05"));
        var legal = Limits.atMost(new BigDecimal("0.1"));
        assertThat(measured("0.2", works, legal)).isEqualTo("0.2 Ω, limit at most 0.1 Ω");
        assertThat(measured("0.07", works, legal)).isEqualTo("0.07 Ω, limit at most 0.05 Ω");
    }

    private static String measured(String reading, Limits works, Limits legal) {
        return OutsideLimits.of(new Measured(
                ABOUT, BASIS, new BigDecimal(reading), "Ω", Optional.of(works), Optional.of(legal), Verdict.FAIL));
    }

    private static String tightened(String torqueNm, String angleDeg) {
        return OutsideLimits.of(new Tightened(
                ABOUT,
                BASIS,
                "LUG",
                JointClass.A,
                new Joint.Torque(new BigDecimal("20"), new Window(new BigDecimal("18"), new BigDecimal("22"))),
                Optional.of(new Joint.Angle(new Window(new BigDecimal("60"), new BigDecimal("90")))),
                Optional.of(new StationSaying.Guard(new BigDecimal("2"), BigDecimal.ONE)),
                List.of(new BigDecimal(torqueNm)),
                List.of(new BigDecimal(angleDeg)),
                List.of(1),
                Verdict.FAIL));
    }
}
