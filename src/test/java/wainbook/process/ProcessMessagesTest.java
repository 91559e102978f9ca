package wainbook.process;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.ResourceBundle;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Texts are named whole in code or in a template, or by what they begin with where an enum or a field ends the name. */
class ProcessMessagesTest {

    private static final Set<String> TEXTS =
            ResourceBundle.getBundle("messages/process").keySet();
    private static final String CODE = read("src/main/java/wainbook", ".java");
    private static final String PAGES = read("src/main/resources/templates", ".html");

    @Test
    void every_reason_that_the_code_names_has_a_text() {
        assertThat(TEXTS).containsAll(found("\"process\\.([a-zA-Z]+)\"", CODE));
    }

    @Test
    void every_text_is_asked_for() {
        Collection<String> asked = new TreeSet<>(found("\"process\\.([a-zA-Z]+)\"", CODE));
        asked.addAll(found("say:process\\.([a-zA-Z]+)", PAGES));
        Collection<String> beginnings = found("\"process\\.([a-zA-Z]+\\.)\"", CODE);

        assertThat(TEXTS)
                .allMatch(text -> asked.contains(text) || beginnings.stream().anyMatch(text::startsWith));
    }

    private static List<String> found(String pattern, String text) {
        return Pattern.compile(pattern)
                .matcher(text)
                .results()
                .map((MatchResult one) -> one.group(1))
                .toList();
    }

    private static String read(String folder, String ending) {
        try (Stream<Path> files = Files.walk(Path.of(folder))) {
            return files.filter(file -> file.toString().endsWith(ending))
                    .map(ProcessMessagesTest::text)
                    .collect(Collectors.joining("\n"));
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
