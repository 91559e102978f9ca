package wainbook.page.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;

/** The scale leaves 490 of 760 for the longest bar, from 170 on. */
class StacksTest {

    private static final Stacks STACKS = new Stacks(
            "title",
            "description",
            List.of("one", "two", "three"),
            List.of(
                    new Stacks.Stack("long", List.of(50.0, 0.0, 50.0), 60, "60"),
                    new Stacks.Stack("short", List.of(2.0, 8.0, 0.0), 10, "10")));

    @Test
    void pieces_stand_end_to_end_and_those_of_nought_are_left_out() {
        List<Stacks.Piece> pieces = STACKS.drawn().get(0).pieces();

        assertThat(pieces).extracting(Stacks.Piece::x).containsExactly("170.0", "415.0");
        assertThat(pieces).extracting(Stacks.Piece::width).containsExactly("245.0", "245.0");
        assertThat(pieces).extracting(Stacks.Piece::middle).containsExactly("292.5", "537.5");
        assertThat(pieces).extracting(Stacks.Piece::sort).containsExactly("p1", "p3");
        assertThat(pieces).extracting(Stacks.Piece::number).containsExactly("1", "3");
    }

    @Test
    void a_line_stands_at_what_is_left_and_the_figure_behind_the_pieces() {
        Stacks.Drawn longest = STACKS.drawn().get(0);

        assertThat(longest.left()).isEqualTo("464.0");
        assertThat(longest.end()).isEqualTo("666.0");
        assertThat(STACKS.drawn().get(1).y()).isEqualTo(longest.y() + 34);
    }

    @Test
    void a_piece_too_narrow_for_its_number_bears_none() {
        assertThat(STACKS.drawn().get(1).pieces())
                .extracting(Stacks.Piece::number)
                .containsExactly("", "2");
        assertThat(STACKS.drawn().get(1).pieces().get(0).words()).isEqualTo("one: 2");
    }

    @Test
    void names_stand_below_in_two_columns() {
        assertThat(STACKS.keys()).extracting(Stacks.Key::name).containsExactly("1 one", "2 two", "3 three");
        assertThat(STACKS.keys()).extracting(Stacks.Key::x).containsExactly(170, 170, 465);
        assertThat(STACKS.keys()).extracting(Stacks.Key::y).containsExactly(82, 102, 82);
        assertThat(STACKS.height()).isEqualTo(122);
    }

    @Test
    void nothing_to_show_is_no_chart() {
        assertThatThrownBy(() -> new Stacks("t", "d", List.of("one"), List.of()))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
