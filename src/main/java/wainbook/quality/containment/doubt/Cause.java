package wainbook.quality.containment.doubt;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.ZoneId;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import wainbook.engineering.Verdict;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.quality.QualitySaying.Basis;
import wainbook.quality.QualitySaying.ErrorAt;
import wainbook.quality.QualitySaying.Errors;
import wainbook.quality.QualitySaying.Window;
import wainbook.works.WorksSaying.Adjustment;
import wainbook.works.WorksSaying.Calibrated;
import wainbook.works.WorksSaying.CalibrationPoint;
import wainbook.works.WorksSaying.InstrumentRegistered;
import wainbook.works.WorksSaying.InstrumentWithdrawn;
import wainbook.works.WorksSaying.WithdrawalCause;
import wainbook.works.instruments.InDoubt;
import wainbook.works.instruments.Instrument;
import wainbook.works.instruments.calibration.PointVerdict;

/**
 * What puts an instrument in doubt, and since when: the last calibration that it passed as left, or a fall that was stated,
 * whichever is later; used past its due day, the end of that day (ISO 9001:2015 7.1.5.2: the validity of earlier results).
 *
 * @param history of the instrument, up to and with {@code entry}
 * @param entry that says so; or the last one there is, where a person asks
 */
public record Cause(History history, Entry entry, ZoneId zone) {

    private static boolean passed(Calibrated said) {
        return said.due().isPresent()
                && said.adjustment() != Adjustment.WITHDRAWN
                && Set.of(Verdict.PASS, Verdict.NONE).contains(PointVerdict.asLeft(said));
    }

    public static Cause of(History instrument, Entry entry, ZoneId zone) {
        return new Cause(instrument, entry, zone);
    }

    public Window window() {
        return window(stated());
    }

    /** @param since what a person states; it begins the window unless a calibration came after */
    public Window window(Optional<Instant> since) {
        Instant to = entry.moment().at();
        Optional<Instant> good = lastGood().map(this::done);
        Optional<Instant> fall = since.filter(at -> good.map(at::isAfter).orElse(true));
        if (fall.isPresent()) {
            return new Window(earlier(fall.get(), to), to, Basis.STATED);
        }
        if (entry.saying() instanceof InstrumentWithdrawn said && said.cause() == WithdrawalCause.USED_OUT_OF_DATE) {
            Optional<Instant> due = lastGood()
                    .flatMap(Calibrated::due)
                    .map(day -> day.plusDays(1).atStartOfDay(zone).toInstant());
            if (due.isPresent()) {
                return new Window(earlier(due.get(), to), to, Basis.PAST_DUE);
            }
        }
        return good.map(at -> new Window(earlier(at, to), to, Basis.CALIBRATED))
                .orElseGet(() ->
                        new Window(earlier(history.entries().get(0).moment().at(), to), to, Basis.NEVER_GOOD));
    }

    private static Instant earlier(Instant one, Instant other) {
        return one.isBefore(other) ? one : other;
    }

    private Optional<Instant> stated() {
        return entry.saying() instanceof InstrumentWithdrawn said ? said.since() : Optional.empty();
    }

    /** From the first minute of the day of the calibration: a day too long puts too much in doubt, never too little. */
    private Instant done(Calibrated said) {
        return said.on().atStartOfDay(zone).toInstant();
    }

    private Optional<Calibrated> lastGood() {
        return history.saying(Calibrated.class)
                .filter(before -> before.number() < entry.number() || (!InDoubt.by(entry) && before.equals(entry)))
                .map(before -> (Calibrated) before.saying())
                .filter(Cause::passed)
                .max(Comparator.comparing(Calibrated::on));
    }

    /** What readings can be worked back with; empty where it was not measured as found, or nothing is known of before. */
    public Optional<Errors> errors() {
        return entry.saying() instanceof Calibrated said ? errors(said) : Optional.empty();
    }

    /** The same with the figures of a calibration that came later. */
    public Optional<Errors> errors(Calibrated found) {
        Optional<Instrument> instrument = Instrument.of(history);
        if (found.asFound().isEmpty() || instrument.isEmpty()) {
            return Optional.empty();
        }
        Optional<Calibrated> good = lastGood();
        List<CalibrationPoint> left = good.map(Calibrated::left).orElse(List.of());
        Optional<BigDecimal> within = good.flatMap(Calibrated::permittedPercent)
                .or(() -> history.last(InstrumentRegistered.class).flatMap(InstrumentRegistered::accuracyPercent));
        if (good.isEmpty() || (left.isEmpty() && within.isEmpty())) {
            return Optional.empty();
        }
        return Optional.of(new Errors(
                instrument.get().unit(),
                left.stream().map(Cause::error).toList(),
                found.asFound().stream().map(Cause::error).toList(),
                left.isEmpty() ? within : Optional.empty(),
                Stream.concat(left.stream(), found.asFound().stream())
                        .map(CalibrationPoint::expandedPercent)
                        .max(Comparator.naturalOrder())
                        .orElse(BigDecimal.ZERO)));
    }

    private static ErrorAt error(CalibrationPoint point) {
        return new ErrorAt(point.target(), point.errorPercent());
    }
}
