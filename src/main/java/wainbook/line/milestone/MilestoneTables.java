package wainbook.line.milestone;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wainbook.ledger.Entry;
import wainbook.ledger.Ledger;
import wainbook.ledger.Projection;
import wainbook.ledger.Subject;

/** Keeps the milestones of orders, and has each told to whom it may concern, in the transaction of the entry that reaches it. */
@ApplicationScoped
class MilestoneTables implements Projection {

    private final Ledger ledger;
    private final ToTell toTell;

    MilestoneTables(Ledger ledger, ToTell toTell) {
        this.ledger = ledger;
        this.toTell = toTell;
    }

    /** 1: a works that is older than its milestones has them from its first start on. */
    @Override
    public Optional<Version> version() {
        return Optional.of(new Version("milestone", 1));
    }

    @Override
    public void take(Entry entry) {
        if (!Milestone.maySay(entry.saying()) || entry.subject().sort() != Subject.Sort.WORK_ORDER) {
            return;
        }
        List<Entry> before = ledger.history(entry.subject()).entries().stream()
                .filter(other -> other.number() < entry.number())
                .toList();
        Map<Milestone, Entry> stood = Reached.of(before).by();
        var all = new ArrayList<>(before);
        all.add(entry);
        Map<Milestone, Entry> stands = Reached.of(all).by();
        if (stood.equals(stands)) {
            return;
        }
        for (Milestone milestone : Milestone.values()) {
            Entry now = stands.get(milestone);
            if (!Optional.ofNullable(now).equals(Optional.ofNullable(stood.get(milestone)))) {
                keep(entry.subject().code(), milestone, now);
                Optional.ofNullable(now).filter(entry::equals).ifPresent(reached -> toTell.of(milestone, reached));
            }
        }
    }

    private static void keep(String order, Milestone milestone, Entry reached) {
        String id = MilestoneRow.id(order, milestone);
        MilestoneRow known = MilestoneRow.findById(id);
        if (reached == null) {
            Optional.ofNullable(known).ifPresent(MilestoneRow::delete);
            return;
        }
        MilestoneRow row = known == null ? new MilestoneRow() : known;
        row.id = id;
        row.workOrder = order;
        row.milestone = milestone;
        row.reachedAt = reached.moment().at();
        row.entry = reached.id();
        row.entryNumber = reached.number();
        row.persist();
    }

    @Override
    public void forget() {
        MilestoneRow.deleteAll();
    }
}
