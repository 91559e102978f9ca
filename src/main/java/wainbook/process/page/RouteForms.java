package wainbook.process.page;

import java.util.List;
import java.util.Map;
import wainbook.process.CheckSheet;
import wainbook.process.Route;
import wainbook.process.draft.Part.Group;
import wainbook.process.draft.RouteDraft;
import wainbook.process.draft.Surroundings;

/** The forms of a route: its head, and one leg. */
final class RouteForms {

    private static final PartForm<RouteDraft, Route> HEAD = new PartForm<>(
            Group.HEAD,
            draft -> List.of(draft.route()),
            (draft, heads) -> new RouteDraft(heads.get(0)),
            route -> "head",
            route -> Map.of(
                    "title", route.title(), "vehicleKind", route.vehicleKind(), "intakeSheet", route.intakeSheet()),
            (former, typed) -> new Route(
                    former.orElseThrow().code(),
                    typed.text("title"),
                    former.orElseThrow().legs(),
                    typed.code("vehicleKind"),
                    typed.code("intakeSheet")),
            (draft, surroundings, typed) -> List.of(
                    Input.line("title"),
                    Input.line("vehicleKind"),
                    Input.choice("intakeSheet", Input.codes(sheets(surroundings)))),
            PartForm.Keep.ONE);

    private static final PartForm<RouteDraft, Route.Leg> LEG = new PartForm<>(
            Group.LEG,
            draft -> draft.route().legs(),
            (draft, legs) -> new RouteDraft(new Route(
                    draft.route().code(),
                    draft.route().title(),
                    legs,
                    draft.route().vehicleKind(),
                    draft.route().intakeSheet())),
            Route.Leg::stage,
            leg -> Map.of("key", leg.stage(), "checkSheet", leg.checkSheet()),
            (former, typed) -> new Route.Leg(typed.code("key"), typed.code("checkSheet")),
            (draft, surroundings, typed) -> List.of(
                    Input.choice(
                            "key",
                            Input.codes(surroundings.known().stages().stream()
                                    .sorted()
                                    .toList())),
                    Input.choice("checkSheet", Input.codes(sheets(surroundings)))),
            PartForm.Keep.ORDERED);

    static final List<PartForm<?, ?>> ALL = List.of(HEAD, LEG);

    private RouteForms() {}

    private static List<String> sheets(Surroundings surroundings) {
        return surroundings.sheets().stream().map(CheckSheet::code).toList();
    }
}
