package wainbook.book.telling;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import wainbook.ledger.Kinds;
import wainbook.ledger.Saying;
import wainbook.page.Words;

/** For every kind of entry, how it is told. Each room's kinds are told by a class of their own. */
public final class Tellings {

    private final Map<Class<? extends Saying>, BiFunction<Saying, Names, Told>> byKind = new HashMap<>();

    public static Tellings all() {
        var tellings = new Tellings();
        OrderTellings.addTo(tellings);
        StationTellings.addTo(tellings);
        MatterTellings.addTo(tellings);
        GateTellings.addTo(tellings);
        LineTellings.addTo(tellings);
        HandoverTellings.addTo(tellings);
        IsolationTellings.addTo(tellings);
        PaperTellings.addTo(tellings);
        QualityTellings.addTo(tellings);
        PermitTellings.addTo(tellings);
        SafetyTellings.addTo(tellings);
        BookTellings.addTo(tellings);
        WasteTellings.addTo(tellings);
        return tellings;
    }

    <S extends Saying> void on(Class<S> kind, BiFunction<S, Names, Told> telling) {
        byKind.put(kind, (saying, names) -> telling.apply(kind.cast(saying), names));
    }

    boolean know(Class<?> kind) {
        return byKind.containsKey(kind);
    }

    /** A kind that nobody tells yet is told by its name. */
    public Told tell(Saying saying, Names names) {
        return Optional.ofNullable(byKind.get(saying.getClass()))
                .map(telling -> telling.apply(saying, names))
                .orElseGet(() -> Told.of(plain(saying.getClass())));
    }

    /** The room that a kind belongs to, as entries are filtered by it. */
    public static String room(Saying saying) {
        return Kinds.name(saying.getClass()).replaceAll("\\..*", "");
    }

    private static String plain(Class<?> kind) {
        String[] roomAndName = Kinds.name(kind).replaceAll("/.*", "").split("\\.");
        String words = roomAndName[1].replaceAll("([A-Z])", " $1").toLowerCase(Locale.ROOT);
        return Words.of("book.untold", roomAndName[0], words);
    }
}
