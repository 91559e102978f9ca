package wainbook.process.draft;

import java.util.ArrayList;
import java.util.List;
import wainbook.act.Reason;
import wainbook.process.ProcessSaying;
import wainbook.process.Route;
import wainbook.process.rule.Draft;
import wainbook.process.sheet.CheckSheet;

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
        var faults = new ArrayList<>(new Draft(sheet).check(surroundings.known()));
        for (Route route : surroundings.routes()) {
            if (route.intakeSheet().equals(sheet.code())) {
                RouteDraft.surveyOnTheWay(sheet, route).ifPresent(faults::add);
            }
            route.legs().stream()
                    .filter(leg -> leg.checkSheet().equals(sheet.code()))
                    .filter(leg -> !leg.stage().equals(sheet.stage()))
                    .forEach(leg -> faults.add(Reason.of(
                            "process.sheetLeavesRoute",
                            Reason.WORKS_RULE,
                            "head",
                            route.code(),
                            leg.stage(),
                            sheet.stage())));
        }
        return List.copyOf(faults);
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
