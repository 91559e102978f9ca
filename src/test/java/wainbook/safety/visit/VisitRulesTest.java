package wainbook.safety.visit;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import wainbook.act.Moment;
import wainbook.act.Reason;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.ledger.Saying;
import wainbook.ledger.Subject;
import wainbook.safety.SafetySaying.HostTookOver;
import wainbook.safety.SafetySaying.StopTold;
import wainbook.safety.SafetySaying.VisitorEntered;
import wainbook.safety.SafetySaying.VisitorInducted;
import wainbook.safety.SafetySaying.VisitorLeft;
import wainbook.safety.visit.VisitRules.Wrong;
import wainbook.works.Person;
import wainbook.works.Person.Competence;

/** Who lets visitors in and under what, and what is wrong while they are inside. */
class VisitRulesTest {

    private static final Instant NOW = Instant.parse("2026-03-10T09:00:00Z");
    private static final Instant SHIFT_END = Instant.parse("2026-03-10T14:00:00Z");
    private static final LocalDate TODAY = LocalDate.of(2026, 3, 10);

    private History works = History.empty(Subject.works());

    @Test
    void a_host_is_instructed_at_least_and_still_here() {
        assertThat(host(Optional.of(instructed("5", TODAY)))).isEmpty();
        assertThat(host(Optional.of(instructed("5", TODAY.minusDays(1))))).containsExactly("safety.hostNotInstructed");
        assertThat(host(Optional.of(new Person("5", List.of(), false, Map.of()))))
                .containsExactly("safety.hostNotInstructed");
        assertThat(host(Optional.of(gone()))).containsExactly("safety.hostUnknown");
        assertThat(host(Optional.empty())).containsExactly("safety.hostUnknown");
    }

    @Test
    void an_induction_is_for_today_at_least_and_twelve_months_at_most() {
        assertThat(induct(TODAY)).isEmpty();
        assertThat(induct(TODAY.plusMonths(12))).isEmpty();
        assertThat(induct(TODAY.minusDays(1))).containsExactly("safety.validToFault");
        assertThat(induct(TODAY.plusMonths(12).plusDays(1))).containsExactly("safety.validToFault");
    }

    @Test
    void without_a_valid_induction_a_visitor_is_refused_and_told_what_lifts_it() {
        say("5", new VisitorInducted("V-1", Optional.of("0".repeat(64)), TODAY));
        assertThat(enter(visits().visitor("V-1"), false, "bay", TODAY)).isEmpty();
        List<Reason> over = VisitRules.enter(
                visits().visitor("V-1"),
                false,
                "bay",
                Optional.of(instructed("5", TODAY.plusDays(1))),
                TODAY.plusDays(1));
        assertThat(keys(over)).containsExactly("safety.inductionOver");
        assertThat(over.get(0).lift()).contains("/safety/visitors/induction?visitor=V-1");
        assertThat(enter(visits().visitor("V-2"), false, "bay", TODAY)).containsExactly("safety.visitorUnknown");
        say("5", new VisitorInducted("V-1", Optional.empty(), TODAY.plusDays(9)));
        assertThat(enter(visits().visitor("V-1"), false, "bay", TODAY.plusDays(1)))
                .isEmpty();
    }

    @Test
    void nobody_is_inside_twice_nor_nowhere() {
        say("5", new VisitorInducted("V-1", Optional.of("0".repeat(64)), TODAY));
        assertThat(enter(visits().visitor("V-1"), true, "bay", TODAY)).containsExactly("safety.insideAlready");
        assertThat(enter(visits().visitor("V-1"), false, " ", TODAY)).containsExactly("safety.areaMissing");
        assertThat(enter(visits().visitor("V-1"), false, "x".repeat(81), TODAY)).containsExactly("safety.areaMissing");
    }

    @Test
    void an_area_is_said_in_eighty_characters_and_all_that_is_wrong_at_the_door_at_once() {
        say("5", new VisitorInducted("V-1", Optional.of("0".repeat(64)), TODAY));
        assertThat(enter(visits().visitor("V-1"), false, "x".repeat(80), TODAY)).isEmpty();
        List<Reason> against = VisitRules.enter(Optional.empty(), true, "", Optional.empty(), TODAY);
        assertThat(against)
                .extracting(reason -> reason.key() + " " + reason.lift().orElse(""))
                .containsExactly(
                        "safety.hostUnknown ",
                        "safety.visitorUnknown /safety/visitors/induction",
                        "safety.insideAlready /safety/visitors",
                        "safety.areaMissing #area");
    }

    @Test
    void whoever_inducts_or_takes_over_is_instructed_themselves() {
        say("5", entered(1, TODAY));
        assertThat(keys(VisitRules.takeOver(Optional.of(visit()), 1, Optional.of(instructed("6", TODAY)), TODAY)))
                .isEmpty();
        assertThat(keys(VisitRules.takeOver(Optional.of(visit()), 1, Optional.of(gone()), TODAY)))
                .containsExactly("safety.hostUnknown");
        assertThat(keys(VisitRules.takeOver(Optional.empty(), 7, Optional.of(instructed("6", TODAY)), TODAY)))
                .containsExactly("safety.notInside");
        List<Reason> induct = VisitRules.induct(TODAY.minusDays(1), Optional.of(gone()), TODAY);
        assertThat(keys(induct)).containsExactly("safety.hostUnknown", "safety.validToFault");
        assertThat(induct.get(1).lift()).contains("#validTo");
        assertThat(induct.get(1).arguments()).containsExactly("12");
    }

