package wainbook.engineering.electrical;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static wainbook.engineering.Answers.faultyFields;
import static wainbook.engineering.Answers.results;
import static wainbook.engineering.Answers.verdict;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wainbook.engineering.Answer;
import wainbook.engineering.Verdict;

class IsolationCombinedTest {

    @Test
    void divides_by_the_number_of_equal_parts() {
        assertThat(results(of(List.of(700_000.0, 700_000.0))).parallelOhm()).isEqualTo(350_000);
        assertThat(verdict(of(List.of(700_000.0, 700_000.0)))).isEqualTo(Verdict.PASS);
        assertThat(verdict(of(List.of(700_000.0, 699_999.0)))).isEqualTo(Verdict.FAIL);
    }

    @ParameterizedTest
    @ValueSource(longs = {31, 32, 33})
    void shares_out_the_whole_leakage_and_never_exceeds_the_least_part(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int i = 0; i < 300; i++) {
            List<Double> parts =
                    random.doubles(random.nextInt(1, 30), 1e4, 1e8).boxed().toList();
            var found = results(of(parts));

            assertThat(found.shares().stream().mapToDouble(Double::doubleValue).sum())
                    .as("seed %s, %s", seed, parts)
                    .isCloseTo(1, within(1e-12));
            assertThat(found.parallelOhm())
                    .isLessThanOrEqualTo(parts.stream().min(Double::compare).orElseThrow() * (1 + 1e-12));
        }
    }

    @Test
    void a_part_below_as_many_times_the_limit_as_there_are_parts_is_named_though_the_whole_passes() {
        var found = results(of(List.of(1_400_000.0, 700_000.0, 699_000.0)));
        assertThat(found.budgetOhm()).isEqualTo(3 * 350_000);
        assertThat(found.belowBudget()).containsExactly(2, 3);
        assertThat(results(of(List.of(700_000.0, 699_000.0))).belowBudget()).containsExactly(2);
    }

    @Test
    void parts_that_all_keep_their_budget_keep_the_limit_together() {
        SplittableRandom random = new SplittableRandom(77);
        for (int i = 0; i < 300; i++) {
            int count = random.nextInt(1, 30);
            List<Double> parts =
                    random.doubles(count, count * 350_000.0, 1e9).boxed().toList();
            assertThat(results(of(parts)).belowBudget()).isEmpty();
            assertThat(verdict(of(parts))).isEqualTo(Verdict.PASS);
        }
    }

    @Test
    void names_the_part_that_cannot_be() {
        assertThat(faultyFields(of(List.of(1e6, 0.0, Double.NaN)))).containsExactly("partsOhm[1]", "partsOhm[2]");
        assertThat(faultyFields(of(List.of()))).containsExactly("partsOhm");
    }

    private static Answer<IsolationCombined.Results> of(List<Double> partsOhm) {
        return new IsolationCombined().of(new IsolationCombined.Inputs(partsOhm, 700, 500));
    }
}
