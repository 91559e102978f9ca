package wainbook.engineering.tightening;

import static org.assertj.core.api.Assertions.assertThat;
import static wainbook.engineering.Answers.faultyFields;
import static wainbook.engineering.Answers.results;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TighteningOrderTest {

    @Test
    void takes_each_fastener_once_on_every_circle() {
        for (int count = 1; count <= 1000; count++) {
            List<Integer> order = order(count);

            assertThat(order.get(0)).as("first of %s fasteners", count).isEqualTo(1);
            assertThat(order.stream().sorted().toList())
                    .as("%s fasteners", count)
                    .isEqualTo(IntStream.rangeClosed(1, count).boxed().toList());
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {4, 6, 8, 10, 12, 14, 16, 18, 20, 22, 24, 36})
    void goes_straight_across_an_even_circle(int count) {
        List<Integer> order = order(count);

        for (int i = 0; i < count; i += 2) {
            assertThat(order.get(i + 1) - order.get(i)).isEqualTo(count / 2);
        }
    }

    @Test
    void wants_at_least_one_fastener_and_no_absurd_number() {
        assertThat(faultyFields(new TighteningOrder().of(new TighteningOrder.Inputs(0))))
                .containsExactly("count");
        assertThat(faultyFields(new TighteningOrder().of(new TighteningOrder.Inputs(1001))))
                .containsExactly("count");
    }

    private static List<Integer> order(int count) {
        return results(new TighteningOrder().of(new TighteningOrder.Inputs(count)))
                .order();
    }
}
