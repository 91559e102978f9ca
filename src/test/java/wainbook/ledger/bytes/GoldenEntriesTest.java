package wainbook.ledger.bytes;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import wainbook.act.Moment;
import wainbook.ledger.Kinds;
import wainbook.ledger.Saying;
import wainbook.ledger.Subject;
import wainbook.ledger.Superseded;

/**
 * One entry of every kind and version ever released, kept as it was written then. Each file has the hashed text and its
 * hash. New kinds get theirs by {@code mvn test -Dtest=GoldenEntriesTest -Dgolden.add=true}; files that are there are
 * never written again, since a works has such entries in its record.
 */
@QuarkusTest
@Tag("database")
class GoldenEntriesTest {

    static final String OVERRIDES = "src/test/resources/golden/samples.properties";
    private static final Path FOLDER = Path.of("src/test/resources/golden/entries");
    private static final String HOW =
            "Run: mvn test -Dtest=GoldenEntriesTest -Dgolden.add=true, look at what was made, and commit it.";

    @Inject
    Kinds kinds;

    @Test
    void every_kind_has_a_golden_entry_and_every_golden_entry_a_kind() throws IOException {
        if (Boolean.getBoolean("golden.add")) {
            addMissing();
        }
        assertThat(golden().keySet())
                .as("A kind without a file: " + HOW + " A file without a kind: a released kind is never removed.")
                .containsExactlyInAnyOrderElementsOf(
                        kinds.names().stream().map(GoldenEntriesTest::fileName).toList());
    }

    @Test
    void every_golden_entry_reads_and_writes_back_to_the_same_bytes() throws IOException {
        for (Map.Entry<String, List<String>> golden : golden().entrySet()) {
            String text = golden.getValue().get(0);
            String hash = golden.getValue().get(1);
            assertThat(Said.hash(text)).as(golden.getKey()).isEqualTo(hash);
            Said said = Said.parse(text);
            assertThat(fileName(said.kind())).isEqualTo(golden.getKey());
            assertThat(said.text()).as(golden.getKey()).isEqualTo(text);
            // Reads the body as its own version, compares it written again, and follows it to the newest.
            assertThat(said.entry(hash, kinds).saying()).as(golden.getKey()).isNotInstanceOf(Superseded.class);
        }
    }

    private void addMissing() throws IOException {
        Files.createDirectories(FOLDER);
        Map<String, String> overrides = overrides();
        List<String> refused = new ArrayList<>();
        for (String kind : kinds.names()) {
            Path file = FOLDER.resolve(fileName(kind));
            if (Files.notExists(file)) {
                try {
                    Saying sample = Samples.of(kinds.type(kind).orElseThrow(), overrides);
                    String text = entry(sample).text();
                    Files.writeString(file, text + "\n" + Said.hash(text) + "\n");
                } catch (IllegalArgumentException noSample) {
                    refused.add(kind + ": " + noSample.getMessage());
                }
            }
        }
        assertThat(refused).isEmpty();
    }

    private static Said entry(Saying sample) {
        var moment = new Moment(
                "1001",
                Instant.parse("2026-03-02T06:00:00Z"),
                Optional.of(Instant.parse("2026-03-02T05:59:58.25Z")),
                Optional.of("S03"));
        return Said.of(new UUID(0x4000, Long.MIN_VALUE), Subject.workOrder("WB-0142"), 1, Said.NOTHING, moment, sample);
    }

    private static Map<String, List<String>> golden() throws IOException {
        try (var files = Files.list(FOLDER)) {
            return files.collect(Collectors.toMap(file -> file.getFileName().toString(), GoldenEntriesTest::lines));
        }
    }

    private static List<String> lines(Path file) {
        try {
            List<String> lines = Files.readAllLines(file);
            assertThat(lines).as(file.toString()).hasSize(2);
            return lines;
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private static Map<String, String> overrides() throws IOException {
        var read = new Properties();
        try (Reader reader = Files.newBufferedReader(Path.of(OVERRIDES))) {
            read.load(reader);
        }
        return read.stringPropertyNames().stream().collect(Collectors.toMap(Function.identity(), read::getProperty));
    }

    private static String fileName(String kind) {
        return kind.replace('/', '-') + ".txt";
    }
}
