package wainbook.process.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** One sheet for vehicles of two packs and of three. */
class VehicleRowsTest {

    private static final List<String> ROWS = List.of("pack {packs}", "converter", "tail lift {tail_lift}");

    @Test
    void a_row_stands_for_each_pack_and_for_an_option_that_is_fitted() {
        assertThat(VehicleRows.of(ROWS, Map.of("packs", "2", "tail_lift", "true")))
                .containsExactly("pack 1", "pack 2", "converter", "tail lift");
        assertThat(VehicleRows.of(ROWS, Map.of("packs", "3", "tail_lift", "false")))
                .containsExactly("pack 1", "pack 2", "pack 3", "converter");
    }

    @Test
    void a_fact_that_nobody_stated_is_named() {
        assertThat(VehicleRows.missing(ROWS, Map.of("packs", "2"))).containsExactly("tail_lift");
    }

    @Test
    void only_what_counts_or_is_true_or_false_can_say_which_rows_there_are() {
        assertThat(VehicleRows.unfit(List.of("pack {packs}", "x {variant}", "y {colour}")))
                .containsExactly("variant", "colour");
    }
}
