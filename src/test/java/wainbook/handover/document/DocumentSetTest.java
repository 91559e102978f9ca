package wainbook.handover.document;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import wainbook.act.Moment;
import wainbook.handover.HandoverSaying.DocumentNoted;
import wainbook.handover.HandoverSaying.State;
import wainbook.handover.Standing;
import wainbook.handover.requirement.Requirements;
import wainbook.handover.requirement.Rule;
import wainbook.handover.requirement.RuleSet;
import wainbook.handover.requirement.RuleSource;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.ledger.Saying;
import wainbook.ledger.Subject;
import wainbook.order.OrderSaying.FactStated;
import wainbook.order.OrderSaying.Ordered;
import wainbook.order.WorkOrder;
import wainbook.page.Words;

/** How a document stands on a day, and when it keeps the vehicle here. */
class DocumentSetTest {

    private static final LocalDate DAY = LocalDate.of(2026, 11, 25);
    private static final Instant NOON = Instant.parse("2026-11-25T12:00:00Z");

    private final List<Saying> said =
            new ArrayList<>(List.of(new Ordered("Vale and Fen", "bus", "bus-12m", "BUS", List.of("strip"), DAY)));

    @Test
    void a_needed_document_keeps_the_vehicle_here_until_it_is_in_hand() {
        state("tail_lift", "true");
        assertThat(document()).returns(Standing.NEEDED, Document::standing).returns(true, Document::bars);
        note(State.APPLIED_FOR);
        assertThat(document()).returns(Standing.APPLIED_FOR, Document::standing).returns(true, Document::bars);
        note(State.IN_HAND);
        assertThat(document()).returns(Standing.IN_HAND, Document::standing).returns(false, Document::bars);
    }

    @Test
    void the_later_note_counts_and_the_earlier_stays_on_record() {
        state("tail_lift", "true");
        note(State.IN_HAND);
        note(State.REFUSED);
        assertThat(document()).returns(Standing.REFUSED, Document::standing).returns(true, Document::bars);
        assertThat(history().saying(DocumentNoted.class)).hasSize(2);
    }

    @ParameterizedTest
    @CsvSource({"2026-11-24, EXPIRED", "2026-11-25, IN_HAND", "2026-11-26, IN_HAND"})
    void a_document_is_in_hand_up_to_and_on_its_last_day(LocalDate validUntil, Standing expected) {
        state("tail_lift", "true");
        said.add(noted(State.IN_HAND, Optional.of(validUntil)));
        assertThat(document().standing()).isEqualTo(expected);
        assertThat(document().bars()).isEqualTo(expected == Standing.EXPIRED);
    }

    @Test
    void the_last_day_ends_only_what_is_in_hand() {
        state("tail_lift", "true");
        said.add(noted(State.WAIVED, Optional.of(DAY.minusDays(1))));
        assertThat(document()).returns(Standing.WAIVED, Document::standing).returns(true, Document::waivedAway);
    }

    @Test
    void a_document_not_needed_bars_nothing_whatever_was_noted() {
        state("tail_lift", "false");
        note(State.REFUSED);
        assertThat(document()).returns(Standing.NOT_NEEDED, Document::standing).returns(false, Document::bars);
    }

    @ParameterizedTest
    @EnumSource(State.class)
    void an_unknown_fact_bars_whatever_was_noted(State noted) {
        note(noted);
        assertThat(document())
                .returns(Standing.ASK, Document::standing)
                .returns(true, Document::waitsForFacts)
                .returns(true, Document::bars);
        assertThat(set(rule(RuleSource.Standing.SEEN, Rule.Due.BEFORE_HANDOVER)).missingFacts())
                .containsExactly("tail_lift");
    }

    @ParameterizedTest
    @CsvSource({"APPLIED_FOR, true", "REFUSED, true", "IN_HAND, false", "WAIVED, false"})
    void a_question_to_a_person_bars_until_the_document_is_in_hand_or_waived(State noted, boolean bars) {
        state("tail_lift", "true");
        state("cold_unit", "true");
        Rule asks = asking();
        assertThat(only(asks)).returns(Standing.ASK, Document::standing).returns(false, Document::waitsForFacts);
        assertThat(only(asks).bars()).isTrue();
        note(noted);
        assertThat(only(asks).bars()).isEqualTo(bars);
    }

    @Test
    void a_rule_from_memory_asks_and_never_bars() {
        Rule recalled = rule(RuleSource.Standing.MEMORY, Rule.Due.BEFORE_ROAD_USE);
        assertThat(only(recalled)).returns(Standing.ASK, Document::standing).returns(false, Document::bars);
        state("tail_lift", "true");
        assertThat(only(recalled)).returns(Standing.NEEDED, Document::standing).returns(false, Document::bars);
        assertThat(set(recalled).asking()).hasSize(1);
        assertThat(set(recalled).barring()).isEmpty();
    }

