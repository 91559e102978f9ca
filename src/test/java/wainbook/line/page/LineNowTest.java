package wainbook.line.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import wainbook.order.WorkOrder.Phase;
import wainbook.order.WorkOrderRow;

/** A full yard does not push the line off the page. */
class LineNowTest {

    private static WorkOrderRow row(int number, int holds) {
        var row = new WorkOrderRow();
        row.number = "WB-%04d".formatted(number);
        row.holds = holds;
        return row;
    }

    private static List<WorkOrderRow> rows(int many) {
        return IntStream.rangeClosed(1, many)
                .mapToObj(number -> row(number, number == many ? 1 : 0))
                .toList();
    }

    @Test
    void of_two_hundred_vehicles_a_dozen_are_named_those_on_hold_first_and_the_others_counted() {
        var yard = new LineNow.Yard(Phase.FINISHED, rows(200));
        assertThat(yard.shown())
                .extracting(row -> row.number)
                .hasSize(12)
                .startsWith("WB-0200", "WB-0001", "WB-0002")
                .endsWith("WB-0011");
        assertThat(yard.more()).isEqualTo(188);
    }

    @Test
    void a_dozen_are_all_named() {
        var yard = new LineNow.Yard(Phase.FINISHED, rows(12));
        assertThat(yard.shown()).hasSize(12);
        assertThat(yard.more()).isZero();
    }
}
