package wainbook.quality.reading;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.atomic.AtomicReference;
import wainbook.ledger.History;
import wainbook.ledger.Ledger;
import wainbook.ledger.Subject;
import wainbook.process.Ask;
import wainbook.process.CheckItem;
import wainbook.process.Releases;
import wainbook.quality.containment.doubt.Readings.Sheets;

/** Every reading of the works in the order of time. Gathered anew only when something was said of a vehicle since. */
@ApplicationScoped
public class AllReadings {

    private static final Comparator<Reading> IN_TIME = Comparator.comparing(Reading::at)
            .thenComparing(Reading::order)
            .thenComparing(Reading::number)
            .thenComparing(Reading::place);

    private record Gathered(long length, List<Reading> readings) {}

    private final Ledger ledger;
    private final Sheets sheets;
    private final AtomicReference<Gathered> gathered = new AtomicReference<>(new Gathered(-1, List.of()));

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
        long length = ledger.length(Subject.Sort.WORK_ORDER);
        Gathered known = gathered.get();
        if (known.length() == length) {
            return known.readings();
        }
        List<Reading> readings = ledger.drawing(() -> ledger.subjects(Subject.Sort.WORK_ORDER).stream()
                .flatMap(subject -> of(ledger.history(subject)).stream())
                .sorted(IN_TIME)
                .toList());
        gathered.set(new Gathered(length, readings));
        return readings;
    }

    private List<Reading> of(History history) {
        return new ReadingsOfVehicle(history, sheets).all();
    }
}
