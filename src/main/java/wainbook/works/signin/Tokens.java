package wainbook.works.signin;

import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.ApplicationScoped;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.security.SecureRandom;
import java.time.Clock;
import java.util.Base64;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;

/** Tokens for scripts: sent in place of the password, one a script, each taken back on its own. */
@ApplicationScoped
public class Tokens {

    private static final String BEGINNING = "wainbook-";

    private final Clock clock;
    private final SecureRandom random = new SecureRandom();

    Tokens(Clock clock) {
        this.clock = clock;
    }

    static boolean looksLikeOne(String password) {
        return password.startsWith(BEGINNING);
    }

    /** Makes a token; only its hash is kept, so this is the one time it can be read. */
    public String make(String person, String title) {
        byte[] secret = new byte[24];
        random.nextBytes(secret);
        String token = BEGINNING + Base64.getUrlEncoder().withoutPadding().encodeToString(secret);
        QuarkusTransaction.joiningExisting().run(() -> {
            var row = new TokenRow();
            row.tokenHash = hash(token);
            row.person = person;
            row.title = title;
            row.madeAt = clock.instant();
            row.persist();
        });
        return token;
    }

    public List<TokenRow> of(String person) {
        return QuarkusTransaction.joiningExisting().call(() -> TokenRow.ofPerson(person));
    }

    /** What a person sends beside a token. */
    public Optional<String> userName(String person) {
        return QuarkusTransaction.joiningExisting()
                .call(() -> SignInRow.ofPerson(person).map(row -> row.userName));
    }

    /** Takes a person's own token back; nothing happens if it is gone already. */
    public void takeBack(String person, String tokenHash) {
        QuarkusTransaction.joiningExisting()
                .run(() -> TokenRow.delete("person = ?1 and tokenHash = ?2", person, tokenHash));
    }

    Optional<String> person(String userName, String token) {
        return QuarkusTransaction.joiningExisting()
                .call(() -> TokenRow.<TokenRow>findByIdOptional(hash(token))
                        .map(row -> row.person)
                        .filter(person -> SignInRow.of(userName)
                                .filter(row -> row.person.equals(person))
                                .isPresent()));
    }

    private static String hash(String token) {
        try {
            return HexFormat.of()
                    .formatHex(MessageDigest.getInstance("SHA-256").digest(token.getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException everyJavaHasIt) {
            throw new IllegalStateException(everyJavaHasIt);
        }
    }
}
