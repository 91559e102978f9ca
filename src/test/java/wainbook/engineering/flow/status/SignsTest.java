package wainbook.engineering.flow.status;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** What a station is doing is the first line that is true: off shift, down, starved, held, blocked, awaiting sign-off, over takt, working. */
class SignsTest {

    private static final boolean[] NO_AND_YES = {false, true};

    @Test
    void every_combination_has_the_state_of_the_first_sign_that_is_true() {
        for (Signs signs : all()) {
            assertThat(signs.doing()).as(signs.toString()).isEqualTo(byTheTable(signs));
        }
    }

    @Test
    void each_state_but_off_shift_comes_of_some_combination() {
        Map<Doing, Integer> count = new EnumMap<>(Doing.class);
        all().forEach(signs -> count.merge(signs.doing(), 1, Integer::sum));
        assertThat(count)
                .containsEntry(Doing.DOWN, 32)
                .containsEntry(Doing.STARVED, 16)
                .containsEntry(Doing.HELD, 8)
                .containsEntry(Doing.BLOCKED, 4)
                .containsEntry(Doing.AWAITING_SIGN_OFF, 2)
                .containsEntry(Doing.OVER_TAKT, 1)
                .containsEntry(Doing.WORKING, 1)
                .doesNotContainKey(Doing.OFF_SHIFT);
    }

    @Test
    void off_shift_goes_before_everything() {
        all().forEach(signs -> {
            var off = new Signs(
                    false, signs.down(), signs.vehicle(), signs.held(), signs.done(), signs.signed(), signs.overTakt());
            assertThat(off.doing()).isEqualTo(Doing.OFF_SHIFT);
            assertThat(off.onShift()).isEqualTo(signs);
        });
    }

    private static Doing byTheTable(Signs signs) {
        boolean[] truths = {
            signs.down(), !signs.vehicle(), signs.held(), signs.signed(), signs.done(), signs.overTakt(), true
        };
        Doing[] states = {
            Doing.DOWN,
            Doing.STARVED,
            Doing.HELD,
            Doing.BLOCKED,
            Doing.AWAITING_SIGN_OFF,
            Doing.OVER_TAKT,
            Doing.WORKING
        };
        int first = 0;
        while (!truths[first]) {
            first++;
        }
        return states[first];
    }

    private static List<Signs> all() {
        var all = new ArrayList<Signs>();
        for (boolean down : NO_AND_YES) {
            for (boolean vehicle : NO_AND_YES) {
                for (boolean held : NO_AND_YES) {
                    for (boolean done : NO_AND_YES) {
                        for (boolean signed : NO_AND_YES) {
                            for (boolean overTakt : NO_AND_YES) {
                                all.add(new Signs(true, down, vehicle, held, done, signed, overTakt));
                            }
                        }
                    }
                }
            }
        }
        return all;
    }
}
