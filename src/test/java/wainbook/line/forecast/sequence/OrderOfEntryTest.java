package wainbook.line.forecast.sequence;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import wainbook.act.Reason;
import wainbook.line.forecast.state.SetOrder;

/** What stands against setting an order of entry. */
class OrderOfEntryTest {

    private static final Set<String> WAITING = Set.of("A", "B", "C");
    private static final Optional<SetOrder> SET =
            Optional.of(new SetOrder(List.of("B"), 7, "7008", Instant.ofEpochSecond(0)));
    private static final Optional<SetOrder> TAKEN_BACK =
            Optional.of(new SetOrder(List.of(), 8, "7008", Instant.ofEpochSecond(0)));

    @Test
    void those_that_wait_may_be_put_in_any_order_and_not_all_need_be_named() {
        assertThat(against(0, Optional.empty(), "C", "A")).isEmpty();
        assertThat(against(7, SET, "C")).isEmpty();
    }

    @Test
    void one_that_does_not_wait_or_is_named_twice_is_told() {
        assertThat(against(0, Optional.empty(), "A", "X", "A"))
                .containsExactly("line.entryOrderNotWaiting", "line.entryOrderTwice");
    }

    @Test
    void whoever_has_not_seen_the_one_in_force_does_not_replace_it() {
        assertThat(against(0, SET, "A")).containsExactly("line.entryOrderSeen");
    }

    @Test
    void only_what_is_set_can_be_taken_back() {
        assertThat(against(7, SET)).isEmpty();
        assertThat(against(8, TAKEN_BACK)).containsExactly("line.entryOrderNone");
        assertThat(against(0, Optional.empty())).containsExactly("line.entryOrderNone");
    }

    private static List<String> against(long replaces, Optional<SetOrder> last, String... orders) {
        return OrderOfEntry.against(new OrderOfEntry.ToSet(UUID.randomUUID(), replaces, List.of(orders)), last, WAITING)
                .stream()
                .map(Reason::key)
                .toList();
    }
}
