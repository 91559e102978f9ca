package wainbook.book;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.UUID;
import wainbook.book.telling.Grounds;
import wainbook.book.telling.IsolationTellings;
import wainbook.book.telling.Names;
import wainbook.book.telling.Tellings;
import wainbook.book.telling.Told;
import wainbook.isolation.proof.Verdict;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.order.OrderSaying.DonorAccepted;
import wainbook.order.OrderSaying.DonorReceived;
import wainbook.order.OrderSaying.Moved;
import wainbook.order.OrderSaying.Place;
import wainbook.page.Option;
import wainbook.page.Words;
import wainbook.station.PaperMark;
import wainbook.station.StationSaying.TakenFromPaper;
import wainbook.station.StationSaying.Voided;

/**
 * The record of one vehicle in time order, folded by where it stood.
 *
 * @param number of its last entry
 * @param hash of its last entry: noted elsewhere, it proves later that nothing up to here was changed
 */
public record VehicleRecord(List<Fold> folds, List<Option> kinds, String kind, long number, String hash) {

    private static final Tellings TELLINGS = Tellings.all();

    /** What was said while the vehicle stood at one stage. */
    public record Fold(String title, List<EntryLine> lines) {
        public Fold {
            lines = List.copyOf(lines);
        }

        public int size() {
            return lines.size();
        }
    }

    /** What the entries came to, and the paper they were taken from, by their ids. */
    private record Came(Map<UUID, Verdict> verdicts, Map<UUID, TakenFromPaper> papers) {}

    /** @param kind the room whose entries are shown; empty for all */
    public static VehicleRecord of(History history, Names names, String kind) {
        Map<UUID, List<Entry>> corrections = new LinkedHashMap<>();
        history.saying(Voided.class)
                .forEach(entry -> corrections
                        .computeIfAbsent(((Voided) entry.saying()).entry(), id -> new ArrayList<>())
                        .add(entry));
        var came = new Came(Verdict.of(history), PaperMark.in(history));
        var folds = new ArrayList<Fold>();
        var lines = new ArrayList<EntryLine>();
        var kinds = new TreeSet<String>();
        String title = Words.of("book.beforeDonor");
        for (Entry entry : history.entries()) {
            String room = Tellings.room(entry.saying());
            kinds.add(room);
            Optional<String> place = moves(entry, names);
            if (place.isPresent()) {
                close(folds, title, lines);
                title = place.get();
            }
            boolean underAnother = entry.saying() instanceof Voided said
                    && history.entry(said.entry()).isPresent();
            if (!underAnother && (kind.isEmpty() || kind.equals(room))) {
                lines.add(line(entry, names, corrections, came));
            }
        }
        close(folds, title, lines);
        List<Option> choices = kinds.stream()
                .map(room -> new Option(room, Words.find("book.kind." + room).orElse(room)))
                .toList();
        return new VehicleRecord(
                folds,
                choices,
                kind,
                history.number(),
                history.entries().get(history.entries().size() - 1).hash());
    }

    private static void close(List<Fold> folds, String title, List<EntryLine> lines) {
        if (!lines.isEmpty()) {
            folds.add(new Fold(title, lines));
            lines.clear();
        }
    }

    private static Optional<String> moves(Entry entry, Names names) {
        if (entry.saying() instanceof DonorReceived said) {
            return Optional.of(title(said.at(), names));
        }
        if (entry.saying() instanceof DonorAccepted said) {
            return Optional.of(title(said.to(), names));
        }
        return entry.saying() instanceof Moved said ? Optional.of(title(said.to(), names)) : Optional.empty();
    }

    private static String title(Place place, Names names) {
        return place.stage()
                .map(stage -> Words.of("book.stageAtPlace", names.stage(stage), place.place()))
                .orElseGet(() -> names.place(place.place()));
    }

    private static EntryLine line(Entry entry, Names names, Map<UUID, List<Entry>> corrections, Came came) {
        Told plain = TELLINGS.tell(entry.saying(), names);
        Told told = Optional.ofNullable(came.verdicts().get(entry.id()))
                .map(IsolationTellings::inWords)
                .map(plain::judged)
                .orElse(plain);
        return new EntryLine(
                entry.number(),
                entry.moment().at(),
                names.person(entry.moment().who()),
                entry.moment().who(),
                Tellings.room(entry.saying()),
                told.what(),
                told.value(),
                told.verdict(),
                Grounds.of(entry.saying())
                        .taken(Optional.ofNullable(came.papers().get(entry.id())), names),
                entry.hash(),
                corrections.getOrDefault(entry.id(), List.of()).stream()
                        .map(later -> line(later, names, Map.of(), came))
                        .toList());
    }
}
