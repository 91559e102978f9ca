package wainbook.line.forecast.sequence;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import wainbook.engineering.flow.sequence.Budget;
import wainbook.engineering.flow.sequence.Found;
import wainbook.engineering.flow.sequence.Found.Verdict;
import wainbook.engineering.flow.sequence.SequenceSearch;
import wainbook.line.forecast.state.OnHand;
import wainbook.line.forecast.state.SmallLine;
import wainbook.line.forecast.state.TheLineNow;

/** A works of two stations; each vehicle takes about a hundred minutes at either, and work ends six hours from now. */
class ProposalTest {

    private static final LocalDate LONG_AFTER = SmallLine.TODAY.plusDays(30);

    @Test
    void donors_that_are_here_and_those_that_are_not_keep_to_themselves() {
        assertThat(Proposal.inFront(SmallLine.full()).groups()).containsExactly(List.of("3", "4"), List.of("5"));
        assertThat(Proposal.mayChange(SmallLine.full())).isTrue();
        assertThat(Proposal.mayChange(SmallLine.waiting("only"))).isFalse();
        assertThat(Proposal.mayChange(SmallLine.waiting())).isFalse();
    }

    @Test
    void one_that_is_promised_for_today_is_put_before_those_that_have_time() {
        TheLineNow line = promised(Map.of("A", LONG_AFTER, "B", LONG_AFTER, "C", LONG_AFTER, "D", SmallLine.TODAY));

        Proposal proposal = proposal(line);

        assertThat(proposal.verdict()).isEqualTo(Verdict.BETTER);
        assertThat(proposal.order()).first().isEqualTo("D");
        Proposal.Place first = proposal.places().get(0);
        assertThat(first.today()).isEqualTo(4);
        assertThat(first.gains()).isTrue();
        assertThat(first.oddsAfter()).isGreaterThan(first.oddsBefore());
        assertThat(first.medianAfter().orElseThrow())
                .isBefore(first.medianBefore().orElseThrow());
        assertThat(proposal.likelier()).isEqualTo(1);
        assertThat(proposal.at()).isEqualTo(SmallLine.NOW);
        assertThat(proposal.entries()).isEqualTo(42);
    }

    @Test
    void promises_that_lie_far_ahead_leave_nothing_to_gain() {
        Proposal proposal =
                proposal(promised(Map.of("A", LONG_AFTER, "B", LONG_AFTER, "C", LONG_AFTER, "D", LONG_AFTER)));

        assertThat(proposal.verdict()).isEqualTo(Verdict.NOBODY_LATE);
        assertThat(proposal.better()).isFalse();
        assertThat(proposal.order()).containsExactly("A", "B", "C", "D");
    }

    private static Proposal proposal(TheLineNow line) {
        Found found = new SequenceSearch(Proposal.inFront(line), new Budget(1, 50, 100, 500, 100)).find(progress -> {});
        return Proposal.of(line, 42, found);
    }

    private static TheLineNow promised(Map<String, LocalDate> days) {
        TheLineNow line = SmallLine.waiting("A", "B", "C", "D");
        for (OnHand one : line.waiting()) {
            line = line.with(new OnHand(
                    one.order(),
                    one.kind(),
                    one.doing(),
                    one.stage(),
                    one.place(),
                    one.since(),
                    one.minutes(),
                    one.plannedMinutes(),
                    one.stops(),
                    days.get(one.order()),
                    one.needs()));
        }
        return line;
    }
}
