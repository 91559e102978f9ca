package wainbook.isolation;

import static org.assertj.core.api.Assertions.assertThat;
import static wainbook.isolation.Cast.*;

import org.junit.jupiter.api.Test;
import wainbook.process.sheet.Condition;

class OrdinaryDayTest {

    @Test
    void an_isolation_runs_from_plan_to_live_again() {
        var shift = new Shift().ready();
        shift.does(AUTHORISED, restored(AUTHORISED));
        assertThat(shift.state()).isEqualTo(State.LIVE);
        assertThat(shift.isolation.locks()).isEmpty();
    }

    @Test
    void work_is_allowed_to_the_receiver_and_to_nobody_who_did_not_join() {
        var shift = new Shift().inForce();
        assertThat(shift.against(Condition.DEAD, TECHNICIAN)).isEmpty();
        assertThat(shift.against(Condition.DEAD, AUTHORISED)).containsExactly("permitNotRead");
        assertThat(shift.against(Condition.DEAD, LEARNER)).containsExactly("permitNotRead", "ownLockMissing");
    }

    @Test
    void a_test_under_isolation_runs_and_ends() {
        var shift = new Shift().underTest();
        assertThat(shift.against(Condition.TEST_UNDER_ISOLATION, AUTHORISED)).isEmpty();
        shift.does(AUTHORISED, testEnded());
        assertThat(shift.state()).isEqualTo(State.LOCKED);
        assertThat(shift.against(Condition.TEST_UNDER_ISOLATION, AUTHORISED)).isNotEmpty();
    }

    @Test
    void live_work_runs_with_a_second_person() {
        var shift = new Shift().liveWork();
        assertThat(shift.against(Condition.LIVE, AUTHORISED)).isEmpty();
        assertThat(shift.against(Condition.LIVE, TECHNICIAN)).contains("notTheTester");
    }

    @Test
    void a_pack_that_was_landed_is_a_source_of_every_later_isolation() {
        var shift = new Shift().does(OUTSIDER, new IsolationSaying.SourceRecorded("PACK-2"));
        shift.planned();
        assertThat(shift.isolation.points()).containsExactly("JB-A", "JB-B", "JB-C");
        assertThat(shift.isolation.sources()).extracting("code").contains("PACK-2");
    }

    @Test
    void the_system_is_whole_again_only_when_it_was_restored() {
        assertThat(Isolation.none().closed()).isTrue();
        assertThat(new Shift().planned().isolation.closed()).isFalse();
        assertThat(new Shift().liveWork().isolation.closed()).isFalse();
        var shift = new Shift().ready();
        assertThat(shift.isolation.closed()).isFalse();
        assertThat(shift.does(AUTHORISED, restored(AUTHORISED)).isolation.closed())
                .isTrue();
    }

    @Test
    void an_isolation_that_was_voided_leaves_a_system_that_is_not_whole() {
        var shift = new Shift().planned().does(OUTSIDER, new IsolationSaying.DangerReported(Danger.OTHER, "cab"));
        assertThat(shift.state()).isEqualTo(State.VOID);
        assertThat(shift.isolation.locks()).isEmpty();
        assertThat(shift.isolation.closed()).isFalse();
    }
}
