package wainbook.ledger.bytes;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import jakarta.inject.Inject;
import java.sql.SQLException;
import java.util.List;
import java.util.Random;
import javax.sql.DataSource;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wainbook.ledger.Ledger;
import wainbook.ledger.OwnLedger;
import wainbook.ledger.bytes.StoredLedger.Row;
import wainbook.ledger.bytes.StoredLedger.Stream;
import wainbook.ledger.evidence.EvidenceFiles;
import wainbook.ledger.verification.VerificationReport;
import wainbook.ledger.verification.Verify;

@QuarkusTest
@TestProfile(OwnLedger.class)
class VerifyFindsEveryChangeTest {

    private static final int CHANGES = 100;

    @Inject
    Ledger ledger;

    @Inject
    EvidenceFiles files;

    @Inject
    Verify verify;

    @Inject
    DataSource database;

    private StoredLedger sound;

    @BeforeEach
    void a_small_ledger() throws SQLException {
        SmallLedger.write(ledger, files);
        sound = StoredLedger.in(database);
    }

    @Test
    void finds_nothing_in_what_the_program_wrote() {
        VerificationReport report = verify.everything();
        assertThat(report.findings()).isEmpty();
        assertThat(report.entries()).isEqualTo(sound.entry().size()).isGreaterThan(15);
        assertThat(report.streams()).isEqualTo(sound.stream().size()).isGreaterThan(7);
        assertThat(report.files()).isEqualTo(3);
        assertThat(SecondVerifier.verify(sound)).isEmpty();
    }

    /** Two hundred in all; a failure names its seed, its number and what was done. */
    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {20261125, 7})
    void finds_every_change_made_past_the_program(long seed) throws SQLException {
        var random = new Random(seed);
        List<Forging> forgings = List.of(Forging.values());
        for (int i = 0; i < CHANGES; i++) {
            Forging forging = forgings.get(i % forgings.size());
            StoredLedger forged = forging.of(sound, random);
            forged.store(database);
            try {
                assertThat(verify.everything().findings())
                        .as("seed %d, change %d, %s", seed, i, forging)
                        .isNotEmpty();
                assertThat(SecondVerifier.verify(forged))
                        .as("the second verifier, seed %d, change %d, %s", seed, i, forging)
                        .isNotEmpty();
            } finally {
                sound.store(database);
            }
        }
        assertThat(verify.everything().findings()).isEmpty();
        assertThat(StoredLedger.in(database)).isEqualTo(sound);
    }

    /** The limit that docs/formats/ledger.md names: against this only hashes help that are kept elsewhere. */
    @Test
    void cannot_see_a_stream_rewritten_to_its_end_by_somebody_who_knows_the_format() throws SQLException {
        var open = new Forging.Open(sound);
        Stream end = open.streams.stream()
                .filter(stream -> stream.subject().equals("person/1001"))
                .findFirst()
                .orElseThrow();
        Row second = open.row(new Random(1), row -> row.stream().equals(end.id()) && row.number() == 2);
        Row last = open.rewrite(second, said -> said.put("who", "1003"));
        open.streams.remove(end);
        open.streams.add(new Stream(end.id(), end.subject(), end.lastNumber(), last.hash(), end.lastAt()));
        open.close().store(database);
        try {
            assertThat(verify.everything().findings()).isEmpty();
            assertThat(StoredLedger.in(database)).isNotEqualTo(sound);
        } finally {
            sound.store(database);
        }
    }
}
