package wainbook.page.calculation;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import wainbook.engineering.Decision;
import wainbook.engineering.Faults;
import wainbook.engineering.Plain;
import wainbook.engineering.Sentence;
import wainbook.engineering.Verdict;
import wainbook.engineering.Working;
import wainbook.page.Words;

/**
 * A working as its page shows it.
 *
 * @param judged what was compared with which limits; absent where nothing is judged
 */
public record Worked(
        Verdict verdict,
        String because,
        Optional<Judged> judged,
        List<Row> results,
        List<Table> tables,
        List<Line> steps,
        List<Cited> sources,
        List<String> cautions) {

    /** A result in words. */
    public record Row(String name, String label, String text, Optional<String> unit) {}

    /** A step, for a reader with a pencil. */
    public record Line(String name, String formula, String figures, String text, String unit) {}

    /** What was judged: the value with its uncertainty, the limits, the rule. */
    public record Judged(
            String text,
            String uncertainty,
            String unit,
            Optional<String> lower,
            Optional<String> upper,
            String rule) {}

    static Worked of(String calculation, Working<?> working) {
        double limit = working.decision()
                .flatMap(decision -> decision.lower().or(decision::upper))
                .orElse(Double.MAX_VALUE);
        return new Worked(
                working.verdict(),
                Written.text(working.because()),
                working.decision().map(decision -> judged(decision, limit)),
                Arrays.stream(working.results().getClass().getRecordComponents())
                        .filter(part -> !Table.tabled(Faults.get(part, working.results())))
                        .map(part -> row(calculation, part.getName(), Faults.get(part, working.results()), limit))
                        .toList(),
                Table.of(calculation, working.results(), value -> text(calculation, value, limit))
                        .toList(),
                working.steps().stream()
                        .map(step -> new Line(
                                Words.of("engineering.step." + step.name()),
                                step.formula(),
                                step.figures(),
                                Plain.beside(limit, step.value()),
                                Units.written(step.unit())))
                        .toList(),
                working.sources().stream().map(Cited::of).toList(),
                working.cautions().stream().map(Written::text).toList());
    }

    /** What was decided, in a word. */
    public String word() {
        return Words.of("engineering.verdict." + verdict);
    }

    public boolean undecided() {
        return verdict == Verdict.UNDECIDED;
    }

    public boolean passed() {
        return verdict == Verdict.PASS;
    }

    private static Judged judged(Decision decision, double limit) {
        return new Judged(
                Plain.beside(limit, decision.value()),
                Plain.text(decision.expandedUncertainty()),
                Units.written(decision.unit()),
                decision.lower().map(Plain::text),
                decision.upper().map(Plain::text),
                Written.text(decision.rule()));
    }

    private static Row row(String calculation, String name, Object value, double limit) {
        return new Row(name, Asked.label(calculation, name), text(calculation, value, limit), Units.of(name));
    }

    /** Something with parts of its own inside a cell of a table. */
    private static String parts(String calculation, Record one, double limit) {
        return Arrays.stream(one.getClass().getRecordComponents())
                .map(part -> Asked.label(calculation, part.getName()) + " "
                        + text(calculation, Faults.get(part, one), limit))
                .collect(Collectors.joining(", "));
    }

    private static String text(String calculation, Object value, double limit) {
        if (value instanceof Optional<?> optional) {
            return optional.map(inner -> text(calculation, inner, limit))
                    .orElseGet(() -> Words.of("engineering.noResult"));
        }
        if (value instanceof Double number) {
            return Plain.beside(limit, number);
        }
        if (value instanceof Boolean truth) {
            return Words.of(truth ? "page.yes" : "page.no");
        }
        if (value instanceof Enum<?>) {
            return Words.find("engineering.choice." + value).orElse(String.valueOf(value));
        }
        if (value instanceof Sentence sentence) {
            return Written.text(sentence);
        }
        if (value instanceof List<?> several && several.stream().noneMatch(Record.class::isInstance)) {
            return several.isEmpty()
                    ? Words.of("engineering.noResult")
                    : several.stream().map(one -> text(calculation, one, limit)).collect(Collectors.joining(", "));
        }
        if (value instanceof List<?> sentences && sentences.stream().allMatch(Sentence.class::isInstance)) {
            return sentences.stream().map(one -> text(calculation, one, limit)).collect(Collectors.joining(" "));
        }
        if (value instanceof List<?> several && several.stream().allMatch(Record.class::isInstance)) {
            return several.stream()
                    .map(one -> parts(calculation, (Record) one, limit))
                    .collect(Collectors.joining("; "));
        }
        return value instanceof Record || value instanceof Iterable<?> || value instanceof java.util.Map<?, ?>
                ? Written.of(value).toString()
                : String.valueOf(value);
    }
}
