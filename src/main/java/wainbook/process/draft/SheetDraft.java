package wainbook.process.draft;

import java.util.ArrayList;
import java.util.List;
import wainbook.act.Reason;
import wainbook.process.CheckSheet;
import wainbook.process.Draft;
import wainbook.process.ProcessSaying;

/** A check sheet as a draft. */
public record SheetDraft(CheckSheet sheet) implements Drafted {

    @Override
    public About about() {
        return About.sheet(sheet.code());
    }

    @Override
    public String title() {
        return sheet.title();
    }

    @Override
    public List<Reason> faults(Surroundings surroundings) {
        return new Draft(sheet).check(surroundings.known());
    }

    @Override
    public List<ProcessSaying> sayings(Revisions former) {
        return List.of(new ProcessSaying.Released(sheet, former.revision() + 1));
    }

    @Override
    public List<Part> parts() {
        var parts = new ArrayList<Part>();
        parts.add(Part.of(Part.Group.HEAD, "head", sheet.title())
                .say("title", sheet.title())
                .say("stage", sheet.stage())
                .part());
        sheet.items().forEach(item -> parts.add(ItemInWords.part(item)));
        return parts;
    }
}
