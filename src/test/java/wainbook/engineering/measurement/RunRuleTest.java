package wainbook.engineering.measurement;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Rules of L. S. Nelson, Journal of Quality Technology 16(4), 1984, as software help lists them; cases by hand. */
class RunRuleTest {

    /** Distances in sigma, and the points at which the rule is complete. */
    @ParameterizedTest
    @CsvSource({
        "BEYOND, 3 3.01 -3 -3.01 0, 1 3",
        "ONE_SIDE, 1 1 1 1 1 1 1 1, ''",
        "ONE_SIDE, 1 1 1 1 1 1 1 1 1 1, 8 9",
        "ONE_SIDE, -1 -1 -1 -1 -1 -1 -1 -1 -1, 8",
        "ONE_SIDE, 0 1 1 1 1 1 1 1 1, ''",
        "ONE_SIDE, 0 0 0 0 0 0 0 0 0, ''",
        "TREND, 1 2 3 4 5, ''",
        "TREND, 1 2 3 4 5 6 7, 5 6",
        "TREND, 6 5 4 3 2 1, 5",
        "TREND, 1 2 3 4 4 5, ''",
        "TREND, 9 2 3 4 5 6, ''",
        "TREND, 1 1 1 1 1 1, ''",
        "TREND, -3 -2 -1 1 2 3, 5",
        "TWO_OF_THREE, 2.1 0 2.1, 2",
        "TWO_OF_THREE, 2.1 2.1 0, 1",
        "TWO_OF_THREE, 2.1 0 0 2.1, ''",
        "TWO_OF_THREE, 2 0 2, ''",
        "TWO_OF_THREE, 2.1 0 2, ''",
        "TWO_OF_THREE, -2.1 -2.1 -2.1, 1 2",
        "TWO_OF_THREE, 2.1 -2.1 0, ''",
        "TWO_OF_THREE, 2.1 -2.1 2.1, 2",
        "TWO_OF_THREE, 2.1, ''",
        "TWO_OF_THREE, 1 1 2.1, ''",
        "TWO_OF_THREE, 0.4 0.4 0.4, ''",
        "TOO_GOOD, 0.9 0.9 0.9 0.9 0.9 0.9 0.9 0.9 0.9 0.9 0.9 0.9 0.9 0.9, ''",
        "TOO_GOOD, 0.9 -0.9 0.9 0.9 0.9 0.9 0.9 0.9 0.9 0.9 0.9 0.9 0.9 0.9 -0.9, 14",
        "TOO_GOOD, 1 0.9 0.9 0.9 0.9 0.9 0.9 0.9 0.9 0.9 0.9 0.9 0.9 0.9 0.9 0.9, 15",
        "TOO_GOOD, 0.9 0.9 0.9 0.9 0.9 0.9 0.9 0.9 0.9 0.9 0.9 0.9 0.9 0.9 1, ''",
        "TOO_GOOD, 0.9 0.9 0.9 0.9 0.9 0.9 0.9 0.9 0.9 0.9 0.9 0.9 0.9 0.9 -1, ''",
        "TOO_GOOD, 0.1 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0, 14",
        "TOO_GOOD, 0 0 0 0 0 0 0 0 0 0 0 0 0 0 0, ''"
    })
    void a_rule_is_complete_at(RunRule rule, String distances, String points) {
        List<Double> z =
                Arrays.stream(distances.split(" ")).map(Double::valueOf).toList();
        String complete = String.join(
                " ",
                IntStream.range(0, z.size())
                        .filter(point -> rule.completedAt(z, point))
                        .mapToObj(String::valueOf)
                        .toList());

        assertThat(complete).isEqualTo(points);
    }
}
