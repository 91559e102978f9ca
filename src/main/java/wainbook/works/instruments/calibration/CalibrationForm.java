package wainbook.works.instruments.calibration;

import jakarta.ws.rs.core.MultivaluedMap;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wainbook.page.Filled;
import wainbook.works.WorksSaying.Adjustment;
import wainbook.works.WorksSaying.CalibrationPoint;

/** The form for a calibration, read field by field: either what is asked, or the form with a fault at each field. */
final class CalibrationForm {

    private static final String DECIMAL = "\\d{1,6}([.]\\d{1,6})?";
    private static final String WHOLE = "\\d{1,12}";

    private Filled filled;

    private CalibrationForm(Filled filled) {
        this.filled = filled;
    }

    static CalibrationForm sent(MultivaluedMap<String, String> sent) {
        Filled filled = Filled.sent(sent.getFirst("id"));
        var fields = new ArrayList<>(List.of(
                "on",
                "due",
                "certificate",
                "laboratory",
                "permitted",
                "referenceW",
                "step",
                "adjustment",
                "operations"));
        fields.addAll(TypedPoints.fields("found"));
        fields.addAll(TypedPoints.fields("left"));
        for (String field : fields) {
            filled = filled.with(field, sent.getFirst(field));
        }
        return new CalibrationForm(filled);
    }

    Filled filled() {
        return filled;
    }

    Calibrating.ToCalibrate asked(String code, long seen) {
        LocalDate on = day("on").orElse(LocalDate.EPOCH);
        Adjustment adjustment = adjustment();
        Optional<LocalDate> due =
                adjustment == Adjustment.WITHDRAWN || filled.value("due").isEmpty() ? Optional.empty() : day("due");
        return new Calibrating.ToCalibrate(
                filled.id(),
                code,
                on,
                due,
                filled.value("certificate"),
                Optional.of(filled.value("laboratory")).filter(text -> !text.isEmpty()),
                number("permitted", DECIMAL),
                points("found"),
                adjustment,
                points("left"),
                number("operations", WHOLE).map(BigDecimal::longValueExact),
                Optional.of(seen));
    }

    private List<CalibrationPoint> points(String table) {
        var typed = new TypedPoints(table, filled);
        List<CalibrationPoint> points = typed.read();
        filled = typed.filled();
        return points;
    }

    private Adjustment adjustment() {
        try {
            return filled.value("adjustment").isEmpty()
                    ? Adjustment.NONE
                    : Adjustment.valueOf(filled.value("adjustment"));
        } catch (IllegalArgumentException unknown) {
            filled = filled.wrong("adjustment", "works.adjustmentFault");
            return Adjustment.NONE;
        }
    }

    private Optional<LocalDate> day(String field) {
        try {
            return Optional.of(LocalDate.parse(filled.value(field)));
        } catch (DateTimeParseException noDate) {
            filled = filled.wrong(field, "works.dateFault");
            return Optional.empty();
        }
    }

    private Optional<BigDecimal> number(String field, String form) {
        String typed = filled.value(field);
        if (typed.isEmpty()) {
            return Optional.empty();
        }
        if (!typed.matches(form)) {
            filled = filled.wrong(field, "works.decimalFault");
            return Optional.empty();
        }
        return Optional.of(new BigDecimal(typed));
    }
}
