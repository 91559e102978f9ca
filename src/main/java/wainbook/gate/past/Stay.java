package wainbook.gate.past;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import wainbook.order.WorkOrder.Phase;
import wainbook.station.help.HelpCall;

/**
 * A vehicle at one place, from when it was put there until it was moved on.
 *
 * @param stage it is at, or in a bay goes back to; none in the yard
 * @param phase of the order meanwhile: on the line, in a bay, in the yard
 * @param left empty while it is there
 * @param workDone the last result before the gate was first answered here; empty where it was not
 * @param answers of the stage's gate while it was here, in their order
 * @param holds in force at some time while it was here, in the order in which they were put on
 * @param standstills calls for help from here for which work stood still
 */
public record Stay(
        String order,
        String kind,
        Optional<String> stage,
        String place,
        Phase phase,
        Instant arrived,
        Optional<Instant> left,
        Optional<Instant> workDone,
        List<Answer> answers,
        List<HoldSpell> holds,
        List<HelpCall> standstills) {

    public Stay {
        answers = List.copyOf(answers);
        holds = List.copyOf(holds);
        standstills = List.copyOf(standstills);
    }

    public boolean onLine() {
        return phase == Phase.ON_LINE;
    }

    public boolean inBay() {
        return phase == Phase.OFF_LINE;
    }

    /** Whether it was here at some time of a period; a stay holds its beginning and not its end. */
    public boolean within(Instant from, Instant to) {
        return arrived.isBefore(to) && left.map(from::isBefore).orElse(true);
    }
}
