package wainbook.process.page.form;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import wainbook.page.Option;
import wainbook.process.Stage;
import wainbook.process.Station;
import wainbook.process.draft.Part.Group;
import wainbook.process.draft.StagesDraft;

/** The forms of a stage and of a station. Both come and stay. */
final class StageForms {

    private static final PartForm<StagesDraft, Stage> STAGE = new PartForm<>(
            Group.STAGE,
            StagesDraft::stages,
            (draft, stages) -> new StagesDraft(stages, draft.stations()),
            Stage::code,
            stage -> Map.of("key", stage.code(), "number", "" + stage.number(), "title", stage.title()),
            (former, typed) ->
                    new Stage(code(former.map(Stage::code), typed), typed.whole("number", 0, 999), typed.text("title")),
            (draft, surroundings, typed) -> List.of(Input.line("key"), Input.whole("number"), Input.line("title")),
            PartForm.Keep.GROWING);

    private static final PartForm<StagesDraft, Station> STATION = new PartForm<>(
            Group.STATION,
            StagesDraft::stations,
            (draft, stations) -> new StagesDraft(draft.stages(), stations),
            Station::code,
            station -> Map.of("key", station.code(), "stage", station.stage().orElse(""), "title", station.title()),
            (former, typed) ->
                    new Station(code(former.map(Station::code), typed), typed.maybeCode("stage"), typed.text("title")),
            (draft, surroundings, typed) -> List.of(
                    Input.line("key"), Input.choiceOrNone("stage", options(draft.stages())), Input.line("title")),
            PartForm.Keep.GROWING);

    static final List<PartForm<?, ?>> ALL = List.of(STAGE, STATION);

    private StageForms() {}

    static List<Option> options(List<Stage> stages) {
        return stages.stream()
                .map(stage -> new Option(stage.code(), stage.title()))
                .toList();
    }

    /** One that is in force keeps its code: the form does not show it. */
    private static String code(Optional<String> former, Typed typed) {
        boolean kept = former.isPresent() && typed.filled().value("key").isEmpty();
        return kept ? former.get() : typed.code("key");
    }
}
