package wainbook.process.draft;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wainbook.act.Reason;
import wainbook.process.ProcessSaying;
import wainbook.process.Route;
import wainbook.process.sheet.CheckSheet;

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
        surroundings
                .sheet(route.intakeSheet())
                .ifPresentOrElse(
                        survey -> surveyOnTheWay(survey, route).ifPresent(faults::add),
                        () -> faults.add(
                                Reason.of("process.unknownSheet", Reason.WORKS_RULE, "head", route.intakeSheet())));
        for (Route.Leg leg : route.legs()) {
            if (surroundings.stage(leg.stage()).isEmpty()) {
                faults.add(Reason.of("process.unknownLegStage", Reason.WORKS_RULE, leg.stage()));
            } else if (surroundings.stations().stream()
                    .noneMatch(station -> station.stage().equals(Optional.of(leg.stage())))) {
                faults.add(Reason.of("process.legWithoutStation", Reason.WORKS_RULE, leg.stage()));
            }
            surroundings
                    .sheet(leg.checkSheet())
                    .ifPresentOrElse(
                            sheet -> against(leg, sheet).ifPresent(faults::add),
                            () -> faults.add(Reason.of(
                                    "process.unknownSheet", Reason.WORKS_RULE, leg.stage(), leg.checkSheet())));
        }
        return List.copyOf(faults);
    }

    private static Optional<Reason> against(Route.Leg leg, CheckSheet sheet) {
        return sheet.stage().equals(leg.stage())
                ? Optional.empty()
                : Optional.of(Reason.of(
                        "process.sheetOfOtherStage", Reason.WORKS_RULE, leg.stage(), sheet.code(), sheet.stage()));
    }

    /** A vehicle is bound to a stage's sheet once: what was surveyed there would stand for the work. */
    static Optional<Reason> surveyOnTheWay(CheckSheet survey, Route route) {
        return route.leg(survey.stage())
                .map(leg -> Reason.of(
                        "process.surveyOnTheWay", Reason.WORKS_RULE, "head", survey.code(), route.code(), leg.stage()));
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
                    .say("checkSheet", leg.checkSheet())
                    .part());
        }
        return parts;
    }
}
