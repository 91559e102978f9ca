package wainbook.works.signin;

import io.quarkus.elytron.security.common.BcryptUtil;
import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.Optional;

/** Whether a password is somebody's. */
@ApplicationScoped
public class Passwords {

    /** A name nobody has costs as long as a wrong password, so that names cannot be found out by the clock. */
    private static final String NOBODY = BcryptUtil.bcryptHash("nobody has this password");

    /** The person's number, when the user name and password are right. */
    public Optional<String> person(String userName, String password) {
        Optional<SignInRow> row = QuarkusTransaction.joiningExisting().call(() -> SignInRow.of(userName));
        boolean right = BcryptUtil.matches(
                password, row.map(known -> known.passwordHash).orElse(NOBODY));
        return row.filter(known -> right).map(known -> known.person);
    }

    /** Asked again at a signature: whether this is the password of the person who is signed in. */
    public boolean areOf(String person, String password) {
        Optional<SignInRow> row = QuarkusTransaction.joiningExisting().call(() -> SignInRow.ofPerson(person));
        return BcryptUtil.matches(password, row.map(known -> known.passwordHash).orElse(NOBODY)) && row.isPresent();
    }
}
