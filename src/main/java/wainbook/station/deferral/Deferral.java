package wainbook.station.deferral;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
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
import wainbook.process.sheet.Ask;
import wainbook.station.StationSaying;
import wainbook.station.StationSaying.Bar;
import wainbook.station.StationSaying.CarriedOver;
import wainbook.station.StationSaying.HandedOn;
import wainbook.station.StationSaying.ReSequenced;
import wainbook.station.work.Workplace;
import wainbook.works.Person;

/** Gives an item to a later stage: re-sequenced when it was not begun, carried over when it was. */
@ApplicationScoped
public class Deferral {

    /** What is asked for an item not begun, such as one whose part is missing. */
    public record ToReSequence(UUID id, String order, String item, String toStage, List<Bar> bars, String reason)
            implements Asked {
        @Override
        public List<Subject> writes() {
            return List.of(Subject.workOrder(order));
        }

        @Override
        public Class<? extends Saying> says() {
            return ReSequenced.class;
        }
    }

    /** What is asked for an item begun, or one that can wait without a bar. */
    public record ToCarryOver(UUID id, String order, String item, String toStage, String owner, String reason)
            implements Asked {
        @Override
        public List<Subject> writes() {
            return List.of(Subject.workOrder(order));
        }

        @Override
        public Class<? extends Saying> says() {
            return CarriedOver.class;
        }
    }

    /** What is asked for a second check that the operator is to make. */
    public record ToHandOn(UUID id, String order, String item, String reason) implements Asked {
        @Override
        public List<Subject> writes() {
            return List.of(Subject.workOrder(order));
        }

        @Override
        public Class<? extends Saying> says() {
            return HandedOn.class;
        }
    }

    private final Ledger ledger;
    private final Workplace workplace;

    Deferral(Ledger ledger, Workplace workplace) {
        this.ledger = ledger;
        this.workplace = workplace;
    }

    public Outcome<Entry> reSequence(ToReSequence asked, Actor actor) {
        return ledger.write(asked, actor, reading -> {
            Subject order = Subject.workOrder(asked.order());
            return rules(reading.of(order), reading.moment(), asked.item())
                    .fold(rules -> decide(rules, asked), Decision::refuse);
        });
    }

    public Outcome<Entry> carryOver(ToCarryOver asked, Actor actor) {
        return ledger.write(asked, actor, reading -> {
            Subject order = Subject.workOrder(asked.order());
            return rules(reading.of(order), reading.moment(), asked.item())
                    .fold(rules -> decide(rules, asked), Decision::refuse);
        });
    }

    public Outcome<Entry> handOn(ToHandOn asked, Actor actor) {
        return ledger.write(asked, actor, reading -> {
            Subject order = Subject.workOrder(asked.order());
            return rules(reading.of(order), reading.moment(), asked.item())
                    .fold(rules -> decide(rules, asked), Decision::refuse);
        });
    }

    /** The rules for one item as it stands, or why there is no such item here. Asked before a page is drawn. */
    public Outcome<DeferralRules> rules(History history, Moment moment, String item) {
        return workplace.at(history, moment, item, Optional.empty()).map(DeferralRules::new);
    }

    private static Decision decide(DeferralRules rules, ToReSequence asked) {
        return decide(
                rules.againstReSequencing(),
                rules.faults(asked),
                asked,
                new ReSequenced(rules.work().about(), asked.toStage(), asked.bars(), asked.reason()));
    }

    private Decision decide(DeferralRules rules, ToCarryOver asked) {
        return decide(
                rules.againstCarryingOver(),
                rules.faults(asked, person(asked.owner())),
                asked,
                new CarriedOver(rules.work().about(), asked.toStage(), asked.owner(), asked.reason()));
    }

    private static Decision decide(DeferralRules rules, ToHandOn asked) {
        List<Reason> all = Stream.concat(rules.againstHandingOn().stream(), rules.faults(asked).stream())
                .toList();
        if (!all.isEmpty()) {
            return Decision.refuse(all);
        }
        Ask.Recheck check = rules.secondCheck().orElseThrow();
        return Decision.say(
                asked.writes().get(0),
                new HandedOn(rules.work().about(), check.joint(), check.byKm().orElseThrow(), asked.reason()));
    }

    private static Decision decide(List<Reason> against, List<Reason> faults, Asked asked, StationSaying saying) {
        List<Reason> all = Stream.concat(against.stream(), faults.stream()).toList();
        return all.isEmpty() ? Decision.say(asked.writes().get(0), saying) : Decision.refuse(all);
    }

    /** A number that cannot be one is nobody’s. */
    private Person person(String number) {
        return Person.of(
                number.matches("[A-Za-z0-9][A-Za-z0-9._-]{0,79}")
                        ? ledger.history(Subject.person(number))
                        : History.empty(Subject.person("0")));
    }
}
