package wainbook.process.page;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import wainbook.page.Form;
import wainbook.page.Option;
import wainbook.page.Words;
import wainbook.process.draft.Drafted;
import wainbook.process.draft.Part.Group;
import wainbook.process.draft.Revisions;
import wainbook.process.draft.Revisions.Version;
import wainbook.process.draft.SheetDraft;
import wainbook.process.draft.SideBySide;
import wainbook.process.draft.SideBySide.Fate;
import wainbook.process.draft.SideBySide.PartChange;
import wainbook.process.sheet.Changes;

/** Two revisions of one paper side by side. */
public record ChangesView(Revisions revisions, Version from, Version to) {

    public String name() {
        return PaperView.name(revisions.about());
    }

    public String path() {
        return revisions.about().path();
    }

    public SideBySide sideBySide() {
        return SideBySide.between(from.what(), to.what());
    }

    public Form form() {
        return Form.EMPTY.with("from", "" + from.revision()).with("to", "" + to.revision());
    }

    public List<Option> choices() {
        return revisions.versions().stream()
                .map(version ->
                        new Option("" + version.revision(), Words.of("process.revisionNumber", version.revision())))
                .toList();
    }

    public Optional<String> meaning(PartChange change) {
        return meaning(from.what(), to.what(), change);
    }

    /** What a changed item means for a vehicle that goes on by the newer sheet: the rule that rebinding goes by. */
    static Optional<String> meaning(Drafted from, Drafted to, PartChange change) {
        boolean stays = change.fate() == Fate.CHANGED || change.fate() == Fate.MOVED;
        if (!stays
                || change.part().group() != Group.ITEM
                || !(from instanceof SheetDraft former)
                || !(to instanceof SheetDraft next)) {
            return Optional.empty();
        }
        boolean kept = Changes.between(former.sheet(), next.sheet(), Set.of())
                .keepsEntriesOf(change.part().key());
        return Optional.of(Words.of(kept ? "process.entriesKept" : "process.entriesOpen"));
    }
}
