package wainbook.process.sheet;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import wainbook.process.Code;

/**
 * One line of a check sheet.
 *
 * @param key stays the same from revision to revision, since entries are kept under it
 * @param competence the code of the competence that the person must hold
 * @param caution what can hurt here, shown before the work
 * @param plannedMinutes working minutes for the people planned
 * @param zone where on the vehicle
 * @param parts what is fitted
 * @param after keys of items of the same sheet that must pass first
 * @param dependsOn what makes a passed entry stale when it is disturbed later
 * @param appliesWhen a condition over the vehicle's facts; absent: always
 * @param tries how often a failed result may be put right before a nonconformity opens
 * @param noConcession what it belongs to that no concession is given for
 */
public record CheckItem(
        String key,
        String title,
        Ask asks,
        Condition condition,
        Optional<String> competence,
        Optional<String> caution,
        int plannedMinutes,
        Optional<String> zone,
        List<PartUse> parts,
        List<String> after,
        List<Dependence> dependsOn,
        Optional<String> appliesWhen,
        int tries,
        Optional<BeyondConcession> noConcession) {

    public CheckItem {
        Code.checked("an item's key", key);
        Code.titled("an item", title);
        if (plannedMinutes < 0 || plannedMinutes > 10_000) {
            throw new IllegalArgumentException("planned minutes are 0 to 10000, not " + plannedMinutes);
        }
        if (tries < 1 || tries > 20) {
            throw new IllegalArgumentException("an item may be tried 1 to 20 times, not " + tries);
        }
        parts = List.copyOf(parts);
        after = List.copyOf(after);
        dependsOn = List.copyOf(dependsOn);
    }

    /** A part that is fitted, and how many of it. */
    public record PartUse(String part, int count) {
        public PartUse {
            Code.checked("a part", part);
            if (count < 1) {
                throw new IllegalArgumentException("a part is used once or more, not " + count + " times");
            }
        }
    }

    /** Something whose fitting, removing, opening or doing again makes an earlier entry stale. */
    public record Dependence(Sort sort, String code) {

        /** What may be disturbed. */
        public enum Sort {
            PART,
            ITEM
        }

        public Dependence {
            Code.checked("what an item depends on", code);
        }
    }

    /** As it is on a vehicle of which these facts are stated. */
    public CheckItem on(Map<String, String> stated) {
        return asking(asks.on(stated));
    }

    public CheckItem asking(Ask other) {
        return new CheckItem(
                key,
                title,
                other,
                condition,
                competence,
                caution,
                plannedMinutes,
                zone,
                parts,
                after,
                dependsOn,
                appliesWhen,
                tries,
                noConcession);
    }

    /** Facts that its rows follow and that nobody stated. */
    public List<String> missing(Map<String, String> stated) {
        return VehicleRows.missing(asks.rowsByFact(), stated).toList();
    }

    /** The joint it is about, whichever way it asks. */
    public Optional<String> joint() {
        if (asks instanceof Ask.Tighten tighten) {
            return Optional.of(tighten.joint());
        }
        if (asks instanceof Ask.Recheck recheck) {
            return Optional.of(recheck.joint());
        }
        return asks instanceof Ask.Confirm confirm ? confirm.joint() : Optional.empty();
    }

    /**
     * Whether an entry made for this item answers the other one as well. Only the plan's minutes, the place and the caution
     * may differ: other words in a title may ask for other work.
     */
    public boolean answers(CheckItem other) {
        return equals(new CheckItem(
                other.key,
                other.title,
                other.asks,
                other.condition,
                other.competence,
                caution,
                plannedMinutes,
                zone,
                other.parts,
                other.after,
                other.dependsOn,
                other.appliesWhen,
                other.tries,
                other.noConcession));
    }
}
