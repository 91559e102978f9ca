package wainbook.line.page;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import wainbook.act.Reason;
import wainbook.ledger.History;
import wainbook.line.move.Move;
import wainbook.line.move.Move.ToMove;
import wainbook.line.move.MoveRules;
import wainbook.line.page.MoveChoices.Choice;
import wainbook.order.OrderSaying.Direction;
import wainbook.order.WorkOrder;
import wainbook.page.Words;
import wainbook.process.Releases;
import wainbook.process.Station;

/** Asks the rules of moving for every way there is, before a page is drawn. */
@ApplicationScoped
class MoveLook {

    /** The ways that do not exist from where the vehicle stands: not barred, just none. */
    private static final Set<String> NO_WAY =
            Set.of("line.cannotFromHere", "line.lastStage", "line.notLastStage", "line.notEarlier");

    private static final String ANY_REASON = "–";

    private final Move move;
    private final Releases releases;

    MoveLook(Move move, Releases releases) {
        this.move = move;
        this.releases = releases;
    }

    MoveChoices of(History history, WorkOrder order) {
        var choices = new ArrayList<Choice>();
        for (Direction direction : Direction.values()) {
            for (Optional<String> stage : stages(direction, order)) {
                for (Station place : places(direction, order, stage)) {
                    choice(history, order, direction, stage, place).ifPresent(choices::add);
                }
            }
        }
        return new MoveChoices(order.number(), history.number(), choices);
    }

    private Optional<Choice> choice(
            History history, WorkOrder order, Direction direction, Optional<String> stage, Station place) {
        var asked = new ToMove(
                new UUID(0, 0),
                order.number(),
                direction,
                place.code(),
                stage,
                MoveRules.CONFIRMED,
                Optional.of(ANY_REASON),
                Optional.empty());
        List<Reason> against = move.against(history, order, asked);
        if (against.stream().map(Reason::key).anyMatch(NO_WAY::contains)) {
            return Optional.empty();
        }
        String label = Words.of("line.way." + direction.name(), place.code(), place.title());
        return Optional.of(new Choice(direction, place.code(), stage, label, against));
    }

    private static List<Optional<String>> stages(Direction direction, WorkOrder order) {
        return direction == Direction.BACK
                ? order.ordered().stages().stream().map(Optional::of).toList()
                : List.of(Optional.empty());
    }

    private List<Station> places(Direction direction, WorkOrder order, Optional<String> stage) {
        List<String> stages = order.ordered().stages();
        Optional<String> leadsTo = switch (direction) {
            case ONTO_LINE -> stages.stream().findFirst();
            case FORWARD -> order.stage().flatMap(order::stageAfter);
            case BACK_ON -> order.stage();
            case BACK -> stage;
            case OFF_LINE, OUT -> Optional.empty();
        };
        boolean off = direction == Direction.OFF_LINE || direction == Direction.OUT;
        return off
                ? releases.stations().stream()
                        .filter(station -> station.stage().isEmpty())
                        .toList()
                : leadsTo.map(releases::stationsOf).orElse(List.of());
    }
}
