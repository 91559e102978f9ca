package wainbook.works;

import java.time.LocalDate;
import java.util.Optional;
import wainbook.act.Reason;

/** Whether a person holds a competence on a day. */
public final class CompetenceRule {

    private static final String SOURCE = "ISO 9001:2015 7.2 (clause from memory)";

    private CompetenceRule() {}

    /** The reason against it, if there is one. */
    public static Optional<Reason> against(Person person, String competence, LocalDate today) {
        Optional<Person.Competence> held = person.competence(competence);
        if (held.isEmpty()) {
            return Optional.of(Reason.of("works.competenceMissing", SOURCE, competence));
        }
        if (held.get().withdrawn()) {
            return Optional.of(Reason.of("works.competenceWithdrawn", SOURCE, competence));
        }
        if (today.isAfter(held.get().validTo())) {
            return Optional.of(Reason.of(
                    "works.competenceExpired", SOURCE, competence, held.get().validTo()));
        }
        return held.get().validOn(today)
                ? Optional.empty()
                : Optional.of(Reason.of(
                        "works.competenceNotYet", SOURCE, competence, held.get().validFrom()));
    }
}
