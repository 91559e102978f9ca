package wainbook.page.calculation;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import wainbook.engineering.Calculation;
import wainbook.page.Words;

/** Whatever a calculation says has words, and the words have no trap of their format in them. */
class CalculationWordsTest {

    private static final Path ROOM = Path.of("src/main/java/wainbook/engineering");

    static List<String> calculations() {
        return Calculations.PURE.stream().map(Calculation::name).toList();
    }

    @ParameterizedTest
    @MethodSource("calculations")
    void each_calculation_has_a_title(String name) {
        assertThat(Words.of("engineering." + name + ".title")).isNotBlank();
    }

    @ParameterizedTest
    @MethodSource("calculations")
    void each_calculation_says_what_it_is_for(String name) {
        assertThat(Words.find("engineering." + name + ".purpose")).isPresent();
    }

    @Test
    void each_field_and_each_result_has_a_name_in_words() {
        List<String> bare = Calculations.PURE.stream()
                .flatMap(calculation -> new Sheet<>(calculation).fields())
                .filter(field -> Words.find("engineering.field." + field).isEmpty())
                .map(field -> "field." + field + "=")
                .distinct()
                .toList();
        assertThat(bare).as("to be said in messages/engineering.properties").isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "isolation-voltmeter, pass fail undecided",
        "isolation-direct, pass fail undecided open.pass open.undecided",
        "isolation-combined, pass fail",
        "bonding, pass fail undecided",
        "discharge, pass fail",
        "y-capacitor-energy, pass fail",
        "tightening, pass fail undecided",
        "drift, none outside noTrend",
        "capability, none noLimit"
    })
    void each_verdict_has_a_sentence(String name, String verdicts) {
        for (String verdict : verdicts.split(" ")) {
            assertThat(Words.of("engineering." + name + "." + verdict, 1, 2, 3, 4, 5))
                    .isNotBlank()
                    .doesNotContain("{");
        }
    }

    @Test
    void every_key_that_the_code_names_has_words() throws IOException {
        Pattern named = Pattern.compile("\"(engineering\\.[a-zA-Z.-]+[a-zA-Z])\"|Step\\.of\\(\\s*\"(\\w+)\""
                + "|(?:step|power)\\(\\s*\"(\\w+)\"|Fault\\.of\\([^,]+,\\s*\"(\\w+)\"|impossible\\(\\s*\"([a-z-]+)\"");
        for (Path file : sources()) {
            Matcher matcher = named.matcher(Files.readString(file, StandardCharsets.UTF_8));
            while (matcher.find()) {
                assertThat(keys()).as("%s", file).contains(key(matcher));
            }
        }
    }

    @Test
    void no_apostrophe_swallows_a_figure() {
        ResourceBundle bundle = bundle();
        for (String key : keys()) {
            assertThat(bundle.getString(key)).as(key).doesNotContain("'").doesNotContain("!");
        }
    }

    private static String key(Matcher found) {
        if (found.group(1) != null) {
            return found.group(1).substring("engineering.".length());
        }
        String step = found.group(2) != null ? found.group(2) : found.group(3);
        if (step != null) {
            return "step." + step;
        }
        return found.group(4) != null ? "fault." + found.group(4) : "refusal." + found.group(5);
    }

    private static List<Path> sources() throws IOException {
        try (Stream<Path> files = Files.walk(ROOM)) {
            return files.filter(file -> file.toString().endsWith(".java")).toList();
        }
    }

    private static List<String> keys() {
        return Collections.list(bundle().getKeys());
    }

    private static ResourceBundle bundle() {
        return ResourceBundle.getBundle("messages/engineering", Locale.ROOT);
    }
}
