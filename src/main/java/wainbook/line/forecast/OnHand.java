package wainbook.line.forecast;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A vehicle that is still to be finished, as the record has it.
 *
 * @param stage it is at, or goes back to from a bay
 * @param minutes of working time in what it is doing
 * @param plannedMinutes of the check sheet at each stage that it passes
 */
public record OnHand(
        String order,
        String kind,
        Doing doing,
        Optional<String> stage,
        Optional<String> place,
        double minutes,
        Map<String, Integer> plannedMinutes,
        List<OpenHold> holds,
        LocalDate promisedOn) {

    /** How far it is, the furthest first. */
    public enum Doing {
        SIGNED,
        UNSIGNED,
        WORK,
        BAY,
        ACCEPTED,
        SURVEY,
        ORDERED;

        boolean onLine() {
            return this == SIGNED || this == UNSIGNED || this == WORK;
        }

        boolean inFront() {
            return this == ACCEPTED || this == SURVEY || this == ORDERED;
        }
    }

    /** @param openMinutes working minutes since it was put on */
    public record OpenHold(boolean stopsWork, double openMinutes) {}

    public OnHand {
        plannedMinutes = Map.copyOf(plannedMinutes);
        holds = List.copyOf(holds);
    }

    /** Whether an open hold is on it. */
    public boolean held() {
        return !holds.isEmpty();
    }
}
