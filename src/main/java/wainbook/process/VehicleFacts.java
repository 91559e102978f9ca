package wainbook.process;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import wainbook.predicate.FactType;
import wainbook.predicate.Predicates;
import wainbook.predicate.Vocabulary;

/** The facts of a vehicle that a check item's condition may speak of, and how they are read from what was stated. */
public final class VehicleFacts {

    public static final Vocabulary VOCABULARY = new Vocabulary(types());

    /** Shared: made once, since the first one is slow. */
    public static final Predicates PREDICATES = new Predicates(VOCABULARY);

    private VehicleFacts() {}

    private static Map<String, FactType> types() {
        var types = new LinkedHashMap<String, FactType>();
        types.put("vehicle_kind", FactType.TEXT);
        types.put("variant", FactType.TEXT);
        types.put("packs", FactType.WHOLE);
        types.put("power_take_off", FactType.TRUTH);
        types.put("tail_lift", FactType.TRUTH);
        types.put("heat_pump", FactType.TRUTH);
        types.put("wheelchair_ramp", FactType.TRUTH);
        types.put("roof_packs", FactType.TRUTH);
        types.put("air_conditioning", FactType.TRUTH);
        return types;
    }

    /** Whether the text states the fact in its type. */
    public static boolean states(String fact, String stated) {
        return read(fact, stated).isPresent();
    }

    /** What was stated, each in its type; what does not read is left out and so stays unknown. */
    public static Map<String, Object> typed(Map<String, String> stated) {
        var typed = new LinkedHashMap<String, Object>();
        stated.forEach((fact, text) -> read(fact, text).ifPresent(value -> typed.put(fact, value)));
        return typed;
    }

    private static Optional<Object> read(String fact, String text) {
        FactType type = VOCABULARY.types().get(fact);
        if (type == null) {
            return Optional.empty();
        }
        return switch (type) {
            case TRUTH -> text.matches("true|false") ? Optional.of(Boolean.valueOf(text)) : Optional.empty();
            case WHOLE -> text.matches("-?\\d{1,9}") ? Optional.of(Integer.valueOf(text)) : Optional.empty();
            case NUMBER ->
                text.matches("-?\\d{1,12}(\\.\\d{1,6})?") ? Optional.of(Double.valueOf(text)) : Optional.empty();
            case TEXT, DATE -> text.isBlank() ? Optional.empty() : Optional.of(text);
            case TEXTS -> Optional.empty();
        };
    }
}
