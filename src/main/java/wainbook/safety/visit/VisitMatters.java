package wainbook.safety.visit;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import wainbook.ledger.Ledger;
import wainbook.ledger.Subject;
import wainbook.matter.Matters;
import wainbook.matter.OpenMatter;
import wainbook.matter.OpenMatter.Due;
import wainbook.matter.OpenMatter.Owner;
import wainbook.matter.OpenMatter.Sort;
import wainbook.page.Words;
import wainbook.works.Role;

/** Visitors who are inside though their host is gone, the shift is over or their induction has run out. */
@ApplicationScoped
class VisitMatters implements Matters {

    private final Ledger ledger;
    private final Visiting visiting;

    VisitMatters(Ledger ledger, Visiting visiting) {
        this.ledger = ledger;
        this.visiting = visiting;
    }

    @Override
    public List<OpenMatter> open(Instant now) {
        return Visits.of(ledger.history(Subject.works())).inside().stream()
                .flatMap(visit -> matter(visit, visiting.wrongInWords(visit, now)))
                .toList();
    }

    private static Stream<OpenMatter> matter(Visit visit, List<String> wrong) {
        if (wrong.isEmpty()) {
            return Stream.empty();
        }
        return Stream.of(new OpenMatter(
                Sort.VISITOR,
                "",
                Words.of("safety.visitNumber", visit.number()),
                Optional.of(visit.said().area()),
                String.join(" ", wrong),
                visit.entered().moment().at(),
                List.of(Owner.person(visit.host()), Owner.of(Role.TEAM_LEADER)),
                Due.open(),
                "",
                "/safety/visitors"));
    }
}
