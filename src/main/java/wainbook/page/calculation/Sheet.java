package wainbook.page.calculation;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.stream.Stream;
import wainbook.engineering.Calculation;
import wainbook.engineering.Fault;
import wainbook.engineering.Refusal;
import wainbook.engineering.Working;
import wainbook.page.Form;
import wainbook.page.Words;
import wainbook.page.calculation.CalculationView.Described;

/** A calculation seen from outside: what it takes and gives as JSON Schema, and its answer to a JSON object. */
final class Sheet<I extends Record, R extends Record> {

    private final Calculation<I, R> calculation;
    private final Class<I> inputs;
    private final Class<R> results;

    Sheet(Calculation<I, R> calculation) {
        this.calculation = calculation;
        this.inputs = parameter(0);
        this.results = parameter(1);
    }

    String name() {
        return calculation.name();
    }

    ObjectNode described() {
        ObjectNode described = Written.object();
        described.put("name", name());
        described.put("title", Words.of(calculation.title()));
        described.set("inputs", Schema.of(inputs));
        described.set("results", Schema.of(results));
        described.set("sources", Written.of(calculation.sources()));
        return described;
    }

    /** What it is, in words and without a figure. */
    Described forPeople() {
        return new Described(
                name(),
                Words.find("engineering.group." + group()).orElseGet(() -> Words.of("engineering.group.other")),
                Words.of(calculation.title()),
                Words.find("engineering." + name() + ".purpose"),
                Asked.of(name(), inputs),
                calculation.sources().stream().map(Cited::of).toList(),
                calculation.cautions().stream().map(Written::text).toList());
    }

    /** The form before anything is typed. */
    CalculationView empty() {
        return asked(Map.of());
    }

    /** The form with what was typed, and with what a field holds unless something else is said. */
    private CalculationView asked(Map<String, String> typed) {
        Form form = Form.of(typed);
        Described described = forPeople();
        for (Asked field : described.asked()) {
            form = form.value(field.name()).isBlank() ? form.with(field.name(), field.preset()) : form;
        }
        return CalculationView.of(described, form);
    }

    /** The names of what it takes and gives. */
    Stream<String> fields() {
        return Stream.of(inputs, results)
                .flatMap(type -> Arrays.stream(type.getRecordComponents()))
                .map(RecordComponent::getName);
    }

    /** A working, or the problem why there is none. */
    Reply answer(JsonNode body) {
        return answer(body, (known, working) -> Reply.worked(name(), known, working), Reply::faulty, Reply::impossible);
    }

    /** The same for people: faults at their fields, and what was typed still there. */
    CalculationView answer(Map<String, String> typed) {
        CalculationView asked = asked(typed);
        return answer(
                Typed.json(inputs, typed),
                (known, working) -> asked.with(Worked.of(name(), working)),
                faults -> CalculationView.of(asked.described(), TypedFaults.at(name(), asked.form(), faults)),
                refusal -> asked.with(new CalculationView.Impossible(
                        Written.text(refusal.impossible()), Written.text(refusal.check()))));
    }

    private <T> T answer(
            JsonNode body,
            BiFunction<I, Working<R>, T> worked,
            Function<List<Fault>, T> faulty,
            Function<Refusal, T> impossible) {
        Binding<I> bound = Binding.of(inputs, body);
        return bound.inputs()
                .filter(all -> bound.faults().isEmpty())
                .map(known -> calculation.of(known).fold(working -> worked.apply(known, working), faulty, impossible))
                .orElseGet(() -> faulty.apply(bound.faults()));
    }

    /** The last part of its package: what it reckons with. */
    private String group() {
        String place = declared().getPackageName();
        return place.substring(place.lastIndexOf('.') + 1);
    }

    @SuppressWarnings("unchecked")
    private <T> Class<T> parameter(int index) {
        return (Class<T>) asCalculation(declared()).findFirst().orElseThrow().getActualTypeArguments()[index];
    }

    /** The class that says it is a calculation, also when a bean's class was extended by its container. */
    private Class<?> declared() {
        return Stream.<Class<?>>iterate(calculation.getClass(), type -> type != null, Class::getSuperclass)
                .filter(type -> asCalculation(type).findFirst().isPresent())
                .findFirst()
                .orElseThrow(() -> new IllegalStateException(
                        calculation.getClass() + " does not name the records of its inputs and results"));
    }

    private static Stream<ParameterizedType> asCalculation(Class<?> type) {
        return Arrays.stream(type.getGenericInterfaces())
                .filter(ParameterizedType.class::isInstance)
                .map(ParameterizedType.class::cast)
                .filter(known -> known.getRawType() == Calculation.class);
    }
}
