package wainbook.engineering.measurement;

import static org.assertj.core.api.Assertions.assertThat;
import static wainbook.engineering.Answers.results;
import static wainbook.engineering.Answers.verdict;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wainbook.engineering.Verdict;

class VinTest {

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                " ",
                "1M8GDM9AXKP04278",
                "1M8GDM9AXKP0427888",
                "1M8GDM9AXKPO42788",
                "IM8GDM9AXKP042788",
                "1M8GDM9AXKQ042788",
                "1M8GDM9AXKP04278é",
                "1M8GDM9AXKP04278\u0131",
                "1M8GDM9AXKP0 2788"
            })
    void calls_malformed_what_is_no_number_of_17(String vin) {
        assertThat(read(vin).wellFormed()).isFalse();
        assertThat(read(vin).computedCheck()).isEmpty();
        assertThat(read(vin).checkMatches()).isFalse();
        assertThat(read(vin).hints()).isNotEmpty();
    }

    @Test
    void says_what_a_letter_that_is_not_used_was_meant_for() {
        assertThat(read("1M8GDM9AXKPO42788").hints())
                .singleElement()
                .satisfies(hint -> assertThat(hint.arguments()).containsExactly("12", "O", "0"));
    }

    @Test
    void says_nothing_of_the_characters_that_are_used_and_where_the_others_stand() {
        assertThat(read("0M8GDM9AXKPO42788").hints())
                .as("a nought is used")
                .singleElement()
                .satisfies(hint -> assertThat(hint.arguments()).containsExactly("12", "O", "0"));
        assertThat(read("1M8GDM9AXKP04278é").hints()).singleElement().satisfies(hint -> {
            assertThat(hint.key()).isEqualTo("engineering.vin.notUsed");
            assertThat(hint.arguments()).containsExactly("17");
        });
    }

    @Test
    void reads_every_letter_from_a_to_z_in_lower_case() {
        assertThat(read("azbcdefghjklmnprs").wellFormed()).isTrue();
        assertThat(read("tuvwxyz0123456789").wellFormed()).isTrue();
        assertThat(read("1M8GDM9AXKP04278{").wellFormed()).isFalse();
    }

    @Test
    void offers_the_look_alike_that_would_make_the_check_right() {
        assertThat(read("1MBGDM9AXKP042788").hints())
                .anySatisfy(hint -> assertThat(hint.arguments()).containsExactly("3", "B", "8"));
    }

    @Test
    void reads_lower_case_and_ignores_spaces_around() {
        assertThat(read(" 1m8gdm9axkp042788\t").checkMatches()).isTrue();
    }

    @Test
    void judges_nothing_since_a_wrong_check_digit_is_a_question() {
        assertThat(verdict(new Vin().of(new Vin.Inputs("1M8GDM9A0KP042788")))).isEqualTo(Verdict.NONE);
        assertThat(read("1M8GDM9A0KP042788").wellFormed()).isTrue();
    }

    @ParameterizedTest
    @ValueSource(longs = {51, 52, 53})
    void notices_every_slip_in_one_digit(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int i = 0; i < 300; i++) {
            StringBuilder vin = new StringBuilder();
            for (int place = 0; place < 17; place++) {
                vin.append((char) ('0' + random.nextInt(10)));
            }
            vin.setCharAt(8, read(vin.toString()).computedCheck().orElseThrow().charAt(0));
            int place = random.nextInt(17);
            char slip = (char) ('0' + random.nextInt(10));
            boolean same = vin.charAt(place) == slip;
            String right = vin.toString();
            vin.setCharAt(place, slip);

            assertThat(read(right).checkMatches())
                    .as("seed %s, %s", seed, right)
                    .isTrue();
            assertThat(read(vin.toString()).checkMatches())
                    .as("seed %s, %s for %s", seed, vin, right)
                    .isEqualTo(same);
        }
    }

    private static Vin.Results read(String vin) {
        return results(new Vin().of(new Vin.Inputs(vin)));
    }
}
