package wainbook.works.signin;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.Optional;

/** A password or a token. */
@ApplicationScoped
class Credentials {

    private final Passwords passwords;
    private final Tokens tokens;

    Credentials(Passwords passwords, Tokens tokens) {
        this.passwords = passwords;
        this.tokens = tokens;
    }

    Optional<String> person(String userName, String password) {
        return Tokens.looksLikeOne(password) ? tokens.person(userName, password) : passwords.person(userName, password);
    }
}
