package wainbook.quality.containment.doubt;

import java.math.BigDecimal;
import java.math.MathContext;
import java.time.Duration;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import wainbook.engineering.measurement.Containment;
import wainbook.engineering.measurement.Containment.Judged;
import wainbook.engineering.measurement.ErrorPoint;
import wainbook.quality.QualitySaying.ErrorAt;
import wainbook.quality.QualitySaying.Errors;
import wainbook.quality.QualitySaying.Sureness;
import wainbook.quality.QualitySaying.Window;
import wainbook.quality.QualitySaying.Worked;

/**
 * One reading worked back by the calculation {@code containment}. Where only a band is known that the instrument kept to when
 * last good, it is worked back from both of its ends and from no error, and the widest range decides.
 */
record WorkedBack(Sureness verdict, Worked worked) {

    private static final double SECONDS_A_DAY = 86_400;
    private static final MathContext KEPT = new MathContext(8);

    /** Stand for an open end; far outside anything that is measured here. */
    private static final double NO_LOWER = 1e-30;

    private static final double NO_UPPER = 1e30;

    /** Empty where the figures do not allow it: a reading of nothing or below, another unit, no limit. */
    static Optional<WorkedBack> of(
            Found.Value value, Instant at, Window window, Errors errors, Optional<Doubt.PassedCheck> since) {
        boolean possible = value.reading().signum() > 0
                && value.limited()
                && value.unit().equals(errors.unit())
                && value.upper().map(upper -> upper.signum() > 0).orElse(true);
        if (!possible || !errors.found().stream().allMatch(WorkedBack::plottable)) {
            return Optional.empty();
        }
        Instant from = since.map(Doubt.PassedCheck::at).orElse(window.from());
        List<Judged> ends = goods(errors, since).stream()
                .flatMap(
                        good -> judged(value, at, new Window(from, window.to(), window.basis()), errors, good).stream())
                .toList();
        return ends.isEmpty() ? Optional.empty() : Optional.of(widest(ends, value));
    }

    /** What the errors may have been when it was last good; the first is what the working shows. */
    private static List<List<ErrorAt>> goods(Errors errors, Optional<Doubt.PassedCheck> since) {
        if (since.isPresent()) {
            return List.of(flat(since.get().target(), since.get().errorPercent()));
        }
        if (!errors.good().isEmpty()) {
            return List.of(errors.good());
        }
        BigDecimal band = errors.goodWithinPercent().orElse(BigDecimal.ZERO);
        BigDecimal one = BigDecimal.ONE;
        return List.of(flat(one, BigDecimal.ZERO), flat(one, band), flat(one, band.negate()));
    }

    private static List<ErrorAt> flat(BigDecimal at, BigDecimal errorPercent) {
        return List.of(new ErrorAt(at, errorPercent));
    }

    private static boolean plottable(ErrorAt point) {
        return point.at().signum() > 0 && point.errorPercent().doubleValue() > -100;
    }

    private static Optional<Judged> judged(
            Found.Value value, Instant at, Window window, Errors errors, List<ErrorAt> good) {
        double days = Math.max(days(window.from(), window.to()), 1 / SECONDS_A_DAY);
        double day = Math.min(Math.max(days(window.from(), at), 0), days);
        double lower = value.lower()
                .map(BigDecimal::doubleValue)
                .filter(limit -> limit > 0)
                .map(limit -> value.strict() ? Math.nextUp(limit) : limit)
                .orElse(NO_LOWER);
        double upper = value.upper()
                .map(BigDecimal::doubleValue)
                .map(limit -> value.strict() ? Math.nextDown(limit) : limit)
                .orElse(NO_UPPER);
        var inputs = new Containment.Inputs(
                points(errors.found()),
                points(good),
                days,
                errors.uncertaintyPercent().doubleValue(),
                List.of(new Containment.Reading("reading", day, value.reading().doubleValue(), lower, upper)));
        return new Containment()
                .of(inputs)
                .fold(
                        working -> Optional.of(working.results().readings().get(0)),
                        faults -> Optional.empty(),
                        impossible -> Optional.empty());
    }

    private static List<ErrorPoint> points(List<ErrorAt> errors) {
        return errors.stream()
                .filter(WorkedBack::plottable)
                .sorted(Comparator.comparing(ErrorAt::at))
                .map(point -> new ErrorPoint(
                        point.at().doubleValue(), point.errorPercent().doubleValue()))
                .toList();
    }

    /** Safe or sure out only if it is so from wherever the error began. */
    private static WorkedBack widest(List<Judged> ends, Found.Value value) {
        Judged shown = ends.get(0);
        List<Sureness> verdicts =
                ends.stream().map(end -> sureness(end.verdict())).distinct().toList();
        double low = ends.stream().mapToDouble(Judged::low).min().orElseThrow();
        double high = ends.stream().mapToDouble(Judged::high).max().orElseThrow();
        double reading = value.reading().doubleValue();
        return new WorkedBack(
                verdicts.size() == 1 ? verdicts.get(0) : Sureness.POSSIBLE,
                new Worked(
                        kept(100 * (reading / shown.best() - 1)),
                        kept(100 * (reading / shown.worst() - 1)),
                        kept(shown.best()),
                        kept(shown.linear()),
                        kept(shown.worst()),
                        kept(low),
                        kept(high)));
    }

    private static Sureness sureness(Containment.Doubt doubt) {
        return switch (doubt) {
            case SURE_OUT -> Sureness.SURE_OUT;
            case POSSIBLE -> Sureness.POSSIBLE;
            case SAFE -> Sureness.SAFE;
        };
    }

    private static BigDecimal kept(double value) {
        BigDecimal rounded = new BigDecimal(value, KEPT);
        return rounded.abs().compareTo(new BigDecimal("1e-9")) < 0 ? BigDecimal.ZERO : rounded;
    }

    private static double days(Instant from, Instant to) {
        return Duration.between(from, to).toMillis() / 1000.0 / SECONDS_A_DAY;
    }
}
