package wainbook.works.instruments.calibration;

import jakarta.enterprise.context.ApplicationScoped;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import wainbook.act.Actor;
import wainbook.act.Outcome;
import wainbook.act.Reason;
import wainbook.ledger.Asked;
import wainbook.ledger.Decision;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.ledger.Ledger;
import wainbook.ledger.Saying;
import wainbook.ledger.Subject;
import wainbook.works.WorksSaying.Adjustment;
import wainbook.works.WorksSaying.Calibrated;
import wainbook.works.WorksSaying.CalibrationPoint;
import wainbook.works.WorksSaying.InstrumentWithdrawn;
import wainbook.works.WorksSaying.WithdrawalCause;
import wainbook.works.instruments.Calibrations;
import wainbook.works.instruments.InDoubt;
import wainbook.works.instruments.Instrument;
import wainbook.works.shift.WorksDay;

/** Puts a calibration on record. One that leaves the instrument unfit withdraws it in the same breath. */
@ApplicationScoped
public class Calibrating {

    /** A calibration, as {@link Calibrated} keeps it. */
    public record ToCalibrate(
            UUID id,
            String code,
            LocalDate on,
            Optional<LocalDate> due,
            String certificate,
            Optional<String> laboratory,
            Optional<BigDecimal> permittedPercent,
            List<CalibrationPoint> asFound,
            Adjustment adjustment,
            List<CalibrationPoint> asLeft,
            Optional<Long> operations,
            Optional<Long> seen)
            implements Asked {

        @Override
        public List<Subject> writes() {
            return List.of(Subject.instrument(code));
        }

        @Override
        public Class<? extends Saying> says() {
            return Calibrated.class;
        }

        Calibrated said() {
            return new Calibrated(
                    on, due, certificate, laboratory, permittedPercent, asFound, adjustment, asLeft, operations);
        }
    }

    private final Ledger ledger;
    private final WorksDay day;
    private final InDoubt inDoubt;

    Calibrating(Ledger ledger, WorksDay day, InDoubt inDoubt) {
        this.ledger = ledger;
        this.day = day;
        this.inDoubt = inDoubt;
    }

    public Outcome<Entry> calibrate(ToCalibrate asked, Actor actor) {
        Subject subject = Subject.instrument(asked.code());
        Outcome<Entry> outcome = ledger.write(asked, actor, reading -> {
            History history = reading.of(subject);
            Optional<Instrument> known = Instrument.of(history);
            if (known.isEmpty()) {
                return Decision.refuse(Reason.of("works.noInstrument", CalibrationRule.SOURCE, asked.code()));
            }
            var rule = new CalibrationRule(
                    known.get(),
                    Calibrations.of(history),
                    known.get().withdrawnAt().map(day::of),
                    day.of(reading.moment().at()));
            List<Reason> against = rule.against(asked.said());
            return against.isEmpty() ? decided(subject, rule, asked.said()) : Decision.refuse(against);
        });
        return inDoubt.told(outcome, actor);
    }

    private static Decision decided(Subject subject, CalibrationRule rule, Calibrated said) {
        Decision decision = Decision.say(subject, said);
        return said.adjustment() == Adjustment.WITHDRAWN && !rule.history(said)
                ? decision.andSay(
                        subject,
                        new InstrumentWithdrawn(WithdrawalCause.OUT_OF_TOLERANCE, said.certificate(), Optional.empty()))
                : decision;
    }
}
