package wainbook.works.instruments;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.works.WorksSaying.Calibrated;
import wainbook.works.WorksSaying.InstrumentRegistered;

/** An instrument's calibrations in the order of their days: an old certificate put on record late changes nothing now. */
public record Calibrations(List<Entry> byDay) {

    public Calibrations {
        byDay = List.copyOf(byDay);
    }

    /** Those since it was last registered: a registration says the whole anew. */
    public static Calibrations of(History history) {
        var since = new ArrayList<Entry>();
        for (Entry entry : history.entries()) {
            if (entry.saying() instanceof InstrumentRegistered) {
                since.clear();
            } else if (entry.saying() instanceof Calibrated) {
                since.add(entry);
            }
        }
        since.sort(Comparator.comparing(entry -> said(entry).on()));
        return new Calibrations(since);
    }

    public static Calibrated said(Entry entry) {
        return (Calibrated) entry.saying();
    }

    public Optional<Calibrated> latest() {
        return byDay.isEmpty() ? Optional.empty() : Optional.of(said(byDay.get(byDay.size() - 1)));
    }

    /** Largest |error| + W of the points as it was last left, in percent; empty where no points are on record. */
    public Optional<BigDecimal> intervalPercent() {
        return latest().flatMap(last -> last.left().stream()
                .map(point -> point.errorPercent().abs().add(point.expandedPercent()))
                .max(Comparator.naturalOrder()));
    }
}
