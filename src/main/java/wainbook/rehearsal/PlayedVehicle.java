package wainbook.rehearsal;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import wainbook.ledger.Subject;
import wainbook.order.OrderSaying.Direction;
import wainbook.order.OrderSaying.DonorReceived;
import wainbook.order.OrderSaying.Returned;
import wainbook.order.WorkOrder;
import wainbook.order.WorkOrderRow;
import wainbook.process.Station;
import wainbook.rehearsal.chance.Dice;
import wainbook.rehearsal.scenario.Line;
import wainbook.rehearsal.scenario.Scenario;
import wainbook.rehearsal.time.PlayedClock;
import wainbook.rehearsal.vehicle.AtVehicle;
import wainbook.rehearsal.vehicle.AtWork;
import wainbook.rehearsal.vehicle.Legs;

/** A vehicle that stands in the works, as whoever works at it by one clock sees it. */
final class PlayedVehicle {

    private static final Duration ON_THE_WAY = Duration.ofMinutes(3);

    private final Playing playing;
    private final String number;
    private final PlayedClock clock;
    private final Scenario.Kind kind;
    private final AtVehicle at;
    private final Legs way;

    PlayedVehicle(Playing playing, String number, PlayedClock clock, Dice dice) {
        this.playing = playing;
        this.number = number;
        this.clock = clock;
        WorkOrder order = order();
        this.kind = playing.scenario.kinds().stream()
                .filter(known -> known.variant().equals(order.ordered().variant()))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("the scenario does not know what " + number + " is"));
        this.at = playing.at(number, clock, dice);
        this.way = playing.way(
                at,
                kind,
                order.donor()
                        .map(DonorReceived::vin)
                        .or(() -> order.links().from().map(Returned::vin))
                        .orElseGet(() -> kind.vinPrefix()
                                + dice.digits(17 - kind.vinPrefix().length())),
                dice);
    }

    String number() {
        return number;
    }

    private WorkOrder order() {
        return WorkOrder.of(playing.acts.ledger.history(Subject.workOrder(number)))
                .orElseThrow();
    }

    Optional<String> stage() {
        return order().stage();
    }

    /** The work of the stage at which it is. */
    AtWork work() {
        String stage = stage().orElseThrow();
        Optional<Line.Leg> leg = playing.line(kind).legs().stream()
                .filter(known -> known.stage().equals(stage))
                .findFirst();
        return new AtWork(
                at,
                way,
                stage,
                leg.map(Line.Leg::step).orElse(0),
                leg.map(known -> playing.pace(kind, known)).orElse(Legs.SURVEYING));
    }

    void received() {
        way.received();
    }

    void onto(String station) {
        way.onto(clock.instant(), station, Direction.ONTO_LINE);
    }

    /** To a free station of the next stage, or out after the last; false where all are taken. */
    boolean on() {
        clock.pass(ON_THE_WAY);
        Optional<String> next = stage().flatMap(stage -> order().stageAfter(stage));
        if (next.isEmpty()) {
            way.out();
            return true;
        }
        Instant now = clock.instant();
        Optional<String> free = playing.acts.releases.stationsOf(next.get()).stream()
                .map(Station::code)
                .filter(code -> WorkOrderRow.occupant(code).isEmpty())
                .findFirst();
        free.ifPresent(code -> way.onto(now, code, Direction.FORWARD));
        return free.isPresent();
    }
}
