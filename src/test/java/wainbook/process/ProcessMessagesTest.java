package wainbook.process;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ResourceBundle;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class ProcessMessagesTest {

    @Test
    void every_reason_that_the_code_names_has_a_text_and_every_text_a_reason() throws IOException {
        var named = new TreeSet<String>();
        try (Stream<Path> files = Files.walk(Path.of("src/main/java/wainbook/process"))) {
            files.filter(file -> file.toString().endsWith(".java"))
                    .forEach(file -> Pattern.compile("\"process\\.([a-zA-Z]+)\"")
                            .matcher(text(file))
                            .results()
                            .forEach(found -> named.add(found.group(1))));
        }

        assertThat(named)
                .containsExactlyInAnyOrderElementsOf(
                        ResourceBundle.getBundle("messages/process").keySet());
    }

    private static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
