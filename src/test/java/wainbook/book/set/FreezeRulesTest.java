package wainbook.book.set;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import wainbook.act.Moment;
import wainbook.act.Reason;
import wainbook.book.BookSaying.SetFrozen;
import wainbook.handover.HandoverSaying.DocumentNoted;
import wainbook.handover.HandoverSaying.State;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.ledger.Saying;
import wainbook.ledger.Subject;
import wainbook.ledger.evidence.EvidenceFile;
import wainbook.order.OrderSaying.HandedOver;
import wainbook.order.OrderSaying.Ordered;

class FreezeRulesTest {

    private static final Instant AT = Instant.parse("2026-11-26T09:14:27Z");
    private static final EvidenceFile FILE = new EvidenceFile("0".repeat(64), "application/zip", 1);
    private static final Saying ORDERED =
            new Ordered("OP-01", "bus-12m", "bus-12m", "BUS-12M", List.of("strip"), LocalDate.of(2027, 2, 12));
    private static final Saying GIVEN = new HandedOver("Depot foreman, receipt 4711", List.of());
    private static final Saying NOTED = new DocumentNoted(
            "GB-02", "Registration", "GB", 1, State.IN_HAND, "V5", Optional.empty(), Optional.empty(), "");

    private static List<String> against(Saying... sayings) {
        History history = History.empty(Subject.workOrder("WB-1"));
        for (Saying saying : sayings) {
            history = history.and(new Entry(
                    new UUID(0, history.number()),
                    history.subject(),
                    history.number() + 1,
                    Moment.of("W-1", AT),
                    "0".repeat(64),
                    saying));
        }
        return FreezeRules.against(history).stream().map(Reason::key).toList();
    }

    private static SetFrozen frozen(int volume, long upTo) {
        return new SetFrozen(volume, FILE, FILE, upTo, "0".repeat(64));
    }

    @Test
    void a_vehicle_that_is_still_here_has_no_set_to_freeze() {
        assertThat(against(ORDERED)).containsExactly("book.setTooEarly");
    }

    @Test
    void a_vehicle_that_left_has_one_set() {
        assertThat(against(ORDERED, GIVEN)).isEmpty();
        assertThat(against(ORDERED, GIVEN, frozen(1, 2))).containsExactly("book.setFrozenAlready");
    }

    @Test
    void what_is_noted_later_makes_a_further_volume_possible_and_freezing_alone_does_not() {
        assertThat(against(ORDERED, GIVEN, frozen(1, 2), NOTED)).isEmpty();
        assertThat(against(ORDERED, GIVEN, frozen(1, 2), NOTED, frozen(2, 4))).containsExactly("book.setFrozenAlready");
    }
}
