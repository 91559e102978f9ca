package wainbook.print;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import wainbook.print.Attachment.Relationship;

class PrinterTest {

    private static final Instant AT = Instant.parse("2026-11-26T09:14:27.123456Z");
    private static final Heading HEADING = new Heading("Book of <A> & B", "All that is on record.", Locale.UK, AT);
    private static final String SIGNS = "Ω ≥ ≤ µ μ ° · ± → ← ✓ ✗ – — ² ³ ‰ Δ √ ⚠ ⚡ Ł Ž å";

    private static final String RUNNING = """
            <div class="head"><table><tr><td>WB-0142</td></tr></table></div>
            <div class="foot"><p>Page <span class="page"></span> of <span class="pages"></span></p></div>
            """;

    private static final String BODY = RUNNING + """
            <h1 id="signs">Signs</h1><p>%s</p><p class="strong">bold %s</p><p class="fixed">fixed %s</p>
            <svg xmlns="http://www.w3.org/2000/svg" alt="three stages, one signed" width="400" height="20"
                 viewBox="0 0 400 20"><rect x="0" y="0" width="100" height="20" fill="#16191d"/>
                 <rect x="101" y="0" width="298" height="20" fill="none" stroke="#16191d"/></svg>
            <h2 id="rows">Rows</h2>
            <table><caption>Readings</caption><thead><tr><th scope="col">item</th><th scope="col">value</th></tr></thead>
            <tbody>%s</tbody></table><p><a href="#signs">back</a></p><h2 id="end">End</h2><p>The last line.</p>
            """.formatted(SIGNS, SIGNS, SIGNS, rows());

    private static final Attachment FILE = new Attachment(
            "ledger.json",
            "application/json",
            "What the book was made from.",
            Relationship.Source,
            "[]".getBytes(StandardCharsets.UTF_8));

    private static String rows() {
        return IntStream.range(0, 120)
                .mapToObj(i -> "<tr><td>item " + i + "</td><td class=\"figure\">1.84 MΩ</td></tr>")
                .collect(Collectors.joining());
    }

    @Test
    void a_document_is_archivable_and_accessible() {
        byte[] pdf = Printer.pdf(new PdfPage(BODY, HEADING, List.of(FILE)));
        Validated.passes(pdf);
        assertThat(Validated.attachments(pdf)).containsOnlyKeys("ledger.json");
        assertThat(Validated.attachments(pdf).get("ledger.json")).isEqualTo(FILE.bytes());
    }

    @Test
    void every_sign_of_the_trade_is_printed_as_itself() {
        String text = Validated.text(Printer.pdf(new PdfPage(BODY, HEADING, List.of())));
        assertThat(text)
                .contains(SIGNS, "bold " + SIGNS, "fixed " + SIGNS)
                .contains("item 119 1.84 MΩ", "The last line.");
        int pages = Validated.pages(Printer.pdf(new PdfPage(BODY, HEADING, List.of())));
        assertThat(pages).isGreaterThan(2);
        assertThat(text).contains("Page 1 of " + pages, "Page " + pages + " of " + pages);
    }

    @Test
    void a_sign_that_no_typeface_has_is_shown_as_unknown() {
        String text = Validated.text(Printer.pdf(new PdfPage(RUNNING + "<p>車 \u0001 done</p>", HEADING, List.of())));
        assertThat(text).contains("\uFFFD \uFFFD done");
    }

    @Test
    void equal_input_gives_equal_bytes_whenever_it_is_printed() {
        byte[] first = Printer.pdf(new PdfPage(BODY, HEADING, List.of(FILE)));
        byte[] second = Printer.pdf(new PdfPage(BODY, HEADING, List.of(FILE)));
        assertThat(second).isEqualTo(first);
        byte[] bound = Bound.together(HEADING, first, List.of(first), List.of(FILE));
        assertThat(Bound.together(HEADING, first, List.of(first), List.of(FILE)))
                .isEqualTo(bound);
    }

    @Test
    void the_document_bears_the_time_and_title_that_it_is_given() throws IOException {
        try (PDDocument document = Loader.loadPDF(Printer.pdf(new PdfPage(BODY, HEADING, List.of())))) {
            assertThat(document.getDocumentInformation().getCreationDate().toInstant())
                    .isEqualTo(Instant.parse("2026-11-26T09:14:27Z"));
            assertThat(document.getDocumentInformation().getTitle()).isEqualTo("Book of <A> & B");
            assertThat(document.getDocumentCatalog().getLanguage()).isEqualTo("en-GB");
            assertThat(document.getDocumentCatalog()
                            .getDocumentOutline()
                            .getFirstChild()
                            .getTitle())
                    .isEqualTo("Signs");
        }
    }

    @Test
    void several_of_ours_bound_together_are_still_archivable() {
        byte[] book = Printer.pdf(new PdfPage(BODY, HEADING, List.of(FILE)));
        byte[] leaf = Printer.pdf(new PdfPage(
                RUNNING + "<h1 id=\"leaf\">A leaf</h1><p>Weighed 9750 kg.</p>",
                new Heading("Leaf", "One leaf.", Locale.UK, AT),
                List.of()));
        byte[] bound = Bound.together(
                new Heading("Both", "Book and leaf.", Locale.UK, AT), book, List.of(leaf, leaf), List.of(FILE));
        Validated.passes(bound);
        assertThat(Validated.pages(bound)).isEqualTo(Validated.pages(book) + 2);
        assertThat(Validated.text(bound)).contains("The last line.", "Weighed 9750 kg.");
        assertThat(Validated.attachments(bound)).containsOnlyKeys("ledger.json");
    }

    @Test
    void what_is_no_pdf_cannot_be_bound() {
        byte[] book = Printer.pdf(new PdfPage(RUNNING + "<p>x</p>", HEADING, List.of()));
        byte[] photograph = {(byte) 0xff, (byte) 0xd8, 1, 2, 3};
        assertThat(Bound.readable(book)).isTrue();
        assertThat(Bound.readable(photograph)).isFalse();
        assertThatThrownBy(() -> Bound.together(HEADING, book, List.of(photograph), List.of()))
                .isInstanceOf(Bound.Unreadable.class);
    }

    @Test
    void a_body_that_is_not_well_formed_is_refused_with_its_place() {
        assertThatThrownBy(() -> Printer.pdf(new PdfPage("<p>one</p>\n<p>two<br></p>", HEADING, List.of())))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("line 2");
    }

    @Test
    void the_validator_finds_a_picture_without_its_words() {
        byte[] pdf = Printer.pdf(
                new PdfPage(RUNNING + BODY.replace("alt=\"three stages, one signed\"", ""), HEADING, List.of()));
        assertThat(Validated.failedRules(pdf, PDFAFlavour.PDFUA_1)).contains("7.3-1");
    }
}
