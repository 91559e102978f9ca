package wainbook.permit.rule;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import wainbook.permit.Trait;

/** Which works cannot stand together: every pair of the table, from both sides, and no other pair. */
class ConflictTest {

    /** Written here a second time, by hand, so that a line lost from the table is seen. */
    private static final Set<Set<Trait>> REFUSED = Set.of(
            Set.of(Trait.HOT_WORK, Trait.PACKS_ABOARD),
            Set.of(Trait.HOT_WORK, Trait.FUEL_OPEN),
            Set.of(Trait.HOT_WORK, Trait.STORED_ENERGY),
            Set.of(Trait.HOT_WORK, Trait.HEIGHT),
            Set.of(Trait.LIFTING, Trait.BENEATH),
            Set.of(Trait.LIFTING, Trait.HEIGHT),
            Set.of(Trait.RAISED, Trait.BENEATH));

    @Test
    void every_pair_is_refused_from_both_sides_or_from_neither() {
        for (Trait one : Trait.values()) {
            for (Trait other : Trait.values()) {
                boolean refused = one != other && REFUSED.contains(Set.of(one, other));
                assertThat(Conflict.between(Set.of(one), Set.of(other)))
                        .as(one + " beside " + other)
                        .hasSize(refused ? 1 : 0);
            }
        }
    }

    @Test
    void work_with_several_circumstances_meets_every_conflict_of_each() {
        assertThat(Conflict.between(
                        Set.of(Trait.HOT_WORK, Trait.BENEATH), Set.of(Trait.FUEL_OPEN, Trait.RAISED, Trait.HEIGHT)))
                .containsExactly(Conflict.HOT_WORK_AND_FUEL, Conflict.HOT_WORK_AND_HEIGHT, Conflict.RAISED_AND_BENEATH);
    }

    @Test
    void every_line_has_a_rule_of_its_own() {
        List<String> rules = Stream.of(Conflict.values()).map(Conflict::rule).toList();
        assertThat(rules).doesNotHaveDuplicates();
    }
}
