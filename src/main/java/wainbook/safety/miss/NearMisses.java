package wainbook.safety.miss;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.safety.SafetySaying.NearMissClosed;
import wainbook.safety.SafetySaying.NearMissLookedAt;
import wainbook.safety.SafetySaying.NearMissReported;
import wainbook.safety.SafetySaying.NearMissTold;

/** Every near miss of the works, by number from 1. */
public record NearMisses(List<NearMiss> all) {

    public NearMisses {
        all = List.copyOf(all);
    }

    /** @param works the stream of the works */
    public static NearMisses of(History works) {
        return works.folded(NearMisses.class, new NearMisses(List.of()), NearMisses::and);
    }

    public Optional<NearMiss> number(int number) {
        return number < 1 || number > all.size() ? Optional.empty() : Optional.of(all.get(number - 1));
    }

    public int next() {
        return all.size() + 1;
    }

    public List<NearMiss> open() {
        return all.stream().filter(NearMiss::open).toList();
    }

    private NearMisses and(Entry entry) {
        if (entry.saying() instanceof NearMissReported) {
            var more = new ArrayList<>(all);
            more.add(NearMiss.of(entry));
            return new NearMisses(more);
        } else if (entry.saying() instanceof NearMissTold said) {
            return changed(said.nearMiss(), known -> known.toldBy(entry));
        } else if (entry.saying() instanceof NearMissLookedAt said) {
            return changed(said.nearMiss(), known -> known.lookedAtBy(entry));
        } else if (entry.saying() instanceof NearMissClosed said) {
            return changed(said.nearMiss(), known -> known.closedBy(entry));
        }
        return this;
    }

    private NearMisses changed(int number, UnaryOperator<NearMiss> change) {
        return new NearMisses(all.stream()
                .map(known -> known.number() == number ? change.apply(known) : known)
                .toList());
    }
}
