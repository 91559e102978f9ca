package wainbook.handover.road;

import jakarta.enterprise.context.ApplicationScoped;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import wainbook.act.Actor;
import wainbook.act.Outcome;
import wainbook.act.Reason;
import wainbook.ledger.Asked;
import wainbook.ledger.Decision;
import wainbook.ledger.Entry;
import wainbook.ledger.Ledger;
import wainbook.ledger.Saying;
import wainbook.ledger.Subject;
import wainbook.line.LineSaying.RoadDriven;
import wainbook.line.road.RoadUse;
import wainbook.order.OrderSaying.DonorReceived;

/** Logs a drive on the road under a release. */
@ApplicationScoped
public class RoadDrive {

    private static final int LONGEST = 500;
    private static final int HEAVIEST_KG = 60_000;
    private static final int FARTHEST_KM = 1_000;

    /**
     * What is asked.
     *
     * @param packsDegC the highest seen; likewise {@code driveDegC}
     * @param fit whether nothing was found that keeps it off the road
     */
    public record ToLog(
            UUID id,
            String order,
            String route,
            int loadKg,
            int fromKm,
            int toKm,
            Optional<BigDecimal> packsDegC,
            Optional<BigDecimal> driveDegC,
            Optional<BigDecimal> outsideDegC,
            String faults,
            String defects,
            boolean fit)
            implements Asked {
        @Override
        public List<Subject> writes() {
            return List.of(Subject.workOrder(order));
        }

        @Override
        public Class<? extends Saying> says() {
            return RoadDriven.class;
        }
    }

    private final Ledger ledger;
    private final RoadLook look;

    RoadDrive(Ledger ledger, RoadLook look) {
        this.ledger = ledger;
        this.look = look;
    }

    public Outcome<Entry> log(ToLog asked, Actor actor) {
        Subject subject = Subject.workOrder(asked.order());
        return ledger.write(
                asked,
                actor,
                reading -> look.at(reading.of(subject), reading.moment())
                        .map(rules -> decide(asked, rules))
                        .orElseGet(() -> RoadRelease.notFound(asked.order())));
    }

    private static Decision decide(ToLog asked, RoadRules rules) {
        RoadUse use = rules.use();
        if (use.inForce().isEmpty()) {
            return Decision.refuse(Reason.of("handover.roadNotReleased", Reason.WORKS_RULE, asked.order())
                    .liftedAt("/orders/" + asked.order() + "/road#release"));
        }
        List<Reason> against = new ArrayList<>(rules.disturbed());
        against.addAll(written(asked, odometerKm(rules, use)));
        RoadUse.Release release = use.inForce().get();
        return against.isEmpty()
                ? Decision.say(
                        Subject.workOrder(asked.order()),
                        new RoadDriven(
                                release.number(),
                                release.said().driver(),
                                asked.route(),
                                asked.loadKg(),
                                asked.fromKm(),
                                asked.toKm(),
                                asked.packsDegC(),
                                asked.driveDegC(),
                                asked.outsideDegC(),
                                asked.faults(),
                                asked.defects(),
                                asked.fit()))
                : Decision.refuse(against);
    }

    private static List<Reason> written(ToLog asked, int knownKm) {
        var wrong = new ArrayList<Reason>();
        if (asked.route().isBlank()) {
            wrong.add(at("handover.roadRouteMissing", "#route"));
        }
        if (asked.loadKg() < 0 || asked.loadKg() > HEAVIEST_KG) {
            wrong.add(at("handover.roadLoad", "#loadKg", HEAVIEST_KG));
        }
        if (asked.fromKm() < knownKm) {
            wrong.add(at("handover.roadOdometerBack", "#fromKm", knownKm));
        }
        if (asked.toKm() <= asked.fromKm() || asked.toKm() - asked.fromKm() > FARTHEST_KM) {
            wrong.add(at("handover.roadKm", "#toKm", FARTHEST_KM));
        }
        if (!asked.fit() && asked.defects().isBlank()) {
            wrong.add(at("handover.roadDefectMissing", "#defects"));
        }
        Stream.of("route", "faults", "defects")
                .filter(field -> text(asked, field).length() > LONGEST)
                .forEach(field -> wrong.add(at("handover.tooLong", "#" + field, LONGEST)));
        return wrong;
    }

    private static String text(ToLog asked, String field) {
        return switch (field) {
            case "route" -> asked.route();
            case "faults" -> asked.faults();
            default -> asked.defects();
        };
    }

    private static Reason at(String key, String field, Object... arguments) {
        return Reason.of(key, Reason.WORKS_RULE, arguments).liftedAt(field);
    }

    /** The most that any reading on record says. */
    public static int odometerKm(RoadRules rules, RoadUse use) {
        int received = rules.order().donor().map(DonorReceived::odometerKm).orElse(0);
        return use.lastDrive()
                .map(drive -> Math.max(received, drive.said().toKm()))
                .orElse(received);
    }
}
