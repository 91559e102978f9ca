package wainbook.page.calculation;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.util.Arrays;
import java.util.stream.Stream;
import wainbook.engineering.Answer;
import wainbook.engineering.Calculation;
import wainbook.page.Words;

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

    /** A working, or the problem why there is none. */
    Reply answer(JsonNode body) {
        Binding<I> bound = Binding.of(inputs, body);
        return bound.inputs()
                .filter(all -> bound.faults().isEmpty())
                .map(this::worked)
                .orElseGet(() -> Reply.faulty(bound.faults()));
    }

    private Reply worked(I known) {
        Answer<R> answer = calculation.of(known);
        return answer.fold(working -> Reply.worked(name(), known, working), Reply::faulty, Reply::impossible);
    }

    /** Read from the class's declaration, also when a bean's class was extended by its container. */
    @SuppressWarnings("unchecked")
    private <T> Class<T> parameter(int index) {
        return (Class<T>) Stream.<Class<?>>iterate(calculation.getClass(), type -> type != null, Class::getSuperclass)
                .flatMap(type -> Arrays.stream(type.getGenericInterfaces()))
                .filter(ParameterizedType.class::isInstance)
                .map(ParameterizedType.class::cast)
                .filter(type -> type.getRawType() == Calculation.class)
                .map(type -> type.getActualTypeArguments()[index])
                .map(Type.class::cast)
                .findFirst()
                .orElseThrow(() -> new IllegalStateException(
                        calculation.getClass() + " does not name the records of its inputs and results"));
    }
}
