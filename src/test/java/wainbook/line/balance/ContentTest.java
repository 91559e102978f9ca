package wainbook.line.balance;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import wainbook.engineering.balance.Found;
import wainbook.engineering.balance.Search;
import wainbook.line.balance.Content.Item;
import wainbook.line.balance.Content.KindShare;
import wainbook.line.balance.Content.Place;

/** Two kinds of vehicle, three to one; the second stage has two stations side by side. */
class ContentTest {

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

    private static Proposal find(Question question) {
        Found found = Search.of(CONTENT.work(question), CONTENT.aim(question))
                .orElseThrow()
                .find(progress -> {});
        return Proposal.of(CONTENT, found);
    }

    private static Question asked(int reach, List<String> stages, List<String> items) {
        return new Question(Optional.empty(), Optional.empty(), reach, stages, items, true, 20);
    }

    private static Item item(String stage, String key, int bus, int truck, boolean bound, String... after) {
        return new Item(
                stage + "/" + key, stage, key, "Do " + key, Map.of("bus", bus, "truck", truck), List.of(after), bound);
    }
}
