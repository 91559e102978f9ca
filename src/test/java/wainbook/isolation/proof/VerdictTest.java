package wainbook.isolation.proof;

import static org.assertj.core.api.Assertions.assertThat;
import static wainbook.isolation.Cast.*;

import java.time.Duration;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import wainbook.act.Moment;
import wainbook.isolation.Danger;
import wainbook.isolation.IsolationSaying;
import wainbook.isolation.IsolationSaying.DangerReported;
import wainbook.isolation.IsolationSaying.RestorationChecked;
import wainbook.isolation.IsolationSaying.SourceRecorded;
import wainbook.isolation.IsolationSaying.VehicleMoved;
import wainbook.isolation.Shift;

class VerdictTest {

    @Test
    void a_point_that_reads_dead_passes_and_one_that_does_not_fails() {
        var shift = new Shift().waited().does(AUTHORISED, testerProvedBefore(Scope.ALL_POINTS));
        shift.seconds(5);
        assertThat(verdict(shift, AUTHORISED, measured("JB-A", "5"))).contains(Verdict.PASSED);
        assertThat(verdict(shift, AUTHORISED, measured("JB-A", "5.1"))).contains(Verdict.FAILED);
        shift.does(AUTHORISED, measured("JB-A", "0.3")).seconds(60);
        assertThat(verdict(shift, AUTHORISED, measuredAgain("JB-A", "1.3"))).contains(Verdict.PASSED);
        assertThat(verdict(shift, AUTHORISED, measuredAgain("JB-A", "1.4"))).contains(Verdict.FAILED);
    }

    @Test
    void a_dangerous_reading_a_lost_lock_and_a_tester_that_died_void_the_isolation() {
        var shift = new Shift().waited().pointsDone(Scope.ALL_POINTS, java.util.List.of("JB-A", "JB-B"));
        assertThat(verdict(shift, AUTHORISED, testerProvedAfter("241"))).contains(Verdict.PASSED);
        assertThat(verdict(shift, AUTHORISED, testerProvedAfter("0"))).contains(Verdict.VOIDED);
        assertThat(verdict(shift, AUTHORISED, measured("JB-A", "-60.1"))).contains(Verdict.VOIDED);
        assertThat(verdict(shift, AUTHORISED, lockedOff(AUTHORISED))).contains(Verdict.VOIDED);
        assertThat(verdict(shift, TECHNICIAN, lockedOff(TECHNICIAN))).isEmpty();
    }

    @Test
    void a_move_and_a_new_source_void_only_where_the_plan_does_not_foresee_them() {
        var moved = new VehicleMoved(STATION, Optional.of("S5"));
        assertThat(verdict(new Shift().waited(), OUTSIDER, moved)).contains(Verdict.VOIDED);
        var travelling = new Shift();
        travelling.plan = TRAVELLING_PLAN;
        assertThat(verdict(travelling.waited(), OUTSIDER, moved)).isEmpty();
        assertThat(verdict(new Shift().waited(), OUTSIDER, new SourceRecorded("PACK-9")))
                .contains(Verdict.VOIDED);
    }

    @Test
    void danger_stands_out_also_where_no_isolation_is_open() {
        var shift = new Shift().later(Duration.ofMinutes(1));
        var danger = new DangerReported(Danger.OTHER, "cab");
        assertThat(verdict(shift, OUTSIDER, danger)).contains(Verdict.DANGER);
        assertThat(verdict(shift, OUTSIDER, measured("JB-A", "640"))).contains(Verdict.DANGER);
    }

    @Test
    void a_restoration_check_says_itself_whether_it_passed() {
        var shift = new Shift().handedBack();
        assertThat(verdict(shift, SECOND_AUTHORISED, checked("COVERS"))).contains(Verdict.PASSED);
        assertThat(verdict(shift, SECOND_AUTHORISED, new RestorationChecked("COVERS", false, Optional.empty())))
                .contains(Verdict.FAILED);
    }

    private static Optional<Verdict> verdict(Shift shift, String who, IsolationSaying said) {
        var moment = Moment.of(who, shift.now);
        return Verdict.of(said, shift.isolation.at(shift.now), shift.isolation.and(said, moment));
    }
}
