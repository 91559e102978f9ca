package wainbook.setup.taking.page;

import java.util.List;
import wainbook.page.Words;
import wainbook.setup.files.Change;

/** A difference as people read it. */
public record ChangeInWords(Change change) {

    static List<ChangeInWords> all(List<Change> changes) {
        return changes.stream().map(ChangeInWords::new).toList();
    }

    /** All of it in one line, for the command line. */
    public static String line(Change change) {
        var words = new ChangeInWords(change);
        StringBuilder line = new StringBuilder(Words.of("setup.changeLine", words.part(), change.key(), words.sort()));
        change.fields()
                .forEach(field -> line.append("\n    ")
                        .append(Words.of(
                                "setup.changeField", field.path(), shown(field.was()), shown(field.becomes()))));
        return line.toString();
    }

    public String part() {
        return Words.of("setup.part" + camel(change.part().name()));
    }

    public String sort() {
        return Words.of("setup.sort" + camel(change.sort().name()));
    }

    public String key() {
        return change.key();
    }

    public List<Change.Field> fields() {
        return change.fields().stream()
                .map(field -> new Change.Field(field.path(), shown(field.was()), shown(field.becomes())))
                .toList();
    }

    private static String shown(String text) {
        return text.isEmpty() ? Words.of("setup.nothing") : text;
    }

    private static String camel(String name) {
        StringBuilder camel = new StringBuilder();
        for (String word : name.split("_")) {
            camel.append(word.charAt(0)).append(word.substring(1).toLowerCase(Words.LOCALE));
        }
        return camel.toString();
    }
}
