package wainbook.tour;

import io.quarkus.test.junit.QuarkusTestProfile;
import java.util.Map;

/** A works that nobody has begun, on a database of its own. */
public class UnfilledWorks implements QuarkusTestProfile {

    @Override
    public Map<String, String> getConfigOverrides() {
        return Map.of(
                "wainbook.demo",
                "false",
                "quarkus.datasource.jdbc.url",
                "jdbc:h2:mem:unfilled-works;DB_CLOSE_DELAY=-1;DEFAULT_NULL_ORDERING=HIGH;LOCK_TIMEOUT=10000");
    }
}
