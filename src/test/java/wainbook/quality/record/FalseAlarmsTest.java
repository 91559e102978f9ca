package wainbook.quality.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.Execution;
import org.junit.jupiter.api.parallel.ExecutionMode;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wainbook.quality.reading.Reading;
import wainbook.rehearsal.CleanVehicles;

/** The stated rate of false alarms, over a thousand clean vehicles and all rules together. */
@Execution(ExecutionMode.CONCURRENT)
class FalseAlarmsTest {

    static final ZoneId ZONE = ZoneId.of("Europe/London");
    static final Instant LATER = Instant.parse("2099-01-01T00:00:00Z");

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(
            longs = {
                1, 2, 3, 101, 102, 103, 104, 105, 106, 107, 108, 109, 110, 111, 112, 201, 202, 203, 204, 205, 206, 207,
                208, 209, 210, 211, 212
            })
    void fewer_clean_vehicles_than_stated_are_asked_about(long seed) {
        int vehicles = 1000;
        List<Reading> readings = new CleanVehicles(seed).all(vehicles);
        List<Question> questions = Unlikely.over(readings, ZONE, true, LATER);

        Map<Rule, Long> byRule =
                questions.stream().collect(Collectors.groupingBy(Question::rule, Collectors.counting()));
        long touched = questions.stream()
                .flatMap(question ->
                        question.entries().stream().skip(question.entries().size() - 1L))
                .map(Reading::order)
                .distinct()
                .count();
        System.out.println("Of " + vehicles + " clean vehicles with " + readings.size() + " readings, " + touched
                + " were asked about: " + byRule);
        assertThat(readings).hasSizeGreaterThan(100_000);
        assertThat(touched / (double) vehicles).isLessThan(Unlikely.STATED_FALSE_ALARMS);
    }

    @Test
    void the_same_record_gives_the_same_questions() {
        List<Reading> readings = new CleanVehicles(4).all(100);

        assertThat(Unlikely.over(readings, ZONE, true, LATER)).isEqualTo(Unlikely.over(readings, ZONE, true, LATER));
    }
}
