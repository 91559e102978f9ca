package wainbook.setup.taking;

import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Optional;
import wainbook.act.Reason;
import wainbook.works.PersonRow;
import wainbook.works.Role;
import wainbook.works.signin.Passwords;
import wainbook.works.signin.Throttle;

/** Whether somebody else answers for it too, with their own password. */
@ApplicationScoped
class SecondPerson {

    private static final List<String> ROLES = List.of(Role.worksEngineer, Role.qualityEngineer);

    /** Who it is, or why it is nobody. */
    record Answer(Optional<String> person, List<Reason> reasons) {
        static Answer no(Reason reason) {
            return new Answer(Optional.empty(), List.of(reason));
        }
    }

    private final Passwords passwords;
    private final Throttle throttle;

    SecondPerson(Passwords passwords, Throttle throttle) {
        this.passwords = passwords;
        this.throttle = throttle;
    }

    Answer answer(Optional<ToTake.Second> named, String asker) {
        if (named.isEmpty() || named.get().user().isBlank()) {
            return Answer.no(Reason.of("setup.secondMissing", Reason.WORKS_RULE).liftedAt("#second"));
        }
        ToTake.Second second = named.get();
        // Guessing is slowed by account and by who asks, not for everybody who confirms something.
        String place = "second person for " + asker;
        if (!throttle.wait(second.user(), place).isZero()) {
            return Answer.no(
                    Reason.of("setup.secondThrottled", Reason.WORKS_RULE).liftedAt("#secondPassword"));
        }
        Optional<String> person = passwords.person(second.user(), second.password());
        if (person.isEmpty()) {
            throttle.failed(second.user(), place);
            return Answer.no(
                    Reason.of("setup.secondPassword", Reason.WORKS_RULE).liftedAt("#secondPassword"));
        }
        throttle.passed(second.user());
        if (person.get().equals(asker)) {
            return Answer.no(Reason.of("setup.secondIsFirst", Reason.WORKS_RULE).liftedAt("#second"));
        }
        return mayAnswer(person.get())
                ? new Answer(person, List.of())
                : Answer.no(Reason.of("setup.secondRole", Reason.WORKS_RULE, second.user())
                        .liftedAt("#second"));
    }

    private static boolean mayAnswer(String person) {
        return QuarkusTransaction.joiningExisting()
                .call(() -> PersonRow.<PersonRow>findByIdOptional(person)
                        .filter(row -> !row.hasLeft && row.roleWords().stream().anyMatch(ROLES::contains))
                        .isPresent());
    }
}
