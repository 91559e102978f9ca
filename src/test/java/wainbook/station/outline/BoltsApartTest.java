package wainbook.station.outline;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wainbook.process.joint.BoltPlaces;
import wainbook.process.joint.BoltPlaces.Place;

/** No bolt's field lies on another's, on the narrowest page, where the drawing is 340 px wide. */
class BoltsApartTest {

    /** As the style sheet sizes a bolt's field in a ring. */
    private static final double CELL = 64;

    @ParameterizedTest
    @CsvSource({
        "2,52,320",
        "3,52,320",
        "4,52,320",
        "5,52,320",
        "6,52,320",
        "8,52,340",
        "10,52,340",
        "11,52,340",
        "12,52,340"
    })
    void round_a_ring(int count, double high, double wide) {
        assertThat(nearest(count, high, wide, wide)).isGreaterThanOrEqualTo(1);
    }

    @ParameterizedTest
    @CsvSource({"4", "8"})
    void round_a_ring_with_an_angle_under_every_torque(int count) {
        assertThat(nearest(count, 104, 340, 430)).isGreaterThanOrEqualTo(1);
    }

    /** How many field widths or heights, whichever is more, the two nearest bolts lie apart. */
    private static double nearest(int count, double high, double wide, double tall) {
        double least = Double.MAX_VALUE;
        for (int i = 0; i < count; i++) {
            for (int j = i + 1; j < count; j++) {
                double one = 2 * Math.PI * i / count;
                double other = 2 * Math.PI * j / count;
                double across = Math.abs(Math.sin(one) - Math.sin(other)) * (wide - CELL) / 2;
                double down = Math.abs(Math.cos(one) - Math.cos(other)) * (tall - high) / 2;
                least = Math.min(least, Math.max(across / CELL, down / high));
            }
        }
        return least;
    }

    @Test
    void a_circle_up_to_twelve_is_a_ring_and_all_else_stands_in_rows() {
        assertThat(pattern(true, 12).style()).isEqualTo("ring of-12");
        assertThat(pattern(true, 16).style()).isEqualTo("rows of-8");
        assertThat(pattern(false, 3).style()).isEqualTo("rows of-3");
        assertThat(pattern(false, 4).style()).isEqualTo("rows of-2");
        assertThat(pattern(false, 5).style()).isEqualTo("rows of-3");
        assertThat(pattern(false, 16).style()).isEqualTo("rows of-8");
    }

    @Test
    void fields_keep_the_order_of_tightening_and_the_places_those_of_the_joint() {
        var star = BoltPattern.of(true, List.of(1, 3, 2, 4));
        assertThat(star.bolts())
                .extracting(BoltPattern.Bolt::torqueField)
                .containsExactly("bolt1", "bolt2", "bolt3", "bolt4");
        assertThat(star.bolts()).extracting(BoltPattern.Bolt::position).containsExactly(1, 3, 2, 4);
    }

    private static BoltPattern pattern(boolean circle, int count) {
        return BoltPattern.of(circle, IntStream.rangeClosed(1, count).boxed().toList());
    }

    @Test
    void rows_and_frames_stand_where_they_lie_as_far_as_they_fit_a_page() {
        var places = new BoltPlaces(List.of(new Place(1, 1), new Place(2, 1), new Place(1, 2), new Place(2, 2)));
        BoltPattern grid = BoltPattern.of(places, List.of(1, 4, 2, 3));
        assertThat(grid.style()).isEqualTo("grid of-2");
        assertThat(grid.bolts())
                .extracting(BoltPattern.Bolt::style)
                .containsExactly("col-1 row-1", "col-2 row-2", "col-2 row-1", "col-1 row-2");
        var wide = new BoltPlaces(IntStream.rangeClosed(1, 9)
                .mapToObj(column -> new Place(column, 1))
                .toList());
        assertThat(BoltPattern.of(wide, wide.insideOut()).style()).isEqualTo("rows of-5");
    }
}
