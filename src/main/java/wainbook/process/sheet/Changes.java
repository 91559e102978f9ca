package wainbook.process.sheet;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import wainbook.process.joint.Joint;

/**
 * What a new revision of a check sheet changes against the former, by item key. When a vehicle moves to the newer revision
 * its entries for unchanged items are kept; changed and added items are open.
 */
public record Changes(List<String> added, List<String> changed, Set<String> unchanged, List<String> removed) {

    public Changes {
        added = List.copyOf(added);
        changed = List.copyOf(changed);
        unchanged = Set.copyOf(unchanged);
        removed = List.copyOf(removed);
    }

    /**
     * Compares two revisions.
     *
     * @param changedJoints joints that were released anew with other values in between: an item about one of them is changed
     *     although its own words are not
     */
    public static Changes between(CheckSheet former, CheckSheet next, Set<String> changedJoints) {
        Predicate<CheckItem> known = item -> former.item(item.key()).isPresent();
        Predicate<CheckItem> same =
                item -> former.item(item.key()).filter(item::answers).isPresent()
                        && item.joint().filter(changedJoints::contains).isEmpty();
        return new Changes(
                keys(next, known.negate()),
                keys(next, known.and(same.negate())),
                new HashSet<>(keys(next, known.and(same))),
                keys(former, item -> next.item(item.key()).isEmpty()));
    }

    /** The codes of joints whose values differ between two releases, or that stand in only one of them. */
    public static Set<String> joints(List<Joint> former, List<Joint> next) {
        var differing = new HashSet<String>();
        former.stream().filter(joint -> !next.contains(joint)).map(Joint::code).forEach(differing::add);
        next.stream().filter(joint -> !former.contains(joint)).map(Joint::code).forEach(differing::add);
        return differing;
    }

    public boolean keepsEntriesOf(String key) {
        return unchanged.contains(key);
    }

    private static List<String> keys(CheckSheet sheet, Predicate<CheckItem> which) {
        return sheet.items().stream().filter(which).map(CheckItem::key).toList();
    }
}
