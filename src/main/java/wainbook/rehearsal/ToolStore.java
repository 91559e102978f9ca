package wainbook.rehearsal;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import wainbook.ledger.Ledger;
import wainbook.ledger.Subject;
import wainbook.works.Instrument;
import wainbook.works.InstrumentRow;
import wainbook.works.InstrumentRule;
import wainbook.works.WorksDay;

/** Where people take an instrument from: one that is fit for the reading on that day. */
final class ToolStore {

    private final Ledger ledger;
    private final WorksDay day;

    ToolStore(Ledger ledger, WorksDay day) {
        this.ledger = ledger;
        this.day = day;
    }

    Optional<String> fit(String kind, List<BigDecimal> values, Instant at, int station) {
        List<String> fit = InstrumentRow.ofKind(kind).stream()
                .map(row -> Instrument.of(ledger.history(Subject.instrument(row.code))))
                .filter(known ->
                        InstrumentRule.against(known, kind, values, day.of(at)).isEmpty())
                .map(known -> known.orElseThrow().code())
                .toList();
        return fit.isEmpty() ? Optional.empty() : Optional.of(fit.get(station % fit.size()));
    }
}
