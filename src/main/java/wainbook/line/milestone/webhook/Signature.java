package wainbook.line.milestone.webhook;

import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.util.HexFormat;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;

/** HMAC-SHA-256 (RFC 2104, FIPS 180-4) of the time of sending, a line feed, and the body, in hexadecimal digits. */
public final class Signature {

    public static final String HEADER = "Wainbook-Signature";
    public static final String TIME_HEADER = "Wainbook-Time";

    private static final String ALGORITHM = "HmacSHA256";

    private Signature() {}

    /** @param time as it stands in its header */
    public static String of(String secret, String time, String body) {
        return code(secret, time + "\n" + body);
    }

    static String code(String secret, String text) {
        try {
            Mac mac = Mac.getInstance(ALGORITHM);
            mac.init(new SecretKeySpec(secret.getBytes(StandardCharsets.UTF_8), ALGORITHM));
            return HexFormat.of().formatHex(mac.doFinal(text.getBytes(StandardCharsets.UTF_8)));
        } catch (GeneralSecurityException everyJavaHasIt) {
            throw new IllegalStateException(everyJavaHasIt);
        }
    }
}
