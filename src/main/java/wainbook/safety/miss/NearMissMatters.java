package wainbook.safety.miss;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.List;
import wainbook.ledger.Ledger;
import wainbook.ledger.Subject;
import wainbook.matter.Matters;
import wainbook.matter.OpenMatter;
import wainbook.matter.OpenMatter.Due;
import wainbook.matter.OpenMatter.Owner;
import wainbook.matter.OpenMatter.Sort;
import wainbook.page.Words;
import wainbook.works.Role;
import wainbook.works.shift.WorksDay;

/** Near misses that are not closed: first somebody must look at it, then whoever was named sees to it. */
@ApplicationScoped
class NearMissMatters implements Matters {

    private final Ledger ledger;
    private final WorksDay day;

    NearMissMatters(Ledger ledger, WorksDay day) {
        this.ledger = ledger;
        this.day = day;
    }

    @Override
    public List<OpenMatter> open(Instant now) {
        return NearMisses.of(ledger.history(Subject.works())).open().stream()
                .map(miss -> matter(miss, now))
                .toList();
    }

    private OpenMatter matter(NearMiss miss, Instant now) {
        return new OpenMatter(
                Sort.NEAR_MISS,
                miss.said().order().orElse(""),
                Words.of("safety.missNumber", miss.number()),
                miss.said().station(),
                miss.said().words().orElseGet(() -> Words.of("safety.noWords")),
                miss.reported().moment().at(),
                miss.owner()
                        .map(owner -> List.of(Owner.person(owner)))
                        .orElseGet(() -> List.of(Owner.of(Role.TEAM_LEADER), Owner.of(Role.WORKS_ENGINEER))),
                miss.dueOn().map(due -> Due.on(due, day.of(now))).orElse(Due.open()),
                "",
                "/safety/near-misses/" + miss.number());
    }
}