    @Test
    void visits_and_visitors_are_numbered_from_one_and_kept_apart() {
        assertThat(visits().next()).isEqualTo(1);
        assertThat(visits().nextVisitor()).isEqualTo("V-1");
        say("5", new VisitorInducted("V-1", Optional.of("0".repeat(64)), TODAY));
        say("5", new VisitorInducted("V-2", Optional.of("1".repeat(64)), TODAY.plusDays(1)));
        UUID first = visits().visitor("V-1").orElseThrow().knownBy();
        say("5", new VisitorInducted("V-1", Optional.empty(), TODAY.plusDays(30)));
        assertThat(visits().nextVisitor()).isEqualTo("V-3");
        Visitor again = visits().visitor("V-1").orElseThrow();
        assertThat(again.knownBy()).as("the name is found where it was first").isEqualTo(first);
        assertThat(again.number()).isEqualTo("V-1");
        assertThat(again.validTo()).isEqualTo(TODAY.plusDays(30));
        say("5", new StopTold(1, "of another matter"));
        say("5", entered(1, TODAY));
        say("5", new VisitorEntered(2, "V-2", "bay", TODAY.plusDays(1), Optional.empty()));
        assertThat(visits().next()).isEqualTo(3);
        assertThat(visits().number(0)).isEmpty();
        assertThat(visits().number(3)).isEmpty();
        say("6", new HostTookOver(2));
        say("6", new VisitorLeft(1));
        assertThat(visits().inside()).extracting(Visit::visitor).containsExactly("V-2");
        assertThat(visits().inside()).extracting(Visit::host).containsExactly("6");
        assertThat(visits().inside()).extracting(Visit::number).containsExactly(2);
        assertThat(visits().inside()).extracting(Visit::hostedAt).containsExactly(NOW);
        assertThat(visit().host()).isEqualTo("5");
    }

    @Test
    void an_induction_that_runs_out_during_the_visit_is_wrong_from_the_next_day() {
        say("5", entered(1, TODAY));
        assertThat(visit().inductedTo()).isEqualTo(TODAY);
        LocalDate tomorrow = TODAY.plusDays(1);
        assertThat(wrong(Optional.of(gone()), tomorrow, SHIFT_END.plusSeconds(1)))
                .containsExactly(Wrong.HOST_LEFT, Wrong.SHIFT_OVER, Wrong.INDUCTION_OVER);
        assertThat(wrong(Optional.empty(), TODAY, NOW)).containsExactly(Wrong.HOST_LEFT);
    }

    @Test
    void what_is_wrong_while_somebody_is_inside_is_said_one_by_one() {
        say("5", entered(1, TODAY));
        assertThat(wrong(Optional.of(instructed("5", TODAY)), TODAY, NOW)).isEmpty();
        assertThat(wrong(Optional.of(gone()), TODAY, NOW)).containsExactly(Wrong.HOST_LEFT);
        assertThat(wrong(Optional.of(instructed("5", TODAY.minusDays(1))), TODAY, NOW))
                .containsExactly(Wrong.HOST_NOT_INSTRUCTED);
        assertThat(wrong(Optional.of(instructed("5", TODAY)), TODAY, SHIFT_END.minusSeconds(1)))
                .isEmpty();
        assertThat(wrong(Optional.of(instructed("5", TODAY)), TODAY, SHIFT_END)).containsExactly(Wrong.SHIFT_OVER);
        LocalDate tomorrow = TODAY.plusDays(1);
        assertThat(wrong(Optional.of(instructed("5", tomorrow)), tomorrow, NOW)).containsExactly(Wrong.INDUCTION_OVER);
    }

    @Test
    void another_host_takes_over_while_they_are_inside_and_out_is_out() {
        say("5", entered(1, TODAY));
        assertThat(visits().inside()).hasSize(1);
        say("6", new HostTookOver(1));
        assertThat(visit().host()).isEqualTo("6");
        say("7", new VisitorLeft(1));
        say("8", new VisitorLeft(1));
        assertThat(visit().inside()).isFalse();
        assertThat(visit().left().orElseThrow().moment().who()).isEqualTo("7");
        assertThat(keys(VisitRules.takeOver(Optional.of(visit()), 1, Optional.of(instructed("6", TODAY)), TODAY)))
                .containsExactly("safety.notInside");
    }

    private Visits visits() {
        return Visits.of(works);
    }

    private Visit visit() {
        return visits().number(1).orElseThrow();
    }

    private List<Wrong> wrong(Optional<Person> host, LocalDate today, Instant now) {
        return VisitRules.wrong(visit(), host, today, SHIFT_END, now);
    }

    private static List<String> host(Optional<Person> who) {
        return keys(VisitRules.mayHost(who, TODAY));
    }

    private static List<String> induct(LocalDate validTo) {
        return keys(VisitRules.induct(validTo, Optional.of(instructed("5", TODAY)), TODAY));
    }

    private static List<String> enter(Optional<Visitor> visitor, boolean inside, String area, LocalDate today) {
        return keys(VisitRules.enter(visitor, inside, area, Optional.of(instructed("5", today)), today));
    }

    private static List<String> keys(List<Reason> reasons) {
        return reasons.stream().map(Reason::key).toList();
    }

    private static VisitorEntered entered(int visit, LocalDate inductedTo) {
        return new VisitorEntered(visit, "V-1", "bay", inductedTo, Optional.empty());
    }

    private static Person instructed(String number, LocalDate to) {
        return new Person(
                number,
                List.of(),
                false,
                Map.of("HV", new Competence("HV", 1, LocalDate.of(2026, 1, 1), to, Optional.empty())));
    }

    private static Person gone() {
        return new Person("5", List.of(), true, Map.of());
    }

    private void say(String who, Saying saying) {
        works = works.and(new Entry(
                UUID.randomUUID(), Subject.works(), works.number() + 1, Moment.of(who, NOW), "0".repeat(64), saying));
    }
}
