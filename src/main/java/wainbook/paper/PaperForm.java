package wainbook.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import wainbook.ledger.Entry;
import wainbook.paper.PaperSaying.Agreed;
import wainbook.paper.PaperSaying.FormInUse;
import wainbook.paper.PaperSaying.FormSpoiled;
import wainbook.paper.PaperSaying.FormsPrinted;
import wainbook.paper.PaperSaying.IsolationTranscribed;
import wainbook.paper.PaperSaying.PermitTranscribed;
import wainbook.paper.PaperSaying.SentBack;
import wainbook.paper.PaperSaying.Transcribed;
import wainbook.paper.PaperSaying.UseEnded;

/**
 * One numbered form as it stands.
 *
 * @param usedAt vehicles that somebody says it is in use at
 * @param transcribed each time it was typed in
 * @param decided what the second person said of the last of them
 * @param ended whether somebody authorised said that what it left open is over
 */
public record PaperForm(
        int number,
        Entry printed,
        List<String> usedAt,
        Optional<Entry> spoiled,
        List<Entry> transcribed,
        Optional<Entry> decided,
        boolean ended) {

    /** Where a form is. */
    public enum State {
        BLANK,
        IN_USE,
        WAITING,
        ENTERED,
        SPOILED
    }

    public PaperForm {
        usedAt = List.copyOf(usedAt);
        transcribed = List.copyOf(transcribed);
    }

    static PaperForm printed(int number, Entry printed) {
        return new PaperForm(number, printed, List.of(), Optional.empty(), List.of(), Optional.empty(), false);
    }

    /** As it stands on the paper: {@code F-0042}. */
    public static String code(int number) {
        return String.format(Locale.ROOT, "F-%04d", number);
    }

    public String code() {
        return code(number);
    }

    public FormsPrinted said() {
        return (FormsPrinted) printed.saying();
    }

    public Sort sort() {
        return said().sort();
    }

    /** The vehicle it was printed for. */
    public Optional<String> vehicle() {
        return said().vehicle();
    }

    public State state() {
        if (spoiled.isPresent()) {
            return State.SPOILED;
        }
        if (waiting().isPresent()) {
            return State.WAITING;
        }
        if (!usedAt.isEmpty() || (agreed().isPresent() && stillOpen() && !ended)) {
            return State.IN_USE;
        }
        return agreed().isPresent() ? State.ENTERED : State.BLANK;
    }

    /** Typed in, and nobody has compared it yet. */
    public Optional<Entry> waiting() {
        return decided.isPresent() ? Optional.empty() : last();
    }

    /** The last transcription, where it was agreed to. */
    public Optional<Entry> agreed() {
        return decided.filter(entry -> entry.saying() instanceof Agreed).flatMap(entry -> last());
    }

    public Optional<Entry> sentBack() {
        return decided.filter(entry -> entry.saying() instanceof SentBack);
    }

    public Optional<Entry> last() {
        return transcribed.isEmpty() ? Optional.empty() : Optional.of(transcribed.get(transcribed.size() - 1));
    }

    /** Whether what was typed in last is not at its end: locks still on, a permit not closed. */
    private boolean stillOpen() {
        return last().map(Entry::saying)
                .map(said -> (said instanceof IsolationTranscribed isolation
                                && !isolation.written().closed())
                        || (said instanceof PermitTranscribed permit
                                && permit.written().open()))
                .orElse(false);
    }

    PaperForm and(Entry entry) {
        Optional<Entry> it = Optional.of(entry);
        if (entry.saying() instanceof FormSpoiled) {
            return new PaperForm(number, printed, usedAt, it, transcribed, decided, ended);
        } else if (entry.saying() instanceof FormInUse said) {
            return used(with(said.vehicle()), false);
        } else if (entry.saying() instanceof UseEnded said) {
            return used(without(said.vehicle()), true);
        } else if (entry.saying() instanceof Transcribed) {
            var more = new ArrayList<>(transcribed);
            more.add(entry);
            return new PaperForm(number, printed, usedAt, spoiled, more, Optional.empty(), false);
        }
        var next = new PaperForm(number, printed, usedAt, spoiled, transcribed, it, ended);
        return entry.saying() instanceof Agreed said && !next.stillOpen()
                ? next.used(without(said.vehicle()), ended)
                : next;
    }

    private PaperForm used(List<String> at, boolean over) {
        return new PaperForm(number, printed, at, spoiled, transcribed, decided, over);
    }

    private List<String> with(String vehicle) {
        var more = new ArrayList<>(without(vehicle));
        more.add(vehicle);
        return more;
    }

    private List<String> without(String vehicle) {
        return usedAt.stream().filter(other -> !other.equals(vehicle)).toList();
    }
}
