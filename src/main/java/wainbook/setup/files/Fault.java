package wainbook.setup.files;

import java.util.List;
import wainbook.act.Reason;
import wainbook.page.Words;

/** Something in a file that cannot be taken, and why. */
public record Fault(Place place, Reason reason) {

    /**
     * A fault of the file itself.
     *
     * @param rule the key of its text in {@code messages/setup}, which gets place, found and expected
     */
    static Fault of(Place place, String rule, String found, String expected) {
        return new Fault(place, Reason.of("setup." + rule, Reason.WORKS_RULE, place, found, expected));
    }

    /** The place in numbers, as a list or a spreadsheet shows it. */
    public String line() {
        return place.line().map(String::valueOf).orElse("");
    }

    public String column() {
        return place.column().map(String::valueOf).orElse("");
    }

    public String text() {
        return Words.of(reason.key(), reason.arguments().toArray());
    }

    /** What stands there; for a rule of a room, what the rule names. */
    public String found() {
        List<String> arguments = reason.arguments();
        return ofTheFile() ? arguments.get(1) : String.join(", ", arguments.subList(0, Math.min(2, arguments.size())));
    }

    /** What would be right; for a rule of a room, what its text says to do. */
    public String expected() {
        String text = text();
        return ofTheFile()
                ? reason.arguments().get(2)
                : text.substring(text.lastIndexOf(". ", text.length() - 2) + 1).strip();
    }

    private boolean ofTheFile() {
        return reason.key().startsWith("setup.");
    }

    @Override
    public String toString() {
        return place + " " + reason.key() + " " + reason.arguments();
    }
}
