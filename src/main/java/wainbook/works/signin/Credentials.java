package wainbook.works.signin;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import com.github.benmanes.caffeine.cache.Ticker;
import jakarta.enterprise.context.ApplicationScoped;
import java.nio.charset.StandardCharsets;
import java.security.InvalidKeyException;
import java.security.NoSuchAlgorithmException;
import java.security.SecureRandom;
import java.time.Clock;
import java.time.Duration;
import java.util.HexFormat;
import java.util.Optional;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;

/**
 * A password or a token. A password that passed is remembered for a minute by a keyed fingerprint, since a script
 * sends it with every request and checking a password is made to be slow.
 */
@ApplicationScoped
class Credentials {

    private final Passwords passwords;
    private final Tokens tokens;
    private final byte[] key = new byte[32];
    private final Cache<String, String> passed;

    Credentials(Passwords passwords, Tokens tokens, Clock clock) {
        this.passwords = passwords;
        this.tokens = tokens;
        new SecureRandom().nextBytes(key);
        Ticker ticker = () -> Duration.ofMillis(clock.millis()).toNanos();
        passed = Caffeine.newBuilder()
                .expireAfterWrite(Duration.ofMinutes(1))
                .maximumSize(1_000)
                .ticker(ticker)
                .build();
    }

    Optional<String> person(String userName, String password) {
        if (Tokens.looksLikeOne(password)) {
            return tokens.person(userName, password);
        }
        String fingerprint = fingerprint(userName + "\0" + password);
        return Optional.ofNullable(passed.getIfPresent(fingerprint)).or(() -> {
            Optional<String> person = passwords.person(userName, password);
            person.ifPresent(number -> passed.put(fingerprint, number));
            return person;
        });
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
