package wainbook.order.specification;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wainbook.page.Words;

/** A recorded way is checked line by line, and each fault says where it is and what to do. */
class TraceFileTest {

    @Test
    void a_way_with_speed_alone_is_level() {
        TraceFile read = TraceFile.read("speed_kmh\n0\n10\n20\n10\n0\n");

        assertThat(read.faults()).isEmpty();
        assertThat(read.trace().orElseThrow().intervals()).isEqualTo(4);
        assertThat(read.trace().orElseThrow().motion(1).gradient()).isZero();
    }

    @Test
    void comments_columns_in_any_order_semicolons_and_a_byte_order_mark_do_no_harm() {
        TraceFile read = TraceFile.read(
                "\uFEFF# one line a second\r\ngradient;time_s;speed_kmh\r\n0.01;0;0\r\n-0.02;1;12.5\r\n");

        assertThat(read.faults()).isEmpty();
        assertThat(read.trace().orElseThrow().motion(1).gradient())
                .isCloseTo(-0.005, org.assertj.core.api.Assertions.within(1e-12));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "'' | 1 | traceEmpty",
                "'gradient\n0\n' | 1 | traceNoSpeed",
                "'speed_kmh,wind\n0,1\n' | 1 | traceColumn",
                "'speed_kmh,gradient\n0,0\n10\n' | 3 | traceCells",
                "'speed_kmh\n0\nfast\n' | 3 | traceFigure",
                "'speed_kmh\n0\n200\n' | 3 | traceOutside",
                "'speed_kmh,time_s\n0,0\n5,1\n9,4\n' | 4 | traceGap",
                "'speed_kmh\n0\n' | 2 | traceShort",
                "'speed_kmh\n0\n0\n' | 3 | traceStands"
            })
    void a_fault_names_its_line_and_what_to_do(String text, int line, String key) {
        TraceFile read = TraceFile.read(text == null ? "" : text);

        assertThat(read.trace()).isEmpty();
        assertThat(read.faults()).first().satisfies(fault -> {
            assertThat(fault.line()).isEqualTo(line);
            assertThat(fault.key()).isEqualTo(key);
            assertThat(Words.of("order." + key, fault.arguments().toArray())).contains(". ");
        });
    }

    @Test
    void all_faults_are_told_at_once_up_to_twenty() {
        assertThat(TraceFile.read("speed_kmh\n" + "x\n".repeat(50)).faults()).hasSize(20);
    }

    @Test
    void a_day_fits_and_a_second_more_does_not() {
        assertThat(TraceFile.read("speed_kmh\n" + "9\n".repeat(86_401)).faults())
                .isEmpty();
        assertThat(TraceFile.read("speed_kmh\n" + "9\n".repeat(86_402)).faults())
                .singleElement()
                .satisfies(fault -> assertThat(fault.key()).isEqualTo("traceLong"));
    }
}
