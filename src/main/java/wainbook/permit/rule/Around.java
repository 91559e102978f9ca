package wainbook.permit.rule;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import wainbook.isolation.Isolation;
import wainbook.ledger.History;
import wainbook.ledger.Ledger;
import wainbook.ledger.Subject;
import wainbook.permit.Trait;
import wainbook.permit.paper.PaperPermits;
import wainbook.works.Person;
import wainbook.works.instruments.Instrument;
import wainbook.works.instruments.InstrumentRow;
import wainbook.works.shift.WorksDay;

/** Brings together what is true now outside a permit: people, gear, shift, and what is aboard. */
@ApplicationScoped
public class Around {

    private static final String CODE = "[\\p{Alnum}][\\p{Alnum}._-]{0,79}";

    private final Ledger ledger;
    private final WorksDay day;

    Around(Ledger ledger, WorksDay day) {
        this.ledger = ledger;
        this.day = day;
    }

    public AtHand of(History stream, Instant now) {
        return new AtHand(
                now,
                day.of(now),
                latestEnd(now),
                Isolation.of(stream).aboard().isEmpty() ? Set.of() : Set.of(Trait.PACKS_ABOARD),
                PaperPermits.of(stream).open(),
                this::person,
                this::gear,
                InstrumentRow.register().stream().map(row -> row.kind).collect(Collectors.toSet()));
    }

    /** Until when a permit issued then could be valid: a works without shifts works round the clock, and it ends with the day. */
    public Optional<Instant> latestEnd(Instant now) {
        return day.shifts().shifts().isEmpty() ? Optional.of(day.endOf(day.of(now))) : day.shiftEnd(now);
    }

    private Optional<Person> person(String number) {
        return Optional.of(number)
                .filter(text -> text.matches(CODE))
                .map(text -> ledger.history(Subject.person(text)))
                .filter(history -> !history.isEmpty())
                .map(Person::of);
    }

    private Optional<Instrument> gear(String code) {
        return Optional.of(code)
                .filter(text -> text.matches(CODE))
                .flatMap(text -> Instrument.of(ledger.history(Subject.instrument(text))));
    }
}
