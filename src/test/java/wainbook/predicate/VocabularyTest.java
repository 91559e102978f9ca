package wainbook.predicate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.assertj.core.groups.Tuple;
import org.junit.jupiter.api.Test;

class VocabularyTest {

    private static final Vocabulary WORDS = new Vocabulary(Map.of(
            "axles", FactType.WHOLE,
            "mass_kg", FactType.NUMBER,
            "registered", FactType.DATE,
            "tail_lift", FactType.TRUTH,
            "streams", FactType.TEXTS));

    @Test
    void finds_facts_that_nobody_declared_or_that_are_of_another_type() {
        assertThat(WORDS.misfits(Map.of("axels", 2, "mass_kg", "heavy", "registered", "2015-02-30")))
                .extracting(Vocabulary.Misfit::name, Vocabulary.Misfit::expected)
                .containsExactlyInAnyOrder(
                        Tuple.tuple("axels", "a known fact"),
                        Tuple.tuple("mass_kg", "double"),
                        Tuple.tuple("registered", "date"));
    }

    @Test
    void takes_whole_numbers_for_numbers_and_iso_text_for_dates() {
        assertThat(WORDS.misfits(Map.of("mass_kg", 18_000, "axles", 2L, "registered", "2015-02-28")))
                .isEmpty();
        assertThat(WORDS.misfits(Map.of("registered", LocalDate.of(2015, 2, 28), "streams", List.of("16 01 03"))))
                .isEmpty();
    }

    @Test
    void refuses_a_fraction_for_a_whole_number_and_what_is_no_number() {
        assertThat(WORDS.misfits(Map.of("axles", 2.5))).hasSize(1);
        assertThat(WORDS.misfits(Map.of("mass_kg", Double.NaN))).hasSize(1);
    }

    @Test
    void reads_what_was_typed_in_the_type_of_the_fact() {
        assertThat(FactType.TRUTH.parse("true")).contains(true);
        assertThat(FactType.WHOLE.parse("2.5")).isEmpty();
        assertThat(FactType.NUMBER.parse("18000.5")).contains(new BigDecimal("18000.5"));
        assertThat(FactType.DATE.parse("2015-02-30")).isEmpty();
        assertThat(FactType.DATE.parse("2015-02-28")).contains(LocalDate.of(2015, 2, 28));
        assertThat(FactType.TEXTS.parse("13 02 05*; 16 01 03;")).contains(List.of("13 02 05*", "16 01 03"));
    }

    @Test
    void refuses_a_name_that_is_the_beginning_of_another() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Vocabulary(Map.of("order", FactType.TEXT, "order.country", FactType.TEXT)))
                .withMessageContaining("is itself a fact");
        assertThatIllegalArgumentException().isThrownBy(() -> new Vocabulary(Map.of("Tail lift", FactType.TRUTH)));
    }
}
