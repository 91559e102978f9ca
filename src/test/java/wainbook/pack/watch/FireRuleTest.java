package wainbook.pack.watch;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;

/** When the fire service is called: above 2 K of rise over ambient in an hour, or from 60 °C. Common practice, no source. */
class FireRuleTest {

    private static final Instant BEGUN = Instant.parse("2026-03-10T09:00:00Z");

    @Test
    void two_kelvin_in_an_hour_are_no_alarm_and_any_more_is_one() {
        assertThat(FireRule.alarms(List.of(read(0, "20.0", "15.0")), read(60, "22.0", "15.0")))
                .isEmpty();
        assertThat(FireRule.alarms(List.of(read(0, "20.0", "15.0")), read(60, "22.1", "15.0")))
                .containsExactly(Alarm.RISE);
        assertThat(FireRule.alarms(List.of(read(0, "20.0", "15.0")), read(15, "22.1", "15.0")))
                .as("sooner is no better")
                .containsExactly(Alarm.RISE);
    }

    @Test
    void sixty_degrees_are_an_alarm_and_a_tenth_less_is_none() {
        assertThat(FireRule.alarms(List.of(), read(0, "59.9", "15"))).isEmpty();
        assertThat(FireRule.alarms(List.of(), read(0, "60.0", "15"))).containsExactly(Alarm.HOT);
        assertThat(FireRule.alarms(List.of(read(0, "57.9", "15")), read(60, "60.0", "15")))
                .as("a rise of 2.1 K to 60 °C is both")
                .containsExactly(Alarm.RISE, Alarm.HOT);
    }

    @Test
    void a_pack_that_follows_the_air_does_not_rise() {
        assertThat(FireRule.alarms(List.of(read(0, "10", "8")), read(60, "16", "14")))
                .isEmpty();
    }

    @Test
    void a_pack_that_stays_warm_while_the_air_cools_rises_over_it() {
        assertThat(FireRule.alarms(List.of(read(0, "20", "18")), read(60, "20", "15.9")))
                .containsExactly(Alarm.RISE);
    }

    @Test
    void it_is_compared_with_every_reading_of_the_last_hour() {
        List<Temperatures> former = List.of(read(0, "20", "15"), read(15, "18", "15"), read(30, "20", "15"));
        assertThat(FireRule.alarms(former, read(60, "20.1", "15"))).containsExactly(Alarm.RISE);
    }

    @Test
    void a_slow_rise_over_many_hours_read_every_hour_is_none() {
        List<Temperatures> former = List.of(read(0, "20", "15"), read(60, "21", "15"), read(120, "22", "15"));
        assertThat(FireRule.alarms(former, read(180, "23", "15"))).isEmpty();
    }

    @Test
    void after_a_gap_nobody_knows_when_it_rose_so_the_rise_counts() {
        assertThat(FireRule.alarms(List.of(read(0, "20", "15")), read(300, "22.1", "15")))
                .containsExactly(Alarm.RISE);
    }

    @Test
    void the_last_reading_before_the_hour_is_compared_though_there_are_readings_within_it() {
        List<Temperatures> former = List.of(read(0, "20", "15"), read(90, "22", "15"));
        assertThat(FireRule.alarms(former, read(120, "22.1", "15"))).containsExactly(Alarm.RISE);
        List<Temperatures> longer = List.of(read(0, "18", "15"), read(30, "21", "15"), read(90, "22", "15"));
        assertThat(FireRule.alarms(longer, read(120, "22.1", "15")))
                .as("but none before that one")
                .isEmpty();
    }

    @Test
    void a_warmer_reading_never_says_less() {
        for (int before = 140; before <= 600; before += 20) {
            List<Temperatures> former = List.of(read(0, tenths(before), "15"));
            List<Alarm> cooler = List.of();
            for (int now = 140; now <= 640; now++) {
                List<Alarm> said = FireRule.alarms(former, read(60, tenths(now), "15"));
                assertThat(said).as(before + " then " + now).containsAll(cooler);
                cooler = said;
            }
            assertThat(cooler).containsExactly(Alarm.RISE, Alarm.HOT);
        }
    }

    private static String tenths(int tenths) {
        return BigDecimal.valueOf(tenths, 1).toPlainString();
    }

    private static Temperatures read(int minute, String packC, String ambientC) {
        return new Temperatures(
                BEGUN.plus(Duration.ofMinutes(minute)), new BigDecimal(packC), new BigDecimal(ambientC));
    }
}
