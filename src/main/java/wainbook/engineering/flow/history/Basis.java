package wainbook.engineering.flow.history;

/**
 * What a time is drawn from.
 *
 * @param ofKind records of this kind at this stage
 * @param ofStage records of all kinds at this stage
 */
public record Basis(Ground ground, int ofKind, int ofStage) {

    /** How much history there is. */
    public enum Ground {
        /** Enough records of the kind at the stage. */
        OWN,
        /** Few: the scatter is that of all kinds at the stage, the level between the kind's and the stage's. */
        POOLED,
        /** Next to none: planned minutes with a stated scatter. */
        PLANNED
    }
}
