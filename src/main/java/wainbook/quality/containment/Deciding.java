package wainbook.quality.containment;

import jakarta.enterprise.context.ApplicationScoped;
import java.math.BigDecimal;
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
import wainbook.order.OrderSaying.HoldReleased;
import wainbook.page.Words;
import wainbook.quality.QualitySaying.Disposition;
import wainbook.quality.QualitySaying.OperatorNoted;
import wainbook.quality.QualitySaying.Place;
import wainbook.quality.QualitySaying.ReadingsDecided;
import wainbook.quality.QualitySaying.Recheck;
import wainbook.quality.QualitySaying.Word;
import wainbook.quality.containment.vehicle.VehicleDoubt;
import wainbook.quality.containment.vehicle.VehicleDoubts;
import wainbook.works.instruments.Instrument;
import wainbook.works.shift.WorksDay;

/** Settles readings of one vehicle. The last of them releases the containment's hold; nothing else does by itself. */
@ApplicationScoped
public class Deciding {

    /**
     * What is asked.
     *
     * @param places the readings; at least one
     * @param checkedBy what was measured, where something was
     */
    public record ToDecide(
            UUID id,
            String order,
            String containment,
            List<Place> places,
            Disposition disposition,
            String reason,
            Checked checkedBy)
            implements Asked {
        @Override
        public List<Subject> writes() {
            return List.of(Subject.workOrder(order));
        }

        @Override
        public Class<? extends Saying> says() {
            return ReadingsDecided.class;
        }
    }

    /**
     * What was measured.
     *
     * @param entryNumber an entry of the vehicle's record that shows it; else the other fields do
     */
    public record Checked(
            Optional<Long> entryNumber,
            Optional<String> person,
            Optional<String> with,
            Optional<BigDecimal> least,
            Optional<BigDecimal> most) {

        public static final Checked NOTHING =
                new Checked(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
    }

    /** What passed between the works and the operator. */
    public record ToNote(UUID id, String order, String containment, Word word, String what) implements Asked {
        @Override
        public List<Subject> writes() {
            return List.of(Subject.workOrder(order));
        }

        @Override
        public Class<? extends Saying> says() {
            return OperatorNoted.class;
        }
    }

    private final Ledger ledger;
    private final Containments containments;
    private final WorksDay day;

    Deciding(Ledger ledger, Containments containments, WorksDay day) {
        this.ledger = ledger;
        this.containments = containments;
        this.day = day;
    }

    public Outcome<Entry> decide(ToDecide asked, Actor actor) {
        return ledger.write(asked, actor, reading -> {
            History vehicle = reading.of(Subject.workOrder(asked.order()));
            Optional<VehicleDoubt> doubt = VehicleDoubts.of(vehicle).of(asked.containment());
            if (doubt.isEmpty()) {
                return Decision.refuse(notFound(asked.containment(), asked.order()));
            }
            DecidingRules rules = rules(asked, vehicle, doubt.get(), reading.moment());
            List<Reason> against = rules.against();
            return against.isEmpty() ? decision(asked, doubt.get(), rules.recheck()) : Decision.refuse(against);
        });
    }

    private DecidingRules rules(ToDecide asked, History vehicle, VehicleDoubt doubt, Moment moment) {
        Optional<Entry> shown = asked.checkedBy()
                .entryNumber()
                .flatMap(number -> vehicle.entries().stream()
                        .filter(entry -> entry.number() == number)
                        .findFirst());
        Optional<String> code = DecidingRules.instrument(asked, shown);
        return new DecidingRules(
                asked,
                vehicle,
                doubt,
                shown,
                code.filter(DecidingRules::isCode)
                        .flatMap(known -> Instrument.of(ledger.history(Subject.instrument(known)))),
                code.filter(DecidingRules::isCode).filter(containments::inDoubt).isPresent(),
                asked.checkedBy()
                        .person()
                        .filter(DecidingRules::isCode)
                        .filter(number ->
                                !ledger.history(Subject.person(number)).isEmpty())
                        .isPresent(),
                moment.who(),
                day.of(moment.at()));
    }

    private static Decision decision(ToDecide asked, VehicleDoubt doubt, Optional<Recheck> recheck) {
        Subject order = Subject.workOrder(asked.order());
        Decision decided = Decision.say(
                order,
                new ReadingsDecided(asked.containment(), asked.places(), asked.disposition(), asked.reason(), recheck));
        boolean last = doubt.open().stream()
                .allMatch(reading -> asked.places().contains(reading.said().key()));
        return last && doubt.holdStands()
                ? decided.andSay(
                        order,
                        new HoldReleased(
                                doubt.hold().orElseThrow(), Words.of("quality.releasedDecided", asked.containment())))
                : decided;
    }

    public Outcome<Entry> note(ToNote asked, Actor actor) {
        Subject order = Subject.workOrder(asked.order());
        return ledger.write(asked, actor, reading -> {
            if (VehicleDoubts.of(reading.of(order)).of(asked.containment()).isEmpty()) {
                return Decision.refuse(notFound(asked.containment(), asked.order()));
            }
            return asked.what().isBlank() || asked.what().length() > 2000
                    ? Decision.refuse(
                            Reason.of("quality.whatMissing", Reason.WORKS_RULE).liftedAt("#what"))
                    : Decision.say(order, new OperatorNoted(asked.containment(), asked.word(), asked.what()));
        });
    }

    private static Reason notFound(String containment, String order) {
        return Reason.of("quality.notOnVehicle", Reason.WORKS_RULE, containment, order);
    }
}
