package wainbook.line.forecast.state;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import wainbook.line.forecast.state.EntryRule.Waiting;
import wainbook.line.forecast.state.OnHand.Doing;

class SetOrderTest {

    private static final SetOrder FIRST = set(1, 100, "C", "A");
    private static final SetOrder TAKEN_BACK = set(2, 200);

    @Test
    void those_it_names_come_first_in_its_order_and_the_others_by_the_rule() {
        assertThat(inOrder(set(1, 0, "D", "B"), here("A"), here("B"), here("C"), here("D")))
                .containsExactly("D", "B", "A", "C");
    }

    @Test
    void a_donor_that_is_not_here_comes_after_those_that_are_though_it_is_named_first() {
        assertThat(inOrder(set(1, 0, "C", "B"), here("A"), here("B"), away("C"), away("D")))
                .containsExactly("B", "A", "C", "D");
    }

    @Test
    void one_that_is_on_the_line_by_now_is_named_in_vain() {
        assertThat(inOrder(set(1, 0, "gone", "B"), here("A"), here("B"))).containsExactly("B", "A");
    }

    @Test
    void it_is_in_force_from_its_time_until_another_or_until_it_is_taken_back() {
        List<SetOrder> all = List.of(FIRST, TAKEN_BACK, set(3, 300, "B"));

        assertThat(SetOrder.at(all, Instant.ofEpochSecond(99))).isEmpty();
        assertThat(SetOrder.at(all, Instant.ofEpochSecond(100))).contains(FIRST);
        assertThat(SetOrder.at(all, Instant.ofEpochSecond(200))).isEmpty();
        assertThat(SetOrder.at(all, Instant.ofEpochSecond(301)).orElseThrow().orders())
                .containsExactly("B");
    }

    private static SetOrder set(long entry, long second, String... orders) {
        return new SetOrder(List.of(orders), entry, "7008", Instant.ofEpochSecond(second));
    }

    /** All promised for one day, so that by the rule they come in the order of their numbers. */
    private static List<String> inOrder(SetOrder set, OnHand... waiting) {
        EntryRule rule = EntryRule.of(List.of()).following(Optional.of(set));
        return Stream.of(waiting)
                .map(one -> new Waiting(one, SmallLine.NOW))
                .sorted(rule.first())
                .map(one -> one.vehicle().order())
                .toList();
    }

    private static OnHand here(String order) {
        return SmallLine.vehicle(order, Doing.ACCEPTED, null);
    }

    private static OnHand away(String order) {
        return SmallLine.vehicle(order, Doing.ORDERED, null);
    }
}
