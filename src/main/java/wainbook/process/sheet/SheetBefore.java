package wainbook.process.sheet;

import java.util.List;
import java.util.Optional;
import wainbook.process.sheet.CheckItem.Dependence;
import wainbook.process.sheet.CheckItem.PartUse;

/** A check sheet in the shape of {@code process.released/1}. Works have such entries on record: it never changes. */
public record SheetBefore(String code, String title, List<Item> items, String stage) {

    /** An item that could not say yet whether it may be conceded. */
    public record Item(
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
            int tries) {

        CheckItem newer() {
            return new CheckItem(
                    key,
                    title,
                    asks,
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
                    Optional.empty());
        }
    }

    public CheckSheet newer() {
        return new CheckSheet(code, title, items.stream().map(Item::newer).toList(), stage);
    }
}
