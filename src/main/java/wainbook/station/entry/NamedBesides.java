package wainbook.station.entry;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Optional;
import wainbook.act.Reason;
import wainbook.isolation.Isolation;
import wainbook.isolation.permit.LivePermit;
import wainbook.ledger.Ledger;
import wainbook.ledger.Subject;
import wainbook.process.sheet.Condition;
import wainbook.station.StationSaying;
import wainbook.station.StationSaying.Attended;
import wainbook.station.StationSaying.Determined;
import wainbook.station.determination.KnownResistor;
import wainbook.station.work.Work;
import wainbook.works.Person;
import wainbook.works.instruments.Instrument;
import wainbook.works.shift.WorksDay;

/** Whether whom and what an entry names beside the person and the instrument in hand may be named. */
@ApplicationScoped
class NamedBesides {

    private final Ledger ledger;
    private final WorksDay day;

    NamedBesides(Ledger ledger, WorksDay day) {
        this.ledger = ledger;
        this.day = day;
    }

    Optional<List<Reason>> against(StationSaying saying, Work work) {
        if (saying instanceof Attended said) {
            return second(said, work).map(List::of);
        }
        return saying instanceof Determined said
                ? Optional.of(KnownResistor.against(
                                said,
                                code -> Instrument.of(ledger.history(Subject.instrument(code))),
                                day.of(work.moment().at())))
                        .filter(against -> !against.isEmpty())
                : Optional.empty();
    }

    /** Somebody else who is at this works; in live work the one whom the permit names. */
    private Optional<Reason> second(Attended said, Work work) {
        if (said.second().equals(work.moment().who())) {
            return Optional.of(at("station.secondIsSelf"));
        }
        boolean known = Optional.of(said.second())
                .filter(number -> number.matches("[\\p{Alnum}][\\p{Alnum}._-]{0,79}"))
                .map(number -> ledger.history(Subject.person(number)))
                .filter(history -> !history.isEmpty() && !Person.of(history).left())
                .isPresent();
        if (!known) {
            return Optional.of(at("station.secondUnknown"));
        }
        Optional<String> named = Isolation.of(work.history()).live().map(LivePermit::second);
        boolean live = work.state().item().condition() == Condition.LIVE;
        return live && !named.equals(Optional.of(said.second()))
                ? Optional.of(at("station.secondNotOfPermit"))
                : Optional.empty();
    }

    private static Reason at(String key) {
        return Reason.of(key, Reason.WORKS_RULE).liftedAt("#second");
    }
}
