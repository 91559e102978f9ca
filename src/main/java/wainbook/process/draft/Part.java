package wainbook.process.draft;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wainbook.page.Words;

/**
 * A part of a paper in words: an item of a sheet, a joint, a leg.
 *
 * @param group what kind of part; keys are told apart within a group
 * @param lines what it says, only what is there
 */
public record Part(Group group, String key, String title, List<Line> lines) {

    /** The kinds of part. The head is what the paper says of itself. */
    public enum Group {
        HEAD("head"),
        ITEM("item"),
        JOINT("joint"),
        LEG("leg"),
        SOURCE("source"),
        POINT("point"),
        CHECK("check"),
        STAGE("stage"),
        STATION("station");

        private final String word;

        Group(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }

        public static Optional<Group> of(String word) {
            return List.of(values()).stream()
                    .filter(group -> group.word.equals(word))
                    .findFirst();
        }
    }

    /**
     * One thing that a part says.
     *
     * @param name of the field; its label is the text {@code process.field.<name>}
     * @param calculation where the figures stand open, if they were worked out
     */
    public record Line(String name, String value, Optional<String> calculation) {
        public String label() {
            return label(name);
        }

        static String label(String name) {
            return Words.of("process.field." + name);
        }
    }

    public Part {
        lines = List.copyOf(lines);
    }

    /** Unique among the parts of one paper, and fit for an address. */
    public String anchor() {
        return group.word() + "-" + key;
    }

    public Optional<Line> line(String name) {
        return lines.stream().filter(line -> line.name().equals(name)).findFirst();
    }

    static Writer of(Group group, String key, String title) {
        return new Writer(group, key, title);
    }

    /** Writes a part down line by line. */
    static final class Writer {
        private final Group group;
        private final String key;
        private final String title;
        private final List<Line> lines = new ArrayList<>();

        private Writer(Group group, String key, String title) {
            this.group = group;
            this.key = key;
            this.title = title;
        }

        Writer say(String name, Object value) {
            String text = String.valueOf(value);
            if (!text.isEmpty()) {
                lines.add(new Line(name, text, Optional.empty()));
            }
            return this;
        }

        Writer say(String name, Optional<?> value) {
            value.ifPresent(there -> say(name, (Object) there));
            return this;
        }

        Writer worked(String name, String value, Optional<String> calculation) {
            lines.add(new Line(name, value, calculation));
            return this;
        }

        Writer yes(String name, boolean holds) {
            return holds ? say(name, (Object) Words.of("page.yes")) : this;
        }

        Part part() {
            return new Part(group, key, title, lines);
        }
    }
}
