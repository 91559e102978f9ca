package wainbook.pack;

import java.util.Set;
import java.util.TreeSet;
import wainbook.ledger.History;
import wainbook.pack.PackSaying.PartKept;
import wainbook.pack.PackSaying.PartLetGo;

/** The parts that are packs in this works: only what was received here is fitted as one of them. */
public record KeptParts(Set<String> parts) {

    public KeptParts {
        parts = Set.copyOf(parts);
    }

    /** @param works the works' stream */
    public static KeptParts of(History works) {
        return works.folded(KeptParts.class, new KeptParts(Set.of()), (kept, entry) -> {
            if (entry.saying() instanceof PartKept said) {
                return kept.with(said.part(), true);
            }
            return entry.saying() instanceof PartLetGo said ? kept.with(said.part(), false) : kept;
        });
    }

    public boolean has(String part) {
        return parts.contains(part);
    }

    private KeptParts with(String part, boolean kept) {
        var next = new TreeSet<>(parts);
        if (kept) {
            next.add(part);
        } else {
            next.remove(part);
        }
        return new KeptParts(next);
    }
}
