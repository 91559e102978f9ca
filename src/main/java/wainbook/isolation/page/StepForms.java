package wainbook.isolation.page;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Stream;
import wainbook.act.Moment;
import wainbook.act.Reason;
import wainbook.isolation.Step;
import wainbook.isolation.step.Wanted;
import wainbook.ledger.History;
import wainbook.page.Form;
import wainbook.page.Words;
import wainbook.process.plan.Plan;

/**
 * Makes the forms of steps, each with what stands against it.
 *
 * @param rules says what stands against a step
 */
record StepForms(
        History history,
        Moment moment,
        Around around,
        Optional<SentBack> sentBack,
        Function<Wanted, List<Reason>> rules,
        ZoneId zone,
        ObjectMapper json) {

    /** A form that came back, with what it was refused for. */
    record SentBack(Step step, Form form, UUID id, List<Reason> refusals) {}

    /** Passes by itself while somebody reads the page, so it does not take the form away. */
    private static final Set<String> PASSES_BY_ITSELF = Set.of("isolation.tooQuick", "isolation.againTooSoon");

    StepForm form(Step step) {
        List<Field> fields = new FormFields(step, around).all();
        Optional<SentBack> back = sentBack.filter(sent -> sent.step() == step);
        return new StepForm(
                history.subject().code(),
                step,
                fields,
                against(step, fields),
                back.map(SentBack::form).orElse(Form.EMPTY),
                back.map(SentBack::id).orElseGet(UUID::randomUUID),
                history.number(),
                about(fields));
    }

    private List<Reason> against(Step step, List<Field> fields) {
        Map<String, List<String>> example = StepForm.example(fields);
        return SentForm.of(step, example, moment.at().atZone(zone), json).wanted().map(rules).orElse(List.of()).stream()
                .filter(reason -> !PASSES_BY_ITSELF.contains(reason.key()))
                .toList();
    }

    private Optional<String> about(List<Field> fields) {
        Optional<Plan> plan = around.isolation().plan();
        return fields.stream()
                .filter(field -> field.sort() == Field.Sort.HIDDEN)
                .flatMap(field -> switch (field.name()) {
                    case "point" ->
                        plan
                                .flatMap(known -> known.point(field.preset()))
                                .map(point -> point.code() + ", " + point.where())
                                .stream();
                    case "check" ->
                        plan.stream()
                                .flatMap(known -> known.restoration().stream())
                                .filter(check -> check.code().equals(field.preset()))
                                .map(check -> check.what());
                    case "paper", "permit" -> Stream.of(Words.of("isolating.paperNumber", field.preset()));
                    default -> Stream.<String>empty();
                })
                .findFirst();
    }
}
