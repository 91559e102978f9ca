package wainbook.page;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A form as it was sent: what was typed stays, and every fault stands at its field.
 *
 * @param typed what stands in each field
 * @param faults what is wrong, in the order of the fields
 */
public record Form(Map<String, String> typed, List<Fault> faults) {

    /**
     * What is wrong at one field.
     *
     * @param field the field's name
     * @param text what is wrong and what to do, in words
     */
    public record Fault(String field, String text) {}

    public static final Form EMPTY = new Form(Map.of(), List.of());

    public Form {
        typed = Map.copyOf(typed);
        faults = List.copyOf(faults);
    }

    public static Form of(Map<String, String> typed) {
        return new Form(typed, List.of());
    }

    /** This form with one more fault; {@code key} and {@code arguments} are those of {@link Words#of}. */
    public Form wrong(String field, String key, Object... arguments) {
        List<Fault> more = new ArrayList<>(faults);
        more.add(new Fault(field, Words.of(key, arguments)));
        return new Form(typed, more);
    }

    public Form with(String field, String value) {
        Map<String, String> more = new LinkedHashMap<>(typed);
        more.put(field, value);
        return new Form(more, faults);
    }

    public boolean right() {
        return faults.isEmpty();
    }

    public String value(String field) {
        return typed.getOrDefault(field, "");
    }

    public Optional<String> fault(String field) {
        return faults.stream()
                .filter(fault -> fault.field().equals(field))
                .map(Fault::text)
                .findFirst();
    }
}
