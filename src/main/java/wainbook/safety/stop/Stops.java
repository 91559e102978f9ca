package wainbook.safety.stop;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.order.OrderSaying.HoldReleased;
import wainbook.safety.SafetySaying.StopLifted;
import wainbook.safety.SafetySaying.StopTold;
import wainbook.safety.SafetySaying.WorkStopped;

/** Every safety stop of a vehicle, or of the works' places, by number from 1. */
public record Stops(List<Stop> all) {

    public Stops {
        all = List.copyOf(all);
    }

    public static Stops of(History stream) {
        return stream.folded(Stops.class, new Stops(List.of()), Stops::and);
    }

    public Optional<Stop> number(int number) {
        return number < 1 || number > all.size() ? Optional.empty() : Optional.of(all.get(number - 1));
    }

    int next() {
        return all.size() + 1;
    }

    public List<Stop> open() {
        return all.stream().filter(Stop::open).toList();
    }

    /** Those of the works that stop work at a station. */
    public List<Stop> at(String station) {
        return open().stream()
                .filter(stop -> stop.said().station().equals(Optional.of(station)))
                .toList();
    }

    private Stops and(Entry entry) {
        if (entry.saying() instanceof WorkStopped) {
            var more = new ArrayList<>(all);
            more.add(Stop.of(entry));
            return new Stops(more);
        } else if (entry.saying() instanceof StopTold said) {
            return changed(known -> known.number() == said.stop(), known -> known.toldBy(entry));
        } else if (entry.saying() instanceof StopLifted said) {
            return changed(known -> known.number() == said.stop(), known -> known.liftedBy(entry));
        } else if (entry.saying() instanceof HoldReleased said && !all.isEmpty()) {
            return changed(
                    known -> known.said().hold().equals(Optional.of(said.hold())), known -> known.liftedBy(entry));
        }
        return this;
    }

    private Stops changed(Predicate<Stop> which, UnaryOperator<Stop> change) {
        return new Stops(all.stream()
                .map(known -> which.test(known) ? change.apply(known) : known)
                .toList());
    }
}
