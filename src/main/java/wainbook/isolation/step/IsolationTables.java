package wainbook.isolation.step;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.Optional;
import wainbook.act.Reason;
import wainbook.isolation.IsolationSaying.AbandonedLockRemoved;
import wainbook.isolation.IsolationSaying.LockedOff;
import wainbook.isolation.IsolationSaying.LockedOn;
import wainbook.isolation.IsolationSaying.Restored;
import wainbook.isolation.IsolationSaying.TesterProvedAfter;
import wainbook.isolation.IsolationSaying.TesterProvedBefore;
import wainbook.ledger.Entry;
import wainbook.ledger.Projection;

/** What one vehicle must know of the others: where locks hang, and where testers are in use. */
@ApplicationScoped
class IsolationTables implements Projection {

    @Override
    public void take(Entry entry) {
        String order = entry.subject().code();
        if (entry.saying() instanceof LockedOn on) {
            var row = new LockRow();
            row.id = LockRow.id(order, on.lock());
            row.workOrder = order;
            row.lockNumber = on.lock();
            row.persist();
        } else if (entry.saying() instanceof LockedOff off) {
            LockRow.deleteById(LockRow.id(order, off.lock()));
        } else if (entry.saying() instanceof Restored restored) {
            LockRow.deleteById(LockRow.id(order, restored.lock()));
        } else if (entry.saying() instanceof AbandonedLockRemoved removed) {
            LockRow.deleteById(LockRow.id(order, removed.lock()));
        } else if (entry.saying() instanceof TesterProvedBefore begun) {
            ProvingRow known = ProvingRow.findById(order);
            var row = known == null ? new ProvingRow() : known;
            row.workOrder = order;
            row.tester = begun.tester();
            row.persist();
        } else if (entry.saying() instanceof TesterProvedAfter) {
            ProvingRow.deleteById(order);
        }
    }

    @Override
    public void forget() {
        LockRow.deleteAll();
        ProvingRow.deleteAll();
    }

    @Override
    public Optional<Reason> clash(String constraint) {
        return constraint.contains("one_vehicle_a_lock")
                ? Optional.of(Reason.of("isolating.lockOnElsewhere", Reason.WORKS_RULE))
                : Optional.empty();
    }
}
