package wainbook.ledger.bytes;

import com.fasterxml.jackson.databind.PropertyNamingStrategies;
import com.fasterxml.jackson.databind.annotation.JsonNaming;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.UUID;
import javax.sql.DataSource;

/** The three tables of a ledger, row by row as stored: read and written by plain SQL, past everything that guards them. */
public record StoredLedger(List<Stream> stream, List<Row> entry, List<File> evidence) {

    private static final DateTimeFormatter TIME =
            DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH:mm:ss.SSSSSS'Z'").withZone(ZoneOffset.UTC);

    @JsonNaming(PropertyNamingStrategies.SnakeCaseStrategy.class)
    record Stream(String id, String subject, long lastNumber, String lastHash, String lastAt) {}

    record Row(String id, String stream, long number, String kind, String said, String hash) {}

    /**
     * A stored file.
     *
     * @param content in Base64
     */
    @JsonNaming(PropertyNamingStrategies.SnakeCaseStrategy.class)
    record File(String sha256, String mediaType, long sizeBytes, String content) {
        byte[] bytes() {
            return Base64.getDecoder().decode(content);
        }
    }

    public StoredLedger {
        stream = List.copyOf(stream);
        entry = List.copyOf(entry);
        evidence = List.copyOf(evidence);
    }

    /** Whether the tables could hold it: the keys of the schema. */
    boolean canBeStored() {
        return distinct(stream.stream().map(Stream::id).toList())
                && distinct(stream.stream().map(Stream::subject).toList())
                && distinct(entry.stream().map(Row::id).toList())
                && distinct(entry.stream()
                        .map(row -> row.stream() + "/" + row.number())
                        .toList())
                && distinct(evidence.stream().map(File::sha256).toList());
    }

    private static boolean distinct(List<?> keys) {
        return keys.stream().distinct().count() == keys.size();
    }

    public static StoredLedger in(DataSource database) throws SQLException {
        try (Connection connection = database.getConnection()) {
            return new StoredLedger(
                    read(
                            connection,
                            "select id, subject, last_number, last_hash, last_at from stream order by subject",
                            row -> new Stream(
                                    row.getString(1),
                                    row.getString(2),
                                    row.getLong(3),
                                    row.getString(4),
                                    TIME.format(row.getObject(5, OffsetDateTime.class)))),
                    read(
                            connection,
                            "select id, stream, number, kind, said, hash from entry order by stream, number",
                            row -> new Row(
                                    row.getString(1),
                                    row.getString(2),
                                    row.getLong(3),
                                    row.getString(4),
                                    row.getString(5),
                                    row.getString(6))),
                    read(
                            connection,
                            "select sha256, media_type, size_bytes, content from evidence order by sha256",
                            row -> new File(
                                    row.getString(1),
                                    row.getString(2),
                                    row.getLong(3),
                                    Base64.getEncoder().encodeToString(row.getBytes(4)))));
        }
    }

    /** Puts these rows in place of all that is stored. */
    void store(DataSource database) throws SQLException {
        try (Connection connection = database.getConnection()) {
            run(connection, "set referential_integrity false");
            for (String table : List.of("entry", "stream", "evidence")) {
                run(connection, "delete from " + table);
            }
            for (Stream row : stream) {
                run(
                        connection,
                        "insert into stream (id, subject, last_number, last_hash, last_at) values (?, ?, ?, ?, ?)",
                        UUID.fromString(row.id),
                        row.subject,
                        row.lastNumber,
                        row.lastHash,
                        Instant.parse(row.lastAt).atOffset(ZoneOffset.UTC));
            }
            for (Row row : entry) {
                run(
                        connection,
                        "insert into entry (id, stream, number, kind, said, hash) values (?, ?, ?, ?, ?, ?)",
                        UUID.fromString(row.id),
                        UUID.fromString(row.stream),
                        row.number,
                        row.kind,
                        row.said,
                        row.hash);
            }
            for (File file : evidence) {
                run(
                        connection,
                        "insert into evidence (sha256, media_type, size_bytes, content) values (?, ?, ?, ?)",
                        file.sha256,
                        file.mediaType,
                        file.sizeBytes,
                        file.bytes());
            }
            run(connection, "set referential_integrity true");
        }
    }

    private static void run(Connection connection, String sql, Object... values) throws SQLException {
        try (PreparedStatement statement = connection.prepareStatement(sql)) {
            for (int i = 0; i < values.length; i++) {
                statement.setObject(i + 1, values[i]);
            }
            statement.execute();
        }
    }

    private interface FromRow<T> {
        T of(ResultSet row) throws SQLException;
    }

    private static <T> List<T> read(Connection connection, String sql, FromRow<T> fromRow) throws SQLException {
        try (PreparedStatement statement = connection.prepareStatement(sql);
                ResultSet rows = statement.executeQuery()) {
            var read = new ArrayList<T>();
            while (rows.next()) {
                read.add(fromRow.of(rows));
            }
            return read;
        }
    }
}
