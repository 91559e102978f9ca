package wainbook.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Contrast ratio after WCAG 2.2, definitions of relative luminance and contrast ratio; limits of 1.4.3 and 1.4.11. */
class ContrastTest {

    private static final Path STYLES = Path.of("src/main/resources/META-INF/resources/css/wainbook.css");

    @ParameterizedTest
    @CsvSource({"ink, 4.5", "soft, 4.5", "danger, 4.5", "warn, 4.5", "safe, 4.5", "must, 4.5", "edge, 3"})
    void is_readable_on_paper_by_day_and_by_night(String token, double atLeast) throws IOException {
        for (String ground : List.of("paper", "wash")) {
            List<String> grounds = shades(ground);
            List<String> shades = shades(token);
            assertThat(shades).hasSize(2);
            for (int i = 0; i < 2; i++) {
                assertThat(ratio(shades.get(i), grounds.get(i)))
                        .as("%s %s on %s %s", token, shades.get(i), ground, grounds.get(i))
                        .isGreaterThanOrEqualTo(atLeast);
            }
        }
    }

    @ParameterizedTest
    @CsvSource({"#000000, #ffffff, 21.0", "#777777, #ffffff, 4.48", "#ff0000, #ffffff, 4.00"})
    void agrees_with_the_known_ratios(String one, String other, double expected) {
        assertThat(Math.round(ratio(one, other) * 100) / 100.0).isEqualTo(expected);
    }

    private static List<String> shades(String token) throws IOException {
        Matcher found = Pattern.compile("--" + token + ": light-dark\\((#[0-9a-f]{6}), (#[0-9a-f]{6})\\)")
                .matcher(Files.readString(STYLES));
        List<String> shades = new ArrayList<>();
        if (found.find()) {
            shades.addAll(List.of(found.group(1), found.group(2)));
        }
        return shades;
    }

    private static double ratio(String one, String other) {
        double a = luminance(one);
        double b = luminance(other);
        return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
    }

    private static double luminance(String shade) {
        return 0.2126 * linear(shade, 1) + 0.7152 * linear(shade, 3) + 0.0722 * linear(shade, 5);
    }

    private static double linear(String shade, int at) {
        double value = Integer.parseInt(shade.substring(at, at + 2), 16) / 255.0;
        return value <= 0.04045 ? value / 12.92 : Math.pow((value + 0.055) / 1.055, 2.4);
    }
}
