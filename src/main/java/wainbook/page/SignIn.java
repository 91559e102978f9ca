package wainbook.page;

import java.util.List;
import java.util.Optional;

/** What the sign-in page shows. */
public record SignIn(After after, Optional<Demo> demo) {

    /** What came before. */
    public enum After {
        NOTHING,
        FAILED,
        THROTTLED
    }

    /** The demo works' way in; never present elsewhere. */
    public record Demo(List<User> users, String password) {
        public Demo {
            users = List.copyOf(users);
        }
    }

    /**
     * One of the demo works' persons.
     *
     * @param user the name to sign in with
     * @param does what this person does in the works
     */
    public record User(String user, String does) {}

    public boolean failed() {
        return after == After.FAILED;
    }

    public boolean throttled() {
        return after == After.THROTTLED;
    }
}
