package wainbook.page.calculation;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;

/**
 * What each calculation says of one example, line by line, against the text that a person has read: sentence, steps with their
 * figures, verdict. After a change that is meant, the text is in target/workings.txt; read it before it is taken over.
 */
class WorkingsTest {

    private static final Path EXAMPLES = Path.of("src/test/resources/house/calculation-examples.txt");
    private static final Path READ = Path.of("src/test/resources/house/workings.txt");
    private static final Path FOUND = Path.of("target/workings.txt");
    private static final Calculations CALCULATIONS = new Calculations(Calculations.PURE.stream());

    @Test
    void no_working_changes_unread() throws IOException {
        List<String> examples = Files.readAllLines(EXAMPLES, StandardCharsets.UTF_8);
        String found = examples.stream().map(WorkingsTest::working).collect(Collectors.joining("\n"));
        Files.writeString(FOUND, found, StandardCharsets.UTF_8);

        assertThat(found).isEqualTo(Files.readString(READ, StandardCharsets.UTF_8));
    }

    private static String working(String example) {
        String name = example.substring(0, example.indexOf(' '));
        String asked = example.substring(example.indexOf(' ') + 1);
        JsonNode answer =
                Body.read(asked, CALCULATIONS.named(name).orElseThrow()::answer).body();
        String steps = StreamSupport.stream(answer.path("steps").spliterator(), false)
                .map(step -> "  " + step.path("name").asText() + ": "
                        + step.path("formula").asText() + " = "
                        + step.path("figures").asText() + " = " + rounded(step.path("value")) + " "
                        + step.path("unit").asText())
                .map(line -> line.stripTrailing() + "\n")
                .collect(Collectors.joining());
        String hints = StreamSupport.stream(answer.path("results").path("hints").spliterator(), false)
                .map(hint -> "  hint: " + hint.asText() + "\n")
                .collect(Collectors.joining());
        return name + ", " + answer.path("verdict").asText() + ": "
                + answer.path("because").asText() + "\n" + steps + hints;
    }

    /** Far from the last bits, which may differ from one machine to another. */
    private static String rounded(JsonNode value) {
        return BigDecimal.valueOf(value.doubleValue())
                .round(new MathContext(9))
                .stripTrailingZeros()
                .toPlainString();
    }
}
