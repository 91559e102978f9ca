package wainbook.pack.act;

import jakarta.enterprise.context.ApplicationScoped;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import wainbook.act.Actor;
import wainbook.act.Moment;
import wainbook.act.Outcome;
import wainbook.act.Reason;
import wainbook.ledger.Asked;
import wainbook.ledger.Decision;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.ledger.Ledger;
import wainbook.ledger.Saying;
import wainbook.ledger.Subject;
import wainbook.pack.Pack;
import wainbook.pack.PackSaying.Insulation;
import wainbook.pack.PackSaying.PackReceived;
import wainbook.pack.PackSaying.Quarantined;
import wainbook.pack.PackSaying.Seen;
import wainbook.pack.Serials;
import wainbook.works.Person;
import wainbook.works.instruments.Instrument;
import wainbook.works.instruments.InstrumentRule;
import wainbook.works.shift.WorksDay;

/** Takes a pack in: its inspection, with a verdict that follows from what was found. Damage sets it aside at once. */
@ApplicationScoped
public class Receiving {

    /** What was found. */
    public record ToReceive(
            UUID id,
            String serial,
            String packType,
            String lot,
            LocalDate made,
            BigDecimal chargePercent,
            BigDecimal voltageV,
            List<Seen> looked,
            OwnInsulation read,
            Optional<String> testSummary,
            Optional<String> certificate,
            String place,
            Optional<String> words)
            implements Asked {
        public ToReceive {
            looked = List.copyOf(looked);
        }

        @Override
        public List<Subject> writes() {
            return List.of(Serials.subject(serial));
        }

        @Override
        public Class<? extends Saying> says() {
            return PackReceived.class;
        }
    }

    private final Ledger ledger;
    private final WorksDay day;

    Receiving(Ledger ledger, WorksDay day) {
        this.ledger = ledger;
        this.day = day;
    }

    public Outcome<Entry> receive(ToReceive asked, Actor actor) {
        Subject subject = Serials.subject(asked.serial());
        return ledger.write(asked, actor, reading -> {
            LocalDate today = day.of(reading.moment().at());
            Person person = Person.of(ledger.history(Subject.person(actor.who())));
            var against = new ArrayList<Reason>();
            Qualified.COMPETENT.against(person, today).ifPresent(against::add);
            against.addAll(standing(reading.of(subject)));
            against.addAll(TypedRule.receipt(asked, today));
            Optional<Instrument> tool = tool(asked);
            against.addAll(instrument(asked, tool, today));
            return against.isEmpty()
                    ? asked.read()
                            .judged(tool.orElseThrow())
                            .fold(insulation -> said(asked, insulation, person), Decision::refuse)
                    : Decision.refuse(against);
        });
    }

    /** What bars this person from receiving anything; asked before a form is drawn. */
    public List<Reason> againstReceiving(Moment now) {
        Person person = Person.of(ledger.history(Subject.person(now.who())));
        return Qualified.COMPETENT.against(person, day.of(now.at())).stream().toList();
    }

    private static List<Reason> standing(History history) {
        Optional<Pack> pack = Pack.of(history);
        String serial = history.subject().code();
        if (pack.filter(Pack::setAside).isPresent()) {
            return List.of(
                    Reason.of("pack.inQuarantine", Reason.WORKS_RULE, serial).liftedAt("/packs/" + serial));
        }
        return pack.filter(one -> one.accepted() && !one.gone()).isPresent()
                ? List.of(Reason.of("pack.receivedAlready", Reason.WORKS_RULE, serial)
                        .liftedAt("/packs/" + serial))
                : List.of();
    }

    private Optional<Instrument> tool(ToReceive asked) {
        return Optional.of(asked.read().instrument())
                .filter(code -> code.matches("[A-Za-z0-9][A-Za-z0-9._-]{0,79}"))
                .flatMap(code -> Instrument.of(ledger.history(Subject.instrument(code))));
    }

    private static List<Reason> instrument(ToReceive asked, Optional<Instrument> tool, LocalDate today) {
        var against = new ArrayList<>(InstrumentRule.against(
                tool, OwnInsulation.KIND, List.of(asked.read().measuredMOhm()), today));
        tool.filter(known -> known.accuracyPercent().isEmpty())
                .ifPresent(known ->
                        against.add(Reason.of("pack.toolUncertaintyUnknown", Reason.WORKS_RULE, known.code())));
        return against.stream().map(reason -> reason.liftedAt("#instrument")).toList();
    }

    private static Decision said(ToReceive asked, Insulation insulation, Person person) {
        var rule =
                new ReceiptRule(asked.looked(), insulation, asked.voltageV(), asked.testSummary(), asked.certificate());
        Subject subject = Serials.subject(asked.serial());
        Decision received = Decision.say(
                subject,
                new PackReceived(
                        asked.packType(),
                        asked.lot(),
                        asked.made(),
                        asked.chargePercent(),
                        asked.voltageV(),
                        asked.looked(),
                        insulation,
                        asked.testSummary(),
                        asked.certificate(),
                        asked.place(),
                        asked.words(),
                        Qualified.authority(person),
                        rule.remarks(),
                        rule.verdict()));
        return rule.trigger()
                .map(trigger -> received.andSay(
                        subject,
                        new Quarantined(
                                trigger,
                                false,
                                Optional.empty(),
                                Optional.empty(),
                                Optional.empty(),
                                Optional.empty(),
                                Optional.empty())))
                .orElse(received);
    }
}
