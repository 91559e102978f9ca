package wainbook.station;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
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
