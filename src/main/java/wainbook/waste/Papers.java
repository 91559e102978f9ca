package wainbook.waste;

import java.util.List;
import java.util.stream.Stream;
import wainbook.page.Words;

/**
 * How a vehicle's hazardous waste, or its other waste, stands: the duty of the vehicle is met once it lies in a container of its own
 * code; the note follows.
 *
 * @param unplaced things that lie in no container yet
 * @param containers labels of those that have not left
 * @param notes codes of the notes under which it left
 */
public record Papers(int unplaced, List<String> containers, List<String> notes) {

    static Papers of(List<Thing> waste, List<Container> holding) {
        return new Papers(
                (int) waste.stream()
                        .filter(thing -> thing.container().isEmpty())
                        .count(),
                holding.stream()
                        .filter(one -> one.collectedBy().isEmpty())
                        .map(Container::label)
                        .toList(),
                holding.stream()
                        .flatMap(one -> one.collected().stream())
                        .map(said -> said.note().code())
                        .toList());
    }

    /** Whether all of it lies where it may lie. */
    public boolean placed() {
        return unplaced == 0;
    }

    /** Whether all of it left under a note. */
    public boolean left() {
        return placed() && containers.isEmpty() && !notes.isEmpty();
    }

    /** The numbers by which it can be found. */
    public String reference() {
        return String.join(
                ", ", Stream.concat(notes.stream(), containers.stream()).toList());
    }

    public String sentence() {
        if (unplaced > 0) {
            return Words.of("waste.forUnplaced", unplaced);
        } else if (containers.isEmpty()) {
            return Words.of("waste.forNotes", String.join(", ", notes));
        }
        return notes.isEmpty()
                ? Words.of("waste.forContainers", String.join(", ", containers))
                : Words.of("waste.forMixed", String.join(", ", notes), String.join(", ", containers));
    }
}
