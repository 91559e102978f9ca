package wainbook.quality.reading;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicReference;
import java.util.stream.Collectors;
import wainbook.ledger.History;
import wainbook.ledger.Ledger;
import wainbook.ledger.Subject;
import wainbook.process.Releases;
import wainbook.process.sheet.Ask;
import wainbook.process.sheet.CheckItem;
import wainbook.quality.containment.doubt.Readings.Sheets;
import wainbook.station.PaperMark;

/** Every reading of the works in the order of time. Gathered anew only when something was said of a vehicle since. */
@ApplicationScoped
public class AllReadings {

    private static final Comparator<Reading> IN_TIME = Comparator.comparing(Reading::at)
            .thenComparing(Reading::order)
            .thenComparing(Reading::number)
            .thenComparing(Reading::place);

    private record Gathered(long length, List<Reading> readings, List<Reading> recordedAtOnce) {}

    private final Ledger ledger;
    private final Sheets sheets;
    private final AtomicReference<Gathered> gathered = new AtomicReference<>(new Gathered(-1, List.of(), List.of()));

    AllReadings(Ledger ledger, Releases releases) {
        this.ledger = ledger;
        this.sheets = about -> releases.sheet(about.sheet(), about.revision())
                .item(about.item())
                .map(CheckItem::asks)
                .filter(Ask.Table.class::isInstance)
                .map(Ask.Table.class::cast);
    }

    /** The same list as long as nothing was recorded: whoever makes something of it can tell by that. */
    public List<Reading> inTime() {
        return gathered().readings();
    }

    /** The same without what was written on paper first: how such readings came one after the other says nothing. */
    public List<Reading> recordedAtOnce() {
        return gathered().recordedAtOnce();
    }

    private Gathered gathered() {
        long length = ledger.length(Subject.Sort.WORK_ORDER);
        Gathered known = gathered.get();
        if (known.length() == length) {
            return known;
        }
        Gathered next = ledger.drawing(() -> {
            List<History> vehicles = ledger.subjects(Subject.Sort.WORK_ORDER).stream()
                    .map(ledger::history)
                    .toList();
            Set<UUID> fromPaper = vehicles.stream()
                    .flatMap(vehicle -> PaperMark.in(vehicle).keySet().stream())
                    .collect(Collectors.toSet());
            List<Reading> all = vehicles.stream()
                    .flatMap(vehicle -> of(vehicle).stream())
                    .sorted(IN_TIME)
                    .toList();
            return new Gathered(
                    length,
                    all,
                    all.stream()
                            .filter(reading -> !fromPaper.contains(reading.entry()))
                            .toList());
        });
        gathered.set(next);
        return next;
    }

    private List<Reading> of(History history) {
        return new ReadingsOfVehicle(history, sheets).all();
    }
}
