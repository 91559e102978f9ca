package wainbook.order.calibration;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import wainbook.act.Reason;
import wainbook.process.calibration.Setting;

class WishRulesTest {

    @Test
    void a_slip_of_typing_is_told_at_its_field() {
        assertThat(keys(wish("800", "0.5", "for a test"))).containsExactly("order.wishImplausible");
        assertThat(WishRules.against(List.of(wish("800", "0.5", "for a test")), Optional.empty(), List.of())
                        .get(0)
                        .lift())
                .contains("#ROAD_SPEED_LIMITValue");
        assertThat(keys(wish("80", "-1", "for a test"))).containsExactly("order.wishTolerance");
        assertThat(keys(wish("80", "0", " "))).containsExactly("order.wishWhy");
        assertThat(keys(wish("80", "0", "for a test"))).isEmpty();
    }

    @Test
    void a_promise_that_does_not_stand_cannot_be_named() {
        Wish promised = new Wish(
                Setting.CREEP_SPEED,
                BigDecimal.valueOf(4),
                BigDecimal.ZERO,
                Wish.By.PROMISE,
                Optional.of(3),
                "for a test");

        assertThat(keys(promised)).containsExactly("order.wishPromise");
    }

    @Test
    void the_same_time_empty_and_laden_needs_a_limit_of_acceleration() {
        var sameTime = new SameTime(BigDecimal.valueOf(50), BigDecimal.ONE, BigDecimal.valueOf(310));

        assertThat(WishRules.against(List.of(wish("80", "1", "for a test")), Optional.of(sameTime), List.of()))
                .extracting(Reason::key)
                .containsExactly("order.sameTimeAlone");
    }

    private static List<String> keys(Wish wish) {
        return WishRules.against(List.of(wish), Optional.empty(), List.of()).stream()
                .map(Reason::key)
                .toList();
    }

    private static Wish wish(String value, String tolerance, String why) {
        return new Wish(
                Setting.ROAD_SPEED_LIMIT,
                new BigDecimal(value),
                new BigDecimal(tolerance),
                Wish.By.OPERATOR,
                Optional.empty(),
                why);
    }
}
