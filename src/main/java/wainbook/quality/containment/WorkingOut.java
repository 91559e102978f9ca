package wainbook.quality.containment;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
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
import wainbook.quality.QualitySaying.DoubtWorkedOut;
import wainbook.quality.QualitySaying.Errors;
import wainbook.quality.QualitySaying.Sort;
import wainbook.quality.containment.doubt.Cause;
import wainbook.works.WorksSaying.Calibrated;
import wainbook.works.shift.WorksDay;

/** Works a containment out again with the figures of a later calibration, where it had to be opened without any. */
@ApplicationScoped
public class WorkingOut {

    private record ToSay(UUID id, List<Subject> writes, Class<? extends Saying> says) implements Asked {}

    private final Ledger ledger;
    private final Containments containments;
    private final Telling telling;
    private final WorksDay day;

    WorkingOut(Ledger ledger, Containments containments, Telling telling, WorksDay day) {
        this.ledger = ledger;
        this.containments = containments;
        this.telling = telling;
        this.day = day;
    }

    /** A containment of the instrument that nothing could be worked out for, and that the entry has figures for. */
    static Optional<Containment> waiting(History history, Entry entry) {
        return Containment.of(history).stream()
                .filter(one -> one.opened().number() < entry.number())
                .filter(one -> one.workedOutBy(entry.id())
                        || (one.isOpen()
                                && one.errors().isEmpty()
                                && entry.saying() instanceof Calibrated said
                                && !said.asFound().isEmpty()))
                .reduce((former, latter) -> latter);
    }

    /** The first calibration since a containment was opened that has figures as found. */
    public Optional<Entry> figuresFor(Containment containment) {
        return ledger.history(containment.opened().subject())
                .saying(Calibrated.class)
                .filter(entry -> entry.number() > containment.opened().number())
                .filter(entry -> !((Calibrated) entry.saying()).asFound().isEmpty())
                .findFirst()
                .filter(entry -> containment.about().sort() == Sort.INSTRUMENT
                        && containment.isOpen()
                        && containment.errors().isEmpty()
                        && errors(containment, entry).isPresent());
    }

    private Optional<Errors> errors(Containment containment, Entry found) {
        History history = ledger.history(containment.opened().subject());
        return containment
                .said()
                .cause()
                .flatMap(history::entry)
                .or(() -> Optional.of(containment.opened()))
                .flatMap(cause -> Cause.of(history, cause, day.zone()).errors((Calibrated) found.saying()));
    }

    public Outcome<Entry> workOut(Containment containment, Entry figures, Actor actor) {
        Subject subject = containment.opened().subject();
        UUID id = Telling.derived(containment.opened().id() + "/" + figures.id());
        Optional<Entry> before = ledger.history(subject).entry(id);
        Optional<Errors> errors = errors(containment, figures);
        if (before.isEmpty() && errors.isEmpty()) {
            return Outcome.refused(Reason.of("quality.noFigures", Reason.WORKS_RULE, containment.code()));
        }
        var asked = new ToSay(id, List.of(subject), DoubtWorkedOut.class);
        return before.map(Outcome::alreadyDone)
                .orElseGet(() -> ledger.write(
                        asked,
                        actor,
                        reading -> Decision.say(
                                subject,
                                new DoubtWorkedOut(
                                        containment.code(),
                                        figures.id(),
                                        errors.get(),
                                        Containments.counted(containments.touched(
                                                containment.about(),
                                                containment.said().window(),
                                                errors))))))
                .fold(said -> telling.outcome(subject, said, actor), Outcome::refused);
    }
}
