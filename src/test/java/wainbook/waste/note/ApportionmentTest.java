package wainbook.waste.note;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** A note's mass over what was put in. */
class ApportionmentTest {

    private static final BigDecimal A_GRAM = new BigDecimal("0.001");

    @Test
    void three_equal_parts_of_a_hundred_kilograms_add_up_to_a_hundred() {
        assertThat(of("100", "1", "1", "1")).containsExactly(kg("33.334"), kg("33.333"), kg("33.333"));
    }

    @Test
    void a_weighbridge_that_says_more_scales_every_share() {
        assertThat(of("412", "100.2", "298.4")).containsExactly(kg("103.568"), kg("308.432"));
    }

    @Test
    void what_weighs_nothing_takes_nothing() {
        assertThat(of("10", "0", "5")).containsExactly(kg("0.000"), kg("10.000"));
    }

    @Test
    void nothing_cannot_be_apportioned_by() {
        assertThatThrownBy(() -> of("1", "0", "0")).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> of("1")).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> of("-1", "1")).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void shares_add_up_to_the_note_and_lie_within_a_gram_of_the_exact_whatever_the_masses() {
        var random = new SplittableRandom(20261126);
        for (int run = 0; run < 2000; run++) {
            List<BigDecimal> parts = new ArrayList<>();
            int count = random.nextInt(1, 40);
            for (int i = 0; i < count; i++) {
                parts.add(BigDecimal.valueOf(random.nextInt(0, 900_000), random.nextInt(0, 4)));
            }
            parts.add(BigDecimal.ONE);
            BigDecimal note = BigDecimal.valueOf(random.nextLong(0, 20_000_000), 3);
            List<BigDecimal> shares = Apportionment.of(parts, note);
            assertThat(sum(shares)).isEqualByComparingTo(note);
            for (int i = 0; i < parts.size(); i++) {
                BigDecimal exact = parts.get(i).multiply(note).divide(sum(parts), 9, java.math.RoundingMode.HALF_UP);
                assertThat(shares.get(i).subtract(exact).abs()).isLessThanOrEqualTo(A_GRAM);
                assertThat(shares.get(i).signum()).isNotNegative();
            }
        }
    }

    private static BigDecimal sum(List<BigDecimal> of) {
        return of.stream().reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    private static List<BigDecimal> of(String note, String... parts) {
        return Apportionment.of(
                java.util.Arrays.stream(parts).map(ApportionmentTest::kg).toList(), kg(note));
    }

    private static BigDecimal kg(String text) {
        return new BigDecimal(text);
    }
}
