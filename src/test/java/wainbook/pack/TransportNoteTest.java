package wainbook.pack;

import static org.assertj.core.api.Assertions.assertThat;
import static wainbook.pack.OnePack.judged;
import static wainbook.pack.OnePack.read;
import static wainbook.pack.OnePack.received;
import static wainbook.pack.OnePack.setAside;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import wainbook.pack.PackSaying.Judgement;
import wainbook.pack.PackSaying.Verdict;
import wainbook.pack.TransportNote.Condition;
import wainbook.pack.TransportNote.Line;
import wainbook.pack.TransportNote.Standing;
import wainbook.pack.watch.Alarm;

/** Which lines a transport note reminds of. The lines themselves are written here a second time. */
class TransportNoteTest {

    private final OnePack one = new OnePack();

    @Test
    void each_condition_by_itself_and_in_a_vehicle_has_its_own_lines() {
        assertThat(new TransportNote(Condition.SOUND, false).lines())
                .containsExactly(
                        Line.UN_3480,
                        Line.TEST_SUMMARY,
                        Line.SP_310,
                        Line.P_903,
                        Line.LP_903,
                        Line.AIR_CHARGE,
                        Line.ROAD_CHARGE,
                        Line.TERMINALS);
        assertThat(new TransportNote(Condition.DAMAGED, false).lines())
                .containsExactly(
                        Line.UN_3480, Line.TEST_SUMMARY, Line.SP_376, Line.P_908, Line.TERMINALS, Line.WATCHED);
        assertThat(new TransportNote(Condition.REACTIVE, false).lines())
                .containsExactly(
                        Line.UN_3480, Line.TEST_SUMMARY, Line.SP_376, Line.P_911, Line.TERMINALS, Line.WATCHED);
        assertThat(new TransportNote(Condition.SOUND, true).lines())
                .containsExactly(Line.UN_3556, Line.UN_3171, Line.RESCUE_SHEET);
        assertThat(new TransportNote(Condition.DAMAGED, true).lines())
                .containsExactly(Line.UN_3556, Line.UN_3171, Line.VEHICLE_DAMAGED, Line.RESCUE_SHEET);
        assertThat(new TransportNote(Condition.REACTIVE, true).lines())
                .containsExactly(Line.UN_3556, Line.UN_3171, Line.VEHICLE_DAMAGED, Line.RESCUE_SHEET);
    }

    @Test
    void how_well_a_line_is_known_is_said_with_it() {
        assertThat(Line.SP_310.standing()).isEqualTo(Standing.READ);
        assertThat(Line.LP_903.standing()).isEqualTo(Standing.MEMORY);
        assertThat(Line.TERMINALS.standing()).isEqualTo(Standing.PRACTICE);
    }

    @Test
    void a_pack_that_was_never_set_aside_or_was_judged_sound_is_sound() {
        assertThat(TransportNote.of(one.say(received(Verdict.ACCEPTED)).pack())).isEqualTo(Condition.SOUND);
        assertThat(TransportNote.of(one.say(setAside(Optional.empty(), Optional.empty(), true))
                        .say(judged(Judgement.SOUND))
                        .pack()))
                .isEqualTo(Condition.SOUND);
    }

    @Test
    void one_that_is_set_aside_is_damaged_and_after_heat_or_an_alarm_liable_to_react() {
        assertThat(TransportNote.of(one.say(setAside()).say(read()).pack())).isEqualTo(Condition.DAMAGED);
        assertThat(TransportNote.of(one.say(judged(Judgement.DEFECTIVE)).pack()))
                .as("what is found defective stays damaged")
                .isEqualTo(Condition.DAMAGED);
        assertThat(TransportNote.of(one.say(read(Alarm.RISE)).pack())).isEqualTo(Condition.REACTIVE);
        assertThat(TransportNote.of(new OnePack()
                        .say(setAside(Optional.empty(), Optional.empty(), true))
                        .pack()))
                .isEqualTo(Condition.REACTIVE);
    }
}
