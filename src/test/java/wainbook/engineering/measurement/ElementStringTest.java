package wainbook.engineering.measurement;

import static org.assertj.core.api.Assertions.assertThat;
import static wainbook.engineering.Answers.faultyFields;
import static wainbook.engineering.Answers.results;

import org.junit.jupiter.api.Test;
import wainbook.engineering.Sentence;
import wainbook.engineering.measurement.ElementString.Element;

/** Where a scanned label stops to make sense, and where a lot may have swallowed what follows it. */
class ElementStringTest {

    @Test
    void a_lot_with_nothing_in_it_is_a_fault_and_swallows_no_serial() {
        var found = read("10\u001d21SN7");
        assertThat(found.wellFormed()).isFalse();
        assertThat(found.elements()).containsExactly(new Element("10", ""));
        assertThat(found.hints()).containsExactly(Sentence.of("engineering.element-string.length", "10"));
    }

    @Test
    void the_part_that_cannot_be_read_is_named_by_its_place() {
        assertThat(read("99X").hints()).containsExactly(Sentence.of("engineering.element-string.unknown", 1));
        assertThat(read("21SN7\u001d99X").hints())
                .containsExactly(Sentence.of("engineering.element-string.unknown", 2));
    }

    @Test
    void a_lot_may_have_swallowed_a_serial_only_where_something_follows_its_identifier() {
        assertThat(read("10AB21C").hints())
                .containsExactly(Sentence.of("engineering.element-string.swallowed", "10", "21"));
        assertThat(read("10AB21").hints()).isEmpty();
        assertThat(read("10AB2").hints()).isEmpty();
        assertThat(read("1021C").hints()).as("the lot is called 21C").isEmpty();
    }

    @Test
    void a_label_is_two_hundred_characters_at_most() {
        assertThat(faultyFields(new ElementString().of(new ElementString.Inputs("x".repeat(201)))))
                .containsExactly("text");
        assertThat(read("x".repeat(200)).wellFormed()).isFalse();
    }

    private static ElementString.Results read(String text) {
        return results(new ElementString().of(new ElementString.Inputs(text)));
    }
}
