package wainbook.page.calculation;

import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import wainbook.engineering.Faults;
import wainbook.engineering.Sentence;
import wainbook.page.Words;

/**
 * A result that comes in several, each with parts of its own.
 *
 * @param name as a script reads it
 * @param heads the names of the parts, with their units
 */
public record Table(String name, String title, List<String> heads, List<List<String>> rows) {

    static Stream<Table> of(String calculation, Record results, Function<Object, String> text) {
        return Arrays.stream(results.getClass().getRecordComponents())
                .filter(part -> tabled(Faults.get(part, results)))
                .map(part -> of(calculation, part.getName(), (List<?>) Faults.get(part, results), text));
    }

    /** Whether a result is shown in a table, and not in a line. */
    static boolean tabled(Object value) {
        return value instanceof List<?> several
                && !several.isEmpty()
                && several.stream().allMatch(one -> one instanceof Record && !(one instanceof Sentence));
    }

    private static Table of(String calculation, String name, List<?> several, Function<Object, String> text) {
        List<RecordComponent> parts = List.of(several.get(0).getClass().getRecordComponents());
        return new Table(
                name,
                Asked.label(calculation, name),
                parts.stream().map(part -> head(calculation, part.getName())).toList(),
                several.stream()
                        .map(one -> parts.stream()
                                .map(part -> text.apply(Faults.get(part, (Record) one)))
                                .collect(Collectors.toList()))
                        .toList());
    }

    static String head(String calculation, String part) {
        String label = Asked.label(calculation, part);
        Optional<String> unit = Units.of(part).filter(known -> !label.contains("("));
        return unit.map(known -> Words.of("engineering.labelled", label, known)).orElse(label);
    }
}
