package wainbook.setup.start;

import jakarta.enterprise.context.ApplicationScoped;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.Locale;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import wainbook.ledger.Ledger;
import wainbook.ledger.Subject;

/**
 * Whether a works can still be begun, and the code that only whoever reads the server's log can know: else the first
 * stranger on the network could take it over.
 */
@ApplicationScoped
public class StartCode {

    /** Without letters and figures that look alike. */
    private static final String SIGNS = "ABCDEFGHJKLMNPQRSTUVWXYZ23456789";

    private static final int GROUPS = 4;
    private static final int GROUP = 4;

    private final Ledger ledger;
    private final boolean demo;
    private final String code;

    StartCode(Ledger ledger, @ConfigProperty(name = "wainbook.demo") boolean demo) {
        this.ledger = ledger;
        this.demo = demo;
        this.code = made(new SecureRandom());
    }

    /** Only while nothing at all is on record of the works. */
    public boolean open() {
        return !demo && ledger.history(Subject.works()).isEmpty();
    }

    public String code() {
        return code;
    }

    boolean right(String typed) {
        byte[] bare = typed.strip().toUpperCase(Locale.ROOT).replace(" ", "-").getBytes(StandardCharsets.UTF_8);
        return MessageDigest.isEqual(bare, code.getBytes(StandardCharsets.UTF_8));
    }

    private static String made(SecureRandom random) {
        var made = new StringBuilder();
        for (int i = 0; i < GROUPS * GROUP; i++) {
            made.append(i > 0 && i % GROUP == 0 ? "-" : "").append(SIGNS.charAt(random.nextInt(SIGNS.length())));
        }
        return made.toString();
    }
}
