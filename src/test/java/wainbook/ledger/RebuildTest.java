package wainbook.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.ResultSetMetaData;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import javax.sql.DataSource;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import wainbook.house.Cast;

/** Every table that is not named here is made from the ledger: a new one is covered from its first day. */
@QuarkusTest
@Tag("database")
class RebuildTest {

    private static final Set<String> NOT_MADE_FROM_THE_LEDGER =
            Set.of("stream", "entry", "evidence", "person_name", "sign_in", "api_token", "flyway_schema_history");

    @Inject
    Rebuild rebuild;

    @Inject
    DataSource database;

    @BeforeEach
    void the_cast_is_there() {
        Cast.assemble();
    }

    @Test
    void makes_all_tables_again_row_by_row_as_they_were() throws SQLException {
        Map<String, List<String>> before = tables();
        assertThat(before.get("person")).hasSizeGreaterThan(2);
        StoredLedger record = StoredLedger.in(database);

        assertThat(rebuild.everything()).isEqualTo(record.entry().size());

        assertThat(tables()).isEqualTo(before);
        assertThat(StoredLedger.in(database)).isEqualTo(record);
    }

    @Test
    void puts_right_what_was_changed_in_the_tables() throws SQLException {
        Map<String, List<String>> before = tables();
        try (Connection connection = database.getConnection();
                Statement statement = connection.createStatement()) {
            statement.execute("delete from instrument");
            statement.execute("update person set roles = 'administrator'");
        }
        assertThat(tables()).isNotEqualTo(before);
        rebuild.everything();
        assertThat(tables()).isEqualTo(before);
    }

    private Map<String, List<String>> tables() throws SQLException {
        var tables = new TreeMap<String, List<String>>();
        try (Connection connection = database.getConnection()) {
            var names = new ArrayList<String>();
            try (ResultSet found = connection
                    .getMetaData()
                    .getTables(null, connection.getSchema(), null, new String[] {"BASE TABLE", "TABLE"})) {
                while (found.next()) {
                    names.add(found.getString("TABLE_NAME").toLowerCase(Locale.ROOT));
                }
            }
            names.removeAll(NOT_MADE_FROM_THE_LEDGER);
            for (String name : names) {
                tables.put(name, rows(connection, name));
            }
        }
        return tables;
    }

    private static List<String> rows(Connection connection, String table) throws SQLException {
        var read = new ArrayList<String>();
        try (Statement statement = connection.createStatement();
                ResultSet rows = statement.executeQuery("select * from " + table)) {
            ResultSetMetaData columns = rows.getMetaData();
            while (rows.next()) {
                var row = new StringBuilder();
                for (int i = 1; i <= columns.getColumnCount(); i++) {
                    row.append(columns.getColumnName(i))
                            .append('=')
                            .append(rows.getString(i))
                            .append("; ");
                }
                read.add(row.toString());
            }
        }
        read.sort(null);
        return read;
    }
}
