package wainbook.process.draft;

import java.util.ArrayList;
import java.util.List;
import wainbook.act.Reason;
import wainbook.process.CheckSheet;
import wainbook.process.ProcessSaying;
import wainbook.process.Route;

/** A route as a draft. */
public record RouteDraft(Route route) implements Drafted {

    @Override
    public About about() {
        return About.route(route.code());
    }

    @Override
    public String title() {
        return route.title();
    }

    @Override
    public List<Reason> faults(Surroundings surroundings) {
        var faults = new ArrayList<Reason>();
        if (!surroundings.sheet(route.intakeSheet())) {
            faults.add(Reason.of("process.unknownSheet", Reason.WORKS_RULE, "head", route.intakeSheet()));
        }
        for (Route.Leg leg : route.legs()) {
            if (!surroundings.stages().contains(leg.stage())) {
                faults.add(Reason.of("process.unknownLegStage", Reason.WORKS_RULE, leg.stage()));
            }
            surroundings.sheets().stream()
                    .filter(sheet -> sheet.code().equals(leg.checkSheet()))
                    .findFirst()
                    .map(CheckSheet::stage)
                    .ifPresentOrElse(
                            stage -> {
                                if (!stage.equals(leg.stage())) {
                                    faults.add(Reason.of(
                                            "process.sheetOfOtherStage",
                                            Reason.WORKS_RULE,
                                            leg.stage(),
                                            leg.checkSheet(),
                                            stage));
                                }
                            },
                            () -> faults.add(Reason.of(
                                    "process.unknownSheet", Reason.WORKS_RULE, leg.stage(), leg.checkSheet())));
        }
        return List.copyOf(faults);
    }

    @Override
    public List<ProcessSaying> sayings(Revisions former) {
        return List.of(new ProcessSaying.RouteReleased(route, former.revision() + 1));
    }

    @Override
    public List<Part> parts() {
        var parts = new ArrayList<Part>();
        parts.add(Part.of(Part.Group.HEAD, "head", route.title())
                .say("title", route.title())
                .say("vehicleKind", route.vehicleKind())
                .say("intakeSheet", route.intakeSheet())
                .part());
        for (Route.Leg leg : route.legs()) {
            parts.add(Part.of(Part.Group.LEG, leg.stage(), leg.stage())
                    .say("place", route.legs().indexOf(leg) + 1)
                    .say("checkSheet", leg.checkSheet())
                    .part());
        }
        return parts;
    }
}
