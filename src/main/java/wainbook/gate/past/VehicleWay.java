package wainbook.gate.past;

import java.time.Instant;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import wainbook.ledger.History;
import wainbook.order.OrderSaying.Ordered;
import wainbook.order.WorkOrder.Phase;
import wainbook.station.help.HelpCall;

/**
 * One vehicle's way through the works, read from its record in one go.
 *
 * @param ordered kind, route and promised day
 * @param cameBack whether it was made before, and came back
 * @param stays one after another, on the line and off it, from its receipt on
 * @param answers of all gates, in the order of the record
 * @param holds in the order in which they were put on
 * @param calls for help, oldest first
 */
public record VehicleWay(
        String order,
        Ordered ordered,
        boolean cameBack,
        List<Stay> stays,
        List<Answer> answers,
        List<HoldSpell> holds,
        List<HelpCall> calls) {

    public VehicleWay {
        stays = List.copyOf(stays);
        answers = List.copyOf(answers);
        holds = List.copyOf(holds);
        calls = List.copyOf(calls);
    }

    /** Empty where nothing was ordered under this number. */
    public static Optional<VehicleWay> of(History history) {
        return new WayReading(history).read();
    }

    public String kind() {
        return ordered.vehicleKind();
    }

    /** The stage after this one on its route; empty after the last. */
    public Optional<String> stageAfter(String stage) {
        int index = ordered.stages().indexOf(stage);
        return index >= 0 && index + 1 < ordered.stages().size()
                ? Optional.of(ordered.stages().get(index + 1))
                : Optional.empty();
    }

    public Stream<Stay> onLine() {
        return stays.stream().filter(Stay::onLine);
    }

    public Stream<Stay> inBay() {
        return stays.stream().filter(Stay::inBay);
    }

    /** When it came to a stage first by being moved there. */
    public Optional<Instant> cameTo(String stage) {
        return Stream.concat(onLine(), inBay())
                .filter(stay -> stay.stage().equals(Optional.of(stage)))
                .map(Stay::arrived)
                .min(Instant::compareTo);
    }

    /** Of each stage that was signed off, the first time, in the order of the record. */
    public Stream<Answer> firstSignatures() {
        Set<String> known = new HashSet<>();
        return answers.stream().filter(answer -> answer.signed() && known.add(answer.stage()));
    }

    /** When it came onto the line. */
    public Optional<Instant> began() {
        return onLine().map(Stay::arrived).findFirst();
    }

    /** When it left the line as finished, and has not come back. */
    public Optional<Instant> finished() {
        return stays.stream()
                .filter(stay -> stay.phase() == Phase.FINISHED)
                .reduce((former, latter) -> latter)
                .filter(stay -> onLine().noneMatch(other -> other.arrived().isAfter(stay.arrived())))
                .map(Stay::arrived);
    }
}
