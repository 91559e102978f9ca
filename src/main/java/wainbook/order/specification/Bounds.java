package wainbook.order.specification;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wainbook.act.Reason;
import wainbook.order.duty.ChassisFigures;
import wainbook.page.Words;

/** What figures of a form may be; each fault stands at the field of that name. */
public final class Bounds {

    private final List<Reason> against = new ArrayList<>();

    Bounds within(String field, BigDecimal value, double from, double to) {
        if (value.doubleValue() < from || value.doubleValue() > to) {
            against.add(Reason.of("order.figureOutside", Reason.WORKS_RULE, label(field), plain(from), plain(to))
                    .liftedAt("#" + field));
        }
        return this;
    }

    Bounds within(String field, Optional<BigDecimal> value, double from, double to) {
        value.ifPresent(known -> within(field, known, from, to));
        return this;
    }

    Bounds refuse(Reason reason) {
        against.add(reason);
        return this;
    }

    Bounds refuse(List<Reason> reasons) {
        against.addAll(reasons);
        return this;
    }

    List<Reason> against() {
        return List.copyOf(against);
    }

    public static String axle(ChassisFigures.AxlePlace axle) {
        return Words.of("order.axlePlace." + axle.name());
    }

    /** A field's name in words; those of a leg carry its number, those of tyres their axle. */
    public static String label(String field) {
        for (ChassisFigures.AxlePlace axle : ChassisFigures.AxlePlace.values()) {
            if (field.startsWith("tyre" + axle.name())) {
                return Words.of(
                        "order.figure.tyre",
                        axle(axle),
                        Words.of("order.figure.tyre"
                                + field.substring(4 + axle.name().length())));
            }
        }
        return field.matches("leg[0-9]+[a-zA-Z]+")
                ? Words.of(
                        "order.figure.leg",
                        field.replaceAll("\\D", ""),
                        Words.of("order.figure." + field.replaceAll("leg[0-9]+", "leg")))
                : Words.of("order.figure." + field);
    }

    private static String plain(double value) {
        return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
    }
}