    @Test
    void a_document_may_follow_by_its_day_and_is_overdue_after_it() {
        state("tail_lift", "true");
        Document follows = only(rule(RuleSource.Standing.SEEN, Rule.Due.MAY_FOLLOW));
        assertThat(follows.bars()).isFalse();
        assertThat(follows.followsBy()).contains(DAY.plusDays(28));
        assertThat(follows.overdueOn(DAY.plusDays(28))).isFalse();
        assertThat(follows.overdueOn(DAY.plusDays(29))).isTrue();
        note(State.IN_HAND);
        assertThat(only(rule(RuleSource.Standing.SEEN, Rule.Due.MAY_FOLLOW)).overdueOn(DAY.plusDays(29)))
                .isFalse();
    }

    @Test
    void a_fact_stated_anew_opens_what_it_makes_needed() {
        state("tail_lift", "false");
        assertThat(document().standing()).isEqualTo(Standing.NOT_NEEDED);
        state("tail_lift", "true");
        assertThat(document().standing()).isEqualTo(Standing.NEEDED);
    }

    @Test
    void every_state_standing_and_duty_has_its_word() {
        for (Standing standing : Standing.values()) {
            assertThat(standing.word()).isNotBlank();
        }
        for (State state : State.values()) {
            assertThat(Words.of("handover.state." + state.name())).isNotBlank();
        }
        for (Rule.Duty duty : Rule.Duty.values()) {
            assertThat(Words.of("handover.duty." + duty.name())).isNotBlank();
        }
        for (Rule.Due due : Rule.Due.values()) {
            assertThat(Words.of("handover.due." + due.name(), 28)).isNotBlank();
        }
        for (RuleSource.Standing known : RuleSource.Standing.values()) {
            assertThat(Words.of("handover.known." + known.name())).isNotBlank();
        }
    }

    private Document document() {
        return only(rule(RuleSource.Standing.SEEN, Rule.Due.BEFORE_HANDOVER));
    }

    private Document only(Rule rule) {
        return set(rule).documents().get(0);
    }

    private DocumentSet set(Rule rule) {
        History history = history();
        return DocumentSet.of(
                new Requirements(new RuleSet("GB", 1, List.of(rule))),
                history,
                WorkOrder.of(history).orElseThrow(),
                DAY);
    }

    private History history() {
        History history = History.empty(Subject.workOrder("DS-1"));
        for (Saying saying : said) {
            history = history.and(new Entry(
                    UUID.randomUUID(),
                    history.subject(),
                    history.number() + 1,
                    Moment.of("7011", NOON),
                    "0".repeat(64),
                    saying));
        }
        return history;
    }

    private void state(String fact, String stated) {
        said.add(new FactStated(fact, stated));
    }

    @ParameterizedTest(name = "valid until {0}, gone by {1}: {2}")
    @CsvSource({
        "2026-11-28, 2026-11-29, true",
        "2026-11-29, 2026-11-29, false",
        "2026-11-24, 2026-11-29, false",
        ", 2026-11-29, false"
    })
    void what_is_in_hand_and_ends_before_the_vehicle_leaves_is_asked_for_anew(
            LocalDate validUntil, LocalDate leaves, boolean ends) {
        state("tail_lift", "true");
        said.add(noted(State.IN_HAND, Optional.ofNullable(validUntil)));
        assertThat(document().endsBefore(leaves)).isEqualTo(ends);
        said.add(noted(State.APPLIED_FOR, Optional.ofNullable(validUntil)));
        assertThat(document().endsBefore(leaves)).isFalse();
    }

    private void note(State state) {
        said.add(noted(state, Optional.empty()));
    }

    private static DocumentNoted noted(State state, Optional<LocalDate> validUntil) {
        return new DocumentNoted("GB-21", "Report", "GB", 1, state, "R-1", validUntil, Optional.empty(), "");
    }

    private static Rule rule(RuleSource.Standing standing, Rule.Due due) {
        Optional<Integer> days = due == Rule.Due.MAY_FOLLOW ? Optional.of(28) : Optional.empty();
        return rule(Map.of(), standing, due, days);
    }

    private static Rule asking() {
        return rule(
                Map.of("askWhen", "cold_unit", "ask", "zeroEmissionDoubt"),
                RuleSource.Standing.SEEN,
                Rule.Due.BEFORE_HANDOVER,
                Optional.empty());
    }

    private static Rule rule(
            Map<String, String> doubt, RuleSource.Standing standing, Rule.Due due, Optional<Integer> followDays) {
        return new Rule(
                "GB-21",
                "Report",
                Optional.of("tail_lift"),
                "Competent person",
                Optional.ofNullable(doubt.get("askWhen")),
                Optional.ofNullable(doubt.get("ask")),
                due,
                Optional.empty(),
                Optional.empty(),
                Rule.Duty.WORKS,
                Optional.empty(),
                followDays,
                Optional.empty(),
                Optional.empty(),
                "Report",
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                new RuleSource("an act", "s.1", standing));
    }
}
