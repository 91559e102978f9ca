package wainbook.bench;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import wainbook.gate.GateSaying.SignedOff;
import wainbook.house.Cast;
import wainbook.ledger.Asked;
import wainbook.ledger.Decision;
import wainbook.ledger.Ledger;
import wainbook.ledger.Saying;
import wainbook.ledger.Subject;
import wainbook.order.OrderSaying.Binding;
import wainbook.order.OrderSaying.Direction;
import wainbook.order.OrderSaying.DonorAccepted;
import wainbook.order.OrderSaying.DonorReceived;
import wainbook.order.OrderSaying.HandedOver;
import wainbook.order.OrderSaying.Moved;
import wainbook.order.OrderSaying.Ordered;
import wainbook.order.OrderSaying.Place;
import wainbook.process.Releases;
import wainbook.process.Route;

/** Vehicles that went the whole line and are gone, written with no more than where they stood and that their gates were signed. */
final class HandedOverLongAgo {

    private static final Place YARD = new Place(Optional.empty(), "YARD");
    private static final int AT_ONCE = 25;
    private static final int TIMEOUT_S = 600;
    private static final Duration AT_A_STAGE = Duration.ofHours(4);

    private record Told(UUID id, List<Subject> writes, Class<? extends Saying> says) implements Asked {}

    private final Ledger ledger;
    private final Releases releases;
    private int written;

    HandedOverLongAgo(Ledger ledger, Releases releases) {
        this.ledger = ledger;
        this.releases = releases;
    }

    /** Evenly over a time, the last one gone at its end. */
    void between(Instant from, Instant to, int vehicles) {
        Route route = releases.routes().get(0);
        Duration whole = AT_A_STAGE.multipliedBy(route.legs().size() + 2L);
        Duration step = Duration.between(from, to.minus(whole)).dividedBy(Math.max(1, vehicles));
        for (int i = 0; i < vehicles; i += AT_ONCE) {
            int first = i;
            int last = Math.min(vehicles, i + AT_ONCE);
            ledger.together(TIMEOUT_S, () -> {
                for (int one = first; one < last; one++) {
                    vehicle(route, from.plus(step.multipliedBy(one)));
                }
                return true;
            });
        }
    }

    private void vehicle(Route route, Instant ordered) {
        String number = String.format("LA-%06d", ++written);
        List<String> stages = route.legs().stream().map(Route.Leg::stage).toList();
        Instant at = ordered;
        say(
                number,
                at,
                new Ordered(
                        "operator", route.vehicleKind(), route.vehicleKind(), route.code(), stages, LocalDate.EPOCH));
        say(
                number,
                at,
                new DonorReceived(
                        String.format("LNGAG%012d", written),
                        String.format("LA%06d", written),
                        1,
                        YARD,
                        new Binding("intake", route.intakeSheet(), 1)));
        say(number, at, new DonorAccepted("0".repeat(64), YARD));
        Place before = YARD;
        for (Route.Leg leg : route.legs()) {
            var place = new Place(
                    Optional.of(leg.stage()),
                    releases.stationsOf(leg.stage()).get(0).code());
            Direction way = before.equals(YARD) ? Direction.ONTO_LINE : Direction.FORWARD;
            say(
                    number,
                    at,
                    new Moved(
                            way,
                            before,
                            place,
                            Optional.of(new Binding(leg.stage(), leg.checkSheet(), 1)),
                            List.of(),
                            Optional.empty()));
            at = at.plus(AT_A_STAGE);
            say(number, at, new SignedOff(leg.stage(), leg.checkSheet(), 1, "0".repeat(64), Optional.empty()));
            before = place;
        }
        say(number, at, new Moved(Direction.OUT, before, YARD, Optional.empty(), List.of(), Optional.empty()));
        say(number, at.plus(AT_A_STAGE), new HandedOver("driver", List.of()));
    }

    private void say(String number, Instant at, Saying saying) {
        Subject subject = Subject.workOrder(number);
        ledger.write(
                        new Told(UUID.randomUUID(), List.of(subject), saying.getClass()),
                        Cast.WORKS_ENGINEER.at(at),
                        reading -> Decision.say(subject, saying))
                .fold(entry -> entry, reasons -> {
                    throw new AssertionError(number + ": " + reasons);
                });
    }
}
