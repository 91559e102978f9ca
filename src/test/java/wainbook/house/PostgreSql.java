package wainbook.house;

import io.quarkus.test.common.QuarkusTestResourceLifecycleManager;
import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Map;

/** A database server of its own for the tests that run a second time; nothing where they run on the embedded database. */
public class PostgreSql implements QuarkusTestResourceLifecycleManager {

    private EmbeddedPostgres server;

    @Override
    public Map<String, String> start() {
        if (!System.getProperty("quarkus.test.profile", "").contains("pg")) {
            return Map.of();
        }
        try {
            server = EmbeddedPostgres.builder()
                    .setServerConfig("fsync", System.getProperty("postgresql.fsync", "off"))
                    .setServerConfig("max_connections", "60")
                    .start();
        } catch (IOException cannotStart) {
            throw new UncheckedIOException(cannotStart);
        }
        return Map.of(
                "quarkus.datasource.jdbc.url",
                server.getJdbcUrl("postgres", "postgres") + "&reWriteBatchedInserts=true",
                "quarkus.datasource.username",
                "postgres",
                "quarkus.datasource.password",
                "postgres");
    }

    @Override
    public void stop() {
        if (server != null) {
            try {
                server.close();
            } catch (IOException cannotStop) {
                throw new UncheckedIOException(cannotStop);
            }
        }
    }
}
