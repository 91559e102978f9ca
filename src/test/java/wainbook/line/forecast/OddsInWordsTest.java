package wainbook.line.forecast;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class OddsInWordsTest {

    @Test
    void odds_are_whole_percents_finer_towards_the_ends_and_never_nothing_or_everything() {
        assertThat(OddsInWords.of(0.724)).isEqualTo("72\u00a0%");
        assertThat(OddsInWords.of(0.0042)).isEqualTo("0.4\u00a0%");
        assertThat(OddsInWords.of(0.996)).isEqualTo("99.6\u00a0%");
        assertThat(OddsInWords.of(0.0002)).isEqualTo("<\u00a00.1\u00a0%");
        assertThat(OddsInWords.of(0.9998)).isEqualTo(">\u00a099.9\u00a0%");
    }
}
