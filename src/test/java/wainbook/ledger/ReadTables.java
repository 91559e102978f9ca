package wainbook.ledger;

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

/** Every row of every table that is made from the ledger, as text. */
public final class ReadTables {

    private static final Set<String> NOT_MADE_FROM_THE_LEDGER = Set.of(
            "stream",
            "entry",
            "evidence",
            "person_name",
            "visitor_name",
            "sign_in",
            "api_token",
            "made_by",
            "flyway_schema_history");

    private ReadTables() {}

    public static Map<String, List<String>> in(DataSource database) throws SQLException {
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
