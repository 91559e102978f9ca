package wainbook.line.move;

import java.util.Optional;
import wainbook.line.move.Move.ToMove;
import wainbook.order.OrderSaying.Place;
import wainbook.order.WorkOrder;

/** Which stage a vehicle is at after a move. Off the line it keeps the stage it left, and can go back on there. */
final class Destination {

    private Destination() {}

    static Optional<String> stage(WorkOrder order, ToMove asked) {
        Optional<String> now = order.at().flatMap(Place::stage);
        return switch (asked.direction()) {
            case ONTO_LINE -> order.ordered().stages().stream().findFirst();
            case FORWARD -> now.flatMap(order::stageAfter);
            case OFF_LINE, BACK_ON -> now;
            case BACK -> asked.backTo();
            case OUT -> Optional.empty();
        };
    }
}
