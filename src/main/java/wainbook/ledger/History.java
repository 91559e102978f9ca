package wainbook.ledger;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.BiFunction;
import java.util.stream.Stream;

/** A stream as read up to some number: what rules are judged by. Immutable. */
public final class History {

    /** What came of the first so many entries. */
    private record Folded(int entries, Object value) {}

    private final Subject subject;
    private final List<Entry> entries;
    private final Map<Class<?>, Folded> folds;

    private History(Subject subject, List<Entry> entries, Map<Class<?>, Folded> folds) {
        this.subject = subject;
        this.entries = List.copyOf(entries);
        this.folds = new ConcurrentHashMap<>(folds);
    }

    public History(Subject subject, List<Entry> entries) {
        this(subject, entries, Map.of());
    }

    public static History empty(Subject subject) {
        return new History(subject, List.of());
    }

    public Subject subject() {
        return subject;
    }

    public List<Entry> entries() {
        return entries;
    }

    /** The number of its last entry; 0 when nothing was said yet. */
    public long number() {
        return entries.isEmpty() ? 0 : entries.get(entries.size() - 1).number();
    }

    public boolean endsWith(String hash) {
        return !entries.isEmpty() && entries.get(entries.size() - 1).hash().equals(hash);
    }

    /** The stream as it stood at an instant. */
    public History upTo(Instant at) {
        return new History(
                subject,
                entries.stream()
                        .filter(entry -> !entry.moment().at().isAfter(at))
                        .toList());
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

    /**
     * What comes of all entries taken one after another. It is kept, and a longer history goes on from there: a vehicle's
     * whole way is not taken again with every entry.
     *
     * @param by whose fold it is; one class has one
     * @param step yields a value that nobody changes, and looks at nothing but what it is given
     */
    @SuppressWarnings("unchecked")
    public <T> T folded(Class<?> by, T none, BiFunction<? super T, ? super Entry, ? extends T> step) {
        Folded known = folds.getOrDefault(by, new Folded(0, none));
        T value = (T) known.value();
        for (Entry entry : entries.subList(known.entries(), entries.size())) {
            value = step.apply(value, entry);
        }
        folds.put(by, new Folded(entries.size(), value));
        return value;
    }

    public History and(Entry next) {
        if (next.number() != number() + 1) {
            throw new IllegalArgumentException("entry " + next.number() + " does not follow " + number());
        }
        return and(List.of(next));
    }

    public History and(List<Entry> next) {
        var longer = new ArrayList<>(entries);
        longer.addAll(next);
        return new History(subject, longer, folds);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof History history && subject.equals(history.subject) && entries.equals(history.entries);
    }

    @Override
    public int hashCode() {
        return subject.hashCode() * 31 + entries.hashCode();
    }

    @Override
    public String toString() {
        return subject + " up to " + number();
    }
}
