package wainbook.engineering.flow.status;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import wainbook.engineering.flow.status.StationPast.Span;

/** L = λ · W, exactly where a window begins and ends with nobody there. Hours made milliseconds. */
class LittleTest {

    private static final long HOUR = 3_600_000;

    /** From 0 to 10: one from 1 to 4, one from 2 to 8, one from 9 to 10: 10 vehicle-hours. */
    @Test
    void three_stays_by_hand() {
        Little law = Little.of(List.of(span(1, 4), span(2, 8), span(9, 10)), 0, 10 * HOUR);

        assertThat(law.meanNumber()).isEqualTo(1);
        assertThat(law.anHour()).isCloseTo(0.3, within(1e-12));
        assertThat(law.meanHours()).isCloseTo(10 / 3.0, within(1e-12));
        assertThat(law.emptyAtBothEnds()).isTrue();
        assertThat(law.exact()).isTrue();
    }

    /** The same from 3 to 9: one was there for an hour more, one for five, and both had come before. */
    @Test
    void a_window_that_cuts_stays_is_not_exact() {
        Little law = Little.of(List.of(span(1, 4), span(2, 8), span(9, 10)), 3 * HOUR, 9 * HOUR);

        assertThat(law.numberMillis()).isEqualTo(6 * HOUR);
        assertThat(law.vehicles()).isEqualTo(2);
        assertThat(law.stayMillis()).isEqualTo(9 * HOUR);
        assertThat(law.atBegin()).isEqualTo(2);
        assertThat(law.atEnd()).isZero();
        assertThat(law.emptyAtBothEnds()).isFalse();
        assertThat(law.exact()).isFalse();
        assertThat(Little.of(List.of(span(1, 40)), 0, 10 * HOUR).atEnd()).isEqualTo(1);
    }

    @Test
    void nobody_proves_nothing() {
        assertThat(Little.of(List.of(), 0, HOUR).exact()).isFalse();
        assertThat(Little.of(List.of(), 0, HOUR).meanNumber()).isZero();
        assertThat(Little.of(List.of(), 0, 0).exact()).isFalse();
    }

    @Test
    void the_law_is_an_identity_of_every_set_that_is_over() {
        for (int seed = 0; seed < 500; seed++) {
            var random = new SplittableRandom(seed);
            var stays = new ArrayList<Span>();
            for (int i = 1 + random.nextInt(40); i > 0; i--) {
                long from = random.nextLong(1, 1_000_000_000);
                stays.add(new Span(from, from + random.nextLong(1, 300_000_000)));
            }
            Little law = Little.of(stays, 0, 2_000_000_000);

            assertThat(law.emptyAtBothEnds()).isTrue();
            assertThat(law.vehicles()).isEqualTo(stays.size());
            assertThat(law.exact()).as("seed %d", seed).isTrue();
            assertThat(law.meanNumber()).isCloseTo(law.anHour() * law.meanHours(), within(1e-9));
        }
    }

    private static Span span(int from, int to) {
        return new Span(from * HOUR, to * HOUR);
    }
}
