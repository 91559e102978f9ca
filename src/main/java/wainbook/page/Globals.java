package wainbook.page;

import io.quarkus.qute.TemplateGlobal;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.List;

/** What every template may use. */
public final class Globals {

    private static final List<String> ASSETS =
            List.of("css/wainbook.css", "img/signs.svg", "js/connection.js", "js/fold.js", "js/live.js");

    private static final String FINGERPRINT = fingerprint();

    private Globals() {}

    /** Changes when a stylesheet, sign or script does: browsers may keep each version for ever. */
    @TemplateGlobal(name = "assets")
    public static String assets() {
        return FINGERPRINT;
    }

    private static String fingerprint() {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            for (String asset : ASSETS) {
                try (InputStream bytes = Globals.class.getResourceAsStream("/META-INF/resources/" + asset)) {
                    digest.update(bytes.readAllBytes());
                }
            }
            return HexFormat.of().formatHex(digest.digest(), 0, 6);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }
}
