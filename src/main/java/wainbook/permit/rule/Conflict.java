package wainbook.permit.rule;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import wainbook.permit.Trait;

/** What cannot be done on one vehicle at a time: one line a pair, the same whichever of the two comes first. */
public enum Conflict {
    HOT_WORK_AND_PACKS(Trait.HOT_WORK, Trait.PACKS_ABOARD, "permit.hotWorkAndPacks"),
    HOT_WORK_AND_FUEL(Trait.HOT_WORK, Trait.FUEL_OPEN, "permit.hotWorkAndFuel"),
    HOT_WORK_AND_STORED_ENERGY(Trait.HOT_WORK, Trait.STORED_ENERGY, "permit.hotWorkAndStoredEnergy"),
    HOT_WORK_AND_HEIGHT(Trait.HOT_WORK, Trait.HEIGHT, "permit.hotWorkAndHeight"),
    LIFTING_AND_BENEATH(Trait.LIFTING, Trait.BENEATH, "permit.liftingAndBeneath"),
    LIFTING_AND_HEIGHT(Trait.LIFTING, Trait.HEIGHT, "permit.liftingAndHeight"),
    RAISED_AND_BENEATH(Trait.RAISED, Trait.BENEATH, "permit.raisedAndBeneath");

    private final Trait one;
    private final Trait other;
    private final String rule;

    Conflict(Trait one, Trait other, String rule) {
        this.one = one;
        this.other = other;
        this.rule = rule;
    }

    public Trait one() {
        return one;
    }

    public Trait other() {
        return other;
    }

    /** Key of the reason that it is refused by. */
    public String rule() {
        return rule;
    }

    public static List<Conflict> between(Set<Trait> mine, Set<Trait> theirs) {
        return Arrays.stream(values())
                .filter(pair -> (mine.contains(pair.one) && theirs.contains(pair.other))
                        || (mine.contains(pair.other) && theirs.contains(pair.one)))
                .toList();
    }
}
