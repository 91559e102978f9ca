package wainbook.book.photograph;

import java.lang.reflect.RecordComponent;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import wainbook.handover.HandoverSaying.DocumentNoted;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.ledger.evidence.EvidenceFile;

/**
 * A photograph as an entry points to it.
 *
 * @param part by which the entry calls it: {@code before}, {@code after}, {@code photograph}
 */
record Pointed(Entry entry, String part, EvidenceFile file) {

    /** Pictures of a camera. A drawn signature is none. */
    private static final Set<String> TAKEN = Set.of("image/jpeg", "image/png", "image/webp");

    /** All of a record, in its order. What was noted as a document lies with the documents. */
    static Stream<Pointed> in(History history) {
        return history.entries().stream()
                .filter(entry -> !(entry.saying() instanceof DocumentNoted))
                .flatMap(Pointed::in);
    }

    /** Read from the kind itself, so that a kind which is added later is not forgotten. An entry shows the same picture once. */
    private static Stream<Pointed> in(Entry entry) {
        if (!(entry.saying() instanceof Record said)) {
            return Stream.empty();
        }
        Map<String, Pointed> byFile = new LinkedHashMap<>();
        for (RecordComponent part : said.getClass().getRecordComponents()) {
            file(said, part)
                    .filter(file -> TAKEN.contains(file.mediaType()))
                    .ifPresent(file -> byFile.putIfAbsent(file.sha256(), new Pointed(entry, part.getName(), file)));
        }
        return byFile.values().stream();
    }

    private static Optional<EvidenceFile> file(Record said, RecordComponent part) {
        try {
            Object value = part.getAccessor().invoke(said);
            return value instanceof Optional<?> perhaps ? perhaps.flatMap(Pointed::file) : file(value);
        } catch (ReflectiveOperationException hidden) {
            throw new IllegalStateException(said.getClass() + " hides " + part.getName(), hidden);
        }
    }

    private static Optional<EvidenceFile> file(Object value) {
        return value instanceof EvidenceFile file ? Optional.of(file) : Optional.empty();
    }
}
