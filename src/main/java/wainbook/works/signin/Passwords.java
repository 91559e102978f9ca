package wainbook.works.signin;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import io.quarkus.elytron.security.common.BcryptUtil;
import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.ApplicationScoped;
import java.nio.charset.StandardCharsets;
import java.security.InvalidKeyException;
import java.security.NoSuchAlgorithmException;
import java.security.SecureRandom;
import java.time.Duration;
import java.util.HexFormat;
import java.util.Optional;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;
import wainbook.act.Reason;

/**
 * Whether a password is somebody's. One that passed is remembered for a minute by a keyed fingerprint together with the
 * hash that it passed: a script sends it with every request, and checking a password is made to be slow.
 */
@ApplicationScoped
public class Passwords {

    /** A name nobody has costs as long as a wrong password, so that names cannot be found out by the clock. */
    private static final String NOBODY = BcryptUtil.bcryptHash("nobody has this password");

    private final byte[] key = new byte[32];
    private final Cache<String, Boolean> passed = Caffeine.newBuilder()
            .expireAfterWrite(Duration.ofMinutes(1))
            .maximumSize(1_000)
            .build();

    Passwords() {
        new SecureRandom().nextBytes(key);
    }

    /** The person's number, when the user name and password are right. */
    public Optional<String> person(String userName, String password) {
        Optional<SignInRow> row = QuarkusTransaction.joiningExisting().call(() -> SignInRow.of(userName));
        return right(row, password) ? row.map(known -> known.person) : Optional.empty();
    }

    /**
     * What stands against a signature: whoever signs types their own password again. The one rule of every act that is signed.
     *
     * @param who signs: the number of the person who is signed in
     */
    public Optional<Reason> against(String who, String password) {
        return areOf(who, password)
                ? Optional.empty()
                : Optional.of(
                        Reason.of("works.passwordWrong", Reason.WORKS_RULE).liftedAt("#password"));
    }

    /** Whether this is the password of a person. */
    public boolean areOf(String person, String password) {
        return right(QuarkusTransaction.joiningExisting().call(() -> SignInRow.ofPerson(person)), password);
    }

    private boolean right(Optional<SignInRow> row, String password) {
        String hash = row.map(known -> known.passwordHash).orElse(NOBODY);
        String fingerprint = fingerprint(hash + "\0" + password);
        if (passed.getIfPresent(fingerprint) != null) {
            return row.isPresent();
        }
        boolean right = BcryptUtil.matches(password, hash);
        if (right) {
            passed.put(fingerprint, true);
        }
        return right && row.isPresent();
    }

    private String fingerprint(String text) {
        try {
            Mac mac = Mac.getInstance("HmacSHA256");
            mac.init(new SecretKeySpec(key, "HmacSHA256"));
            return HexFormat.of().formatHex(mac.doFinal(text.getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException | InvalidKeyException everyJavaHasIt) {
            throw new IllegalStateException(everyJavaHasIt);
        }
    }
}
