package wainbook.permit;

import static wainbook.permit.Precaution.*;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** The kinds of work that want a permit here. */
public enum Work {
    HOT_WORK,
    HEIGHT,
    LIFTING,
    STORED_ENERGY,
    CONTRACTOR;

    /** Of each set at least one must be seen to. Common practice, no source. */
    public List<Set<Precaution>> asks() {
        return switch (this) {
            case HOT_WORK -> List.of(Set.of(DRAINED), Set.of(GAS_FREE), Set.of(EXTINGUISHER), Set.of(FIRE_WATCH));
            case HEIGHT -> List.of(Set.of(EDGE_PROTECTION, FALL_ARREST));
            case LIFTING -> List.of(Set.of(LIFTING_GEAR), Set.of(NOBODY_BENEATH), Set.of(LIFTING_PLAN));
            case STORED_ENERGY -> List.of(Set.of(RELEASED), Set.of(BLOCKED), Set.of(PROVED));
            case CONTRACTOR -> List.of(Set.of(INDUCTION), Set.of(HOST));
        };
    }

    public List<Precaution> precautions() {
        return Arrays.stream(Precaution.values())
                .filter(one -> asks().stream().anyMatch(group -> group.contains(one)))
                .toList();
    }

    /** What the work brings, by its kind and by what was said of it. */
    public Set<Trait> with(List<Trait> circumstances) {
        Set<Trait> traits = EnumSet.noneOf(Trait.class);
        switch (this) {
            case HOT_WORK -> traits.add(Trait.HOT_WORK);
            case HEIGHT -> traits.add(Trait.HEIGHT);
            case LIFTING -> traits.add(Trait.LIFTING);
            case STORED_ENERGY -> traits.add(Trait.STORED_ENERGY);
            case CONTRACTOR -> {}
        }
        traits.addAll(circumstances);
        return traits;
    }
}
