package wainbook.order;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import wainbook.act.Actor;
import wainbook.act.Outcome;
import wainbook.act.Reason;
import wainbook.ledger.Asked;
import wainbook.ledger.Decision;
import wainbook.ledger.Entry;
import wainbook.ledger.Ledger;
import wainbook.ledger.Saying;
import wainbook.ledger.Subject;
import wainbook.order.OrderSaying.Binding;
import wainbook.order.OrderSaying.DonorReceived;
import wainbook.order.OrderSaying.Place;
import wainbook.process.ProcessSaying.Released;
import wainbook.process.Releases;
import wainbook.process.Station;

/** Receives a donor vehicle for an order, and binds its survey to the sheet in force. */
@ApplicationScoped
public class Intake {

    /** What is asked; the VIN as stamped on the chassis. */
    public record ToReceive(UUID id, String order, String vin, String registration, int odometerKm) implements Asked {
        public ToReceive {
            vin = vin.strip().toUpperCase(Locale.ROOT);
            registration = registration.strip().toUpperCase(Locale.ROOT);
        }

        @Override
        public List<Subject> writes() {
            return List.of(Subject.workOrder(order));
        }

        @Override
        public Class<? extends Saying> says() {
            return DonorReceived.class;
        }
    }

    private final Ledger ledger;
    private final Releases releases;

    Intake(Ledger ledger, Releases releases) {
        this.ledger = ledger;
        this.releases = releases;
    }

    public Outcome<Entry> receive(ToReceive asked, Actor actor) {
        Subject order = Subject.workOrder(asked.order());
        return ledger.write(asked, actor, reading -> {
            Optional<WorkOrder> known = WorkOrder.of(reading.of(order));
            Optional<Released> survey = known.flatMap(
                            found -> releases.route(found.ordered().route()))
                    .flatMap(route -> releases.sheetInForce(route.intakeSheet()));
            List<Reason> against = against(asked, known, survey);
            return against.isEmpty()
                    ? Decision.say(order, received(asked, survey.orElseThrow()))
                    : Decision.refuse(against);
        });
    }

    /** What stands against any donor for this order; empty when one can be received. Asked before a page is drawn. */
    public List<Reason> against(WorkOrder order) {
        Optional<Released> survey =
                releases.route(order.ordered().route()).flatMap(route -> releases.sheetInForce(route.intakeSheet()));
        return against(order, survey);
    }

    private static List<Reason> against(WorkOrder order, Optional<Released> survey) {
        var against = new ArrayList<Reason>();
        if (order.phase() != WorkOrder.Phase.ORDERED) {
            against.add(Reason.of("order.donorAlready", Reason.WORKS_RULE, order.number()));
        }
        if (survey.isEmpty()) {
            against.add(Reason.of("order.noSurveySheet", Reason.WORKS_RULE).liftedAt("/process"));
        }
        return against;
    }

    private DonorReceived received(ToReceive asked, Released survey) {
        String stage = survey.sheet().stage();
        String bay = releases.stationsOf(stage).stream()
                .map(Station::code)
                .findFirst()
                .orElse(stage);
        return new DonorReceived(
                asked.vin(),
                asked.registration(),
                asked.odometerKm(),
                new Place(Optional.of(stage), bay),
                new Binding(stage, survey.sheet().code(), survey.revision()));
    }

    private static List<Reason> against(ToReceive asked, Optional<WorkOrder> order, Optional<Released> survey) {
        if (order.isEmpty()) {
            return List.of(Reason.of("order.notFound", Reason.WORKS_RULE, asked.order()));
        }
        List<Reason> against = new ArrayList<>(against(order.get(), survey));
        if (!asked.vin().matches("[A-HJ-NPR-Z0-9]{17}")) {
            against.add(Reason.of("order.vinForm", "ISO 3779 (form of the VIN, from memory)", asked.vin())
                    .liftedAt("#vin"));
        }
        order.flatMap(known -> known.links().from())
                .filter(expected -> !expected.vin().equals(asked.vin()))
                .ifPresent(expected -> against.add(Reason.of(
                                "order.anotherVehicle",
                                Reason.WORKS_RULE,
                                asked.vin(),
                                expected.earlier(),
                                expected.vin())
                        .liftedAt("#vin")));
        if (asked.registration().isEmpty() || asked.registration().length() > 20) {
            against.add(
                    Reason.of("order.registrationMissing", Reason.WORKS_RULE).liftedAt("#registration"));
        }
        if (asked.odometerKm() < 0) {
            against.add(Reason.of("order.odometer", Reason.WORKS_RULE, asked.odometerKm())
                    .liftedAt("#odometerKm"));
        }
        return against;
    }
}
