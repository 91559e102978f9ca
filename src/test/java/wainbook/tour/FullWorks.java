package wainbook.tour;

import io.quarkus.test.junit.QuarkusTestProfile;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;

/** The demonstration as people find it: its line in full work, two vehicles handed over. */
public class FullWorks implements QuarkusTestProfile {

    @Override
    public Map<String, String> getConfigOverrides() {
        return Map.of(
                "wainbook.demo.folder",
                "demo-fleet",
                "wainbook.rehearsal",
                "true",
                "wainbook.rehearsal.handed-over",
                "2",
                "wainbook.rehearsal.behind",
                "false",
                "wainbook.data",
                freshFolder().toString(),
                "quarkus.datasource.jdbc.url",
                "jdbc:h2:mem:full-works;DB_CLOSE_DELAY=-1;DEFAULT_NULL_ORDERING=HIGH;LOCK_TIMEOUT=10000");
    }

    private static Path freshFolder() {
        try {
            return Files.createTempDirectory(Path.of("target").toAbsolutePath(), "full-works");
        } catch (IOException unwritable) {
            throw new UncheckedIOException(unwritable);
        }
    }
}
