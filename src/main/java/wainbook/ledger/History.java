package wainbook.ledger;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;

/** A stream as read up to some number: what rules are judged by. Immutable. */
public record History(Subject subject, List<Entry> entries) {

    public History {
        entries = List.copyOf(entries);
    }

    public static History empty(Subject subject) {
        return new History(subject, List.of());
    }

    /** The number of its last entry; 0 when nothing was said yet. */
    public long number() {
        return entries.isEmpty() ? 0 : entries.get(entries.size() - 1).number();
    }

    public boolean isEmpty() {
        return entries.isEmpty();
    }

    public Optional<Entry> entry(UUID id) {
        return entries.stream().filter(entry -> entry.id().equals(id)).findFirst();
    }

    /** The entries that say something of the given kind or family of kinds, oldest first. */
    public Stream<Entry> saying(Class<? extends Saying> type) {
        return entries.stream().filter(entry -> type.isInstance(entry.saying()));
    }

    /** What was said last of the given kind. */
    public <S extends Saying> Optional<S> last(Class<S> type) {
        for (int i = entries.size() - 1; i >= 0; i--) {
            if (type.isInstance(entries.get(i).saying())) {
                return Optional.of(type.cast(entries.get(i).saying()));
            }
        }
        return Optional.empty();
    }

    public History and(Entry next) {
        if (next.number() != number() + 1) {
            throw new IllegalArgumentException("entry " + next.number() + " does not follow " + number());
        }
        var longer = new ArrayList<>(entries);
        longer.add(next);
        return new History(subject, longer);
    }
}
