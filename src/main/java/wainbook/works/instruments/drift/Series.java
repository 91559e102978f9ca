package wainbook.works.instruments.drift;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import wainbook.engineering.measurement.Drift;
import wainbook.ledger.Entry;
import wainbook.works.WorksSaying.Adjustment;
import wainbook.works.WorksSaying.Calibrated;
import wainbook.works.WorksSaying.CalibrationPoint;
import wainbook.works.instruments.Calibrations;

/**
 * An instrument's errors at one point since it was last adjusted: as left then, as found at each calibration since. A series
 * ends where it is adjusted or repaired, since what comes after has another beginning.
 *
 * @param days of the calibrations
 * @param errorsPercent (shown − reference) / reference, as found
 * @param roomPercent what is permitted, less the largest uncertainty of a point: an error within it passes
 */
public record Series(BigDecimal target, List<LocalDate> days, List<Double> errorsPercent, double roomPercent) {

    private static final int LEAST = 3;

    public Series {
        days = List.copyOf(days);
        errorsPercent = List.copyOf(errorsPercent);
    }

    /** One series for each point of the newest calibration with figures; none where it has none. */
    public static List<Series> of(Calibrations calibrations) {
        List<Calibrated> epoch = epoch(calibrations);
        return epoch.isEmpty()
                ? List.of()
                : epoch.get(epoch.size() - 1).left().stream()
                        .map(CalibrationPoint::target)
                        .flatMap(target -> at(target, epoch).stream())
                        .toList();
    }

    private static List<Calibrated> epoch(Calibrations calibrations) {
        var epoch = new ArrayList<Calibrated>();
        for (Entry entry : calibrations.byDay()) {
            Calibrated said = Calibrations.said(entry);
            if (said.left().isEmpty() || said.permittedPercent().isEmpty()) {
                continue;
            }
            if (said.adjustment() != Adjustment.NONE) {
                epoch.clear();
            }
            epoch.add(said);
        }
        return epoch;
    }

    private static Optional<Series> at(BigDecimal target, List<Calibrated> epoch) {
        var days = new ArrayList<LocalDate>();
        var errors = new ArrayList<Double>();
        BigDecimal widest = BigDecimal.ZERO;
        for (Calibrated said : epoch) {
            // The first of an epoch is what it was left with; from there on, as it was found each time.
            List<CalibrationPoint> points = days.isEmpty() ? said.left() : said.asFound();
            Optional<CalibrationPoint> point = points.stream()
                    .filter(one -> one.target().compareTo(target) == 0)
                    .findFirst();
            if (point.isPresent()) {
                days.add(said.on());
                errors.add(point.get().errorPercent().doubleValue());
                widest = widest.max(point.get().expandedPercent());
            }
        }
        BigDecimal permitted = epoch.get(epoch.size() - 1).permittedPercent().orElseThrow();
        double room = permitted.subtract(widest).doubleValue();
        return days.isEmpty() || room <= 0 ? Optional.empty() : Optional.of(new Series(target, days, errors, room));
    }

    public LocalDate first() {
        return days.get(0);
    }

    public List<Double> dayNumbers() {
        return days.stream()
                .map(day -> (double) ChronoUnit.DAYS.between(first(), day))
                .toList();
    }

    /** Where it will be on a day; empty below three calibrations, or where all were on one day. */
    public Optional<Drift.Results> on(LocalDate day) {
        if (days.size() < LEAST) {
            return Optional.empty();
        }
        var inputs = new Drift.Inputs(
                dayNumbers(), errorsPercent, roomPercent, Optional.of((double) ChronoUnit.DAYS.between(first(), day)));
        return new Drift()
                .of(inputs)
                .fold(working -> Optional.of(working.results()), faults -> Optional.empty(), no -> Optional.empty());
    }

    /** The chance that it is found outside on a day, at the worst of its points. */
    public static Optional<Double> odds(List<Series> all, LocalDate day) {
        return all.stream()
                .flatMap(series -> series.on(day).flatMap(Drift.Results::oddsOutside).stream())
                .max(Comparator.naturalOrder());
    }
}
