package wainbook.station.entry;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import wainbook.act.Actor;
import wainbook.act.Outcome;
import wainbook.act.Reason;
import wainbook.isolation.IsolationSaying.SourceRecorded;
import wainbook.ledger.Asked;
import wainbook.ledger.Decision;
import wainbook.ledger.Entry;
import wainbook.ledger.Ledger;
import wainbook.ledger.Saying;
import wainbook.ledger.Subject;
import wainbook.matter.MatterSaying.NonconformityOpened;
import wainbook.matter.nonconformity.Nonconformities;
import wainbook.station.Reply;
import wainbook.station.StationSaying;
import wainbook.station.StationSaying.Determined;
import wainbook.station.StationSaying.Observed;
import wainbook.station.StationSaying.Result;
import wainbook.station.determination.DeterminedValue;
import wainbook.station.determination.Unlikely;
import wainbook.station.judgement.NonconformityRules;
import wainbook.station.work.Work;
import wainbook.station.work.Workplace;

/** Records what a person did or read for one check item. */
@ApplicationScoped
public class Recording {

    /** What is asked: the item by its key on the sheet in hand, and the answer to it. */
    public record ToRecord(UUID id, String order, String item, Optional<String> instrument, Reply reply)
            implements Asked {
        @Override
        public List<Subject> writes() {
            return List.of(Subject.workOrder(order));
        }

        @Override
        public Class<? extends Saying> says() {
            return StationSaying.class;
        }
    }

    private final Ledger ledger;
    private final Workplace workplace;
    private final AgainstSaid against;

    Recording(Ledger ledger, Workplace workplace, AgainstSaid against) {
        this.ledger = ledger;
        this.workplace = workplace;
        this.against = against;
    }

    public Outcome<Entry> record(ToRecord asked, Actor actor) {
        Subject order = Subject.workOrder(asked.order());
        return ledger.write(asked, actor, reading -> {
            Outcome<Work> work = workplace.at(reading.of(order), reading.moment(), asked.item(), asked.instrument());
            return work.fold(known -> decide(known, asked), Decision::refuse);
        });
    }

    private Decision decide(Work work, ToRecord asked) {
        List<Reason> vehicle = work.guards().vehicle();
        if (!vehicle.isEmpty()) {
            return Decision.refuse(vehicle);
        }
        Subject order = Subject.workOrder(asked.order());
        List<Reason> counting = work.guards().counting();
        if (!counting.isEmpty()) {
            return asked.reply().figures().isEmpty()
                    ? Decision.refuse(counting)
                    : landed(
                            order,
                            work,
                            Decision.say(
                                    order,
                                    new Observed(
                                            work.about(),
                                            asked.reply().figures(),
                                            counting.stream().map(Reason::key).toList())));
        }
        return work.judge(asked.reply())
                .fold(
                        saying -> against.of(saying, work)
                                .or(() -> unlikely(saying, asked).map(List::of))
                                .map(Decision::refuse)
                                .orElseGet(() -> say(order, work, saying)),
                        Decision::refuse);
    }

    /** What may be a slip is asked about before it is kept. */
    private static Optional<Reason> unlikely(StationSaying saying, ToRecord asked) {
        boolean sure = asked.reply().sure().orElse(false);
        return saying instanceof Determined said && !sure
                ? new Unlikely(DeterminedValue.lately(said.about().line(), asked.order(), Unlikely.LOOKED_AT)).of(said)
                : Optional.empty();
    }

    /** A pack that was fitted is a source from now on, whether or not the entry counts. */
    public static Decision landed(Subject order, Work work, Decision decision) {
        Decision longer = decision;
        for (String source : work.landing()) {
            longer = longer.andSay(order, new SourceRecorded(source));
        }
        return longer;
    }

    public static Decision say(Subject order, Work work, StationSaying saying) {
        Decision decision = landed(order, work, Decision.say(order, saying));
        if (!(saying instanceof Result result)) {
            return decision;
        }
        return NonconformityRules.cause(work.state(), result)
                .map(cause -> decision.andSay(
                        order,
                        new NonconformityOpened(
                                Nonconformities.of(work.history()).next(),
                                work.stage(),
                                Optional.of(work.about().line()),
                                cause,
                                work.state().item().title(),
                                NonconformityRules.noConcession(work.state().item(), result))))
                .orElse(decision);
    }
}
