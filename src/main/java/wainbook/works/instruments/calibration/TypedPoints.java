package wainbook.works.instruments.calibration;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import wainbook.engineering.measurement.Calibration;
import wainbook.page.Filled;
import wainbook.works.WorksSaying.CalibrationPoint;

/**
 * The rows of a table of points as they were typed. A row gives error and uncertainty as the certificate has them, or the
 * readings of the reference, from which both are worked out with what is known of the reference and of the tool's step.
 */
final class TypedPoints {

    static final int ROWS = 6;

    private static final String DECIMAL = "-?\\d{1,9}([.]\\d{1,9})?";

    private final String table;
    private Filled filled;

    TypedPoints(String table, Filled filled) {
        this.table = table;
        this.filled = filled;
    }

    /** The form, with a fault at each cell that cannot be read. */
    Filled filled() {
        return filled;
    }

    static List<String> fields(String table) {
        var fields = new ArrayList<String>();
        for (int row = 1; row <= ROWS; row++) {
            for (String column : List.of("Target", "Readings", "Error", "W")) {
                fields.add(table + row + column);
            }
        }
        return fields;
    }

    List<CalibrationPoint> read() {
        var points = new ArrayList<CalibrationPoint>();
        for (int row = 1; row <= ROWS; row++) {
            point(table + row).ifPresent(points::add);
        }
        return points;
    }

    private Optional<CalibrationPoint> point(String row) {
        String readings = filled.value(row + "Readings");
        boolean empty = Stream.of("Target", "Readings", "Error", "W")
                .allMatch(column -> filled.value(row + column).isEmpty());
        if (empty) {
            return Optional.empty();
        }
        Optional<BigDecimal> target = decimal(row + "Target");
        List<BigDecimal> references = references(row + "Readings", readings);
        boolean worked =
                filled.value(row + "Error").isEmpty() && filled.value(row + "W").isEmpty();
        if (worked && references.size() > 1) {
            return target.flatMap(set -> workedOut(row, set, references));
        }
        Optional<BigDecimal> error = decimal(row + "Error");
        Optional<BigDecimal> expanded = decimal(row + "W");
        if (expanded.filter(w -> w.signum() < 0).isPresent()) {
            filled = filled.wrong(row + "W", "works.uncertaintyNegative");
        }
        return target.isPresent() && error.isPresent() && expanded.isPresent()
                ? Optional.of(new CalibrationPoint(target.get(), references, error.get(), expanded.get()))
                : Optional.empty();
    }

    private Optional<CalibrationPoint> workedOut(String row, BigDecimal target, List<BigDecimal> references) {
        Optional<BigDecimal> reference = decimal("referenceW");
        Optional<BigDecimal> step = decimal("step");
        if (reference.isEmpty() || step.isEmpty()) {
            return Optional.empty();
        }
        var inputs = new Calibration.Inputs(
                List.of(new Calibration.Pulls(
                        target.doubleValue(),
                        references.stream().map(BigDecimal::doubleValue).toList())),
                100,
                reference.get().doubleValue(),
                step.get().doubleValue(),
                List.of());
        return new Calibration()
                .of(inputs)
                .fold(
                        working -> {
                            Calibration.Point point = working.results().points().get(0);
                            return Optional.of(new CalibrationPoint(
                                    target, references, percent(point.meanDeviationPercent()), percent(point.W())));
                        },
                        faults -> {
                            filled = filled.wrong(row + "Readings", "works.readingsFault");
                            return Optional.empty();
                        },
                        impossible -> {
                            filled = filled.wrong(row + "Readings", "works.readingsFault");
                            return Optional.empty();
                        });
    }

    /** Kept to the millionth of a percent: far below any certificate's own figures. */
    private static BigDecimal percent(double value) {
        return new BigDecimal(value, MathContext.DECIMAL64).setScale(6, RoundingMode.HALF_UP);
    }

    private List<BigDecimal> references(String field, String typed) {
        if (typed.isEmpty()) {
            return List.of();
        }
        String[] cells = typed.split("[\\s;]+");
        if (cells.length > 20 || !Stream.of(cells).allMatch(cell -> cell.matches(DECIMAL))) {
            filled = filled.wrong(field, "works.readingsFault");
            return List.of();
        }
        return Stream.of(cells).map(BigDecimal::new).toList();
    }

    private Optional<BigDecimal> decimal(String field) {
        String typed = filled.value(field);
        if (!typed.matches(DECIMAL)) {
            filled = filled.form().fault(field).isPresent() ? filled : filled.wrong(field, "works.decimalFault");
            return Optional.empty();
        }
        return Optional.of(new BigDecimal(typed));
    }
}
