package wainbook.order.specification.page;

import jakarta.enterprise.context.ApplicationScoped;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import wainbook.ledger.evidence.EvidenceFile;
import wainbook.ledger.evidence.EvidenceFiles;
import wainbook.order.duty.Duty;
import wainbook.order.specification.Specification;
import wainbook.order.specification.TraceFile;
import wainbook.page.Filled;
import wainbook.page.Words;

/** Reads a recorded way that was sent and, where it has no fault, keeps it as evidence of the duty. */
@ApplicationScoped
class TraceKept {

    /** @param duty the one that stands, with the way in it; empty where something is wrong */
    record Read(Optional<Duty> duty, Filled filled, List<String> faults) {}

    private final EvidenceFiles files;

    TraceKept(EvidenceFiles files) {
        this.files = files;
    }

    Read read(Filled sent, Optional<String> content, Specification specification) {
        Optional<Duty> standing = specification.duty().map(Specification.Said::what);
        if (standing.isEmpty()) {
            return new Read(Optional.empty(), sent.wrong("file", "order.traceWithoutDuty"), List.of());
        }
        if (sent.value("drop").equals("true")) {
            return new Read(Optional.of(standing.get().recordedAs(Optional.empty())), sent, List.of());
        }
        var figures = new Figures(sent);
        BigDecimal times = figures.figure("timesADay");
        BigDecimal load = figures.figure("traceLoadPercent");
        Filled filled = figures.filled();
        if (content.isEmpty()) {
            return new Read(Optional.empty(), filled.wrong("file", "order.traceMissing"), List.of());
        }
        TraceFile read = TraceFile.read(content.get());
        List<String> faults = read.faults().stream()
                .map(fault -> Words.of(
                        "order.traceLine",
                        fault.line(),
                        Words.of("order." + fault.key(), fault.arguments().toArray())))
                .toList();
        if (!faults.isEmpty()) {
            return new Read(Optional.empty(), filled.wrong("file", "order.traceFaulty", faults.size()), faults);
        }
        if (!filled.right()) {
            return new Read(Optional.empty(), filled, List.of());
        }
        EvidenceFile kept = files.keep(content.get().getBytes(StandardCharsets.UTF_8), "text/csv");
        return new Read(
                Optional.of(standing.get().recordedAs(Optional.of(new Duty.RecordedWay(kept, times, load)))),
                filled,
                List.of());
    }
}
