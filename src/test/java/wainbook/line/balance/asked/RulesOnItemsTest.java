package wainbook.line.balance.asked;

import static org.assertj.core.api.Assertions.assertThat;
import static wainbook.line.balance.asked.SmallBalance.LINE;
import static wainbook.line.balance.asked.SmallBalance.apart;
import static wainbook.line.balance.asked.SmallBalance.at;
import static wainbook.line.balance.asked.SmallBalance.distance;
import static wainbook.line.balance.asked.SmallBalance.find;
import static wainbook.line.balance.asked.SmallBalance.free;
import static wainbook.line.balance.asked.SmallBalance.item;
import static wainbook.line.balance.asked.SmallBalance.line;
import static wainbook.line.balance.asked.SmallBalance.question;
import static wainbook.line.balance.asked.SmallBalance.together;

import java.util.Map;
import org.junit.jupiter.api.Test;
import wainbook.engineering.balance.Found;
import wainbook.line.balance.content.Content;

/**
 * Cutting 40, grinding 30 behind it, draining fuel 20, welding 30, painting 10 at three stations. Of 130 minutes a third is more
 * than 43, and in tens 50 is the least: 40 with 10, 30 with 20, 30.
 */
class RulesOnItemsTest {

    @Test
    void without_rules_fifty_minutes_are_enough() {
        Found found = find(LINE, free());

        assertThat(found.proven()).isTrue();
        assertThat(found.best()).isEqualTo(50);
    }

    /** Cutting with welding is 70; the others are 60 together. */
    @Test
    void what_is_to_be_together_is_at_one_station_and_costs_what_it_costs() {
        Found found = find(LINE, free(together("cut", "weld")));

        assertThat(found.proven()).isTrue();
        assertThat(found.best()).isEqualTo(70);
        assertThat(at(found, "strip/cut")).isEqualTo(at(found, "fit/weld"));
    }

    /** Cutting is alone, fuel with painting at most, so that grinding and welding are together. */
    @Test
    void what_is_to_be_apart_shares_no_station() {
        Found found = find(LINE, free(apart("cut", "fuel paint"), apart("grind weld", "fuel")));

        assertThat(found.proven()).isTrue();
        assertThat(found.best()).isEqualTo(60);
        assertThat(at(found, "strip/fuel")).isNotIn(at(found, "strip/cut"), at(found, "strip/grind"));
        assertThat(at(found, "final/paint")).isNotEqualTo(at(found, "strip/cut"));
    }

    @Test
    void between_what_is_at_a_distance_lie_the_stations_that_were_asked_for() {
        Found found = find(LINE, free(distance("weld", 2, "paint")));

        assertThat(found.proven()).isTrue();
        assertThat(at(found, "fit/weld")).isEqualTo(1);
        assertThat(at(found, "final/paint")).isEqualTo(3);
    }

    @Test
    void a_group_is_together_as_a_whole() {
        Found found = find(LINE, free(together("cut grind", "paint")));

        assertThat(found.best()).isEqualTo(80);
        assertThat(at(found, "strip/cut")).isEqualTo(at(found, "strip/grind")).isEqualTo(at(found, "final/paint"));
    }

    /** Gluing stands at two stages and stays at both; painting must be at the third. */
    @Test
    void a_rule_holds_for_each_item_with_the_key() {
        Content twice = line(
                item("strip", "glue", 10, true),
                item("strip", "paint", 10, false),
                item("fit", "glue", 10, true),
                item("final", "test", 5, true));

        Found found = find(twice, free(apart("glue", "paint")));

        assertThat(at(found, "strip/paint")).isEqualTo(3);
    }

    /** Cutting and then grinding are 70 minutes for any number of persons; fuel, welding and painting go on beside it. */
    @Test
    void two_persons_shorten_a_station_only_as_far_as_items_can_run_side_by_side() {
        Content one = line(
                item("strip", "cut", 40, true),
                item("strip", "grind", 30, true, "strip/cut"),
                item("strip", "fuel", 20, true));
        var alone = new Asked(one, question(0, Map.of()));
        var two = new Asked(one, question(0, Map.of("strip", 2)));
        var three = new Asked(one, question(0, Map.of("strip", 3)));

        assertThat(alone.minutes(one.stages().get(0), one.items())).isEqualTo(90);
        assertThat(two.minutes(one.stages().get(0), one.items())).isEqualTo(70);
        assertThat(three.minutes(one.stages().get(0), one.items())).isEqualTo(70);
        assertThat(find(one, two.question()).best()).isEqualTo(70);
    }

    @Test
    void a_second_person_draws_work_to_the_station() {
        Found found = find(LINE, question(2, Map.of("strip", 2)));

        assertThat(found.proven()).isTrue();
        assertThat(found.best()).isEqualTo(40);
    }

    /** One item of forty minutes stays forty for the one who does it. */
    @Test
    void nobody_is_divided() {
        Content one = line(item("strip", "cut", 40, true), item("fit", "weld", 30, true));
        var nine = new Asked(one, question(0, Map.of("strip", 9, "fit", 9)));

        assertThat(nine.minutes(one.stages().get(0), one.at("strip"))).isEqualTo(40);
        assertThat(find(one, nine.question()).best()).isEqualTo(40);
    }
}
