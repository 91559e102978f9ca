package wainbook.setup.taking;

import io.quarkus.elytron.security.common.BcryptUtil;
import jakarta.enterprise.context.ApplicationScoped;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.security.SecureRandom;
import java.util.ArrayList;
import java.util.Base64;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wainbook.setup.files.Lines;
import wainbook.works.PersonName;
import wainbook.works.signin.SignInRow;

/** Names and ways to sign in, outside the ledger. */
@ApplicationScoped
public class Names {

    private final SecureRandom random = new SecureRandom();

    public String salt() {
        byte[] salt = new byte[16];
        random.nextBytes(salt);
        return HexFormat.of().formatHex(salt);
    }

    public static String hash(String salt, String name) {
        try {
            byte[] text = (salt + name).getBytes(StandardCharsets.UTF_8);
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(text));
        } catch (NoSuchAlgorithmException everyJavaHasIt) {
            throw new IllegalStateException(everyJavaHasIt);
        }
    }

    /** A password that nobody knows: whoever has it cannot sign in until they get one. */
    String unknownPassword() {
        byte[] secret = new byte[32];
        random.nextBytes(secret);
        return Base64.getEncoder().encodeToString(secret);
    }

    /**
     * Keeps what the files say of these people.
     *
     * @param salts of the names that are new
     * @param password for those who could not sign in yet
     */
    public void keep(List<Lines.Person> people, Map<String, String> salts, String password) {
        Map<String, String> hashes = new LinkedHashMap<>();
        List<Lines.Person> toSignIn = new ArrayList<>();
        for (Lines.Person person : people) {
            if (salts.containsKey(person.number())) {
                PersonName name = PersonName.of(person.number()).orElseGet(PersonName::new);
                name.number = person.number();
                name.fullName = person.name();
                name.salt = salts.get(person.number());
                name.persist();
            }
            Optional<SignInRow> known = SignInRow.ofPerson(person.number());
            if (known.isEmpty() || !known.get().userName.equals(person.user())) {
                toSignIn.add(person);
            }
        }
        // All go before any comes, since two people may swap their user names.
        for (Lines.Person person : toSignIn) {
            SignInRow.ofPerson(person.number()).ifPresent(row -> {
                hashes.put(person.number(), row.passwordHash);
                row.delete();
            });
        }
        SignInRow.flush();
        // One hash for all: checking a password is made to be slow.
        String first = toSignIn.size() > hashes.size() ? BcryptUtil.bcryptHash(password) : "";
        for (Lines.Person person : toSignIn) {
            var row = new SignInRow();
            row.userName = person.user();
            row.person = person.number();
            row.passwordHash = hashes.getOrDefault(person.number(), first);
            row.persist();
        }
    }
}
