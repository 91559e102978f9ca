package wainbook.works.instruments.store;

import jakarta.enterprise.context.ApplicationScoped;
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
import wainbook.works.Person;
import wainbook.works.WorksSaying.InstrumentWithdrawn;
import wainbook.works.WorksSaying.Issued;
import wainbook.works.WorksSaying.Returned;
import wainbook.works.WorksSaying.WithdrawalCause;
import wainbook.works.instruments.InDoubt;
import wainbook.works.instruments.Instrument;
import wainbook.works.instruments.InstrumentRule;
import wainbook.works.instruments.Issue;
import wainbook.works.shift.WorksDay;

/** Gives instruments out and takes them back. What comes back unsound is withdrawn in the same breath. */
@ApplicationScoped
public class Store {

    interface OfInstrument extends Asked {
        String code();

        @Override
        default List<Subject> writes() {
            return List.of(Subject.instrument(code()));
        }
    }

    /** To a person, and to a station where it is taken to one. */
    public record ToIssue(UUID id, String code, String to, Optional<String> place) implements OfInstrument {
        @Override
        public Class<? extends Saying> says() {
            return Issued.class;
        }
    }

    /** Back, sound or not. */
    public record ToReturn(UUID id, String code, boolean sound, Optional<String> remark) implements OfInstrument {
        @Override
        public Class<? extends Saying> says() {
            return Returned.class;
        }
    }

    private final Ledger ledger;
    private final WorksDay day;
    private final InDoubt inDoubt;

    Store(Ledger ledger, WorksDay day, InDoubt inDoubt) {
        this.ledger = ledger;
        this.day = day;
        this.inDoubt = inDoubt;
    }

    public Outcome<Entry> issue(ToIssue asked, Actor actor) {
        Subject subject = Subject.instrument(asked.code());
        return ledger.write(asked, actor, reading -> {
            History history = reading.of(subject);
            LocalDate today = day.of(reading.moment().at());
            List<Reason> against = against(asked, history, today);
            return against.isEmpty()
                    ? Decision.say(subject, new Issued(asked.to(), asked.place(), today))
                    : Decision.refuse(against);
        });
    }

    /** An unsound one is always taken back; a sound one only from somebody who has it. */
    public Outcome<Entry> takeBack(ToReturn asked, Actor actor) {
        Subject subject = Subject.instrument(asked.code());
        Outcome<Entry> outcome = ledger.write(asked, actor, reading -> {
            History history = reading.of(subject);
            if (Instrument.of(history).isEmpty()) {
                return Decision.refuse(Reason.of("works.noInstrument", Reason.WORKS_RULE, asked.code())
                        .liftedAt("#back"));
            }
            Decision back = Decision.say(subject, new Returned(asked.sound(), asked.remark()));
            if (!asked.sound()) {
                return back.andSay(
                        subject,
                        new InstrumentWithdrawn(
                                WithdrawalCause.DAMAGED, asked.remark().orElse("–"), Optional.empty()));
            }
            return Issue.of(history).isPresent()
                    ? back
                    : Decision.refuse(Reason.of("works.notOut", Reason.WORKS_RULE, asked.code())
                            .liftedAt("#back"));
        });
        return inDoubt.told(outcome, actor);
    }

    private List<Reason> against(ToIssue asked, History history, LocalDate today) {
        var against = new ArrayList<Reason>();
        Optional<Instrument> known = Instrument.of(history);
        if (known.isEmpty()) {
            against.add(Reason.of("works.noInstrument", Reason.WORKS_RULE, asked.code()));
        }
        known.ifPresent(
                instrument -> against.addAll(InstrumentRule.against(known, instrument.kind(), List.of(), today)));
        Issue.of(history)
                .ifPresent(
                        out -> against.add(Reason.of("works.outAlready", Reason.WORKS_RULE, asked.code(), out.to())));
        List<Reason> atField = new ArrayList<>(
                against.stream().map(reason -> reason.liftedAt("#code")).toList());
        History person = ledger.history(Subject.person(asked.to()));
        if (person.isEmpty() || Person.of(person).left()) {
            atField.add(Reason.of("works.nobody", Reason.WORKS_RULE, asked.to()).liftedAt("#to"));
        }
        return atField;
    }
}
