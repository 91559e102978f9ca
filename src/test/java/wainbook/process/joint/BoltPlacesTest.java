package wainbook.process.joint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wainbook.process.joint.BoltPlaces.Place;
import wainbook.process.joint.Joint.Order;

class BoltPlacesTest {

    @Test
    void two_rows_are_tightened_from_the_middle_outwards_and_crosswise() {
        // 1 2 3 4
        // 5 6 7 8
        assertThat(order(Order.ROWS, 8, 2)).containsExactly(2, 7, 3, 6, 1, 8, 4, 5);
    }

    @Test
    void a_row_with_a_middle_begins_there() {
        assertThat(order(Order.ROWS, 5, 1)).containsExactly(3, 2, 4, 1, 5);
    }

    @Test
    void a_frame_is_tightened_from_its_long_sides_to_its_corners() {
        // 1 2 3 4 5
        // 12      6
        // 11 10 9 8 7
        assertThat(order(Order.FRAME, 12, 3)).containsExactly(3, 9, 2, 8, 4, 10, 6, 12, 1, 7, 5, 11);
    }

    @Test
    void a_frame_is_numbered_clockwise_from_its_first_corner() {
        assertThat(BoltPlaces.of(joint(Order.FRAME, 8, Optional.of(3))).places())
                .containsExactly(
                        new Place(1, 1),
                        new Place(2, 1),
                        new Place(3, 1),
                        new Place(3, 2),
                        new Place(3, 3),
                        new Place(2, 3),
                        new Place(1, 3),
                        new Place(1, 2));
    }

    @ParameterizedTest
    @CsvSource({"ROWS, 12, 3", "ROWS, 12, 12", "ROWS, 1, 1", "FRAME, 4, 2", "FRAME, 10, 2", "FRAME, 24, 5"})
    void every_fastener_comes_once_and_every_second_is_opposite_the_one_before(Order order, int bolts, int rows) {
        BoltPlaces places = BoltPlaces.of(joint(order, bolts, Optional.of(rows)));
        assertThat(places.places()).hasSize(bolts).doesNotHaveDuplicates();
        List<Integer> sequence = places.insideOut();
        assertThat(sequence)
                .containsExactlyInAnyOrderElementsOf(
                        IntStream.rangeClosed(1, bolts).boxed().toList());
        for (int i = 0; i + 1 < bolts && bolts % 2 == 0; i += 2) {
            Place one = places.places().get(sequence.get(i) - 1);
            Place other = places.places().get(sequence.get(i + 1) - 1);
            assertThat(one.column() + other.column()).isEqualTo(places.across() + 1);
            assertThat(one.row() + other.row()).isEqualTo(places.down() + 1);
        }
    }

    @ParameterizedTest
    @CsvSource({"ROWS, 7, 2", "FRAME, 7, 3", "FRAME, 4, 4", "FRAME, 8, 1"})
    void fasteners_that_cannot_lie_so_make_no_joint(Order order, int bolts, int rows) {
        assertThatThrownBy(() -> joint(order, bolts, Optional.of(rows))).hasMessageContaining("do not lie");
    }

    @Test
    void rows_say_how_many_they_are_and_a_list_does_not() {
        assertThatThrownBy(() -> joint(Order.ROWS, 8, Optional.empty())).hasMessageContaining("say how many");
        assertThatThrownBy(() -> joint(Order.LIST, 8, Optional.of(2))).hasMessageContaining("say none");
    }

    @Test
    void crosswise_joints_are_raised_in_steps_and_a_list_is_tightened_once_through() {
        assertThat(joint(Order.CIRCLE, 8, Optional.empty()).passesInForce().percent())
                .containsExactly(30, 70, 100, 100);
        assertThat(joint(Order.LIST, 8, Optional.empty()).passesInForce().percent())
                .containsExactly(100);
        assertThatThrownBy(() -> new Joint.Passes(List.of(70, 30, 100))).hasMessageContaining("rise");
        assertThatThrownBy(() -> new Joint.Passes(List.of(50, 80))).hasMessageContaining("100 %");
    }

    private static List<Integer> order(Order order, int bolts, int rows) {
        return BoltPlaces.of(joint(order, bolts, Optional.of(rows))).insideOut();
    }

    private static Joint joint(Order order, int bolts, Optional<Integer> rows) {
        return new Joint(
                "J",
                "Joint",
                JointClass.B,
                bolts,
                order,
                new Joint.Torque(new BigDecimal("20"), new Joint.Window(new BigDecimal("18"), new BigDecimal("22"))),
                Optional.empty(),
                "torque-indicating",
                2,
                Optional.empty(),
                false,
                Optional.empty(),
                Optional.empty(),
                rows,
                Optional.empty(),
                Optional.empty());
    }
}
