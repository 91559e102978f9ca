package wainbook.quality.containment;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.jboss.logging.Logger;
import wainbook.act.Actor;
import wainbook.act.Outcome;
import wainbook.act.Reason;
import wainbook.ledger.Asked;
import wainbook.ledger.Decision;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.ledger.Ledger;
import wainbook.ledger.Saying;
import wainbook.ledger.Subject;
import wainbook.quality.QualitySaying.About;
import wainbook.quality.QualitySaying.Basis;
import wainbook.quality.QualitySaying.Chained;
import wainbook.quality.QualitySaying.DoubtOpened;
import wainbook.quality.QualitySaying.Doubted;
import wainbook.quality.QualitySaying.Errors;
import wainbook.quality.QualitySaying.Sort;
import wainbook.quality.QualitySaying.Window;
import wainbook.quality.containment.doubt.Cause;
import wainbook.works.AfterWithdrawal;
import wainbook.works.WorksSaying.Calibrated;
import wainbook.works.WorksSaying.InstrumentWithdrawn;
import wainbook.works.shift.WorksDay;

/**
 * Opens a containment: by itself when an instrument is in doubt, or because a person asks. First it is said in the stream of
 * its cause what is touched, then each vehicle is told; whatever breaks off is taken up again under the same ids.
 */
@ApplicationScoped
public class Opening implements AfterWithdrawal {

    private static final Logger LOG = Logger.getLogger(Opening.class);

    /**
     * What a person asks for.
     *
     * @param window from when to when; used where the sort knows a period, and for an instrument as what is stated
     * @param holdsAll whether vehicles in the works are held whatever the joint class
     */
    public record ToOpen(UUID id, About about, Optional<Window> window, String reason, boolean holdsAll)
            implements Asked {
        @Override
        public List<Subject> writes() {
            return List.of(Containment.subject(about));
        }

        @Override
        public Class<? extends Saying> says() {
            return DoubtOpened.class;
        }
    }

    private record ToSay(UUID id, List<Subject> writes, Class<? extends Saying> says) implements Asked {}

    /** What would be opened. */
    public record Sketch(Window window, Optional<Errors> errors, Map<String, List<Doubted>> touched) {

        public int entries() {
            return (int) touched.values().stream()
                    .flatMap(List::stream)
                    .map(Doubted::entry)
                    .distinct()
                    .count();
        }
    }

    private final Ledger ledger;
    private final Containments containments;
    private final WorkingOut workingOut;
    private final Telling telling;
    private final WorksDay day;

    Opening(Ledger ledger, Containments containments, WorkingOut workingOut, Telling telling, WorksDay day) {
        this.ledger = ledger;
        this.containments = containments;
        this.workingOut = workingOut;
        this.telling = telling;
        this.day = day;
    }

    @Override
    public void inDoubt(String instrument, Entry entry, Actor actor) {
        try {
            because(instrument, entry, actor)
                    .reasons()
                    .forEach(reason -> LOG.warnf("containment of %s lacks: %s", instrument, reason.key()));
        } catch (RuntimeException broken) {
            LOG.errorf(broken, "containment of %s not opened by %s; the list shows it", instrument, entry.id());
        }
    }

    /** Opens what an entry of an instrument gives cause for, or works out with its figures what waited for them. */
    public Outcome<Entry> because(String instrument, Entry entry, Actor actor) {
        Subject subject = Subject.instrument(instrument);
        Optional<Containment> waiting = WorkingOut.waiting(ledger.history(subject), entry);
        if (waiting.isPresent()) {
            return workingOut.workOut(waiting.get(), entry, actor);
        }
        UUID id = Telling.derived(entry.id().toString());
        var asked = new ToSay(id, List.of(subject), DoubtOpened.class);
        Optional<Entry> before = ledger.history(subject).entry(id);
        return before.map(Outcome::alreadyDone)
                .orElseGet(() -> ledger.write(asked, actor, reading -> {
                    Cause cause = Cause.of(reading.of(subject), entry, day.zone());
                    var about = about(Sort.INSTRUMENT, instrument);
                    return Decision.say(
                            subject,
                            opened(
                                    reading.of(subject),
                                    about,
                                    Optional.of(entry.id()),
                                    reason(entry),
                                    new Sketch(
                                            cause.window(),
                                            cause.errors(),
                                            containments.touched(about, cause.window(), cause.errors())),
                                    false));
                }))
                .fold(opened -> telling.outcome(subject, opened, actor), Outcome::refused);
    }

    private static About about(Sort sort, String code) {
        return new About(sort, code, Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
    }

    private static String reason(Entry entry) {
        return entry.saying() instanceof InstrumentWithdrawn said
                ? said.reason()
                : ((Calibrated) entry.saying()).certificate();
    }

    private DoubtOpened opened(
            History history, About about, Optional<UUID> cause, String reason, Sketch sketch, boolean holdsAll) {
        List<Chained> chain =
                about.sort() == Sort.INSTRUMENT ? containments.chain(about.code(), sketch.window()) : List.of();
        return new DoubtOpened(
                Containment.nextCode(history, about),
                about,
                cause,
                reason,
                sketch.window(),
                sketch.errors(),
                holdsAll,
                Containments.counted(sketch.touched()),
                chain);
    }

    /** What a request would touch, for whoever is about to ask; the same as will be opened. */
    public Sketch sketch(ToOpen asked, Instant now) {
        About about = asked.about();
        if (about.sort() == Sort.INSTRUMENT) {
            History history = ledger.history(Subject.instrument(about.code()));
            Cause cause =
                    Cause.of(history, history.entries().get(history.entries().size() - 1), day.zone());
            Window known = cause.window(asked.window().map(Window::from));
            var window = new Window(known.from(), now, known.basis());
            return new Sketch(window, Optional.empty(), containments.touched(about, window, Optional.empty()));
        }
        Window window = asked.window().orElseGet(() -> new Window(Instant.EPOCH, now, Basis.ALL_TIME));
        return new Sketch(window, Optional.empty(), containments.touched(about, window, Optional.empty()));
    }

    /** What stands against opening it, whoever asks. */
    public List<Reason> against(ToOpen asked) {
        var against = new ArrayList<Reason>();
        Subject subject = Containment.subject(asked.about());
        if (asked.about().sort() != Sort.LOT && ledger.history(subject).isEmpty()) {
            against.add(Reason.of(
                            "quality.unknown", Reason.WORKS_RULE, asked.about().code())
                    .liftedAt("#code"));
        }
        if (asked.reason().isBlank() || asked.reason().length() > 500) {
            against.add(Reason.of("quality.reasonMissing", Reason.WORKS_RULE).liftedAt("#reason"));
        }
        return against;
    }

    public Outcome<Entry> open(ToOpen asked, Actor actor) {
        Subject subject = Containment.subject(asked.about());
        return ledger.write(asked, actor, reading -> {
                    List<Reason> against = new ArrayList<>(against(asked));
                    if (!against.isEmpty()) {
                        return Decision.refuse(against);
                    }
                    Sketch sketch = sketch(asked, reading.moment().at());
                    return sketch.touched().isEmpty()
                            ? Decision.refuse(Reason.of(
                                    "quality.nothingTouched",
                                    Reason.WORKS_RULE,
                                    asked.about().code()))
                            : Decision.say(
                                    subject,
                                    opened(
                                            reading.of(subject),
                                            asked.about(),
                                            Optional.empty(),
                                            asked.reason(),
                                            sketch,
                                            asked.holdsAll()));
                })
                .fold(opened -> telling.outcome(subject, opened, actor), Outcome::refused);
    }
}
