package wainbook.line.milestone.webhook;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.security.SecureRandom;
import java.time.Instant;
import java.util.Base64;
import java.util.Optional;

/** What deliveries to an address are signed with: outside the ledger, shown once when it is made. */
@Entity
@Table(name = "webhook_secret")
class Secret extends PanacheEntityBase {

    private static final int BYTES = 32;
    private static final SecureRandom RANDOM = new SecureRandom();

    @Id
    public int webhook;

    public String secret;
    public Instant madeAt;

    /** A new one in place of any before. */
    static String make(int webhook, Instant now) {
        byte[] bytes = new byte[BYTES];
        RANDOM.nextBytes(bytes);
        Secret row = Optional.<Secret>ofNullable(Secret.findById(webhook)).orElseGet(Secret::new);
        row.webhook = webhook;
        row.secret = Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
        row.madeAt = now;
        row.persist();
        return row.secret;
    }

    static Optional<String> of(int webhook) {
        return Secret.<Secret>findByIdOptional(webhook).map(row -> row.secret);
    }
}
