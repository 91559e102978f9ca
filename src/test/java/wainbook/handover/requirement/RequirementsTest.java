package wainbook.handover.requirement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import wainbook.page.Words;
import wainbook.predicate.Vocabulary;

class RequirementsTest {

    private static final LocalDate DAY = LocalDate.of(2026, 11, 25);

    private static Rule rule(String when, Optional<LocalDate> from) {
        return new Rule(
                "GB-01",
                "Notice",
                Optional.of(when),
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
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                new RuleSource("an act", "s.1", RuleSource.Standing.SEEN));
    }

    private static Requirement only(Rule rule, Map<String, ?> facts) {
        return new Requirements(new RuleSet("GB", 1, List.of(rule)))
                .on(DAY, facts)
                .get(0);
    }

    private static String because(Requirement requirement) {
        return Words.of(
                requirement.because().key(), requirement.because().arguments().toArray());
    }

    @Test
    void says_which_facts_decided_it() {
        var rule = rule("tail_lift && axles == 2", Optional.empty());

        assertThat(because(only(rule, Map.of("tail_lift", true, "axles", 2))))
                .isEqualTo("Needed because axles = 2, tail_lift = true.");
        assertThat(because(only(rule, Map.of("tail_lift", false)))).isEqualTo("Not needed because tail_lift = false.");
    }

    @Test
    void asks_for_the_facts_that_are_missing() {
        var asked = only(rule("tail_lift && axles == 2", Optional.empty()), Map.of("tail_lift", true));

        assertThat(asked.answer()).isEqualTo(Requirement.Answer.ASK);
        assertThat(asked.missingFacts()).containsExactly("axles");
        assertThat(because(asked)).startsWith("This cannot be decided yet. Unknown: axles.");
    }

    @Test
    void a_rule_not_yet_in_force_needs_nothing_whatever_is_unknown() {
        var rule = rule("tail_lift", Optional.of(DAY.plusDays(1)));

        assertThat(only(rule, Map.of()).answer()).isEqualTo(Requirement.Answer.NOT_NEEDED);
        assertThat(only(rule("tail_lift", Optional.of(DAY)), Map.of()).answer()).isEqualTo(Requirement.Answer.ASK);
    }

    @Test
    void a_rule_that_cannot_be_read_is_refused_by_its_name() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> only(rule("tail_lifft", Optional.empty()), Map.of()))
                .withMessageStartingWith("GB-01 1:1 undeclared reference to 'tail_lifft'");
    }

    @Test
    void every_text_that_the_sets_name_is_there() {
        RuleSet.there().stream()
                .flatMap(set -> RuleSet.named(set).orElseThrow().rules().stream())
                .forEach(rule -> {
                    rule.ask()
                            .ifPresent(key ->
                                    assertThat(Words.of("handover." + key, "x")).contains("x"));
                    rule.note()
                            .ifPresent(key ->
                                    assertThat(Words.of("handover." + key)).isNotBlank());
                    rule.per()
                            .ifPresent(per -> assertThat(Words.of("handover.several." + per, "Label", 3))
                                    .contains("Label", "3"));
                });
        assertThat(RuleSet.there())
                .allSatisfy(set -> assertThat(Words.of("handover.set." + set)).isNotBlank());
        assertThat(RuleSet.named("XX")).isEmpty();
        assertThat(RuleSet.named("../x")).isEmpty();
    }

    @Test
    void finds_facts_that_do_not_fit() {
        assertThat(StatedFacts.misfits(Map.of("packs", List.of(Map.of("type", "E60")), "refrigerant", true)))
                .isEmpty();
        assertThat(StatedFacts.misfits(Map.of("axles", "two", "colour", "red")))
                .extracting(Vocabulary.Misfit::name)
                .containsExactlyInAnyOrder("axles", "colour");
    }
}
