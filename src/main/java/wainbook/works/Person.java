package wainbook.works;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wainbook.ledger.Entry;
import wainbook.ledger.History;

/** A person as the ledger knows them: a number, roles, competences; no name. */
public record Person(String number, List<Role> roles, boolean left, Map<String, Competence> competences) {

    /** A competence and the days it is valid, both included. */
    public record Competence(
            String code, int level, LocalDate validFrom, LocalDate validTo, Optional<Instant> withdrawnAt) {

        public boolean withdrawn() {
            return withdrawnAt.isPresent();
        }

        /** A renewal at the same level that begins before this one is over leaves no day without the competence. */
        Competence renewedBy(Competence next) {
            boolean joins = !withdrawn()
                    && level == next.level()
                    && next.validFrom().isAfter(validFrom)
                    && !next.validFrom().isAfter(validTo.plusDays(1));
            return joins ? new Competence(code, level, validFrom, next.validTo(), Optional.empty()) : next;
        }

        public boolean validOn(LocalDate day) {
            return !withdrawn() && !day.isBefore(validFrom) && !day.isAfter(validTo);
        }
    }

    public Person {
        roles = List.copyOf(roles);
        competences = Map.copyOf(competences);
    }

    public static Person of(History history) {
        List<Role> roles = new ArrayList<>();
        boolean left = false;
        Map<String, Competence> competences = new LinkedHashMap<>();
        for (Entry entry : history.entries()) {
            if (entry.saying() instanceof WorksSaying.Engaged engaged) {
                roles = engaged.roles();
            } else if (entry.saying() instanceof WorksSaying.RolesGiven given) {
                roles = given.roles();
            } else if (entry.saying() instanceof WorksSaying.Left) {
                left = true;
            } else if (entry.saying() instanceof WorksSaying.CompetenceGiven given) {
                competences.merge(given.competence(), competence(given), Competence::renewedBy);
            } else if (entry.saying() instanceof WorksSaying.CompetenceWithdrawn withdrawn) {
                competences.computeIfPresent(
                        withdrawn.competence(),
                        (code, had) -> new Competence(
                                code,
                                had.level(),
                                had.validFrom(),
                                had.validTo(),
                                Optional.of(entry.moment().at())));
            }
        }
        return new Person(history.subject().code(), roles, left, competences);
    }

    public Optional<Competence> competence(String code) {
        return Optional.ofNullable(competences.get(code));
    }

    private static Competence competence(WorksSaying.CompetenceGiven given) {
        return new Competence(given.competence(), given.level(), given.validFrom(), given.validTo(), Optional.empty());
    }
}
