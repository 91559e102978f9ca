package wainbook.safety.visit;

import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.ApplicationScoped;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.security.SecureRandom;
import java.util.HexFormat;
import java.util.UUID;

/** Keeps visitors' names outside the ledger; the ledger gets a hash of the salted name and firm. */
@ApplicationScoped
class VisitorNames {

    private final SecureRandom random = new SecureRandom();

    /** Keeps what is not kept yet, so that asking again changes nothing; gives the hash for the ledger. */
    String keep(UUID knownBy, String fullName, String firm) {
        return QuarkusTransaction.requiringNew().call(() -> {
            VisitorName row = VisitorName.of(knownBy).orElseGet(() -> named(knownBy, fullName, firm));
            return sha256(row.salt + row.fullName + "\n" + row.firm);
        });
    }

    /** Takes back what was kept for somebody whom the ledger then refused. */
    void forget(UUID knownBy) {
        QuarkusTransaction.requiringNew().run(() -> VisitorName.deleteById(knownBy));
    }

    private VisitorName named(UUID knownBy, String fullName, String firm) {
        byte[] salt = new byte[16];
        random.nextBytes(salt);
        var row = new VisitorName();
        row.knownBy = knownBy;
        row.fullName = fullName;
        row.firm = firm;
        row.salt = HexFormat.of().formatHex(salt);
        row.persist();
        return row;
    }

    private static String sha256(String text) {
        try {
            return HexFormat.of()
                    .formatHex(MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException everyJavaHasIt) {
            throw new IllegalStateException(everyJavaHasIt);
        }
    }
}
