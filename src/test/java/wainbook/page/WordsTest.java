package wainbook.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class WordsTest {

    @Test
    void a_key_names_its_room_and_its_text() {
        assertThat(Words.of("page.hoursAndMinutes", 1, 12)).isEqualTo("1 h 12 min");
    }

    @Test
    void a_missing_text_names_its_key_and_file() {
        assertThatThrownBy(() -> Words.of("page.nowhere"))
                .hasMessageContaining("page.nowhere")
                .hasMessageContaining("messages/page.properties");
    }

    @Test
    void a_room_without_a_bundle_has_no_text() {
        assertThat(Words.find("attic.title")).isEmpty();
        assertThat(Words.find("title")).isEmpty();
    }

    @Test
    void refuses_fewer_arguments_than_its_text_asks_for() {
        assertThatThrownBy(() -> Words.of("page.hoursAndMinutes", 1)).hasMessageContaining("{1}");
    }

    @Test
    void counts_a_number_that_comes_as_text() {
        assertThat(Words.of("page.faults", "1")).isEqualTo("Put one thing right and send again");
        assertThat(Words.of("page.faults", 3)).isEqualTo("Put 3 things right and send again");
    }

    @Test
    void shows_a_figure_as_it_was_typed() {
        assertThat(Words.of("page.minutes", "1000.50")).isEqualTo("1000.50 min");
    }
}
