package wainbook.works;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import wainbook.ledger.Entry;
import wainbook.ledger.History;

/** An instrument as it stands: what it may be used for, until when, and whether it was withdrawn. */
public record Instrument(
        String code,
        String kind,
        String title,
        String unit,
        BigDecimal lower,
        BigDecimal upper,
        Optional<BigDecimal> accuracyPercent,
        Optional<LocalDate> due,
        Optional<String> withdrawnBecause,
        Optional<Instant> withdrawnAt) {

    /** Empty when the register has no such instrument. */
    public static Optional<Instrument> of(History history) {
        Instrument instrument = null;
        for (Entry entry : history.entries()) {
            if (entry.saying() instanceof WorksSaying.InstrumentRegistered said) {
                instrument = new Instrument(
                        history.subject().code(),
                        said.kind(),
                        said.title(),
                        said.unit(),
                        said.lower(),
                        said.upper(),
                        said.accuracyPercent(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty());
            } else if (instrument != null && entry.saying() instanceof WorksSaying.Calibrated said) {
                instrument = instrument.with(said.due(), Optional.empty(), Optional.empty());
            } else if (instrument != null && entry.saying() instanceof WorksSaying.InstrumentWithdrawn said) {
                instrument = instrument.with(
                        instrument.due,
                        Optional.of(said.reason()),
                        Optional.of(entry.moment().at()));
            }
        }
        return Optional.ofNullable(instrument);
    }

    public boolean inCalibrationOn(LocalDate day) {
        return due.filter(last -> !day.isAfter(last)).isPresent();
    }

    public boolean covers(BigDecimal value) {
        return value.compareTo(lower) >= 0 && value.compareTo(upper) <= 0;
    }

    private Instrument with(Optional<LocalDate> newDue, Optional<String> because, Optional<Instant> at) {
        return new Instrument(code, kind, title, unit, lower, upper, accuracyPercent, newDue, because, at);
    }
}
