package wainbook.works.instruments;

import io.quarkus.arc.All;
import jakarta.enterprise.context.ApplicationScoped;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
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
import wainbook.works.AfterWithdrawal;
import wainbook.works.Instrument;
import wainbook.works.WorksDay;
import wainbook.works.WorksSaying.Calibrated;
import wainbook.works.WorksSaying.InstrumentRegistered;
import wainbook.works.WorksSaying.InstrumentWithdrawn;
import wainbook.works.WorksSaying.WithdrawalCause;

/** Registers instruments, records their calibrations, withdraws them. */
@ApplicationScoped
public class Register {

    private static final String SOURCE = "ISO 9001:2015 7.1.5.2 (clause from memory)";

    /** What is asked of one instrument's stream. */
    interface OfInstrument extends Asked {
        String code();

        @Override
        default List<Subject> writes() {
            return List.of(Subject.instrument(code()));
        }
    }

    /** A new instrument; it may be used once its first calibration is on record. */
    public record ToRegister(
            UUID id,
            String code,
            String kind,
            String title,
            String unit,
            BigDecimal lower,
            BigDecimal upper,
            Optional<BigDecimal> accuracyPercent)
            implements OfInstrument {
        @Override
        public Class<? extends Saying> says() {
            return InstrumentRegistered.class;
        }
    }

    /** Calibrated and found fit. */
    public record ToCalibrate(
            UUID id, String code, LocalDate on, LocalDate due, String certificate, Optional<Long> seen)
            implements OfInstrument {
        @Override
        public Class<? extends Saying> says() {
            return Calibrated.class;
        }
    }

    /** Not to be used any more. Never refused as stale: whoever reports damage makes it safer. */
    public record ToWithdraw(UUID id, String code, String reason) implements OfInstrument {
        @Override
        public Class<? extends Saying> says() {
            return InstrumentWithdrawn.class;
        }
    }

    private final Ledger ledger;
    private final WorksDay day;
    private final List<AfterWithdrawal> afterWithdrawal;

    Register(Ledger ledger, WorksDay day, @All List<AfterWithdrawal> afterWithdrawal) {
        this.ledger = ledger;
        this.day = day;
        this.afterWithdrawal = afterWithdrawal;
    }

    /** Tells of an instrument that is now in doubt, again when the act is asked for again: what broke off is then made good. */
    private Outcome<Entry> told(Outcome<Entry> outcome, String code, Actor actor) {
        return outcome.map(entry -> {
            if (entry.saying() instanceof InstrumentWithdrawn said && said.cause() != WithdrawalCause.OTHER) {
                afterWithdrawal.forEach(after -> after.inDoubt(code, entry, actor));
            }
            return entry;
        });
    }

    public Outcome<Entry> register(ToRegister asked, Actor actor) {
        Subject subject = Subject.instrument(asked.code());
        return ledger.write(asked, actor, reading -> {
            var against = new ArrayList<Reason>();
            if (!reading.of(subject).isEmpty()) {
                against.add(Reason.of("works.instrumentThere", Reason.WORKS_RULE, asked.code())
                        .liftedAt("#code"));
            }
            if (asked.lower().compareTo(asked.upper()) >= 0) {
                against.add(Reason.of("works.rangeCrossed", Reason.WORKS_RULE).liftedAt("#upper"));
            }
            asked.accuracyPercent()
                    .filter(percent -> percent.signum() <= 0)
                    .ifPresent(percent ->
                            against.add(Reason.of("works.accuracyFault", SOURCE).liftedAt("#accuracyPercent")));
            return decision(
                    against,
                    subject,
                    new InstrumentRegistered(
                            asked.kind(),
                            asked.title(),
                            asked.unit(),
                            asked.lower(),
                            asked.upper(),
                            asked.accuracyPercent()));
        });
    }

    public Outcome<Entry> calibrate(ToCalibrate asked, Actor actor) {
        Subject subject = Subject.instrument(asked.code());
        return ledger.write(asked, actor, reading -> {
            var against = new ArrayList<>(unknown(reading.of(subject)));
            if (asked.on().isAfter(day.of(reading.moment().at()))) {
                against.add(Reason.of("works.calibratedInFuture", SOURCE, asked.on())
                        .liftedAt("#on"));
            }
            if (!asked.due().isAfter(asked.on())) {
                against.add(Reason.of("works.dueTooEarly", SOURCE, asked.due(), asked.on())
                        .liftedAt("#due"));
            }
            if (asked.certificate().isBlank()) {
                against.add(Reason.of("works.certificateMissing", SOURCE).liftedAt("#certificate"));
            }
            return decision(against, subject, Calibrated.certified(asked.on(), asked.due(), asked.certificate()));
        });
    }

    public Outcome<Entry> withdraw(ToWithdraw asked, Actor actor) {
        Subject subject = Subject.instrument(asked.code());
        Outcome<Entry> outcome = ledger.write(asked, actor, reading -> {
            var against = new ArrayList<>(unknown(reading.of(subject)));
            if (asked.reason().isBlank()) {
                against.add(Reason.of("works.wordsMissing", Reason.WORKS_RULE).liftedAt("#reason"));
            }
            return decision(against, subject, InstrumentWithdrawn.because(asked.reason()));
        });
        return told(outcome, asked.code(), actor);
    }

    private static List<Reason> unknown(History history) {
        return Instrument.of(history).isPresent()
                ? List.of()
                : List.of(Reason.of(
                        "works.noInstrument", SOURCE, history.subject().code()));
    }

    private static Decision decision(List<Reason> against, Subject subject, Saying saying) {
        return against.isEmpty() ? Decision.say(subject, saying) : Decision.refuse(against);
    }
}
