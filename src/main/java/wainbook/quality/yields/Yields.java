package wainbook.quality.yields;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.List;
import java.util.concurrent.atomic.AtomicReference;
import wainbook.gate.passage.Passage;
import wainbook.gate.passage.Yield;
import wainbook.ledger.Ledger;
import wainbook.ledger.Subject;
import wainbook.process.Releases;
import wainbook.process.Stage;
import wainbook.works.shift.Shifts;
import wainbook.works.shift.WorksDay;

/** Yields of any time and any kind of vehicle, from the record. */
@ApplicationScoped
public class Yields {

    private record Gathered(long length, List<Passage> passages) {}

    private final Ledger ledger;
    private final Releases releases;
    private final WorksDay day;
    private final AtomicReference<Gathered> gathered = new AtomicReference<>(new Gathered(-1, List.of()));

    Yields(Ledger ledger, Releases releases, WorksDay day) {
        this.ledger = ledger;
        this.releases = releases;
        this.day = day;
    }

    /**
     * Of stages signed off from {@code from} on and before {@code to}.
     *
     * @param vehicleKind empty for all
     */
    public Yield of(Instant from, Instant to, String vehicleKind) {
        return Yield.of(
                passages().stream()
                        .filter(one ->
                                !one.signedAt().isBefore(from) && one.signedAt().isBefore(to))
                        .filter(one ->
                                vehicleKind.isEmpty() || one.vehicleKind().equals(vehicleKind))
                        .toList(),
                releases.stages().stream().map(Stage::code).toList());
    }

    public List<String> vehicleKinds() {
        return passages().stream().map(Passage::vehicleKind).distinct().sorted().toList();
    }

    private List<Passage> passages() {
        long length = ledger.length(Subject.Sort.WORK_ORDER);
        Gathered known = gathered.get();
        if (known.length() != length) {
            known = new Gathered(length, ledger.drawing(this::gather));
            gathered.set(known);
        }
        return known.passages();
    }

    private List<Passage> gather() {
        Shifts shifts = day.shifts();
        return ledger.subjects(Subject.Sort.WORK_ORDER).stream()
                .flatMap(subject -> Passage.of(ledger.history(subject), shifts::workingMinutes).stream())
                .toList();
    }
}
