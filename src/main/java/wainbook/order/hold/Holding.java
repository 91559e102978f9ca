package wainbook.order.hold;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
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
import wainbook.order.OrderSaying.Held;
import wainbook.order.OrderSaying.HoldKind;
import wainbook.order.OrderSaying.HoldReleased;
import wainbook.order.OrderSaying.Stops;
import wainbook.order.WorkOrder;
import wainbook.works.Person;
import wainbook.works.Role;

/** Holds a vehicle, and releases it. Anybody may hold; who may release depends on the kind of hold. */
@ApplicationScoped
public class Holding {

    /** What is asked to hold. */
    public record ToHold(UUID id, String order, HoldKind kindOfHold, List<Stops> stops, String reason)
            implements Asked {
        @Override
        public List<Subject> writes() {
            return List.of(Subject.workOrder(order));
        }

        @Override
        public Class<? extends Saying> says() {
            return Held.class;
        }
    }

    /** What is asked to release. */
    public record ToRelease(UUID id, String order, int hold, String reason) implements Asked {
        @Override
        public List<Subject> writes() {
            return List.of(Subject.workOrder(order));
        }

        @Override
        public Class<? extends Saying> says() {
            return HoldReleased.class;
        }
    }

    private static final String ANY_REASON = "–";

    private final Ledger ledger;

    Holding(Ledger ledger) {
        this.ledger = ledger;
    }

    public Outcome<Entry> hold(ToHold asked, Actor actor) {
        Subject order = Subject.workOrder(asked.order());
        return ledger.write(asked, actor, reading -> {
            var against = new ArrayList<Reason>();
            if (WorkOrder.of(reading.of(order)).isEmpty()) {
                against.add(Reason.of("order.notFound", Reason.WORKS_RULE, asked.order()));
            }
            if (asked.stops().isEmpty()) {
                against.add(
                        Reason.of("order.holdStopsNothing", Reason.WORKS_RULE).liftedAt("#stops"));
            }
            if (asked.reason().isBlank()) {
                against.add(Reason.of("order.reasonMissing", Reason.WORKS_RULE).liftedAt("#reason"));
            }
            return against.isEmpty()
                    ? Decision.say(
                            order, new Held(next(reading.of(order)), asked.kindOfHold(), asked.stops(), asked.reason()))
                    : Decision.refuse(against);
        });
    }

    public Outcome<Entry> release(ToRelease asked, Actor actor) {
        Subject order = Subject.workOrder(asked.order());
        return ledger.write(asked, actor, reading -> {
            Person person = Person.of(ledger.history(Subject.person(actor.who())));
            List<Reason> against = against(reading.of(order), asked, person);
            return against.isEmpty()
                    ? Decision.say(order, new HoldReleased(asked.hold(), asked.reason()))
                    : Decision.refuse(against);
        });
    }

    /** The number that the next hold on a work order gets. */
    public static int next(History history) {
        return 1 + (int) history.saying(Held.class).count();
    }

    /** What stands against this person's releasing the hold. Asked before a page is drawn. */
    public List<Reason> against(String order, int hold, String who) {
        var asked = new ToRelease(new UUID(0, 0), order, hold, ANY_REASON);
        return against(ledger.history(Subject.workOrder(order)), asked, Person.of(ledger.history(Subject.person(who))));
    }

    /** Who may release a hold of a kind. */
    public static Set<Role> mayRelease(HoldKind kind) {
        return switch (kind) {
            case SAFETY -> Set.of(Role.WORKS_ENGINEER, Role.QUALITY_ENGINEER);
            case QUALITY -> Set.of(Role.QUALITY_ENGINEER);
            case PARTS, OPERATOR_WISH -> Set.of(Role.LINE_MANAGER, Role.WORKS_ENGINEER);
        };
    }

    /**
     * Whether what was stopped for safety must be let go by somebody else: a second person looks before work goes on, and
     * nobody is pressed to take back their own stop.
     */
    public static boolean takesAnother(HoldKind kind, String putOnBy, String who) {
        return kind == HoldKind.SAFETY && putOnBy.equals(who);
    }

    private static List<Reason> against(History history, ToRelease asked, Person person) {
        Optional<HoldInWords> held = HoldInWords.inForce(history).stream()
                .filter(known -> known.hold() == asked.hold())
                .findFirst();
        if (held.isEmpty()) {
            return List.of(Reason.of("order.holdNotFound", Reason.WORKS_RULE, asked.hold(), asked.order()));
        }
        var against = new ArrayList<Reason>();
        Set<Role> may = mayRelease(held.get().sort());
        String roles = may.stream().map(Role::word).sorted().collect(Collectors.joining(", "));
        if (person.roles().stream().noneMatch(may::contains)) {
            against.add(Reason.of("order.mayNotRelease", Reason.WORKS_RULE, asked.hold(), roles));
        }
        if (takesAnother(held.get().sort(), held.get().who(), person.number())) {
            against.add(Reason.of("order.ownSafetyHold", Reason.WORKS_RULE, asked.hold(), roles));
        }
        if (asked.reason().isBlank()) {
            against.add(Reason.of("order.reasonMissing", Reason.WORKS_RULE).liftedAt("#reason"));
        }
        return against;
    }
}
