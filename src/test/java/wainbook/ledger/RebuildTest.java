package wainbook.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.List;
import java.util.Map;
import javax.sql.DataSource;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import wainbook.house.Cast;
import wainbook.ledger.bytes.StoredLedger;

/** Every table that is not named here is made from the ledger: a new one is covered from its first day. */
@QuarkusTest
@Tag("database")
class RebuildTest {

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
        Map<String, List<String>> before = ReadTables.in(database);
        assertThat(before.get("person")).hasSizeGreaterThan(2);
        StoredLedger record = StoredLedger.in(database);

        assertThat(rebuild.everything()).isEqualTo(record.entry().size());

        assertThat(ReadTables.in(database)).isEqualTo(before);
        assertThat(StoredLedger.in(database)).isEqualTo(record);
    }

    @Test
    void puts_right_what_was_changed_in_the_tables() throws SQLException {
        Map<String, List<String>> before = ReadTables.in(database);
        try (Connection connection = database.getConnection();
                Statement statement = connection.createStatement()) {
            statement.execute("delete from instrument");
            statement.execute("update person set roles = 'administrator'");
        }
        assertThat(ReadTables.in(database)).isNotEqualTo(before);
        rebuild.everything();
        assertThat(ReadTables.in(database)).isEqualTo(before);
    }
}
