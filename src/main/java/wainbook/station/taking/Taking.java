package wainbook.station.taking;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
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
import wainbook.station.ItemState;
import wainbook.station.StationSaying;
import wainbook.station.StationSaying.GivenBack;
import wainbook.station.work.Work;
import wainbook.station.work.Workplace;
import wainbook.works.PersonName;
import wainbook.works.Role;

/**
 * Puts a person's own name on an item, so that of several at one vehicle each knows what is in hand with whom. The name stands
 * for a while, or until the item is recorded or given back; taking it again renews it.
 */
@ApplicationScoped
public class Taking {

    /** What is asked: the item by its key on the sheet in hand. */
    public record ToTake(UUID id, String order, String item) implements Asked {
        @Override
        public List<Subject> writes() {
            return List.of(Subject.workOrder(order));
        }

        @Override
        public Class<? extends Saying> says() {
            return StationSaying.Taken.class;
        }
    }

    /** What is asked of whoever has the item, or of a team leader: that it is free again. */
    public record ToGiveBack(UUID id, String order, String item) implements Asked {
        @Override
        public List<Subject> writes() {
            return List.of(Subject.workOrder(order));
        }

        @Override
        public Class<? extends Saying> says() {
            return GivenBack.class;
        }
    }

    /**
     * An item as it stands in somebody's hands, for the person who looks at it.
     *
     * @param who has it; empty when nobody has, or the name no longer stands
     */
    public record InHand(
            Optional<String> who, Optional<Instant> until, boolean mayTake, boolean mayGiveBack, UUID actId) {}

    private final Ledger ledger;
    private final Workplace workplace;

    Taking(Ledger ledger, Workplace workplace) {
        this.ledger = ledger;
        this.workplace = workplace;
    }

    public Outcome<Entry> take(ToTake asked, Actor actor) {
        Subject order = Subject.workOrder(asked.order());
        return ledger.write(
                asked,
                actor,
                reading -> work(reading.of(order), reading.moment(), asked.item())
                        .fold(
                                work -> {
                                    List<Reason> against = againstTaking(work);
                                    return against.isEmpty()
                                            ? Decision.say(order, new StationSaying.Taken(work.stage(), asked.item()))
                                            : Decision.refuse(against);
                                },
                                Decision::refuse));
    }

    public Outcome<Entry> giveBack(ToGiveBack asked, Actor actor) {
        Subject order = Subject.workOrder(asked.order());
        return ledger.write(
                asked,
                actor,
                reading -> work(reading.of(order), reading.moment(), asked.item())
                        .fold(
                                work -> {
                                    List<Reason> against = againstGivingBack(work);
                                    return against.isEmpty()
                                            ? Decision.say(order, new GivenBack(work.stage(), asked.item()))
                                            : Decision.refuse(against);
                                },
                                Decision::refuse));
    }

    /** Asked before the page is drawn. */
    public Optional<InHand> inHand(History history, Moment moment, String item) {
        return work(history, moment, item).fold(work -> Optional.of(inHand(work)), reasons -> Optional.empty());
    }

    private Outcome<Work> work(History history, Moment moment, String item) {
        return workplace.at(history, moment, item, Optional.empty());
    }

    private static InHand inHand(Work work) {
        Optional<ItemState.Taken> standing = work.state()
                .takenBy()
                .filter(taken -> taken.stands(work.moment().at()));
        return new InHand(
                standing.map(taken ->
                        PersonName.of(taken.who()).map(name -> name.fullName).orElse(taken.who())),
                standing.map(ItemState.Taken::until),
                againstTaking(work).isEmpty(),
                againstGivingBack(work).isEmpty(),
                UUID.randomUUID());
    }

    /** Who could not record the item keeps nobody from it. */
    private static List<Reason> againstTaking(Work work) {
        return Stream.concat(work.guards().vehicle().stream(), work.guards().competence().stream())
                .toList();
    }

    private static List<Reason> againstGivingBack(Work work) {
        Optional<ItemState.Taken> standing = work.state()
                .takenBy()
                .filter(taken -> taken.stands(work.moment().at()));
        if (standing.isEmpty()) {
            return List.of(Reason.of(
                    "station.notTaken", Reason.WORKS_RULE, work.state().key()));
        }
        boolean own = standing.get().who().equals(work.moment().who());
        return own || work.guards().person().roles().contains(Role.TEAM_LEADER)
                ? List.of()
                : List.of(Reason.of(
                        "station.takenByAnother",
                        Reason.WORKS_RULE,
                        work.state().key(),
                        standing.get().who()));
    }
}
