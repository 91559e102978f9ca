package wainbook.engineering.measurement;

import static org.assertj.core.api.Assertions.assertThat;
import static wainbook.engineering.Answers.faultyFields;
import static wainbook.engineering.Answers.results;

import java.math.BigInteger;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import wainbook.engineering.Answer;

class CheckCharacterTest {

    @ParameterizedTest
    @ValueSource(longs = {61, 62, 63})
    void leaves_one_over_when_the_whole_number_is_divided_by_97(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int i = 0; i < 500; i++) {
            String text = String.valueOf(random.nextLong(1, Long.MAX_VALUE));
            BigInteger whole = new BigInteger(text + check(Scheme.MOD97_10, text));

            assertThat(whole.mod(BigInteger.valueOf(97)))
                    .as("seed %s, %s", seed, text)
                    .isEqualTo(BigInteger.ONE);
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {71, 72})
    void notices_every_single_slip(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int i = 0; i < 500; i++) {
            Scheme scheme = random.nextBoolean() ? Scheme.MOD37_36 : Scheme.MOD11_2;
            StringBuilder text = new StringBuilder();
            random.ints(12, 0, scheme.alphabet().length())
                    .forEach(place -> text.append(scheme.alphabet().charAt(place)));
            String right = text.toString();
            text.setCharAt(
                    random.nextInt(12),
                    scheme.alphabet().charAt(random.nextInt(scheme.alphabet().length())));

            assertThat(check(scheme, text.toString()).equals(check(scheme, right)))
                    .as("seed %s, %s for %s", seed, text, right)
                    .isEqualTo(right.equals(text.toString()));
        }
    }

    @ParameterizedTest
    @CsvSource({"MOD11_2, 07A", "MOD37_36, wb26", "MOD97_10, -1", "MOD11_2, ''", "MOD37_36, 'A B'"})
    void names_text_of_other_characters(Scheme scheme, String text) {
        assertThat(faultyFields(of(scheme, text))).containsExactly("text");
    }

    @Test
    void a_thousand_characters_are_checked_and_one_more_is_too_many() {
        assertThat(check(Scheme.MOD97_10, "1".repeat(1000))).hasSize(2);
        assertThat(faultyFields(of(Scheme.MOD97_10, "1".repeat(1001)))).containsExactly("text");
    }

    @Test
    void writes_two_digits_for_97() {
        assertThat(check(Scheme.MOD97_10, "0")).isEqualTo("01");
        assertThat(check(Scheme.MOD97_10, "1")).isEqualTo("95");
    }

    private static String check(Scheme scheme, String text) {
        return results(of(scheme, text)).check();
    }

    private static Answer<CheckCharacter.Results> of(Scheme scheme, String text) {
        return new CheckCharacter().of(new CheckCharacter.Inputs(scheme, text));
    }
}
