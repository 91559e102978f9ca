package wainbook.safety.stop;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wainbook.ledger.Entry;
import wainbook.ledger.Subject;
import wainbook.order.OrderSaying.HoldReleased;
import wainbook.permit.Where;
import wainbook.safety.Nameless;
import wainbook.safety.SafetySaying.StopLifted;
import wainbook.safety.SafetySaying.WorkStopped;

/**
 * A safety stop as its entries leave it.
 *
 * @param told words that were added, oldest first
 * @param lifted what let work go on: the release of its hold, or of a place its own lifting
 */
public record Stop(Entry stopped, List<Entry> told, Optional<Entry> lifted) {

    public Stop {
        told = List.copyOf(told);
    }

    static Stop of(Entry stopped) {
        return new Stop(stopped, List.of(), Optional.empty());
    }

    public WorkStopped said() {
        return (WorkStopped) stopped.saying();
    }

    public int number() {
        return said().stop();
    }

    public boolean open() {
        return lifted.isEmpty();
    }

    /** Whether it stops a vehicle; else a place, or it tells the whole works only. */
    public Optional<String> order() {
        return Optional.of(stopped.subject())
                .filter(subject -> !subject.equals(Subject.works()))
                .map(Subject::code);
    }

    public boolean nameless() {
        return stopped.moment().who().equals(Nameless.SPEAKER);
    }

    /** What was done before work went on. */
    public Optional<String> done() {
        return lifted.map(entry ->
                entry.saying() instanceof StopLifted said ? said.done() : ((HoldReleased) entry.saying()).reason());
    }

    public String path() {
        return path(stopped);
    }

    public static String path(Entry stopped) {
        return "/safety/stops/" + Where.word(stopped.subject()) + "/" + ((WorkStopped) stopped.saying()).stop();
    }

    Stop toldBy(Entry entry) {
        var more = new ArrayList<>(told);
        more.add(entry);
        return new Stop(stopped, more, lifted);
    }

    Stop liftedBy(Entry entry) {
        return new Stop(stopped, told, lifted.or(() -> Optional.of(entry)));
    }
}
