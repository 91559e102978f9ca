package wainbook.handover.requirement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import wainbook.handover.requirement.RuleFile.Inclusion;

class RuleFileTest {

    private static final LocalDate CHANGE = LocalDate.of(2027, 1, 20);
    private static final RuleSet UNION = new RuleSet("EU", 3, List.of(rule("EU-01"), rule("EU-02"), rule("EU-03")));

    private static Rule rule(String id) {
        return rule(id, Optional.empty(), Optional.empty(), Optional.empty());
    }

    private static Rule rule(String id, Optional<LocalDate> from, Optional<LocalDate> to, Optional<String> replaces) {
        return new Rule(
                id,
                "Notice",
                Optional.empty(),
                "Keeper",
                Optional.empty(),
                Optional.empty(),
                Rule.Due.BEFORE_HANDOVER,
                Optional.empty(),
                Optional.empty(),
                Rule.Duty.KEEPER,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                "Copy",
                from,
                to,
                Optional.empty(),
                replaces,
                new RuleSource("an act", "s.1", RuleSource.Standing.SEEN));
    }

    private static RuleSet including(int revision, Optional<List<String>> only, Rule own) {
        return new RuleFile("DE", 1, Optional.of(List.of(new Inclusion("EU", revision, only))), List.of(own))
                .whole(set -> UNION);
    }

    @Test
    void a_set_holds_its_own_rules_and_those_it_includes() {
        assertThat(including(3, Optional.empty(), rule("DE-17")).rules())
                .extracting(Rule::id)
                .containsExactly("DE-17", "EU-01", "EU-02", "EU-03");
        assertThat(including(3, Optional.of(List.of("EU-03")), rule("DE-17")).rules())
                .extracting(Rule::id)
                .containsExactly("DE-17", "EU-03");
    }

    @Test
    void a_national_rule_takes_the_place_of_one_it_includes() {
        Rule permit = rule("DE-17", Optional.empty(), Optional.empty(), Optional.of("EU-02"));
        assertThat(including(3, Optional.empty(), permit).rules())
                .extracting(Rule::id)
                .containsExactly("DE-17", "EU-01", "EU-03");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> including(3, Optional.of(List.of("EU-01")), permit))
                .withMessage("DE replaces EU-02, which it does not include");
    }

    @Test
    void a_set_is_revised_when_one_that_it_includes_is() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> including(2, Optional.empty(), rule("DE-17")))
                .withMessageStartingWith("includes EU revision 2, but it is at 3");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> including(3, Optional.of(List.of("EU-99")), rule("DE-17")))
                .withMessage("there is no EU-99 in EU");
    }

    @Test
    void two_versions_of_a_rule_are_never_in_force_on_the_same_day() {
        Rule former = rule("EU-15", Optional.empty(), Optional.of(CHANGE.minusDays(1)), Optional.empty());
        Rule latter = rule("EU-15", Optional.of(CHANGE), Optional.empty(), Optional.empty());
        RuleSet set = new RuleSet("EU", 1, List.of(latter, former));
        assertThat(set.on(CHANGE.minusDays(1))).containsExactly(former);
        assertThat(set.on(CHANGE)).containsExactly(latter);
        Rule late = rule("EU-15", Optional.empty(), Optional.of(CHANGE), Optional.empty());
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new RuleSet("EU", 1, List.of(late, latter)))
                .withMessage("two rules are called EU-15 on the same day");
    }

    @Test
    void between_two_versions_the_next_is_told_and_after_the_last_the_last() {
        Rule former = rule("EU-15", Optional.empty(), Optional.of(CHANGE.minusDays(10)), Optional.empty());
        Rule latter = rule("EU-15", Optional.of(CHANGE), Optional.of(CHANGE.plusDays(9)), Optional.empty());
        RuleSet set = new RuleSet("EU", 1, List.of(former, latter));
        assertThat(set.on(CHANGE.minusDays(5))).containsExactly(latter);
        assertThat(set.on(CHANGE.plusDays(10))).containsExactly(latter);
    }
}
