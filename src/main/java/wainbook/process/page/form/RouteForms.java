package wainbook.process.page.form;

import java.util.List;
import java.util.Map;
import wainbook.page.Option;
import wainbook.page.Words;
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
                    typed.chosen("intakeSheet")),
            (draft, surroundings, typed) -> List.of(
                    Input.line("title"), Input.line("vehicleKind"), Input.choice("intakeSheet", sheets(surroundings))),
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
            (former, typed) -> new Route.Leg(typed.chosen("key"), typed.chosen("checkSheet")),
            (draft, surroundings, typed) -> List.of(
                    Input.choice("key", StageForms.options(surroundings.stages()))
                            .as("stage"),
                    Input.choice("checkSheet", sheets(surroundings))),
            PartForm.Keep.ORDERED);

    static final List<PartForm<?, ?>> ALL = List.of(HEAD, LEG);

    private RouteForms() {}

    private static List<Option> sheets(Surroundings surroundings) {
        return surroundings.sheets().stream()
                .map(sheet -> new Option(sheet.code(), Words.of("process.codeAndTitle", sheet.code(), sheet.title())))
                .toList();
    }
}
