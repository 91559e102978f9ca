package wainbook.trace.campaign;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import wainbook.act.Reason;
import wainbook.page.Words;

/** Every state that a vehicle of a campaign can be in, with every step: 480 of them. */
class StepRuleTest {

    private static final String ME = "W-1";
    private static final String OTHER = "W-2";
    private static final boolean[] BOTH = {false, true};

    @Test
    void a_closed_campaign_lets_nothing_be_done_and_says_so() {
        for (Progress state : states()) {
            for (Step step : Step.values()) {
                assertThat(against(step, false, state))
                        .extracting(Reason::key)
                        .containsExactly("campaign.closedAlready");
            }
        }
    }

    @Test
    void a_vehicle_that_was_never_in_scope_can_be_added_and_nothing_else() {
        for (Step step : Step.values()) {
            List<Reason> against = StepRule.against(step, true, "FA-1", "WB-1", Optional.empty(), ME);
            if (step == Step.ADD) {
                assertThat(against).isEmpty();
            } else {
                assertThat(against).extracting(Reason::key).containsExactly("campaign.notInScope");
            }
        }
    }

    @Test
    void what_is_over_can_only_come_back_into_scope_and_what_was_done_by_a_rework_order_not_even_that() {
        for (Progress state : states()) {
            if (!state.standing().open()) {
                for (Step step : Step.values()) {
                    boolean may = step == Step.ADD && state.standing() != Standing.DONE;
                    assertThat(against(step, true, state).isEmpty())
                            .as(step + " " + state)
                            .isEqualTo(may);
                }
            }
        }
    }

    @Test
    void nobody_is_written_to_or_asked_back_while_the_vehicle_is_here() {
        for (Progress state : states()) {
            if (!state.handedOver()) {
                assertThat(against(Step.SEND_LETTER, true, state)).isNotEmpty();
                assertThat(against(Step.ANSWER, true, state)).isNotEmpty();
                assertThat(against(Step.ORDER_REWORK, true, state)).isNotEmpty();
            }
        }
    }

    @Test
    void an_answer_needs_a_letter_and_a_second_rework_order_waits_for_the_end_of_the_first() {
        for (Progress state : states()) {
            if (state.handedOver() && state.standing().open()) {
                assertThat(against(Step.ANSWER, true, state).isEmpty()).isEqualTo(state.letter());
                assertThat(against(Step.ORDER_REWORK, true, state).isEmpty())
                        .isEqualTo(state.rework() == Rework.NONE || state.rework() == Rework.REJECTED);
                assertThat(against(Step.SEND_LETTER, true, state)).isEmpty();
            }
        }
    }

    @Test
    void taking_out_takes_two_whoever_they_are() {
        for (Progress state : states()) {
            if (state.standing().open()) {
                Optional<String> asker = state.askedOutBy();
                assertThat(against(Step.ASK_OUT, true, state).isEmpty()).isEqualTo(asker.isEmpty());
                assertThat(against(Step.AGREE_OUT, true, state).isEmpty())
                        .isEqualTo(asker.isPresent() && !asker.get().equals(ME));
                assertThat(against(Step.KEEP_IN, true, state).isEmpty()).isEqualTo(asker.isPresent());
            }
        }
    }

    @Test
    void a_vehicle_that_is_being_put_right_is_not_settled_beside_its_rework_order() {
        for (Progress state : states()) {
            if (state.standing().open()) {
                assertThat(against(Step.SETTLE, true, state).isEmpty()).isEqualTo(state.rework() != Rework.IN_WORKS);
            }
        }
    }

    @Test
    void from_every_open_state_there_is_a_way_to_its_end() {
        for (Progress state : states()) {
            if (state.standing().open()) {
                boolean settles = against(Step.SETTLE, true, state).isEmpty();
                assertThat(settles || state.rework() == Rework.IN_WORKS)
                        .as(state.toString())
                        .isTrue();
            }
        }
    }

    @Test
    void every_state_has_one_standing_and_only_three_of_them_are_over() {
        for (Progress state : states()) {
            boolean over = state.out() || state.settled() || state.rework() == Rework.HANDED_OVER;
            assertThat(state.standing().open()).as(state.toString()).isEqualTo(!over);
        }
        assertThat(Standing.values()).filteredOn(standing -> !standing.open()).hasSize(3);
        for (Standing standing : Standing.values()) {
            assertThat(standing.word()).isNotBlank();
        }
    }

    @Test
    void every_refusal_has_its_words_and_each_step_is_open_somewhere_and_shut_somewhere() {
        for (Step step : Step.values()) {
            boolean open = false;
            boolean shut = false;
            for (Progress state : states()) {
                List<Reason> against = against(step, true, state);
                open |= against.isEmpty();
                shut |= !against.isEmpty();
                against.forEach(reason -> assertThat(
                                Words.of(reason.key(), reason.arguments().toArray()))
                        .contains("WB-1"));
            }
            assertThat(open && shut).as(step.name()).isTrue();
        }
    }

    private static List<Reason> against(Step step, boolean open, Progress state) {
        return StepRule.against(step, open, "FA-1", "WB-1", Optional.of(state), ME);
    }

    static List<Progress> states() {
        var states = new ArrayList<Progress>();
        for (boolean handedOver : BOTH) {
            for (boolean out : BOTH) {
                for (Optional<String> asker : List.of(Optional.<String>empty(), Optional.of(ME), Optional.of(OTHER))) {
                    for (boolean letter : BOTH) {
                        for (boolean answered : BOTH) {
                            for (Rework rework : Rework.values()) {
                                for (boolean settled : BOTH) {
                                    states.add(new Progress(handedOver, out, asker, letter, answered, rework, settled));
                                }
                            }
                        }
                    }
                }
            }
        }
        return states;
    }
}
