package wainbook.works.people;

import io.quarkus.elytron.security.common.BcryptUtil;
import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.ApplicationScoped;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.security.SecureRandom;
import java.util.HexFormat;
import java.util.Optional;
import wainbook.works.PersonName;
import wainbook.works.PersonRow;
import wainbook.works.signin.SignInRow;

/** Names, user names and first passwords, outside the ledger; the ledger gets a hash of the salted name. */
@ApplicationScoped
class Names {

    /** Somebody as engaged: nothing of it enters the ledger. */
    record Newcomer(String number, String name, String user, String password) {}

    private final SecureRandom random = new SecureRandom();

    Optional<PersonName> of(String number) {
        return QuarkusTransaction.joiningExisting().call(() -> PersonName.of(number));
    }

    /** Whether the user name is somebody else's. */
    boolean userTaken(Newcomer newcomer) {
        return QuarkusTransaction.joiningExisting()
                .call(() -> SignInRow.of(newcomer.user())
                        .filter(row -> !row.person.equals(newcomer.number()))
                        .isPresent());
    }

    /** Keeps what is not kept yet, so that asking again changes nothing; gives the hash for the ledger. */
    String keep(Newcomer newcomer) {
        return QuarkusTransaction.requiringNew().call(() -> {
            PersonName name = PersonName.of(newcomer.number()).orElseGet(() -> named(newcomer));
            if (SignInRow.ofPerson(newcomer.number()).isEmpty()) {
                var row = new SignInRow();
                row.userName = newcomer.user();
                row.person = newcomer.number();
                row.passwordHash = BcryptUtil.bcryptHash(newcomer.password());
                row.persist();
            }
            return sha256(name.salt + name.fullName);
        });
    }

    /** Takes back what was kept for somebody whom the ledger then refused. */
    void forget(String number) {
        QuarkusTransaction.requiringNew().run(() -> {
            if (PersonRow.findByIdOptional(number).isEmpty()) {
                PersonName.deleteById(number);
                SignInRow.delete("person", number);
            }
        });
    }

    private PersonName named(Newcomer newcomer) {
        byte[] salt = new byte[16];
        random.nextBytes(salt);
        var name = new PersonName();
        name.number = newcomer.number();
        name.fullName = newcomer.name();
        name.salt = HexFormat.of().formatHex(salt);
        name.persist();
        return name;
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
