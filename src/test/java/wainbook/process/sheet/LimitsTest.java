package wainbook.process.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static wainbook.process.Sheets.decimal;

import java.math.BigDecimal;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class LimitsTest {

    @Test
    void a_reading_on_the_limit_passes_unless_the_limit_is_strict() {
        BigDecimal limit = decimal("0.1");
        var strict = new Limits(Optional.empty(), Optional.of(limit), true, Optional.empty());

        assertThat(Limits.atMost(limit).admits(decimal("0.10"))).isTrue();
        assertThat(strict.admits(decimal("0.10"))).isFalse();
        assertThat(strict.admits(decimal("0.0999"))).isTrue();
        assertThat(Limits.between(limit, decimal("0.2")).admits(decimal("0.09")))
                .isFalse();
        assertThat(Limits.between(limit, decimal("0.2")).admits(decimal("0.21")))
                .isFalse();
    }

    @Test
    void an_open_end_lies_in_no_closed_one() {
        assertThat(Limits.atLeast(decimal("1")).within(Limits.between(decimal("1"), decimal("2"))))
                .isFalse();
        assertThat(Limits.between(decimal("1"), decimal("2")).within(Limits.atLeast(decimal("1"))))
                .isTrue();
    }

    @Test
    void the_same_end_lies_within_a_strict_one_only_if_strict_itself() {
        var strict = new Limits(Optional.empty(), Optional.of(decimal("0.1")), true, Optional.empty());

        assertThat(Limits.atMost(decimal("0.1")).within(strict)).isFalse();
        assertThat(Limits.atMost(decimal("0.05")).within(strict)).isTrue();
        assertThat(strict.within(strict)).isTrue();
    }

    @Test
    void limits_have_an_end() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Limits(Optional.empty(), Optional.empty(), false, Optional.empty()));
    }
}
