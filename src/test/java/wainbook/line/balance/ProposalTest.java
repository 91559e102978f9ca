package wainbook.line.balance;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import wainbook.engineering.flow.history.Finished;
import wainbook.line.balance.asked.Asked;
import wainbook.line.balance.asked.PairRule;
import wainbook.line.balance.asked.PairRule.Sort;
import wainbook.line.balance.asked.Question;
import wainbook.line.balance.asked.Question.Times;
import wainbook.line.balance.content.Content;
import wainbook.line.balance.content.Content.Item;
import wainbook.line.balance.content.Content.KindShare;
import wainbook.line.balance.content.Content.Place;
import wainbook.line.balance.content.Recorded;

/** Two kinds of vehicle, three to one; the second stage has two stations side by side. */
class ProposalTest {

    private static final Content CONTENT = new Content(
            List.of(
                    new Place("strip", 1, "Strip", 1),
                    new Place("packs", 2, "Packs", 2),
                    new Place("final", 3, "Final", 1)),
            List.of(new KindShare("bus", 3), new KindShare("truck", 1)),
            List.of(
                    item("strip", "a", 40, 60, false),
                    item("strip", "b", 60, 60, false, "strip/a"),
                    item("packs", "c", 120, 80, true),
                    item("final", "d", 50, 50, false)),
            Optional.of(94));

    @Test
    void the_average_weighs_each_kind_by_its_vehicles_and_shares_the_load_side_by_side() {
        assertThat(CONTENT.load("strip")).isEqualTo(105);
        assertThat(CONTENT.load("strip", "truck")).isEqualTo(120);
        assertThat(CONTENT.load("packs")).isEqualTo(55);
    }

    @Test
    void a_better_balance_moves_what_may_move_to_where_there_is_room() {
        Proposal found = find(asked(1, List.of(), List.of()));

        assertThat(found.proven()).isTrue();
        assertThat(found.moves()).extracting(Proposal.Moved::key).containsExactly("b");
        assertThat(found.moves().get(0).to()).isEqualTo("packs");
        assertThat(found.cycleMinutes()).contains(85.0);
        assertThat(found.loads()).contains(new Proposal.Load("packs", 55, 85));
    }

    @Test
    void what_is_to_stay_stays() {
        assertThat(find(asked(0, List.of(), List.of())).moves()).isEmpty();
        assertThat(find(asked(1, List.of("strip"), List.of())).moves()).isEmpty();
        assertThat(find(asked(2, List.of(), List.of("b"))).moves()).isEmpty();
    }

    @Test
    void an_item_with_an_electrical_condition_stays_whatever_is_asked() {
        assertThat(find(asked(2, List.of(), List.of())).moves())
                .extracting(Proposal.Moved::key)
                .doesNotContain("c");
    }

    /** Without the rule b goes to the packs and 85 minutes are enough; bound to its neighbour it stays, and 105 it is. */
    @Test
    void a_rule_costs_what_the_same_search_saves_without_it() {
        Proposal found =
                find(asked(1, Map.of(), Times.PLANNED, new PairRule(Sort.APART, List.of("b"), List.of("c"), 0)));

        assertThat(found.cycleMinutes()).contains(105.0);
        assertThat(found.withoutRules()).contains(new Proposal.Without(Optional.of(85.0), 85, true));
    }

    @Test
    void what_two_persons_do_side_by_side_is_told_as_long_as_it_takes() {
        Proposal found = find(asked(0, Map.of("packs", 2, "strip", 2), Times.PLANNED));

        assertThat(found.loads())
                .containsExactly(
                        new Proposal.Load("strip", 105, 105),
                        new Proposal.Load("packs", 55, 55),
                        new Proposal.Load("final", 50, 50));
        assertThat(found.cycleMinutes()).contains(105.0);
    }

    /** At the strip stage a vehicle took half its plan, five times. */
    @Test
    void as_recorded_a_stage_has_its_own_pace_and_the_proposal_says_on_what_it_rests() {
        var recorded = new Recorded(IntStream.range(0, 5)
                .mapToObj(i -> new Finished("V" + i, "bus", "strip", 50, 100))
                .toList());

        Proposal found = Running.of(
                        UUID.randomUUID(),
                        new Asked(CONTENT.timed(recorded), asked(0, Map.of(), Times.RECORDED)),
                        recorded)
                .orElseThrow()
                .find();

        assertThat(found.loads()).contains(new Proposal.Load("strip", 52.5, 52.5));
        assertThat(found.paces())
                .filteredOn(pace -> pace.stage().equals("strip"))
                .extracting(pace -> pace.kind() + " " + pace.ground() + " " + pace.factor())
                .containsExactly("bus KIND 0.5", "truck STAGE 0.5");
    }

    private static Proposal find(Question question) {
        return Running.of(UUID.randomUUID(), new Asked(CONTENT, question), Recorded.NOTHING)
                .orElseThrow()
                .find();
    }

    private static Question asked(int reach, List<String> stages, List<String> items) {
        return new Question(
                Optional.empty(), Optional.empty(), reach, stages, items, true, 20, List.of(), Map.of(), Times.PLANNED);
    }

    private static Question asked(int reach, Map<String, Integer> persons, Times times, PairRule... rules) {
        return new Question(
                Optional.empty(),
                Optional.empty(),
                reach,
                List.of(),
                List.of(),
                true,
                20,
                List.of(rules),
                persons,
                times);
    }

    private static Item item(String stage, String key, double bus, double truck, boolean bound, String... after) {
        return new Item(
                stage + "/" + key, stage, key, "Do " + key, Map.of("bus", bus, "truck", truck), List.of(after), bound);
    }
}
