package wainbook.ledger.bytes;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import jakarta.inject.Inject;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.List;
import javax.sql.DataSource;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import wainbook.ledger.OwnLedger;
import wainbook.ledger.verification.Finding;
import wainbook.ledger.verification.Verify;

/** Both verifiers against the published forgeries, and against what is sound. */
@QuarkusTest
@TestProfile(OwnLedger.class)
class ForgeriesTest {

    /**
     * One file of the folder.
     *
     * @param wrong what was done, in words; empty where nothing is wrong
     * @param where the places that a verifier must name at least
     */
    record Forgery(String name, String wrong, List<String> where, StoredLedger ledger) {}

    @Inject
    Verify verify;

    @Inject
    DataSource database;

    static List<Path> forgeries() throws IOException {
        try (var files = Files.list(Path.of("src/test/resources/forgeries"))) {
            List<Path> found = files.filter(file -> file.toString().endsWith(".json"))
                    .sorted()
                    .toList();
            assertThat(found).hasSizeGreaterThan(20);
            return found;
        }
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("forgeries")
    void both_verifiers_find_what_is_wrong_and_where(Path file) throws IOException, SQLException {
        Forgery forgery = new ObjectMapper().readValue(file.toFile(), Forgery.class);
        assertThat(file.getFileName()).hasToString(forgery.name() + ".json");
        assertThat(forgery.where().isEmpty()).isEqualTo(forgery.wrong().isEmpty());

        StoredLedger before = StoredLedger.in(database);
        forgery.ledger().store(database);
        try {
            List<Finding> first = verify.everything().findings();
            List<SecondVerifier.Found> second = SecondVerifier.verify(StoredLedger.in(database));
            assertThat(first.stream().map(Finding::where).distinct().sorted().toList())
                    .containsAll(forgery.where())
                    .isEqualTo(second.stream()
                            .map(SecondVerifier.Found::where)
                            .distinct()
                            .sorted()
                            .toList());
            assertThat(first.isEmpty()).isEqualTo(forgery.wrong().isEmpty());
        } finally {
            before.store(database);
        }
    }
}
