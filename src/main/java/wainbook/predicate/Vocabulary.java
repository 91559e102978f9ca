package wainbook.predicate;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The facts that a condition may speak of, by name. A name is snake_case words, joined by dots if there is need; none is
 * the beginning of another, since {@code order} and {@code order.country} could not both be values.
 */
public record Vocabulary(Map<String, FactType> types) {

    public Vocabulary {
        types = Collections.unmodifiableMap(new LinkedHashMap<>(types));
        for (String name : types.keySet()) {
            if (!name.matches("[a-z][a-z0-9_]*(\\.[a-z][a-z0-9_]*)*")) {
                throw new IllegalArgumentException("a fact's name is snake_case words joined by dots, not: " + name);
            }
            for (int dot = name.indexOf('.'); dot > 0; dot = name.indexOf('.', dot + 1)) {
                if (types.containsKey(name.substring(0, dot))) {
                    throw new IllegalArgumentException(name.substring(0, dot) + " is itself a fact, so not: " + name);
                }
            }
        }
    }

    /** A fact that is not of its declared type, or that nobody declared. */
    public record Misfit(String name, Object found, String expected) {}

    public Set<String> names() {
        return types.keySet();
    }

    /** What does not fit in facts that came from outside. Facts that are not there are no misfit: they are unknown. */
    public List<Misfit> misfits(Map<String, ?> facts) {
        var misfits = new ArrayList<Misfit>();
        facts.forEach((name, value) -> {
            FactType type = types.get(name);
            if (type == null) {
                misfits.add(new Misfit(name, value, "a known fact"));
            } else if (value == null || type.read(value).isEmpty()) {
                misfits.add(new Misfit(name, value, type.word()));
            }
        });
        return misfits;
    }
}
