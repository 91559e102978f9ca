package wainbook.setup.files;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** What the files of a works say against what it has on record: every difference, in the order of the parts. */
public record Differences(List<Change> changes) {

    public Differences {
        changes = List.copyOf(changes);
    }

    /**
     * Compares.
     *
     * @param ended what the works itself has ended, as it stood last
     */
    public static Differences between(WorksFiles onRecord, WorksFiles ended, WorksFiles wanted) {
        List<Change> changes = new ArrayList<>();
        for (Part part : Part.values()) {
            Map<String, ObjectNode> known = byKey(part, onRecord);
            Map<String, ObjectNode> over = byKey(part, ended);
            Map<String, ObjectNode> asked = byKey(part, wanted);
            asked.forEach((key, node) -> change(part, key, Optional.ofNullable(known.get(key)), over, node)
                    .ifPresent(changes::add));
            known.keySet().stream()
                    .filter(key -> !asked.containsKey(key))
                    .forEach(key -> changes.add(new Change(part, key, Change.Sort.STAYS, List.of())));
        }
        return new Differences(changes);
    }

    private static Optional<Change> change(
            Part part, String key, Optional<ObjectNode> known, Map<String, ObjectNode> over, ObjectNode asked) {
        if (known.isPresent()) {
            List<Change.Field> fields = Fields.between(known.get(), asked);
            return fields.isEmpty()
                    ? Optional.empty()
                    : Optional.of(new Change(part, key, Change.Sort.CHANGED, fields));
        }
        ObjectNode last = over.get(key);
        // A competence may be given anew after it was withdrawn; a person who left and a retired lock do not come back.
        boolean ended = last != null && (part != Part.COMPETENCES || last.equals(asked));
        return Optional.of(new Change(part, key, ended ? Change.Sort.ENDED : Change.Sort.ADDED, List.of()));
    }

    private static Map<String, ObjectNode> byKey(Part part, WorksFiles files) {
        var lines = new LinkedHashMap<String, ObjectNode>();
        if (part != Part.WORKS || !files.works().title().isEmpty()) {
            part.nodes(files).forEach(node -> lines.put(part.key(node), node));
        }
        return lines;
    }

    /** What taking the files would write. */
    public List<Change> written() {
        return changes.stream().filter(Change::writes).toList();
    }

    public Stream<Change> written(Part part) {
        return changes.stream().filter(change -> change.part() == part && change.writes());
    }

    public Optional<Change> written(Part part, String key) {
        return written(part).filter(change -> change.key().equals(key)).findFirst();
    }

    public boolean nothing() {
        return written().isEmpty();
    }

    public boolean touchTheProcess() {
        return written().stream().anyMatch(change -> change.part().ofTheProcess());
    }

    /** The same for the same changes: what somebody looked at before they confirmed it. */
    public String fingerprint() {
        try {
            byte[] text = written().toString().getBytes(StandardCharsets.UTF_8);
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(text));
        } catch (NoSuchAlgorithmException everyJavaHasIt) {
            throw new IllegalStateException(everyJavaHasIt);
        }
    }
}
