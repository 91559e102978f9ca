package wainbook.works.instruments;

import jakarta.enterprise.context.ApplicationScoped;
import java.math.BigDecimal;
import java.time.Instant;
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
import wainbook.works.WorksSaying.GearDescribed;
import wainbook.works.WorksSaying.InstrumentRegistered;
import wainbook.works.WorksSaying.InstrumentWithdrawn;
import wainbook.works.WorksSaying.WithdrawalCause;

/** Registers instruments and withdraws them. */
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

    /**
     * Not to be used any more. Never refused as stale: whoever reports damage makes it safer.
     *
     * @param since when it fell or was overloaded, where that is known
     */
    public record ToWithdraw(UUID id, String code, WithdrawalCause cause, String reason, Optional<Instant> since)
            implements OfInstrument {
        @Override
        public Class<? extends Saying> says() {
            return InstrumentWithdrawn.class;
        }
    }

    /** What is printed on protective gear: the newest description stands. */
    public record ToDescribe(
            UUID id, String code, Optional<String> size, Optional<String> rating, Optional<LocalDate> expires)
            implements OfInstrument {
        @Override
        public Class<? extends Saying> says() {
            return GearDescribed.class;
        }
    }

    private final Ledger ledger;
    private final InDoubt inDoubt;

    Register(Ledger ledger, InDoubt inDoubt) {
        this.ledger = ledger;
        this.inDoubt = inDoubt;
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

    public Outcome<Entry> withdraw(ToWithdraw asked, Actor actor) {
        Subject subject = Subject.instrument(asked.code());
        Outcome<Entry> outcome = ledger.write(asked, actor, reading -> {
            var against = new ArrayList<>(unknown(reading.of(subject)));
            if (asked.reason().isBlank()) {
                against.add(Reason.of("works.wordsMissing", Reason.WORKS_RULE).liftedAt("#reason"));
            }
            asked.since()
                    .filter(since -> since.isAfter(reading.moment().at()))
                    .ifPresent(since ->
                            against.add(Reason.of("works.sinceInFuture", SOURCE).liftedAt("#since")));
            return decision(against, subject, new InstrumentWithdrawn(asked.cause(), asked.reason(), asked.since()));
        });
        return inDoubt.told(outcome, actor);
    }

    public Outcome<Entry> describe(ToDescribe asked, Actor actor) {
        Subject subject = Subject.instrument(asked.code());
        return ledger.write(
                asked,
                actor,
                reading -> decision(
                        unknown(reading.of(subject)),
                        subject,
                        new GearDescribed(asked.size(), asked.rating(), asked.expires())));
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
