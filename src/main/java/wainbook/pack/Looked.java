package wainbook.pack;

import java.util.Optional;

/** What is looked at when a pack comes in. Common practice, no source. */
public enum Looked {
    PACKAGING(null),
    NO_DENTS(Trigger.DENTED),
    DRY(Trigger.WET),
    NO_SMELL(Trigger.SMELL),
    SEALS(null),
    TERMINALS(null),
    TILT(Trigger.DROPPED);

    private final Trigger unsound;

    Looked(Trigger unsound) {
        this.unsound = unsound;
    }

    /** Why the pack is set aside as damaged if this is not in order; empty where it only waits. */
    public Optional<Trigger> unsound() {
        return Optional.ofNullable(unsound);
    }
}
