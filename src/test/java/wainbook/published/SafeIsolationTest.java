package wainbook.published;

import static org.assertj.core.api.Assertions.assertThat;
import static wainbook.isolation.Cast.*;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import wainbook.act.Moment;
import wainbook.isolation.IsolationSaying.VehicleMoved;
import wainbook.isolation.Shift;
import wainbook.isolation.State;
import wainbook.isolation.proof.Scope;
import wainbook.process.sheet.Condition;

/** Check values for safe isolation; each names its source. */
class SafeIsolationTest {

    /** HSE GS38 (fourth edition, extracts): a detector is proved before and after use. */
    @Test
    void points_without_proving_after_are_not_proved_dead() {
        var shift = new Shift().waited().pointsDone(Scope.ALL_POINTS, List.of("JB-A", "JB-B"));
        assertThat(shift.state()).isEqualTo(State.LOCKED);
        assertThat(shift.refusal(SECOND_AUTHORISED, witnessed())).containsExactly("proofNotFinished");
        assertThat(shift.refusal(SECOND_AUTHORISED, permit(1, TECHNICIAN, shift.now.plusSeconds(60))))
                .contains("notNowIssuePermit", "proofTooOld");
    }

    /** Common practice, no source: the server’s clock counts, whatever the device says. */
    @Test
    void a_second_too_early_is_too_early_though_the_device_says_otherwise() {
        var shift = new Shift().locked().seconds(299);
        var device = new Moment(AUTHORISED, shift.now, Optional.of(shift.now.plusSeconds(11)), Optional.empty());
        var said = testerProvedBefore(Scope.ALL_POINTS);
        assertThat(shift.isolation.reasonsAgainst(said, device, shift.facts()))
                .singleElement()
                .satisfies(reason -> assertThat(reason.key()).isEqualTo("isolation.waitNotOver"));
        assertThat(shift.seconds(1).refusal(AUTHORISED, said)).isEmpty();
    }

    /** Pattern of 29 CFR 1910.147(e)(3)(i)–(iii); two signatures are common practice, no source. */
    @Test
    void a_lock_left_behind_comes_off_by_two_people_and_three_steps_and_voids() {
        var shift = new Shift().provedDead();
        shift.does(OUTSIDER, reportedAbandoned(TECHNICIAN));
        assertThat(shift.refusal(OUTSIDER, removed(TECHNICIAN))).containsExactly("sameTwice", "managerAndIssuer");
        assertThat(shift.isolation.lockOn(TECHNICIAN)).isTrue();
        shift.does(SECOND_AUTHORISED, removed(TECHNICIAN));
        assertThat(shift.isolation.lockOn(TECHNICIAN)).isFalse();
        assertThat(shift.state()).isEqualTo(State.VOID);
        shift.does(AUTHORISED, lockedOff(AUTHORISED)).shutDown().does(AUTHORISED, lockedOn(AUTHORISED));
        assertThat(shift.refusal(TECHNICIAN, lockedOn(TECHNICIAN))).containsExactly("lockUnknown", "ownerNotTold");
    }

    /** Common practice, no source. */
    @Test
    void a_move_voids_an_isolation_in_force_and_work_is_refused() {
        var shift = new Shift().inForce();
        shift.does(OUTSIDER, new VehicleMoved(STATION, Optional.of("S5")));
        assertThat(shift.state()).isEqualTo(State.VOID);
        assertThat(shift.against(Condition.DEAD, TECHNICIAN)).contains("notInForce");
    }

    /** A rule of this design: isolation in force and live work are never both true on one vehicle. */
    @Test
    void a_live_work_permit_is_refused_while_an_isolation_is_in_force() {
        var shift = new Shift().inForce();
        assertThat(shift.refusal(
                        SECOND_AUTHORISED, livePermit(2, AUTHORISED, TECHNICIAN, shift.now.plus(Duration.ofHours(1)))))
                .containsExactly("notNowIssueLivePermit");
    }
}
