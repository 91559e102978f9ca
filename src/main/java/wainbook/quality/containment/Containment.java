package wainbook.quality.containment;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.ledger.Subject;
import wainbook.quality.QualitySaying.About;
import wainbook.quality.QualitySaying.DoubtClosed;
import wainbook.quality.QualitySaying.DoubtOpened;
import wainbook.quality.QualitySaying.DoubtWorkedOut;
import wainbook.quality.QualitySaying.Errors;
import wainbook.quality.QualitySaying.Sort;
import wainbook.quality.QualitySaying.Touched;

/** A containment as it stands: a fold of the stream of its cause. */
public record Containment(Entry opened, Optional<Entry> workedOut, Optional<Entry> closed) {

    /** All that were opened in a stream, oldest first. */
    public static List<Containment> of(History history) {
        return List.copyOf(history.folded(Containment.class, Map.<String, Containment>of(), Containment::next)
                .values());
    }

    private static Map<String, Containment> next(Map<String, Containment> all, Entry entry) {
        var more = new LinkedHashMap<>(all);
        if (entry.saying() instanceof DoubtOpened said) {
            more.put(said.containment(), new Containment(entry, Optional.empty(), Optional.empty()));
        } else if (entry.saying() instanceof DoubtWorkedOut said) {
            more.computeIfPresent(
                    said.containment(), (code, one) -> new Containment(one.opened, Optional.of(entry), one.closed));
        } else if (entry.saying() instanceof DoubtClosed said) {
            more.computeIfPresent(
                    said.containment(), (code, one) -> new Containment(one.opened, one.workedOut, Optional.of(entry)));
        }
        return more;
    }

    /** What the next one in a stream is called. The sort's letter keeps an instrument and a sheet of one code apart. */
    static String nextCode(History history, About about) {
        int number = of(history).size() + 1;
        String letter = about.sort().name().substring(0, 1);
        return about.sort() == Sort.LOT
                ? letter + "-" + number
                : letter + "-" + history.subject().code() + "-" + number;
    }

    /** The stream that a containment about this is opened in; a lot has none of its own and stands in that of the works. */
    static Subject subject(About about) {
        return switch (about.sort()) {
            case INSTRUMENT -> Subject.instrument(about.code());
            case LOT -> Subject.works();
            case REVISION -> Subject.checkSheet(about.code());
            case COMPETENCE -> Subject.person(about.code());
        };
    }

    public DoubtOpened said() {
        return (DoubtOpened) opened.saying();
    }

    public String code() {
        return said().containment();
    }

    public About about() {
        return said().about();
    }

    boolean workedOutBy(UUID figures) {
        return workedOut
                .filter(entry -> ((DoubtWorkedOut) entry.saying()).cause().equals(figures))
                .isPresent();
    }

    /** Whether an entry of the stream is what it was opened or worked out for. */
    boolean answers(UUID cause) {
        return said().cause().equals(Optional.of(cause)) || workedOutBy(cause);
    }

    public boolean isOpen() {
        return closed.isEmpty();
    }

    public Optional<Errors> errors() {
        return workedOut
                .map(entry -> ((DoubtWorkedOut) entry.saying()).errors())
                .or(said()::errors);
    }

    public List<Touched> vehicles() {
        return workedOut
                .map(entry -> ((DoubtWorkedOut) entry.saying()).vehicles())
                .orElse(said().vehicles());
    }

    /** Said last of all that there is to tell vehicles: what each of them must have heard. */
    public Entry latest() {
        return workedOut.orElse(opened);
    }
}
