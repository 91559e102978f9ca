package wainbook.ledger;

import io.quarkus.test.junit.QuarkusTestProfile;
import jakarta.enterprise.inject.Alternative;
import jakarta.enterprise.inject.Produces;
import jakarta.inject.Singleton;
import java.util.List;
import java.util.Map;
import java.util.Set;
import wainbook.ledger.evidence.EvidenceFile;
import wainbook.works.WorksSaying;

/** A database for these tests alone, since they forge it; and a kind of entry that points to a file. */
public class OwnLedger implements QuarkusTestProfile {

    /** What is said of a file. */
    public sealed interface Filing extends Saying {
        @Kind("filing.filed/1")
        record Filed(String title, List<EvidenceFile> files) implements Filing {
            public Filed {
                files = List.copyOf(files);
            }
        }
    }

    /** The works' kinds and the one above. */
    @Alternative
    @Singleton
    public static class Vocabulary {
        @Produces
        @Alternative
        @Singleton
        Kinds kinds() {
            return Kinds.of(List.of(WorksSaying.class, Filing.class));
        }
    }

    @Override
    public Set<Class<?>> getEnabledAlternatives() {
        return Set.of(Vocabulary.class);
    }

    @Override
    public Map<String, String> getConfigOverrides() {
        return Map.of(
                "wainbook.demo",
                "false",
                "quarkus.datasource.jdbc.url",
                "jdbc:h2:mem:own-ledger;DB_CLOSE_DELAY=-1;DEFAULT_NULL_ORDERING=HIGH;LOCK_TIMEOUT=10000");
    }
}
