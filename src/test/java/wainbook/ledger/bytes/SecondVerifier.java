package wainbook.ledger.bytes;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.Instant;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.UUID;
import java.util.stream.Collectors;

/**
 * Verifies a ledger a second time, written from {@code docs/formats/ledger.md} alone: slow, plain, and without a line of
 * the program's own code, so that a fault in one is not a fault in both.
 */
final class SecondVerifier {

    /** Where something is not as written, in the words of the first verifier, and what. */
    record Found(String where, String what) {}

    private static final Set<String> ALWAYS =
            Set.of("format", "id", "stream", "subject", "number", "kind", "who", "at", "previous", "body");
    private static final Set<String> SOMETIMES = Set.of("deviceAt", "station");
    private static final Set<String> SORTS =
            Set.of("works", "person", "instrument", "check-sheet", "unit", "work-order");

    private final List<Found> found = new ArrayList<>();
    private final Map<String, Set<String>> pointedTo = new TreeMap<>();

    private SecondVerifier() {}

    static List<Found> verify(StoredLedger ledger) {
        var verifier = new SecondVerifier();
        ledger.stream().forEach(stream -> verifier.stream(stream, ledger));
        verifier.strays(ledger);
        verifier.files(ledger);
        return verifier.found;
    }

    private void stream(StoredLedger.Stream stream, StoredLedger ledger) {
        List<StoredLedger.Row> rows = ledger.entry().stream()
                .filter(row -> row.stream().equals(stream.id()))
                .sorted(Comparator.comparing(StoredLedger.Row::number))
                .toList();
        String previous = "0".repeat(64);
        String at = "";
        for (int i = 0; i < rows.size(); i++) {
            String where = stream.subject() + " entry " + (i + 1);
            StoredLedger.Row row = rows.get(i);
            must(sha256(row.said().getBytes(StandardCharsets.UTF_8)).equals(row.hash()), where, "hash");
            try {
                JsonNode said = said(row.said());
                must(text(said, "id").equals(row.id()), where, "id");
                must(text(said, "stream").equals(row.stream()), where, "stream");
                must(text(said, "subject").equals(stream.subject()), where, "subject");
                must(text(said, "kind").equals(row.kind()), where, "kind");
                must(text(said, "number").equals("" + (i + 1)) && row.number() == i + 1, where, "number");
                must(text(said, "previous").equals(previous), where, "previous");
                must(time(text(said, "at")).compareTo(at) >= 0, where, "earlier than the entry before");
                at = text(said, "at");
                pointers(said.get("body"));
            } catch (IllegalArgumentException | JsonProcessingException unreadable) {
                found.add(new Found(where, "cannot be read: " + unreadable.getMessage()));
            }
            previous = row.hash();
        }
        must(!rows.isEmpty(), stream.subject(), "no entries");
        must(stream.lastNumber() == rows.size(), stream.subject(), "last number");
        must(stream.lastHash().equals(previous), stream.subject(), "last hash");
        must(stream.lastAt().equals(at), stream.subject(), "last time");
        must(idOf(stream.subject()).equals(stream.id()), stream.subject(), "id of the stream");
    }

    private void strays(StoredLedger ledger) {
        Set<String> streams =
                ledger.stream().stream().map(StoredLedger.Stream::id).collect(Collectors.toSet());
        ledger.entry().forEach(row -> must(streams.contains(row.stream()), "entry " + row.id(), "no stream"));
    }

    private void files(StoredLedger ledger) {
        Set<String> missing = new TreeSet<>(pointedTo.keySet());
        for (StoredLedger.File file : ledger.evidence()) {
            String where = "file " + file.sha256();
            missing.remove(file.sha256());
            must(sha256(file.bytes()).equals(file.sha256()), where, "fingerprint");
            must(file.bytes().length == file.sizeBytes(), where, "size");
            String as = file.mediaType() + " " + file.sizeBytes();
            must(pointedTo.getOrDefault(file.sha256(), Set.of(as)).equals(Set.of(as)), where, "type or size");
        }
        missing.forEach(sha256 -> found.add(new Found("file " + sha256, "missing")));
    }

