package wainbook.works.shift;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.ledger.Ledger;
import wainbook.ledger.Projection;
import wainbook.ledger.Subject;
import wainbook.works.WorksSaying;

/** Which day it is at the works: competences and calibrations end with a day of the works' zone. */
@ApplicationScoped
public class WorksDay implements Projection {

    private final Ledger ledger;

    /** Kept, since every entry asks for it; taken anew when the works is named again. */
    private volatile Optional<ZoneId> zone = Optional.empty();

    WorksDay(Ledger ledger) {
        this.ledger = ledger;
    }

    public ZoneId zone() {
        if (zone.isEmpty()) {
            zone = ledger.history(Subject.works()).last(WorksSaying.Named.class).map(named -> ZoneId.of(named.zone()));
        }
        return zone.orElse(ZoneId.of("UTC"));
    }

    public LocalDate of(Instant time) {
        return LocalDate.ofInstant(time, zone());
    }

    /** The first instant after a day: what is valid to a day is valid before this. */
    public Instant endOf(LocalDate date) {
        return date.plusDays(1).atStartOfDay(zone()).toInstant();
    }

    /** When the running shift ends; empty off shift. */
    public Optional<Instant> shiftEnd(Instant time) {
        return shifts().endOf(time);
    }

    /** The shifts in force; none set means that the works keeps none. */
    public Shifts shifts() {
        History works = ledger.history(Subject.works());
        return new Shifts(
                works.last(WorksSaying.ShiftsSet.class)
                        .map(WorksSaying.ShiftsSet::shifts)
                        .orElse(List.of()),
                works.last(WorksSaying.BreaksSet.class)
                        .map(WorksSaying.BreaksSet::breaks)
                        .orElse(List.of()),
                works.last(WorksSaying.HolidaysSet.class)
                        .map(WorksSaying.HolidaysSet::days)
                        .map(Set::copyOf)
                        .orElse(Set.of()),
                zone());
    }

    public long workingMinutes(Instant from, Instant to) {
        return shifts().workingMinutes(from, to);
    }

    /** The takt of the works in working minutes; empty where it has set none. */
    public Optional<Integer> taktMinutes() {
        return ledger.history(Subject.works()).last(WorksSaying.TaktSet.class).map(WorksSaying.TaktSet::minutes);
    }

    /** The first instant of the day that it is at the works. */
    public Instant beginOfDay(Instant time) {
        return of(time).atStartOfDay(zone()).toInstant();
    }

    public boolean isolatorMayIssue() {
        return ledger.history(Subject.works())
                .last(WorksSaying.IsolatorMayIssueSet.class)
                .filter(WorksSaying.IsolatorMayIssueSet::allowed)
                .isPresent();
    }

    @Override
    public void take(Entry entry) {
        if (entry.saying() instanceof WorksSaying.Named named) {
            zone = Optional.of(ZoneId.of(named.zone()));
        }
    }

    @Override
    public void forget() {
        zone = Optional.empty();
    }
}
