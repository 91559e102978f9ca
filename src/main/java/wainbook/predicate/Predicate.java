package wainbook.predicate;

import dev.cel.runtime.CelAttribute;
import dev.cel.runtime.CelAttributePattern;
import dev.cel.runtime.CelEvaluationException;
import dev.cel.runtime.CelUnknownSet;
import dev.cel.runtime.PartialVars;
import dev.cel.runtime.Program;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** A compiled condition. Immutable and thread-safe; two of the same text over the same vocabulary are equal in effect. */
public final class Predicate {

    private final String text;
    private final Set<String> names;
    private final Vocabulary vocabulary;
    private final Program program;

    Predicate(String text, Set<String> names, Vocabulary vocabulary, Program program) {
        this.text = text;
        this.names = Set.copyOf(names);
        this.vocabulary = vocabulary;
        this.program = program;
    }

    public String text() {
        return text;
    }

    /** The facts it speaks of. */
    public Set<String> names() {
        return names;
    }

    /**
     * Decides from the facts in hand.
     *
     * @param facts what is known, by name; a fact that is absent or null is unknown, one that the condition does not speak
     *     of is not looked at
     * @throws IllegalArgumentException if a fact is not of its declared type: ask {@link Vocabulary#misfits} first where
     *     facts come from outside
     */
    public Answer answer(Map<String, ?> facts) {
        var known = new HashMap<String, Object>();
        var unknown = new ArrayList<CelAttributePattern>();
        for (String name : names) {
            Object value = facts.get(name);
            if (value == null) {
                unknown.add(CelAttributePattern.fromQualifiedIdentifier(name));
            } else {
                known.put(name, read(name, value));
            }
        }
        try {
            return answer(program.eval(PartialVars.of(known, unknown.toArray(CelAttributePattern[]::new))));
        } catch (CelEvaluationException failed) {
            return Answer.trouble(Optional.ofNullable(failed.getMessage())
                    .orElse(failed.getClass().getSimpleName()));
        }
    }

    private Object read(String name, Object value) {
        FactType type = vocabulary.types().get(name);
        return type.read(value)
                .orElseThrow(() -> new IllegalArgumentException(name + " is " + type.word() + ", not: " + value));
    }

    private static Answer answer(Object result) {
        if (result instanceof CelUnknownSet unknown) {
            List<String> missing =
                    unknown.attributes().stream().map(CelAttribute::toString).toList();
            return Answer.missing(missing);
        }
        return Answer.of(Boolean.TRUE.equals(result));
    }

    @Override
    public String toString() {
        return text;
    }
}
