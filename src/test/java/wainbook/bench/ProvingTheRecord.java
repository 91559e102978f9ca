package wainbook.bench;

import io.quarkus.arc.Arc;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import javax.sql.DataSource;
import wainbook.ledger.Rebuild;
import wainbook.ledger.verification.VerificationReport;
import wainbook.ledger.verification.Verify;

/** How long the whole record takes to be verified, and all tables to be made from it, beside hashing its bytes alone. */
final class ProvingTheRecord {

    private static final String HASHING = "SHA-256 of the same bytes";

    private ProvingTheRecord() {}

    static List<Comparison> comparisons() throws SQLException {
        List<byte[]> stored = stored();
        Verify verify = Arc.container().instance(Verify.class).get();
        Rebuild rebuild = Arc.container().instance(Rebuild.class).get();
        Comparison.Go hashing = () -> () -> hashed(stored);
        return List.of(
                new Comparison(
                        "verify a record of " + stored.size() + " entries",
                        stored.size(),
                        () -> () -> sound(verify.everything(), stored.size()),
                        HASHING,
                        hashing),
                new Comparison(
                        "rebuild all tables from " + stored.size() + " entries",
                        stored.size(),
                        () -> rebuild::everything,
                        HASHING,
                        hashing));
    }

    private static VerificationReport sound(VerificationReport report, int entries) {
        if (!report.sound() || report.entries() != entries) {
            throw new AssertionError(report);
        }
        return report;
    }

    private static List<byte[]> stored() throws SQLException {
        var texts = new ArrayList<byte[]>();
        DataSource database = Arc.container().instance(DataSource.class).get();
        try (Connection connection = database.getConnection();
                var statement = connection.createStatement();
                ResultSet rows = statement.executeQuery("select said from entry order by stream, number")) {
            while (rows.next()) {
                texts.add(rows.getString(1).getBytes(StandardCharsets.UTF_8));
            }
        }
        return texts;
    }

    private static int hashed(List<byte[]> texts) throws Exception {
        MessageDigest digest = MessageDigest.getInstance("SHA-256");
        int hashed = 0;
        for (byte[] text : texts) {
            hashed += digest.digest(text).length;
        }
        return hashed;
    }
}
