package wainbook.station;

import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import wainbook.act.Moment;
import wainbook.isolation.paper.OnPaperSaying.OnPaper;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.station.StationSaying.TakenFromPaper;

/** Which entries were written on paper first: each is the one right after a {@link TakenFromPaper}. */
public final class PaperMark {

    private PaperMark() {}

    /** @param entries of one stream, oldest first, all of them or those about one item */
    static Optional<TakenFromPaper> on(List<Entry> entries, Entry entry) {
        return entries.stream()
                .filter(before -> before.number() == entry.number() - 1)
                .map(Entry::saying)
                .filter(TakenFromPaper.class::isInstance)
                .map(TakenFromPaper.class::cast)
                .findFirst();
    }

    /**
     * The entry as it was done: what was written on paper, by whom and when the paper says so. For what asks when a tool or a
     * person was at work; who put it on record stands in the entry itself.
     */
    public static Entry asDone(History vehicle, Entry entry) {
        if (entry.saying() instanceof OnPaper paper) {
            return at(entry, paper.written().isolator(), paper.written().begunAt());
        }
        int before = (int) entry.number() - 2;
        return before >= 0 && vehicle.entries().get(before).saying() instanceof TakenFromPaper paper
                ? at(entry, paper.doer(), paper.doneAt())
                : entry;
    }

    private static Entry at(Entry entry, String who, Instant when) {
        return new Entry(
                entry.id(), entry.subject(), entry.number(), Moment.of(who, when), entry.hash(), entry.saying());
    }

    /** All of a vehicle, by the id of the marked entry. */
    public static Map<UUID, TakenFromPaper> in(History vehicle) {
        Map<UUID, TakenFromPaper> marks = new LinkedHashMap<>();
        Optional<TakenFromPaper> before = Optional.empty();
        for (Entry entry : vehicle.entries()) {
            before.ifPresent(paper -> marks.put(entry.id(), paper));
            before = Optional.of(entry.saying())
                    .filter(TakenFromPaper.class::isInstance)
                    .map(TakenFromPaper.class::cast);
        }
        return marks;
    }
}
