package wainbook.works.instruments;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wainbook.act.Reason;

/** Whether an instrument may be used for a measurement on a day. */
public final class InstrumentRule {

    private static final String SOURCE = "ISO 9001:2015 7.1.5.2 (clause from memory)";

    private InstrumentRule() {}

    /** All reasons against it, by kind, calibration, withdrawal and range. */
    public static List<Reason> against(
            Optional<Instrument> known, String kind, List<BigDecimal> values, LocalDate today) {
        if (known.isEmpty()) {
            return List.of(Reason.of("works.instrumentUnknown", SOURCE, kind).liftedAt("#instrument"));
        }
        Instrument instrument = known.get();
        var against = new ArrayList<Reason>();
        if (!instrument.kind().equals(kind)) {
            against.add(Reason.of("works.instrumentKind", SOURCE, instrument.code(), instrument.kind(), kind));
        }
        instrument
                .withdrawnBecause()
                .ifPresent(why -> against.add(Reason.of("works.instrumentWithdrawn", SOURCE, instrument.code(), why)));
        if (!instrument.inCalibrationOn(today)) {
            against.add(Reason.of(
                    "works.instrumentOutOfCalibration",
                    SOURCE,
                    instrument.code(),
                    instrument.due().map(LocalDate::toString).orElse("–")));
        }
        values.stream()
                .filter(value -> !instrument.covers(value))
                .findFirst()
                .ifPresent(value -> against.add(Reason.of(
                        "works.instrumentRange",
                        SOURCE,
                        instrument.code(),
                        instrument.lower().toPlainString(),
                        instrument.upper().toPlainString(),
                        instrument.unit(),
                        value.toPlainString())));
        return against;
    }
}
