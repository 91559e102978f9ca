package wainbook.process.draft;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import wainbook.page.Words;

/** What one version of a paper changes against another, part by part and field by field. */
public record SideBySide(List<PartChange> changes) {

    /** What became of a part. */
    public enum Fate {
        ADDED,
        REMOVED,
        CHANGED,
        MOVED;

        public String word() {
            return Words.of("process.fate." + this);
        }
    }

    /** One part that is not as it was. */
    public record PartChange(Fate fate, Part part, List<FieldChange> fields) {}

    /** One field of it; absent on the side where it says nothing. */
    public record FieldChange(String name, Optional<String> former, Optional<String> next) {
        public String label() {
            return Part.Line.label(name);
        }
    }

    public SideBySide {
        changes = List.copyOf(changes);
    }

    /** In the order of the next version; what is gone comes last. */
    public static SideBySide between(List<Part> former, List<Part> next) {
        var changes = new ArrayList<PartChange>();
        for (Part part : next) {
            Optional<Part> before = find(former, part);
            if (before.isEmpty()) {
                changes.add(new PartChange(Fate.ADDED, part, fields(Optional.empty(), Optional.of(part))));
            } else {
                List<FieldChange> fields = fields(before, Optional.of(part));
                if (!fields.isEmpty()) {
                    changes.add(new PartChange(Fate.CHANGED, part, fields));
                } else if (moved(former, next, part)) {
                    changes.add(new PartChange(Fate.MOVED, part, List.of()));
                }
            }
        }
        former.stream()
                .filter(part -> find(next, part).isEmpty())
                .forEach(part ->
                        changes.add(new PartChange(Fate.REMOVED, part, fields(Optional.of(part), Optional.empty()))));
        return new SideBySide(changes);
    }

    public static SideBySide between(Drafted former, Drafted next) {
        return between(former.parts(), next.parts());
    }

    public boolean nothing() {
        return changes.isEmpty();
    }

    private static Optional<Part> find(List<Part> parts, Part wanted) {
        return parts.stream()
                .filter(part -> part.anchor().equals(wanted.anchor()))
                .findFirst();
    }

    private static List<FieldChange> fields(Optional<Part> former, Optional<Part> next) {
        var names = new LinkedHashSet<String>();
        next.ifPresent(part -> part.lines().forEach(line -> names.add(line.name())));
        former.ifPresent(part -> part.lines().forEach(line -> names.add(line.name())));
        return names.stream()
                .map(name -> new FieldChange(name, value(former, name), value(next, name)))
                .filter(change -> !change.former().equals(change.next()))
                .toList();
    }

    private static Optional<String> value(Optional<Part> part, String name) {
        return part.flatMap(there -> there.line(name)).map(Part.Line::value);
    }

    /** Whether it comes after another part than before, of those that both versions have. */
    private static boolean moved(List<Part> former, List<Part> next, Part part) {
        return !predecessor(former, next, part).equals(predecessor(next, former, part));
    }

    private static Optional<String> predecessor(List<Part> in, List<Part> both, Part part) {
        List<String> shared = in.stream()
                .filter(one -> find(both, one).isPresent())
                .map(Part::anchor)
                .toList();
        int at = shared.indexOf(part.anchor());
        return at > 0 ? Optional.of(shared.get(at - 1)) : Optional.empty();
    }
}
