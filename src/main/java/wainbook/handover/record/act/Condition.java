package wainbook.handover.record.act;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import wainbook.act.Actor;
import wainbook.act.Outcome;
import wainbook.act.Reason;
import wainbook.handover.record.RecordSaying.ConditionPictured;
import wainbook.handover.record.RecordSaying.StateRead;
import wainbook.handover.record.RecordSaying.Thing;
import wainbook.handover.record.RecordSaying.ThingsListed;
import wainbook.handover.record.Wordlists;
import wainbook.ledger.Asked;
import wainbook.ledger.Entry;
import wainbook.ledger.Saying;
import wainbook.ledger.Subject;
import wainbook.ledger.evidence.EvidenceFile;

/** The condition of a vehicle at handover: photographs, odometer and charge, and what is given with it. */
@ApplicationScoped
public class Condition {

    private static final int MOST_THINGS = 60;
    private static final int MOST_OF_ONE = 999;

    /** @param sha256 of a photograph handed in before */
    public record ToPicture(UUID id, String order, String place, String remark, String sha256) implements Asked {
        @Override
        public List<Subject> writes() {
            return List.of(Subject.workOrder(order));
        }

        @Override
        public Class<? extends Saying> says() {
            return ConditionPictured.class;
        }
    }

    public record ToRead(UUID id, String order, int odometerKm, int chargePercent, String bay) implements Asked {
        @Override
        public List<Subject> writes() {
            return List.of(Subject.workOrder(order));
        }

        @Override
        public Class<? extends Saying> says() {
            return StateRead.class;
        }
    }

    /** @param nothing whether nothing at all is given with it; said so that an empty form is no answer */
    public record ToList(UUID id, String order, List<Thing> things, boolean nothing) implements Asked {
        @Override
        public List<Subject> writes() {
            return List.of(Subject.workOrder(order));
        }

        @Override
        public Class<? extends Saying> says() {
            return ThingsListed.class;
        }
    }

    private final AtBay bays;
    private final Photographs photographs;

    Condition(AtBay bays, Photographs photographs) {
        this.bays = bays;
        this.photographs = photographs;
    }

    public Outcome<Entry> picture(ToPicture asked, Actor actor) {
        return bays.write(asked, actor, bay -> {
            var against = new ArrayList<Reason>();
            Optional<EvidenceFile> photograph = photographs.of(asked.sha256());
            if (photograph.isEmpty()) {
                against.add(Reason.of("handover.recordPhotographMissing", Reason.PRACTICE)
                        .liftedAt("#photograph"));
            }
            Typed.words(asked.place(), "picturePlace").ifPresent(against::add);
            Typed.length(asked.remark(), "remark", Typed.LONGEST).ifPresent(against::add);
            return bay.say(
                    against,
                    () -> new ConditionPictured(
                            bay.record().allPictures().size() + 1,
                            asked.place(),
                            asked.remark(),
                            photograph.orElseThrow()));
        });
    }

    public Outcome<Entry> read(ToRead asked, Actor actor) {
        return bays.write(asked, actor, bay -> {
            var against = new ArrayList<Reason>();
            Typed.odometer(asked.odometerKm(), bay.knownKm(), "odometerKm").ifPresent(against::add);
            if (asked.chargePercent() < 0 || asked.chargePercent() > 100) {
                against.add(Reason.of("handover.recordChargeFault", Reason.WORKS_RULE)
                        .liftedAt("#chargePercent"));
            }
            Typed.words(asked.bay(), "bay").ifPresent(against::add);
            return bay.say(against, () -> new StateRead(asked.odometerKm(), asked.chargePercent(), asked.bay()));
        });
    }

    public Outcome<Entry> list(ToList asked, Actor actor) {
        return bays.write(asked, actor, bay -> bay.say(against(asked), () -> new ThingsListed(asked.things())));
    }

    private static List<Reason> against(ToList asked) {
        if (asked.nothing() == !asked.things().isEmpty()) {
            return List.of(
                    Reason.of("handover.recordThingsOrNothing", Reason.PRACTICE).liftedAt("#nothing"));
        }
        boolean sound = asked.things().size() <= MOST_THINGS
                && asked.things().stream()
                        .allMatch(thing -> !thing.thing().isBlank()
                                && thing.thing().length() <= Wordlists.LONGEST
                                && thing.count() >= 1
                                && thing.count() <= MOST_OF_ONE)
                && new HashSet<>(asked.things().stream().map(Thing::thing).toList()).size()
                        == asked.things().size();
        return sound
                ? List.of()
                : List.of(Reason.of("handover.recordThingsFault", Reason.WORKS_RULE, Wordlists.LONGEST, MOST_OF_ONE)
                        .liftedAt("#nothing"));
    }
}
