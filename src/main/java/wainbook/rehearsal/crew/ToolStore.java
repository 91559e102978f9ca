package wainbook.rehearsal.crew;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import wainbook.ledger.Ledger;
import wainbook.ledger.Subject;
import wainbook.works.instruments.Instrument;
import wainbook.works.instruments.InstrumentRow;
import wainbook.works.instruments.InstrumentRule;
import wainbook.works.shift.WorksDay;

/** Where people take an instrument from: one that is fit for the reading on that day. */
public final class ToolStore {

    private static final Duration IN_HAND = Duration.ofMinutes(15);

    private final Ledger ledger;
    private final WorksDay day;
    private final Whereabouts.At here;

    /** @param here the vehicle that it is taken to */
    public ToolStore(Ledger ledger, WorksDay day, Whereabouts.At here) {
        this.ledger = ledger;
        this.day = day;
        this.here = here;
    }

    public Optional<String> fit(String kind, List<BigDecimal> values, Instant at, int station) {
        List<String> fit = InstrumentRow.ofKind(kind).stream()
                .map(row -> Instrument.of(ledger.history(Subject.instrument(row.code))))
                .filter(known ->
                        InstrumentRule.against(known, kind, values, day.of(at)).isEmpty())
                .map(known -> known.orElseThrow().code())
                .toList();
        Optional<String> free = IntStream.range(0, fit.size())
                .mapToObj(further -> fit.get((station + further) % fit.size()))
                .filter(code -> here.free(code, at, IN_HAND))
                .findFirst();
        return free.or(() -> fit.isEmpty() ? Optional.empty() : Optional.of(fit.get(station % fit.size())));
    }
}
