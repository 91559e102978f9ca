package wainbook.station.determination;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import wainbook.act.Reason;
import wainbook.process.determination.Method;
import wainbook.station.StationSaying.Determined;
import wainbook.station.StationSaying.Figure;
import wainbook.station.StationSaying.Result;
import wainbook.works.instruments.Instrument;
import wainbook.works.instruments.InstrumentRow;
import wainbook.works.instruments.InstrumentRule;

/**
 * The known resistor of the voltmeter method. Where the register has such resistors, the entry names the one that was used,
 * which is in calibration and has the value that the sheet works with.
 */
public final class KnownResistor {

    public static final String KIND = "test-resistor";
    private static final String FIELD = "resistor";
    private static final BigDecimal OHM_PER_KOHM = BigDecimal.valueOf(1000);

    private KnownResistor() {}

    /** The code of the resistor that an entry rests on. */
    public static Optional<String> named(Result said) {
        return said instanceof Determined determined ? figure(determined.readings(), FIELD) : Optional.empty();
    }

    /** @param register finds an instrument by its code */
    public static List<Reason> against(
            Determined said, Function<String, Optional<Instrument>> register, LocalDate today) {
        if (said.method() != Method.ISOLATION_VOLTMETER) {
            return List.of();
        }
        Optional<String> code = figure(said.readings(), FIELD);
        if (code.isEmpty()) {
            return InstrumentRow.ofKind(KIND).isEmpty()
                    ? List.of()
                    : List.of(Reason.of("station.resistorMissing", Reason.WORKS_RULE)
                            .liftedAt("#" + FIELD));
        }
        List<BigDecimal> valueKOhm = figure(said.inputs(), "insertedOhm").stream()
                .map(ohm -> new BigDecimal(ohm).divide(OHM_PER_KOHM))
                .toList();
        return InstrumentRule.against(register.apply(code.get()), KIND, valueKOhm, today).stream()
                .map(reason -> reason.liftedAt("#" + FIELD))
                .toList();
    }

    private static Optional<String> figure(List<Figure> figures, String name) {
        return figures.stream()
                .filter(figure -> figure.name().equals(name))
                .map(Figure::value)
                .findFirst();
    }
}
