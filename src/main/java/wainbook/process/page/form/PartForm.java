package wainbook.process.page.form;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import wainbook.page.Filled;
import wainbook.process.draft.About.Thing;
import wainbook.process.draft.Drafted;
import wainbook.process.draft.Part.Group;
import wainbook.process.draft.Surroundings;

/**
 * How the parts of one group are written in a form, put in order and taken out.
 *
 * @param list the parts in their order
 * @param with the draft with these parts instead
 * @param typed what stands in the form's fields for a part that is there
 * @param read the part as typed, after the one that it was made from
 * @param inputs the fields, by what is in force and what was typed so far
 * @param keep how the group may change besides the words of its parts
 */
public record PartForm<D extends Drafted, T>(
        Group group,
        Function<D, List<T>> list,
        BiFunction<D, List<T>, D> with,
        Function<T, String> key,
        Function<T, Map<String, String>> typed,
        Read<T> read,
        Inputs<D> inputs,
        Keep keep) {

    /** The field that holds the part's key, where it has one of its own. */
    public static final String KEY = "key";

    /** Makes a part of what was typed. */
    @FunctionalInterface
    interface Read<T> {
        T from(Optional<T> former, Typed typed);
    }

    /** The fields of a form. */
    @FunctionalInterface
    interface Inputs<D> {
        List<Input> of(D draft, Surroundings surroundings, Map<String, String> typed);
    }

    /** What a group lets happen to its parts. */
    public enum Keep {
        /** There is exactly one. */
        ONE,
        /** Parts come, go and change places; one must stay. */
        ORDERED,
        /** Parts come and go; their order says nothing. */
        LOOSE,
        /** Parts come, and stay once they are in force. */
        GROWING;

        public boolean adds() {
            return this != ONE;
        }

        boolean moves() {
            return this == ORDERED;
        }
    }

    public static List<PartForm<?, ?>> of(Thing thing) {
        return switch (thing) {
            case SHEET -> SheetForms.ALL;
            case JOINTS -> List.of(JointForm.JOINT);
            case ROUTE -> RouteForms.ALL;
            case PLAN -> PlanForms.ALL;
            case STAGES -> StageForms.ALL;
        };
    }

    public static Optional<PartForm<?, ?>> of(Thing thing, Group group) {
        return of(thing).stream().filter(form -> form.group == group).findFirst();
    }

    boolean has(Drafted draft, String wanted) {
        return find(draft, wanted).isPresent();
    }

    public Optional<Map<String, String>> typed(Drafted draft, String wanted) {
        return find(draft, wanted).map(typed);
    }

    public List<Input> inputs(Drafted draft, Surroundings surroundings, Map<String, String> present) {
        return inputs.of(cast(draft), surroundings, present);
    }

    /** The draft with the part put in: in place of the former one, or at the end. Only to be used if no fault was noted. */
    public Drafted put(Drafted draft, Optional<String> former, Typed sent) {
        D known = cast(draft);
        Optional<T> before = former.flatMap(wanted -> find(draft, wanted));
        T next = read.from(before, sent);
        String nextKey = key.apply(next);
        if (keep != Keep.ONE && !Optional.of(nextKey).equals(former) && has(draft, nextKey)) {
            sent.wrong(KEY, "process.keyTaken", nextKey);
        }
        if (!sent.filled().right()) {
            return draft;
        }
        var parts = new ArrayList<>(list.apply(known));
        before.ifPresentOrElse(one -> parts.set(parts.indexOf(one), next), () -> parts.add(next));
        return with.apply(known, parts);
    }

    /** The key under which the part was kept: as typed, or the one it had where the form shows none. */
    public String keyTyped(Drafted kept, Optional<String> former, Filled filled) {
        return Optional.of(filled.value(KEY))
                .filter(typed -> has(kept, typed))
                .or(() -> former)
                .orElse("");
    }

    /** The draft with a part one place up or down; as it is where there is no further place. */
    public Drafted moved(Drafted draft, String wanted, boolean up) {
        var parts = new ArrayList<>(list.apply(cast(draft)));
        int at = find(draft, wanted).map(parts::indexOf).orElse(-1);
        int to = up ? at - 1 : at + 1;
        if (!keep.moves() || at < 0 || to < 0 || to >= parts.size()) {
            return draft;
        }
        parts.add(to, parts.remove(at));
        return with.apply(cast(draft), parts);
    }

    public boolean mayGo(Drafted draft, Optional<Drafted> inForce, String wanted) {
        int least = keep == Keep.ORDERED ? 2 : 1;
        boolean stays = keep == Keep.ONE || codeStays(inForce, wanted);
        return !stays && has(draft, wanted) && list.apply(cast(draft)).size() >= least;
    }

    private boolean stands(Optional<Drafted> inForce, String wanted) {
        return inForce.filter(version -> has(version, wanted)).isPresent();
    }

    /** Whether the part is known by its code for good: nothing could be kept under another one. */
    public boolean codeStays(Optional<Drafted> inForce, String wanted) {
        return keep == Keep.GROWING && stands(inForce, wanted);
    }

    public Drafted without(Drafted draft, String wanted) {
        List<T> rest = list.apply(cast(draft)).stream()
                .filter(part -> !key.apply(part).equals(wanted))
                .toList();
        return with.apply(cast(draft), rest);
    }

    private Optional<T> find(Drafted draft, String wanted) {
        return list.apply(cast(draft)).stream()
                .filter(part -> key.apply(part).equals(wanted))
                .findFirst();
    }

    /** Safe, since forms are looked up by the thing that the draft is of. */
    @SuppressWarnings("unchecked")
    private D cast(Drafted draft) {
        return (D) draft;
    }
}
