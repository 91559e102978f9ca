package wainbook.works.instruments;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.works.WorksSaying.Calibrated;
import wainbook.works.WorksSaying.GearDescribed;
import wainbook.works.WorksSaying.InstrumentRegistered;
import wainbook.works.WorksSaying.InstrumentWithdrawn;
import wainbook.works.WorksSaying.Issued;

/**
 * An instrument as it stands: what it may be used for, until when, and whether it was withdrawn.
 *
 * @param accuracyPercent expanded uncertainty interval with the mean error, in percent of the reading: from the points of
 *     the last calibration, else as registered
 */
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
        return history.last(InstrumentRegistered.class).map(registered -> {
            Calibrations calibrations = Calibrations.of(history);
            Optional<Entry> withdrawal = withdrawal(history);
            return new Instrument(
                    history.subject().code(),
                    registered.kind(),
                    registered.title(),
                    registered.unit(),
                    registered.lower(),
                    registered.upper(),
                    calibrations.intervalPercent().or(registered::accuracyPercent),
                    due(history, registered, calibrations.latest()),
                    withdrawal.map(entry -> ((InstrumentWithdrawn) entry.saying()).reason()),
                    withdrawal.map(entry -> entry.moment().at()));
        });
    }

    /** The withdrawal that stands: a registration, or the newest calibration by its day, ends one from before it. */
    private static Optional<Entry> withdrawal(History history) {
        Entry standing = null;
        LocalDate newest = LocalDate.MIN;
        for (Entry entry : history.entries()) {
            if (entry.saying() instanceof InstrumentWithdrawn) {
                standing = entry;
            } else if (entry.saying() instanceof InstrumentRegistered) {
                standing = null;
                newest = LocalDate.MIN;
            } else if (entry.saying() instanceof Calibrated said && !said.on().isBefore(newest)) {
                standing = null;
                newest = said.on();
            }
        }
        return Optional.ofNullable(standing);
    }

    private static Optional<LocalDate> due(
            History history, InstrumentRegistered registered, Optional<Calibrated> latest) {
        return new LastGoodDay(
                        registered.kind(),
                        latest.flatMap(Calibrated::due),
                        latest.map(Calibrated::on),
                        history.saying(Issued.class).findFirst().map(entry -> ((Issued) entry.saying()).on()),
                        history.last(GearDescribed.class).flatMap(GearDescribed::expires))
                .day();
    }

    public boolean inCalibrationOn(LocalDate day) {
        return due.filter(last -> !day.isAfter(last)).isPresent();
    }

    public boolean covers(BigDecimal value) {
        return value.compareTo(lower) >= 0 && value.compareTo(upper) <= 0;
    }
}
