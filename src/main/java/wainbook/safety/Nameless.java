package wainbook.safety;

import wainbook.act.Actor;

/** Who speaks in an entry that carries nobody's name. */
public final class Nameless {

    /** Stands in an entry where else a person's number stands. */
    public static final String SPEAKER = "nameless";

    private Nameless() {}

    /** The same act with neither the account nor its device in it. */
    public static Actor of(Actor actor) {
        return Actor.of(SPEAKER, actor.clock());
    }

    public static Actor of(Actor actor, boolean wanted) {
        return wanted ? of(actor) : actor;
    }
}
