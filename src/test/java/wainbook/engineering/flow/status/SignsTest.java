package wainbook.line.station;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** The state is the first line that is true: off shift, down, starved, held, blocked, awaiting sign-off, over takt, working. */
class StateOfAStationTest {

    private static final boolean[] NO_AND_YES = {false, true};

    @Test
    void every_combination_has_the_state_of_the_first_sign_that_is_true() {
        for (Signs signs : all()) {
            assertThat(signs.state()).as(signs.toString()).isEqualTo(byTheTable(signs));
        }
    }

    @Test
    void each_state_but_off_shift_comes_of_some_combination() {
        Map<StationState, Integer> count = new EnumMap<>(StationState.class);
        all().forEach(signs -> count.merge(signs.state(), 1, Integer::sum));
        assertThat(count)
                .containsEntry(StationState.DOWN, 32)
                .containsEntry(StationState.STARVED, 16)
                .containsEntry(StationState.HELD, 8)
                .containsEntry(StationState.BLOCKED, 4)
                .containsEntry(StationState.AWAITING_SIGN_OFF, 2)
                .containsEntry(StationState.OVER_TAKT, 1)
                .containsEntry(StationState.WORKING, 1)
                .doesNotContainKey(StationState.OFF_SHIFT);
    }

    @Test
    void off_shift_goes_before_everything() {
        all().forEach(signs -> {
            assertThat(signs.state(false)).isEqualTo(StationState.OFF_SHIFT);
            assertThat(signs.state(true)).isEqualTo(signs.state());
        });
    }

    private static StationState byTheTable(Signs signs) {
        boolean[] truths = {
            signs.down(), !signs.vehicle(), signs.held(), signs.signed(), signs.done(), signs.overTakt(), true
        };
        StationState[] states = {
            StationState.DOWN,
            StationState.STARVED,
            StationState.HELD,
            StationState.BLOCKED,
            StationState.AWAITING_SIGN_OFF,
            StationState.OVER_TAKT,
            StationState.WORKING
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
                                all.add(new Signs(down, vehicle, held, done, signed, overTakt));
                            }
                        }
                    }
                }
            }
        }
        return all;
    }
}
