package wainbook.process.page;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import wainbook.ledger.Ledger;
import wainbook.ledger.Subject;
import wainbook.process.ProcessSaying.DraftKept;
import wainbook.process.ProcessSaying.PlanReleased;
import wainbook.process.ProcessSaying.RouteReleased;
import wainbook.process.draft.About;
import wainbook.process.draft.Revisions;

/** Every paper that the works has or is drafting. */
@ApplicationScoped
class Papers {

    private final Ledger ledger;

    Papers(Ledger ledger) {
        this.ledger = ledger;
    }

    /** By thing, and within it in the order of the first release. */
    List<Revisions> all() {
        Set<About> about = new LinkedHashSet<>();
        about.add(About.STAGES);
        about.add(About.JOINTS);
        ledger.subjects(Subject.Sort.CHECK_SHEET).forEach(subject -> about.add(About.sheet(subject.code())));
        ledger.history(Subject.works()).entries().forEach(entry -> {
            if (entry.saying() instanceof RouteReleased said) {
                about.add(About.route(said.route().code()));
            } else if (entry.saying() instanceof PlanReleased said) {
                about.add(About.plan(said.plan().variant()));
            } else if (entry.saying() instanceof DraftKept said) {
                about.add(said.draft().about());
            }
        });
        return about.stream()
                .map(one -> Revisions.of(ledger.history(one.subject()), one))
                .filter(Revisions::known)
                .toList();
    }
}
