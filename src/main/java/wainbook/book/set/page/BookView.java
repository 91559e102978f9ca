package wainbook.book.set.page;

import java.util.List;
import java.util.Optional;
import wainbook.act.Reason;
import wainbook.book.EarlierVolumes.Earlier;
import wainbook.book.Volume;
import wainbook.book.photograph.Photographs;
import wainbook.book.photograph.Photographs.Sum;
import wainbook.book.set.FreezeRules;
import wainbook.book.set.Making.Printed;
import wainbook.book.set.Making.Standing;
import wainbook.ledger.History;
import wainbook.order.WorkOrder;
import wainbook.order.WorkOrder.Phase;
import wainbook.page.Words;

/**
 * The book of one vehicle as its page shows it.
 *
 * @param refusals what the last freezing was refused for
 * @param earlier sets of the vehicle’s former orders
 * @param mayFreeze whether the reader is a handover clerk
 */
public record BookView(
        History history,
        WorkOrder order,
        Standing book,
        Optional<Printed> printed,
        Standing set,
        List<Reason> refusals,
        List<Earlier> earlier,
        boolean mayFreeze) {

    public String number() {
        return order.number();
    }

    public String path() {
        return "/orders/" + number() + "/book";
    }

    public long seen() {
        return history.number();
    }

    public String hash() {
        return history.entries().get(history.entries().size() - 1).hash();
    }

    public boolean handedOver() {
        return order.phase() == Phase.HANDED_OVER;
    }

    public boolean making() {
        return book == Standing.RUNNING;
    }

    public boolean freezing() {
        return set == Standing.RUNNING;
    }

    public boolean failed() {
        return book == Standing.FAILED;
    }

    public boolean freezeFailed() {
        return set == Standing.FAILED;
    }

    /** Entries that the book which is ready does not know. */
    public long since() {
        return printed.map(ready -> seen() - ready.upTo()).orElse(0L);
    }

    public List<Volume> volumes() {
        return Volume.of(history);
    }

    public List<Reason> against() {
        return FreezeRules.against(history);
    }

    /** Photographs that go into a set, in a sentence; empty where there is none. */
    public Optional<String> photographs() {
        Sum sum = Photographs.sum(history);
        return sum.count() == 0
                ? Optional.empty()
                : Optional.of(Words.of(
                        sum.bytes() > Photographs.MOST_BYTES ? "book.photographsTooMuch" : "book.photographsGo",
                        sum.count(),
                        Photographs.megabytes(sum.bytes()),
                        Photographs.megabytes(Photographs.MOST_BYTES)));
    }

    /** How it stands, in a sentence. */
    public String sentence() {
        if (making() || freezing()) {
            return Words.of(making() ? "book.beingMade" : "book.beingFrozen");
        }
        int volumes = volumes().size();
        return volumes > 0
                ? Words.of("book.volumesFrozen", volumes)
                : Words.of(printed.isPresent() ? "book.isReady" : "book.notMade");
    }
}
