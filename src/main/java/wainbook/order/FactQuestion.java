package wainbook.order;

import java.util.List;
import java.util.Locale;
import wainbook.page.Option;
import wainbook.page.Words;
import wainbook.predicate.FactType;
import wainbook.process.VehicleFacts;

/**
 * A fact of the vehicle as a form asks for it.
 *
 * @param stated what is stated or typed so far; empty if nothing
 */
public record FactQuestion(String fact, FactType type, String stated) {

    public static FactQuestion of(String fact, String stated) {
        return new FactQuestion(fact, VehicleFacts.VOCABULARY.types().get(fact), stated);
    }

    public boolean truth() {
        return type == FactType.TRUTH;
    }

    public String input() {
        return type == FactType.DATE ? "date" : "text";
    }

    public String mode() {
        return type == FactType.NUMBER || type == FactType.WHOLE ? "decimal" : "text";
    }

    public String label() {
        return name(fact);
    }

    public String hint() {
        return Words.of("order.factHint." + type.name());
    }

    public List<Option> truths() {
        return List.of(new Option("true", Words.of("page.yes")), new Option("false", Words.of("page.no")));
    }

    public String inWords() {
        return word(stated);
    }

    /** A fact's name in words; one that has none yet is shown by the name that rules use. */
    public static String name(String fact) {
        return Words.find("order.fact." + fact).orElseGet(() -> {
            String plain = fact.replace('_', ' ');
            return plain.substring(0, 1).toUpperCase(Locale.ROOT) + plain.substring(1);
        });
    }

    /** What was stated, in words. */
    public static String word(String stated) {
        return switch (stated) {
            case "true" -> Words.of("page.yes");
            case "false" -> Words.of("page.no");
            default -> stated;
        };
    }
}
