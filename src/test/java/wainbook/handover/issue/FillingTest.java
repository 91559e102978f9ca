package wainbook.handover.issue;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wainbook.act.Reason;

/** Texts of documents filled from figures. */
class FillingTest {

    @Test
    void figures_rows_and_headings_become_a_document() {
        String html = html(
                """
                # Packs of {order.number}

                | Place | Serial |
                |---|---|
                {#for pack in packs}
                | {pack.part} | {pack.number} |
                {/for}
                """,
                Map.of(
                        "order", Map.of("number", "WB-0001"),
                        "packs", List.of(pack("PACK-1", "E60-17"), pack("PACK-2", "E60-18"))));
        assertThat(html)
                .contains("<h2>Packs of WB-0001</h2>", "<td>PACK-1</td>", "<td>E60-18</td>")
                .doesNotContain("{", "|");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "<script>alert(1)</script>",
                "a | b",
                "**not bold** _nor this_",
                "[link](http://example.org)",
                "# no heading",
                "{works}",
                "back\\slash",
                "Tom & Co. \"quoted\"",
                "line one\n\nline two"
            })
    void what_a_figure_says_is_plain_text_whatever_signs_it_holds(String said) {
        String html = html("| What | On record |\n|---|---|\n| keeper | {keeper} |\n", Map.of("keeper", said));
        String expected = said.replaceAll("\\s+", " ")
                .replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;");
        assertThat(html).contains("<td>" + expected + "</td>");
    }

    @Test
    void what_a_text_itself_says_in_marks_of_html_is_shown_and_not_obeyed() {
        assertThat(html("<b>Works</b>\n", Map.of())).contains("&lt;b&gt;Works&lt;/b&gt;");
    }

    @Test
    void no_level_of_heading_is_left_out() {
        assertThat(html("### Deep\n\n# First\n\n### Third\n", Map.of()))
                .contains("<h2>Deep</h2>", "<h2>First</h2>", "<h3>Third</h3>");
    }

    @Test
    void a_figure_that_nobody_has_is_named_with_its_line() {
        assertThat(wrong("One\n\n{order.colour}\n", Map.of("order", Map.of("number", "WB-0001"))))
                .contains("3")
                .contains("colour");
    }

    @ParameterizedTest
    @ValueSource(strings = {"{#for pack in packs}\nno end\n", "{#if}", "{/for}", "{order.number"})
    void a_text_that_cannot_be_read_is_refused_and_nothing_breaks(String text) {
        List<String> keys = Filling.html(text, Map.of("order", Map.of("number", "1"), "packs", List.of()))
                .fold(
                        html -> List.of(html),
                        reasons -> reasons.stream().map(Reason::key).toList());
        assertThat(keys).containsExactly("handover.textWrong");
    }

    @Test
    void a_text_reaches_nothing_but_its_figures() {
        assertThat(wrong("{order.getClass}\n", Map.of("order", Map.of("number", "1"))))
                .contains("getClass");
        assertThat(wrong("{inject:ledger}\n", Map.of())).isNotBlank();
        assertThat(wrong("{works.class.forName('java.lang.Runtime')}\n", Map.of("works", "W")))
                .isNotBlank();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "{#for i in 999999999}x{/for}",
                "{#for i in  9}x{/for}",
                "{#each 999999999}x{/each}",
                "{#for a in packs}{#for b in packs}{#for c in packs}x{/for}{/for}{/for}"
            })
    void a_text_cannot_go_on_without_end(String text) {
        assertThat(key(text)).isEqualTo("handover.textLoop");
    }

    @ParameterizedTest
    @ValueSource(strings = {"{#let n=9}{n}{/let}", "{#eval keeper /}", "{#include other /}"})
    void a_text_has_only_the_sections_it_needs(String text) {
        assertThat(key(text)).isEqualTo("handover.textTag");
    }

    @Test
    void two_deep_and_one_after_another_is_fine() {
        String row = "{#for a in packs}{#for b in a.rows}{b}{/for}{/for}";
        List<Map<String, Object>> packs = List.of(Map.of("rows", List.of("x", "y")));
        assertThat(html(row + row + row + "{#if packs.size > 0}z{#else}none{/if}", Map.of("packs", packs)))
                .contains("xyxyxyz");
    }

    private static String key(String text) {
        return Filling.html(text, Map.of("packs", List.of(), "keeper", "{#for i in 9}x{/for}"))
                .fold(html -> html, reasons -> reasons.get(0).key());
    }

    private static Map<String, Object> pack(String part, String number) {
        return Map.of("part", part, "number", number);
    }

    private static String html(String text, Map<String, Object> figures) {
        return Filling.html(text, figures).fold(html -> html, reasons -> {
            throw new AssertionError(reasons);
        });
    }

    private static String wrong(String text, Map<String, Object> figures) {
        return Filling.html(text, figures)
                .fold(
                        html -> {
                            throw new AssertionError(html);
                        },
                        reasons -> String.join(" ", reasons.get(0).arguments()));
    }
}
