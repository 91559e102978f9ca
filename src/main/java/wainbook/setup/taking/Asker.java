package wainbook.setup.taking;

import java.time.Clock;
import wainbook.act.Actor;

/**
 * Who wants files taken.
 *
 * @param administrator whether they may say who works here and as what
 */
public record Asker(Actor actor, boolean administrator) {

    /** Whoever starts the program on the works' own machine; the ledger names them so. */
    public static final String SETUP = "setup";

    public static Asker setup(Clock clock) {
        return new Asker(Actor.of(SETUP, clock), true);
    }

    public String who() {
        return actor.who();
    }
}
