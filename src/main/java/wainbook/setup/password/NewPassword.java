package wainbook.setup.password;

import io.quarkus.elytron.security.common.BcryptUtil;
import jakarta.enterprise.context.ApplicationScoped;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import wainbook.act.Actor;
import wainbook.act.Outcome;
import wainbook.act.Reason;
import wainbook.ledger.Asked;
import wainbook.ledger.Decision;
import wainbook.ledger.Entry;
import wainbook.ledger.Ledger;
import wainbook.ledger.Saying;
import wainbook.ledger.Subject;
import wainbook.setup.SetupSaying;
import wainbook.works.WorksSaying;
import wainbook.works.signin.SignInRow;

/** Gives a person a new password. That it happened, and by whom, is on record; the password is not. */
@ApplicationScoped
public class NewPassword {

    /** NIST SP 800-63B asks for 8 and advises more (from memory); here a signature hangs on it. */
    public static final int SHORTEST = 12;

    /** What bcrypt looks at; a longer one would be cut without a word. */
    public static final int LONGEST_BYTES = 72;

    private static final int LONGEST_S = 30;

    /** What is asked; the password itself is no part of it. */
    public record ToSet(UUID id, String person, boolean bySelf) implements Asked {
        @Override
        public List<Subject> writes() {
            return List.of(Subject.person(person));
        }

        @Override
        public Class<? extends Saying> says() {
            return SetupSaying.PasswordSet.class;
        }
    }

    private final Ledger ledger;

    NewPassword(Ledger ledger) {
        this.ledger = ledger;
    }

    public Outcome<Entry> set(ToSet asked, String password, Actor actor) {
        List<Reason> against = against(password);
        if (!against.isEmpty()) {
            return Outcome.refused(against);
        }
        String hash = BcryptUtil.bcryptHash(password);
        Subject person = Subject.person(asked.person());
        return ledger.together(LONGEST_S, () -> {
            Outcome<Entry> outcome = ledger.write(
                    asked,
                    actor,
                    reading ->
                            reading.of(person).last(WorksSaying.Engaged.class).isEmpty()
                                    ? Decision.refuse(Reason.of("setup.nobodyThere", Reason.WORKS_RULE, asked.person()))
                                    : Decision.say(person, new SetupSaying.PasswordSet(asked.bySelf())));
            if (outcome instanceof Outcome.Done) {
                keep(asked.person(), hash);
            }
            return outcome;
        });
    }

    /** What is wrong with a password, whoever's it is to be. */
    public static List<Reason> against(String password) {
        List<Reason> against = new ArrayList<>();
        if (password.length() < SHORTEST) {
            against.add(Reason.of("setup.passwordShort", Reason.WORKS_RULE, SHORTEST)
                    .liftedAt("#password"));
        }
        if (password.getBytes(StandardCharsets.UTF_8).length > LONGEST_BYTES) {
            against.add(Reason.of("setup.passwordLong", Reason.WORKS_RULE, LONGEST_BYTES)
                    .liftedAt("#password"));
        }
        return against;
    }

    private static void keep(String person, String hash) {
        SignInRow row = SignInRow.ofPerson(person).orElseGet(() -> {
            var first = new SignInRow();
            first.userName = person;
            first.person = person;
            return first;
        });
        row.passwordHash = hash;
        row.persist();
    }
}
