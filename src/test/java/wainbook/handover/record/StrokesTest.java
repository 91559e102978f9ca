package wainbook.handover.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A signature comes as whole numbers and is drawn by the works. */
class StrokesTest {

    static final String SIGNED = "[[[100,150],[140,80],[180,220],[220,90],[260,200],[300,120]],[[320,150],[420,160]]]";

    @Test
    void a_signature_is_drawn_from_its_numbers_and_nothing_else() {
        Strokes strokes = Strokes.read(SIGNED).orElseThrow();
        assertThat(strokes.isDrawn()).isTrue();
        assertThat(new String(strokes.svg(), StandardCharsets.UTF_8))
                .contains("d=\"M100 150 L140 80 L180 220 L220 90 L260 200 L300 120 M320 150 L420 160\"")
                .startsWith("<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 1000 300\"")
                .doesNotContain("script", "href");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "null",
                "{}",
                "[[]]",
                "[[[1]]]",
                "[[[1,2,3]]]",
                "[[[1,null]]]",
                "[[[-1,5]]]",
                "[[[1001,5]]]",
                "[[[5,301]]]",
                "[[[\"<script>\",5]]]",
                "[null]",
                "<svg onload=\"x\"/>"
            })
    void what_is_no_drawing_is_not_read(String text) {
        assertThat(Strokes.read(text)).isEmpty();
    }

    @Test
    void a_drawing_without_end_is_not_read() {
        String stroke = "[" + String.join(",", Collections.nCopies(4_001, "[1,1]")) + "]";
        assertThat(Strokes.read("[" + stroke + "]")).isEmpty();
        String dots = String.join(",", Collections.nCopies(101, "[[1,1]]"));
        assertThat(Strokes.read("[" + dots + "]")).isEmpty();
        assertThat(Strokes.read("[" + " ".repeat(80_000) + "]")).isEmpty();
    }

    @Test
    void a_dot_and_a_short_dash_are_no_signature() {
        assertThat(new Strokes(List.of()).isDrawn()).isFalse();
        assertThat(Strokes.read("[[[500,150]]]").orElseThrow().isDrawn()).isFalse();
        String dash = "[[" + String.join(",", Collections.nCopies(20, "[500,150]")) + ",[559,150]]]";
        assertThat(Strokes.read(dash).orElseThrow().isDrawn()).isFalse();
        assertThat(Strokes.read(dash.replace("559", "560")).orElseThrow().isDrawn())
                .isTrue();
    }
}
