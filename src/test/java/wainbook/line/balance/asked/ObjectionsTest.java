package wainbook.line.balance.asked;

import static org.assertj.core.api.Assertions.assertThat;
import static wainbook.line.balance.asked.SmallBalance.LINE;
import static wainbook.line.balance.asked.SmallBalance.apart;
import static wainbook.line.balance.asked.SmallBalance.distance;
import static wainbook.line.balance.asked.SmallBalance.free;
import static wainbook.line.balance.asked.SmallBalance.item;
import static wainbook.line.balance.asked.SmallBalance.line;
import static wainbook.line.balance.asked.SmallBalance.question;
import static wainbook.line.balance.asked.SmallBalance.together;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import wainbook.act.Reason;
import wainbook.line.balance.content.Content;

class ObjectionsTest {

    @Test
    void rules_that_can_be_kept_stand_unopposed() {
        assertThat(to(LINE, free(together("cut", "weld"), apart("fuel", "grind"), distance("cut", 1, "paint"))))
                .isEmpty();
    }

    @Test
    void an_unknown_key_is_told_at_its_field() {
        assertThat(told(LINE, free(apart("cut", "fuel"), apart("cut", "fule"))))
                .containsExactly("#rules[1].other line.balanceNoItem [fule]");
    }

    @Test
    void a_rule_needs_both_its_sides() {
        assertThat(told(LINE, free(apart("", "fuel")))).containsExactly("#rules[0].one line.balanceRuleHalf []");
    }

    @Test
    void a_group_has_an_end() {
        String many = IntStream.range(0, 21).mapToObj(i -> "weld").collect(Collectors.joining(" "));

        assertThat(told(LINE, free(apart("cut", many)))).containsExactly("#rules[0].other line.balanceRuleMany [20]");
    }

    @Test
    void nothing_is_apart_from_itself() {
        assertThat(told(LINE, free(apart("cut fuel", "fuel"))))
                .containsExactly("#rules[0].other line.balanceRuleItself [fuel]");
    }

    @Test
    void a_distance_is_at_least_one_station_and_lies_within_the_line() {
        assertThat(told(LINE, free(distance("cut", 0, "paint"), distance("cut", 3, "paint"))))
                .containsExactly(
                        "#rules[0].stations line.wholeNumber [1, 2]", "#rules[1].stations line.wholeNumber [1, 2]");
    }

    @Test
    void what_stands_at_two_stages_cannot_be_together_with_anything() {
        Content twice =
                line(item("strip", "glue", 10, true), item("fit", "glue", 10, true), item("final", "paint", 5, false));

        assertThat(told(twice, free(together("paint", "glue"))))
                .containsExactly("#rules[0].other line.balanceTwoPlaces [glue, 1, 2]");
    }

    @Test
    void together_and_apart_contradict_each_other_and_both_are_named() {
        assertThat(told(LINE, free(distance("cut", 1, "paint"), together("cut", "fuel"), apart("fuel", "cut"))))
                .containsExactly("#rules[2].one line.balanceRuleAgainst [3, 2, fuel, cut]");
    }

    @Test
    void together_by_way_of_a_third_is_together() {
        assertThat(told(LINE, free(together("cut", "fuel"), together("fuel", "weld"), apart("cut", "weld"))))
                .containsExactly("#rules[2].one line.balanceRuleAgainstAll [3, cut, weld]");
    }

    @Test
    void what_stays_at_one_stage_cannot_be_apart() {
        Content bound = line(item("fit", "cut", 10, true), item("fit", "fuel", 10, true));

        assertThat(told(bound, free(apart("cut", "fuel"))))
                .containsExactly("#rules[0].one line.balanceRuleNever [1, cut, 2, fuel, 2]");
    }

    @Test
    void what_stays_at_two_stages_cannot_be_together() {
        Content bound = line(item("strip", "cut", 10, true), item("final", "fuel", 10, true));

        assertThat(told(bound, free(together("cut", "fuel"))))
                .containsExactly("#rules[0].one line.balanceRuleNever [1, cut, 1, fuel, 3]");
    }

    @Test
    void a_distance_against_the_order_of_the_sheet_can_never_be_kept() {
        assertThat(told(LINE, free(distance("grind", 1, "cut"))))
                .containsExactly("#rules[0].one line.balanceRuleNever [1, grind, 1–3, cut, 1–3]");
    }

    @Test
    void distances_in_a_circle_name_the_one_that_closes_it() {
        assertThat(told(LINE, free(distance("cut", 1, "weld"), distance("weld", 1, "cut"))))
                .containsExactly("#rules[1].one line.balanceRuleAgainst [2, 1, weld, cut]");
    }

    @Test
    void an_item_that_may_not_move_so_far_is_told_where_it_may_be() {
        assertThat(told(LINE, question(0, Map.of(), together("cut", "weld"))))
                .containsExactly("#rules[0].one line.balanceRuleNever [1, cut, 1, weld, 2]");
    }

    @Test
    void a_rule_that_is_refused_is_not_held_against_the_next() {
        assertThat(told(LINE, free(together("cut", "fuel"), apart("cut", "fuel"), apart("cut", "weld"))))
                .containsExactly("#rules[1].one line.balanceRuleAgainst [2, 1, cut, fuel]");
    }

    @Test
    void persons_at_an_unknown_stage_are_told() {
        assertThat(told(LINE, question(1, Map.of("paintshop", 2))))
                .containsExactly("#persons[paintshop] line.balanceNoStage [paintshop]");
    }

    private static List<Reason> to(Content content, Question question) {
        return Objections.to(new Asked(content, question));
    }

    private static List<String> told(Content content, Question question) {
        return to(content, question).stream()
                .map(reason -> reason.lift().orElse("") + " " + reason.key() + " " + reason.arguments())
                .toList();
    }
}
