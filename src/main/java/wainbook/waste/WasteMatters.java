package wainbook.waste;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.time.LocalDate;
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
import wainbook.works.shift.WorksDay;

/** Parts that should have gone to somebody by now, and containers that stand longer than the works wants. They bar nothing. */
@ApplicationScoped
class WasteMatters implements Matters {

    private final Ledger ledger;
    private final TakenOut takenOut;
    private final WorksDay day;

    WasteMatters(Ledger ledger, TakenOut takenOut, WorksDay day) {
        this.ledger = ledger;
        this.takenOut = takenOut;
        this.day = day;
    }

    @Override
    public List<OpenMatter> open(Instant now) {
        LocalDate today = day.of(now);
        return Stream.concat(
                        DuePart.overdueOn(today).stream().map(part -> due(part, today)),
                        ContainerRow.here().stream()
                                .filter(row -> row.massKg.signum() > 0)
                                .filter(row -> askOn(row).isBefore(today))
                                .map(row -> standing(row, today)))
                .toList();
    }

    private LocalDate askOn(ContainerRow row) {
        return day.of(row.since).plusDays(row.askAfterDays);
    }

    private OpenMatter due(DuePart part, LocalDate today) {
        String what = takenOut.of(ledger.history(Subject.workOrder(part.workOrder)), part.thing)
                .map(Thing::what)
                .orElse(part.thing);
        return new OpenMatter(
                Sort.WASTE,
                part.workOrder,
                Words.of("waste.matterDue." + part.fate.name()),
                Optional.empty(),
                Words.of("waste.matterDueWhat", what, part.party == null ? "–" : part.party),
                part.since,
                List.of(Owner.of(Role.TEAM_LEADER), Owner.of(Role.HANDOVER_CLERK)),
                Due.on(part.dueOn, today),
                "",
                "/orders/" + part.workOrder + "/strip#" + part.thing);
    }

    private OpenMatter standing(ContainerRow row, LocalDate today) {
        return new OpenMatter(
                Sort.WASTE,
                "",
                Words.of("waste.matterStanding", row.label),
                Optional.empty(),
                Words.of("waste.matterStandingWhat", row.code, row.askAfterDays),
                row.since,
                List.of(Owner.of(Role.HANDOVER_CLERK), Owner.of(Role.TEAM_LEADER)),
                Due.on(askOn(row), today),
                "",
                Labels.path(row.label));
    }
}