    private void pointers(JsonNode node) {
        if (node.has("sha256")) {
            pointedTo
                    .computeIfAbsent(text(node, "sha256"), none -> new HashSet<>())
                    .add(text(node, "mediaType") + " " + text(node, "sizeBytes"));
        }
        node.forEach(this::pointers);
    }

    private static JsonNode said(String written) throws JsonProcessingException {
        JsonNode said = new ObjectMapper().readTree(written);
        if (!canonical(said).equals(written)) {
            throw new IllegalArgumentException("not canonical");
        }
        Set<String> names = new HashSet<>();
        said.fieldNames().forEachRemaining(names::add);
        if (!names.containsAll(ALWAYS)) {
            throw new IllegalArgumentException("fields missing");
        }
        if (!text(said, "format").equals("wainbook.entry/1")) {
            throw new IllegalArgumentException("another format");
        }
        names.removeAll(ALWAYS);
        names.removeAll(SOMETIMES);
        if (!names.isEmpty()) {
            throw new IllegalArgumentException("unknown fields " + names);
        }
        return said;
    }

    private static String text(JsonNode node, String name) {
        if (!node.has(name) || !node.get(name).isTextual()) {
            throw new IllegalArgumentException(name + " is not text");
        }
        return node.get(name).textValue();
    }

    private static String time(String written) {
        try {
            Instant.parse(written);
        } catch (DateTimeParseException noTime) {
            throw new IllegalArgumentException("no time: " + written, noTime);
        }
        if (!written.matches("\\d{4}-\\d\\d-\\d\\dT\\d\\d:\\d\\d:\\d\\d\\.\\d{6}Z")) {
            throw new IllegalArgumentException("not a time with six decimals in UTC: " + written);
        }
        return written;
    }

    private static String idOf(String subject) {
        boolean known = SORTS.contains(subject.replaceAll("/.*", ""))
                && subject.matches("[a-z-]+/[A-Za-z0-9][A-Za-z0-9._-]{0,79}");
        return known
                ? UUID.nameUUIDFromBytes(subject.getBytes(StandardCharsets.UTF_8))
                        .toString()
                : "none";
    }

    /** RFC 8785 for what the ledger uses of JSON: objects, lists, text, whole numbers, true and false. */
    static String canonical(JsonNode node) {
        if (node instanceof ObjectNode object) {
            var sorted = new TreeMap<String, String>();
            object.properties().forEach(field -> sorted.put(field.getKey(), canonical(field.getValue())));
            return sorted.entrySet().stream()
                    .map(field -> quoted(field.getKey()) + ":" + field.getValue())
                    .collect(Collectors.joining(",", "{", "}"));
        }
        if (node.isArray()) {
            var items = new ArrayList<String>();
            node.forEach(item -> items.add(canonical(item)));
            return "[" + String.join(",", items) + "]";
        }
        if (node.isTextual()) {
            return quoted(node.textValue());
        }
        if (node.isInt() || node.isBoolean()) {
            return node.asText();
        }
        throw new IllegalArgumentException("not used in the ledger: " + node);
    }

    private static String quoted(String text) {
        var out = new StringBuilder("\"");
        for (int i = 0; i < text.length(); i++) {
            char unit = text.charAt(i);
            int named = "\"\\\b\f\n\r\t".indexOf(unit);
            if (named >= 0) {
                out.append('\\').append("\"\\bfnrt".charAt(named));
            } else if (unit < 0x20) {
                out.append(String.format("\\u%04x", (int) unit));
            } else {
                out.append(unit);
            }
        }
        return out.append('"').toString();
    }

    static String sha256(byte[] bytes) {
        try {
            var hex = new StringBuilder();
            for (byte b : MessageDigest.getInstance("SHA-256").digest(bytes)) {
                hex.append(String.format("%02x", b));
            }
            return hex.toString();
        } catch (NoSuchAlgorithmException everyJavaHasIt) {
            throw new IllegalStateException(everyJavaHasIt);
        }
    }

    private void must(boolean holds, String where, String what) {
        if (!holds) {
            found.add(new Found(where, what));
        }
    }
}
