package wainbook.setup;

import io.quarkus.elytron.security.common.BcryptUtil;
import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.ApplicationScoped;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.security.SecureRandom;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.function.BiConsumer;
import wainbook.ledger.Saying;
import wainbook.ledger.Subject;
import wainbook.setup.files.Lines;
import wainbook.setup.files.WorksFiles;
import wainbook.works.PersonName;
import wainbook.works.Role;
import wainbook.works.WorksSaying;
import wainbook.works.signin.SignInRow;

/** Engages the people of a works: number, roles and competences in the ledger, name and password outside it. */
@ApplicationScoped
class PeopleImport {

    private final SecureRandom random = new SecureRandom();

    void take(WorksFiles files, String password, LocalDate today, BiConsumer<Subject, List<? extends Saying>> say) {
        // One hash for all: checking a password is made to be slow, and this is everybody's.
        String hash = BcryptUtil.bcryptHash(password);
        for (Lines.Person person : files.people()) {
            byte[] salt = new byte[16];
            random.nextBytes(salt);
            String salted = HexFormat.of().formatHex(salt);
            QuarkusTransaction.requiringNew().run(() -> keep(person, salted, hash));
            var sayings = new ArrayList<Saying>();
            sayings.add(new WorksSaying.Engaged(
                    sha256(salted + person.name()),
                    person.roles().stream()
                            .map(word -> Role.of(word).orElseThrow())
                            .toList()));
            files.competences().stream()
                    .filter(line -> line.person().equals(person.number()))
                    .forEach(line -> sayings.add(new WorksSaying.CompetenceGiven(
                            line.competence(),
                            line.level(),
                            today.plusDays(line.fromDay()),
                            today.plusDays(line.toDay()),
                            line.evidence())));
            say.accept(Subject.person(person.number()), sayings);
        }
    }

    private static void keep(Lines.Person person, String salt, String passwordHash) {
        if (PersonName.of(person.number()).isEmpty()) {
            var name = new PersonName();
            name.number = person.number();
            name.fullName = person.name();
            name.salt = salt;
            name.persist();
        }
        if (SignInRow.of(person.user()).isEmpty()) {
            var signIn = new SignInRow();
            signIn.userName = person.user();
            signIn.person = person.number();
            signIn.passwordHash = passwordHash;
            signIn.persist();
        }
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
