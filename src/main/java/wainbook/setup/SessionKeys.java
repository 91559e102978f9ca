package wainbook.setup;

import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.Map;
import java.util.Properties;

/**
 * The key that session cookies are made with: made at the first start, kept in the data folder, read by us alone. Form tokens get no key
 * of their own: with one, every page that is opened makes the forms of all others stale.
 */
final class SessionKeys {

    private static final String PROPERTY = "quarkus.http.auth.session.encryption-key";

    private SessionKeys() {}

    static Map<String, String> in(Path data) {
        Path file = data.resolve("session-keys.properties");
        try {
            if (Files.notExists(file)) {
                make(data, file);
            }
            var kept = new Properties();
            try (Reader reader = Files.newBufferedReader(file)) {
                kept.load(reader);
            }
            return Map.of(PROPERTY, kept.getProperty(PROPERTY));
        } catch (IOException unreadable) {
            throw new UncheckedIOException("The session keys cannot be read or made in " + file, unreadable);
        }
    }

    private static void make(Path data, Path file) throws IOException {
        Files.createDirectories(data);
        byte[] secret = new byte[32];
        new SecureRandom().nextBytes(secret);
        var keys = new Properties();
        keys.setProperty(PROPERTY, Base64.getUrlEncoder().withoutPadding().encodeToString(secret));
        Files.createFile(file);
        if (Files.getFileStore(file).supportsFileAttributeView("posix")) {
            Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-------"));
        }
        try (Writer writer = Files.newBufferedWriter(file)) {
            keys.store(writer, "Keys of the session cookies. Whoever has them can sign in as anybody.");
        }
    }
}
