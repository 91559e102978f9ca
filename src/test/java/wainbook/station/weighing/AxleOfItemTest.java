package wainbook.station.weighing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class AxleOfItemTest {

    @ParameterizedTest
    @CsvSource({
        "weigh-front, 1, 1",
        "weigh-rear, 1, 2",
        "weigh-tag, 1, 3",
        "weigh-front, 2, 1",
        "weigh-rear, 2, 3",
        "weigh-tag, 2, 4",
        "weigh-axle-1, 1, 1",
        "weigh-axle-2, 1, 2",
        "weigh-axle-2, 2, 2",
        "weigh-axle-3, 2, 3",
        "weigh-axle-4, 2, 4"
    })
    void an_item_weighs_an_axle_counted_from_the_front(String item, int frontAxles, int axle) {
        assertThat(AxleOfItem.axle(item, frontAxles)).contains(axle);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"weigh-axle-0", "weigh-axle-5", "weigh-axle-", "weigh-axle-12", "weigh", "received", "arm-cycle"
            })
    void another_item_weighs_none(String item) {
        assertThat(AxleOfItem.axle(item, 2)).isEqualTo(Optional.empty());
    }
}
