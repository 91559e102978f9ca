package wainbook.setup;

import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.control.ActivateRequestContext;
import jakarta.inject.Inject;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import wainbook.act.Actor;
import wainbook.act.Reason;
import wainbook.page.Words;
import wainbook.setup.password.NewPassword;
import wainbook.setup.taking.Asker;
import wainbook.works.signin.SignInRow;

/** Gives a person a password at the works' own machine: the way back in when nobody knows the administrator's. */
@Command(name = "password", mixinStandardHelpOptions = true)
public class PasswordCommand implements Callable<Integer> {

    static final int REFUSED = 3;

    @Parameters(paramLabel = "USER")
    String user;

    @Inject
    NewPassword newPassword;

    @Inject
    TypedPassword passwords;

    @Inject
    Clock clock;

    @Spec
    CommandSpec spec;

    @Override
    @ActivateRequestContext
    public Integer call() {
        Optional<String> person =
                QuarkusTransaction.requiringNew().call(() -> SignInRow.of(user).map(row -> row.person));
        if (person.isEmpty()) {
            return refused(List.of(Reason.of("setup.nobodyThere", Reason.WORKS_RULE, user)));
        }
        var asked = new NewPassword.ToSet(UUID.randomUUID(), person.get(), false);
        String typed = passwords.typed(Words.of("setup.newPasswordOf", user));
        return newPassword.set(asked, typed, Actor.of(Asker.SETUP, clock)).fold(entry -> 0, this::refused);
    }

    private int refused(List<Reason> reasons) {
        reasons.forEach(reason -> spec.commandLine()
                .getOut()
                .println(Words.of(reason.key(), reason.arguments().toArray())));
        return REFUSED;
    }
}
