package wainbook.station.words;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import wainbook.ledger.Entry;
import wainbook.ledger.Saying;
import wainbook.page.Words;
import wainbook.station.ItemState;
import wainbook.station.StationSaying;
import wainbook.station.StationSaying.Result;
import wainbook.station.StationSaying.TakenFromPaper;
import wainbook.station.StationSaying.Voided;
import wainbook.station.StationSaying.WaitBegun;
import wainbook.station.determination.DeterminedInWords;

/**
 * An entry about one item as the station page lists it.
 *
 * @param file where the file lies that it points to
 * @param calculation where its working is shown
 * @param paper what it was taken from, where it was written on paper first
 * @param voided why it does not count, where it was voided
 * @param voidId the id that voiding it would have
 */
public record ItemLine(
        UUID id,
        long number,
        Instant at,
        String who,
        String text,
        Optional<String> file,
        Optional<TakenFromPaper> paper,
        Optional<String> voided,
        Optional<String> calculation,
        boolean mayBeVoided,
        UUID voidId) {

    public static List<ItemLine> of(ItemState item) {
        return item.entries().stream()
                .filter(entry -> !(entry.saying() instanceof Voided || entry.saying() instanceof TakenFromPaper))
                .map(entry -> of(entry, item))
                .toList();
    }

    private static ItemLine of(Entry entry, ItemState item) {
        Optional<String> voided = item.entries().stream()
                .map(Entry::saying)
                .filter(said -> said instanceof Voided known && known.entry().equals(entry.id()))
                .map(said -> ((Voided) said).reason())
                .findFirst();
        boolean result = entry.saying() instanceof Result || entry.saying() instanceof WaitBegun;
        return new ItemLine(
                entry.id(),
                entry.number(),
                entry.moment().at(),
                entry.moment().who(),
                SayingInWords.of(entry.saying()),
                file(entry.saying()),
                item.paper(entry),
                voided,
                entry.saying() instanceof StationSaying.Determined said
                        ? DeterminedInWords.calculation(said)
                        : Optional.empty(),
                result && voided.isEmpty(),
                UUID.randomUUID());
    }

    /** Where the file lies that an entry points to. */
    public static Optional<String> file(Saying saying) {
        return saying instanceof StationSaying.Attached attached
                ? Optional.of("/evidence/" + attached.file().sha256())
                : Optional.empty();
    }

    /** Whether that file can be looked at on the page. */
    public static boolean picture(Saying saying) {
        return saying instanceof StationSaying.Attached attached
                && attached.file().mediaType().startsWith("image/");
    }

    /** The key of a verdict in words. */
    static String verdict(StationSaying.Verdict verdict) {
        return Words.of("station.verdict." + verdict.name());
    }
}
