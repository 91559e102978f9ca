package wainbook.page.live;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.QuarkusTestProfile;
import io.quarkus.test.junit.TestProfile;
import java.net.URI;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import wainbook.house.Cast;
import wainbook.house.Listening;

@QuarkusTest
@TestProfile(SessionTimeTest.ShortSessions.class)
@Timeout(120)
class SessionTimeTest {

    public static class ShortSessions implements QuarkusTestProfile {
        @Override
        public Map<String, String> getConfigOverrides() {
            return Map.of(
                    "quarkus.http.auth.form.timeout",
                    "6S",
                    "quarkus.datasource.jdbc.url",
                    "jdbc:h2:mem:short-sessions;DB_CLOSE_DELAY=-1;DEFAULT_NULL_ORDERING=HIGH;LOCK_TIMEOUT=10000");
        }
    }

    @TestHTTPResource("/")
    URI app;

    @Test
    void the_stream_ends_when_the_time_of_the_session_is_over() {
        Cast.assemble();
        try (Listening line = Listening.as(Cast.LINE_MANAGER, app, "/line/events")) {
            line.until(event -> event.name().equals("ended"));
            assertThat(line.next()).isEmpty();
        }
    }
}
