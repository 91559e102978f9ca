package wainbook.ledger.bytes;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CanonicalJsonTest {

    enum Colour {
        RED
    }

    record Inner(String text, Optional<Integer> count) {}

    record Everything(
            String text,
            int count,
            long big,
            boolean yes,
            BigDecimal reading,
            Instant at,
            LocalDate day,
            Colour colour,
            Optional<String> absent,
            List<Inner> list) {}

    private static final Everything SAMPLE = new Everything(
            "Ω",
            7,
            9007199254740993L,
            true,
            new BigDecimal("0.1000"),
            Instant.parse("2026-03-29T01:30:00Z"),
            LocalDate.of(2026, 3, 29),
            Colour.RED,
            Optional.empty(),
            List.of(new Inner("a", Optional.of(3)), new Inner("b", Optional.empty())));

    @Test
    void writes_decimals_as_typed_longs_as_text_times_with_six_decimals_and_leaves_out_what_is_absent() {
        assertThat(CanonicalJson.write(SAMPLE)).isEqualTo("""
                        {"at":"2026-03-29T01:30:00.000000Z","big":"9007199254740993","colour":"RED","count":7,\
                        "day":"2026-03-29","list":[{"count":3,"text":"a"},{"text":"b"}],"reading":"0.1000",\
                        "text":"Ω","yes":true}""");
    }

    @Test
    void reads_back_what_it_wrote() {
        assertThat(CanonicalJson.read(CanonicalJson.parse(CanonicalJson.write(SAMPLE)), Everything.class))
                .isEqualTo(SAMPLE);
    }

    @Test
    void writes_text_in_NFC() {
        assertThat(CanonicalJson.write(new Inner("e\u0301", Optional.empty()))).isEqualTo("{\"text\":\"\u00e9\"}");
    }

    @ParameterizedTest
    @ValueSource(strings = {"a\u0000b", "\ud800", "\udc00\ud800", "x\ud83d"})
    void refuses_text_that_has_no_single_form(String text) {
        assertThatThrownBy(() -> CanonicalJson.write(new Inner(text, Optional.empty())))
                .hasRootCauseInstanceOf(UnwritableText.class);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "{\"text\":\"a\",\"more\":1}",
                "{\"text\":\"a\",\"text\":\"b\"}",
                "{\"text\": \"a\"}",
                "{\"count\":3.0,\"text\":\"a\"}",
                "{\"count\":\"3\",\"text\":\"a\"}",
                "{\"text\":5}",
                "{}",
                "[]",
                "{\"text\":\"a\"}x",
                "not json"
            })
    void refuses_every_other_form(String text) {
        assertThatThrownBy(() -> CanonicalJson.read(CanonicalJson.parse(text), Inner.class))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
