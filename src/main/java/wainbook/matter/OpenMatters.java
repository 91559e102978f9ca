package wainbook.matter;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import wainbook.ledger.Ledger;
import wainbook.ledger.Subject;
import wainbook.order.HoldInWords;
import wainbook.order.WorkOrderRow;
import wainbook.page.Words;

/** Everything open over all work orders, oldest first. */
@ApplicationScoped
public class OpenMatters {

    /** The sorts of open matter so far. */
    public enum Sort {
        NONCONFORMITY,
        HOLD
    }

    /**
     * One open matter.
     *
     * @param bars what cannot be done until it is settled
     */
    public record OpenMatter(
            Sort sort, String order, String title, String what, Instant since, String bars, String path) {

        boolean holds(String text) {
            return (order + " " + title + " " + what).toLowerCase(Locale.ROOT).contains(text.toLowerCase(Locale.ROOT));
        }
    }

    private final Ledger ledger;

    OpenMatters(Ledger ledger) {
        this.ledger = ledger;
    }

    public List<OpenMatter> all() {
        var all = new ArrayList<OpenMatter>();
        OpenNonconformity.oldestFirst().forEach(row -> all.add(of(row)));
        for (WorkOrderRow row : WorkOrderRow.withHolds()) {
            HoldInWords.inForce(ledger.history(Subject.workOrder(row.number)))
                    .forEach(hold -> all.add(of(row.number, hold)));
        }
        all.sort(Comparator.comparing(OpenMatter::since));
        return List.copyOf(all);
    }

    private static OpenMatter of(OpenNonconformity row) {
        return new OpenMatter(
                Sort.NONCONFORMITY,
                row.workOrder,
                Words.of("matter.nonconformityNumber", row.number),
                row.what,
                row.since,
                Words.of("matter.barsSigning"),
                "/orders/" + row.workOrder + "#matters");
    }

    private static OpenMatter of(String order, HoldInWords hold) {
        return new OpenMatter(
                Sort.HOLD,
                order,
                Words.of("matter.holdNumber", hold.hold(), hold.kind()),
                hold.reason(),
                hold.since(),
                hold.stops(),
                "/orders/" + order + "#holds");
    }
}
