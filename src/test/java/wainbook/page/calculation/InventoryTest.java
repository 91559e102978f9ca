package wainbook.page.calculation;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import wainbook.engineering.Calculation;

/**
 * What each calculation is called, which cautions it gives, which sources it names and which words it takes for choices, against
 * the list that a person has read: a caution or a source cannot go unnoticed. After a change that is meant, the lines are in
 * target/calculations.txt.
 */
class InventoryTest {

    private static final Path READ = Path.of("src/test/resources/house/calculations.txt");
    private static final Path FOUND = Path.of("target/calculations.txt");

    /** Where a caution that is lost can hurt, and what a finish date or a specification is promised by. */
    private static final Set<String> GROUPS =
            Set.of("electrical", "tightening", "measurement", "statistics", "flow", "energy", "weights");

    @Test
    void no_caution_source_name_or_choice_changes_unread() throws IOException {
        String found = Calculations.PURE.stream()
                .filter(calculation -> GROUPS.contains(group(calculation)))
                .sorted(Comparator.comparing(Calculation::name))
                .map(InventoryTest::lines)
                .collect(Collectors.joining("\n"));
        Files.writeString(FOUND, found, StandardCharsets.UTF_8);

        assertThat(found).isEqualTo(Files.readString(READ, StandardCharsets.UTF_8));
    }

    private static String group(Calculation<?, ?> calculation) {
        String place = calculation.getClass().getPackageName();
        return place.substring(place.lastIndexOf('.') + 1);
    }

    private static String lines(Calculation<?, ?> calculation) {
        String cautions = calculation.cautions().stream()
                .map(sentence -> sentence.key().replace("engineering.caution.", ""))
                .collect(Collectors.joining(", "));
        String sources = calculation.sources().stream()
                .map(source -> "  " + source.standing() + ": " + source.document() + ", " + source.clause() + "\n")
                .collect(Collectors.joining());
        JsonNode described = new Sheet<>(calculation).described();
        String choices = StreamSupport.stream(described.findValues("enum").spliterator(), false)
                .map(InventoryTest::words)
                .collect(Collectors.joining("; "));
        return calculation.name() + "\n  cautions: " + cautions + "\n" + sources
                + (choices.isEmpty() ? "" : "  choices: " + choices + "\n");
    }

    private static String words(JsonNode choices) {
        return StreamSupport.stream(choices.spliterator(), false)
                .map(JsonNode::asText)
                .collect(Collectors.joining(", "));
    }
}
