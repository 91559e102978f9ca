package wainbook.permit;

import java.util.Set;

/** What is seen to with one's own eyes before a permit is issued, and what it must name. */
public enum Precaution {
    DRAINED(Names.NOTHING),
    GAS_FREE(Names.GEAR_IF_KEPT),
    EXTINGUISHER(Names.NOTHING),
    FIRE_WATCH(Names.PERSON),
    EDGE_PROTECTION(Names.NOTHING),
    FALL_ARREST(Names.GEAR),
    LIFTING_GEAR(Names.GEAR),
    NOBODY_BENEATH(Names.NOTHING),
    LIFTING_PLAN(Names.WORDS),
    RELEASED(Names.GEAR_IF_USED),
    BLOCKED(Names.GEAR_IF_USED),
    PROVED(Names.NOTHING),
    INDUCTION(Names.NOTHING),
    HOST(Names.PERSON);

    /** What stands beside a tick. */
    public enum Names {
        NOTHING,
        PERSON,
        WORDS,
        GEAR,
        /** An instrument where the register has one that could be used. */
        GEAR_IF_KEPT,
        GEAR_IF_USED
    }

    private final Names names;

    Precaution(Names names) {
        this.names = names;
    }

    public Names names() {
        return names;
    }

    /** Kinds of instrument that can be named. */
    public Set<String> gear() {
        return switch (this) {
            case GAS_FREE -> Set.of("gas-detector");
            case FALL_ARREST -> Set.of("fall-arrest");
            case LIFTING_GEAR -> Set.of("lifting-gear", "column-lift");
            case RELEASED -> Set.of("pressure-rig");
            case BLOCKED -> Set.of("stand", "column-lift");
            default -> Set.of();
        };
    }

    public boolean namesGear() {
        return !gear().isEmpty();
    }
}
