package wainbook.rehearsal;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Comparator;
import java.util.List;
import wainbook.act.Actor;
import wainbook.ledger.Subject;
import wainbook.order.OrderSaying.HoldKind;
import wainbook.order.OrderSaying.Stops;
import wainbook.order.WorkOrder.Phase;
import wainbook.order.WorkOrderRow;
import wainbook.order.hold.Holding.ToHold;
import wainbook.order.returning.Returning.ToReturn;
import wainbook.rehearsal.chance.Dice;
import wainbook.works.Role;

/**
 * The bus that was handed over longest ago is awaited back. A hold that was put on its former record when the operator telephoned
 * holds it under the new order too. Its dice are its own: nothing else falls otherwise.
 */
final class ReturnScene {

    private static final String KIND = "bus-12m";
    private static final String ROUTE = "BUS-12M-BACK";
    private static final Duration HELD_BEFORE = Duration.ofMinutes(320);
    private static final Duration ORDERED_BEFORE = Duration.ofHours(5);
    private static final int PROMISED_DAYS = 12;

    private final Playing playing;

    ReturnScene(Playing playing) {
        this.playing = playing;
    }

    void awaited() {
        playing.together(this::firstOfAll);
    }

    private void firstOfAll() {
        WorkOrderRow.inPhase(Phase.HANDED_OVER).stream()
                .filter(row -> row.vehicleKind.equals(KIND) && row.number.startsWith(playing.numbers()))
                .min(Comparator.comparing((WorkOrderRow row) -> row.since).thenComparing(row -> row.number))
                .filter(row -> playing.acts
                        .ledger
                        .history(Subject.workOrder(again(row)))
                        .isEmpty())
                .ifPresent(this::ordered);
    }

    private static String again(WorkOrderRow row) {
        return row.number + "-2";
    }

    private void held(WorkOrderRow row) {
        Dice dice = Dice.of(playing.scenario.seed(), "return-hold");
        Instant at = playing.present.minus(HELD_BEFORE);
        String engineer = playing.crew(playing.at("office")).anyone(Role.QUALITY_ENGINEER, dice);
        playing.acts
                .holding
                .hold(
                        new ToHold(
                                dice.id(),
                                row.number,
                                HoldKind.QUALITY,
                                List.of(Stops.SIGN, Stops.MOVE),
                                "Insulation warning told by telephone: nobody has found the cause yet"),
                        Actor.of(engineer, Clock.fixed(at, ZoneOffset.UTC)))
                .fold(entry -> entry, reasons -> {
                    throw new IllegalStateException("hold on " + row.number + ": " + reasons);
                });
    }

    private void ordered(WorkOrderRow row) {
        Dice dice = Dice.of(playing.scenario.seed(), "return");
        held(row);
        Instant at = playing.present.minus(ORDERED_BEFORE);
        String engineer = playing.crew(playing.at("office")).anyone(Role.WORKS_ENGINEER, dice);
        playing.acts
                .comingBack
                .order(
                        new ToReturn(
                                dice.id(),
                                again(row),
                                row.number,
                                ROUTE,
                                row.operator,
                                playing.acts.day.of(at).plusDays(PROMISED_DAYS),
                                "Insulation warning after rain, seen twice by the operator"),
                        Actor.of(engineer, Clock.fixed(at, ZoneOffset.UTC)))
                .fold(entry -> entry, reasons -> {
                    throw new IllegalStateException("return of " + row.number + ": " + reasons);
                });
    }
}
