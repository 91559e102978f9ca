package wainbook.book;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import wainbook.book.BookSaying.SetFrozen;
import wainbook.ledger.History;

/** A handover set that was frozen. */
public record Volume(SetFrozen said, String who, Instant at, long entry) {

    /** Oldest first. */
    public static List<Volume> of(History history) {
        return history.saying(SetFrozen.class)
                .map(entry -> new Volume(
                        (SetFrozen) entry.saying(),
                        entry.moment().who(),
                        entry.moment().at(),
                        entry.number()))
                .toList();
    }

    public static Optional<Volume> last(History history) {
        return of(history).stream().reduce((former, latter) -> latter);
    }

    /** What was said since, besides that sets were frozen. */
    public static long since(History history) {
        long upTo = last(history).map(volume -> volume.said().upTo()).orElse(0L);
        return history.entries().stream()
                .filter(entry -> entry.number() > upTo && !(entry.saying() instanceof SetFrozen))
                .count();
    }
}
