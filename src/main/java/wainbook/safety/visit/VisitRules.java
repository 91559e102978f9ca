package wainbook.safety.visit;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wainbook.act.Reason;
import wainbook.isolation.step.FactsNow;
import wainbook.works.CompetenceRule;
import wainbook.works.Person;

/** Who may induct, let in and look after a visitor, and what is wrong with a visit that goes on. Out has no rule. */
final class VisitRules {

    /** EN 50110-1: ordinary persons enter closed electrical areas only with skilled or instructed persons (from memory). */
    static final String ACCOMPANIED = "EN 50110-1 (from memory)";

    /** How long an induction is valid at most. Works rule; common practice, no source. */
    static final int MONTHS = 12;

    private static final int LONGEST_AREA = 80;

    private VisitRules() {}

    /** Instructed or better: the level is not asked, since the lowest is 'instructed'. */
    static List<Reason> mayHost(Optional<Person> who, LocalDate today) {
        if (who.filter(person -> !person.left()).isEmpty()) {
            return List.of(Reason.of("safety.hostUnknown", ACCOMPANIED));
        }
        return CompetenceRule.against(who.get(), FactsNow.COMPETENCE, today)
                .map(lacking -> List.of(Reason.of("safety.hostNotInstructed", ACCOMPANIED, FactsNow.COMPETENCE)))
                .orElse(List.of());
    }

    static List<Reason> induct(LocalDate validTo, Optional<Person> who, LocalDate today) {
        var against = new ArrayList<>(mayHost(who, today));
        if (validTo.isBefore(today) || validTo.isAfter(today.plusMonths(MONTHS))) {
            against.add(
                    Reason.of("safety.validToFault", Reason.WORKS_RULE, MONTHS).liftedAt("#validTo"));
        }
        return against;
    }

    /** @param inside whether the visitor is in already */
    static List<Reason> enter(
            Optional<Visitor> visitor, boolean inside, String area, Optional<Person> host, LocalDate today) {
        var against = new ArrayList<>(mayHost(host, today));
        if (visitor.isEmpty()) {
            against.add(Reason.of("safety.visitorUnknown", Reason.WORKS_RULE).liftedAt("/safety/visitors/induction"));
        }
        visitor.filter(known -> !known.validOn(today))
                .ifPresent(known -> against.add(
                        Reason.of("safety.inductionOver", Reason.WORKS_RULE, known.number(), known.validTo())
                                .liftedAt("/safety/visitors/induction?visitor=" + known.number())));
        if (inside) {
            against.add(Reason.of("safety.insideAlready", Reason.WORKS_RULE).liftedAt("/safety/visitors"));
        }
        if (area.isBlank() || area.length() > LONGEST_AREA) {
            against.add(Reason.of("safety.areaMissing", Reason.WORKS_RULE).liftedAt("#area"));
        }
        return against;
    }

    static List<Reason> takeOver(Optional<Visit> visit, int number, Optional<Person> who, LocalDate today) {
        var against = new ArrayList<>(mayHost(who, today));
        if (visit.filter(Visit::inside).isEmpty()) {
            against.add(Reason.of("safety.notInside", Reason.WORKS_RULE, number));
        }
        return against;
    }

    /** What is wrong while somebody is inside; keys of texts. */
    enum Wrong {
        HOST_LEFT,
        HOST_NOT_INSTRUCTED,
        SHIFT_OVER,
        INDUCTION_OVER
    }

    /** @param shiftEnd when the shift ended or ends in which the host took them on */
    static List<Wrong> wrong(Visit visit, Optional<Person> host, LocalDate today, Instant shiftEnd, Instant now) {
        var wrong = new ArrayList<Wrong>();
        if (host.filter(person -> !person.left()).isEmpty()) {
            wrong.add(Wrong.HOST_LEFT);
        } else if (!mayHost(host, today).isEmpty()) {
            wrong.add(Wrong.HOST_NOT_INSTRUCTED);
        }
        if (!now.isBefore(shiftEnd)) {
            wrong.add(Wrong.SHIFT_OVER);
        }
        if (today.isAfter(visit.inductedTo())) {
            wrong.add(Wrong.INDUCTION_OVER);
        }
        return wrong;
    }
}
