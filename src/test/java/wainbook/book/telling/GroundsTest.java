package wainbook.book.telling;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import wainbook.process.joint.Joint;
import wainbook.process.joint.JointClass;
import wainbook.process.sheet.Condition;
import wainbook.process.sheet.Limits;
import wainbook.station.StationSaying.About;
import wainbook.station.StationSaying.Basis;
import wainbook.station.StationSaying.Confirmed;
import wainbook.station.StationSaying.Held;
import wainbook.station.StationSaying.Measured;
import wainbook.station.StationSaying.Taken;
import wainbook.station.StationSaying.Tightened;
import wainbook.station.StationSaying.Used;
import wainbook.station.StationSaying.Verdict;

class GroundsTest {

    private static final About ABOUT = new About("prepare", "PREP", 1, "frame", List.of());
    private static final Used WRENCH = new Used("TW-1", LocalDate.of(2026, 9, 19));

    @Test
    void a_joint_is_told_with_its_limits_and_the_instrument_with_the_day_its_calibration_was_due() {
        var said = new Tightened(
                ABOUT,
                basis(Optional.empty(), Optional.of(WRENCH)),
                "FRAME-FRONT",
                JointClass.A,
                new Joint.Torque(new BigDecimal("110"), new Joint.Window(new BigDecimal("99"), new BigDecimal("121"))),
                Optional.empty(),
                Optional.empty(),
                List.of(new BigDecimal("111.8")),
                List.of(),
                List.of(),
                Verdict.PASS);
        Grounds grounds = Grounds.of(said);
        assertThat(grounds.words()).isEqualTo("joint FRAME-FRONT, class A, 99 to 121 Nm");
        assertThat(grounds.used()).contains(WRENCH);
        assertThat(grounds.due()).isEqualTo("calibration then due 19 Sept 2026");
    }

    @Test
    void a_reading_is_told_with_both_limits_apart_and_the_competence_it_was_taken_on() {
        var said = new Measured(
                ABOUT,
                basis(Optional.of(new Held("HV", 2, LocalDate.of(2027, 1, 31))), Optional.empty()),
                new BigDecimal("1.2"),
                "MΩ",
                Optional.of(Limits.atLeast(new BigDecimal("1"))),
                Optional.of(new Limits(
                        Optional.of(new BigDecimal("0.5")), Optional.empty(), false, Optional.of("UN R100"))),
                Verdict.PASS);
        assertThat(Grounds.of(said).words())
                .startsWith("works limit ")
                .contains("; legal limit ", "(UN R100)")
                .endsWith("; competence HV level 2, then valid to 31 Jan 2027");
    }

    @Test
    void what_stands_on_nothing_of_the_kind_has_no_second_line() {
        assertThat(Grounds.of(new Confirmed(ABOUT, basis(Optional.empty(), Optional.empty())))
                        .any())
                .isFalse();
        assertThat(Grounds.of(new Taken("prepare", "frame")).any()).isFalse();
    }

    private static Basis basis(Optional<Held> held, Optional<Used> used) {
        return new Basis(Condition.NONE, held, used);
    }
}
