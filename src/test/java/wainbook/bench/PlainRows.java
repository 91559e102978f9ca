package wainbook.bench;

import io.quarkus.arc.Arc;
import io.quarkus.narayana.jta.QuarkusTransaction;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.util.List;
import java.util.UUID;
import javax.sql.DataSource;

/** The baseline of everything that is written: INSERTs of the same size, in one transaction, with nothing around them. */
final class PlainRows implements AutoCloseable {

    private final DataSource database =
            Arc.container().instance(DataSource.class).get();

    PlainRows() throws SQLException {
        close();
        run("create table plain_row (id uuid primary key, number bigint not null, said text not null)");
    }

    /** As many rows as there are texts, one statement each. */
    int insert(List<String> texts) {
        return QuarkusTransaction.requiringNew().call(() -> {
            try (Connection connection = database.getConnection();
                    PreparedStatement insert =
                            connection.prepareStatement("insert into plain_row (id, number, said) values (?, ?, ?)")) {
                int number = 0;
                for (String text : texts) {
                    insert.setObject(1, UUID.randomUUID());
                    insert.setLong(2, ++number);
                    insert.setString(3, text);
                    insert.executeUpdate();
                }
                return number;
            }
        });
    }

    /** Nothing is left for the tests that look at all tables. */
    @Override
    public void close() throws SQLException {
        run("drop table if exists plain_row");
    }

    private void run(String sql) throws SQLException {
        try (Connection connection = database.getConnection();
                var statement = connection.createStatement()) {
            statement.execute(sql);
        }
    }
}
