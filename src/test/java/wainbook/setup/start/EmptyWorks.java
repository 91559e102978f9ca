package wainbook.setup.start;

import io.quarkus.test.junit.QuarkusTestProfile;
import java.util.Map;

/** A start without the demo, on a database that has nothing in it. */
public class EmptyWorks implements QuarkusTestProfile {

    @Override
    public Map<String, String> getConfigOverrides() {
        return Map.of(
                "wainbook.demo",
                "false",
                "quarkus.datasource.jdbc.url",
                "jdbc:h2:mem:empty-works;DB_CLOSE_DELAY=-1;DEFAULT_NULL_ORDERING=HIGH;LOCK_TIMEOUT=10000");
    }
}
