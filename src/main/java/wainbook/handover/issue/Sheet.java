package wainbook.handover.issue;

import java.time.Instant;
import java.util.List;
import wainbook.page.Formats;
import wainbook.page.Words;
import wainbook.print.Heading;
import wainbook.print.PdfPage;
import wainbook.print.Printer;
import wainbook.station.StationSaying.Held;

/**
 * A document as it goes on paper: head, what the works says, who signed.
 *
 * @param issue counts the issues of this document for this vehicle, from 1
 * @param text XHTML
 */
record Sheet(IssueRules rules, int issue, String text, String signer, Held held, Instant at, Formats format) {

    String number() {
        return Issues.number(rules.order(), rules.template().code(), issue);
    }

    byte[] pdf() {
        Heading heading = new Heading(
                rules.template().title() + " " + number(), rules.template().about(), Words.LOCALE, at);
        return Printer.pdf(new PdfPage(body(), heading, List.of()));
    }

    private String body() {
        return "<div class=\"head\"><table><tr><td>" + escaped(rules.template().title() + " · " + number())
                + "</td></tr></table></div><div class=\"foot\"><p>" + escaped(Words.of("handover.sheetPage"))
                + " <span class=\"page\"></span> " + escaped(Words.of("handover.sheetOf"))
                + " <span class=\"pages\"></span></p></div><div class=\"cover\"><p class=\"over-title\">"
                + escaped(String.valueOf(rules.figures().get("works"))) + "</p></div><h1 id=\"title\">"
                + escaped(rules.template().title()) + "</h1><p>" + escaped(number()) + "</p>" + text
                + "<div class=\"caution\"><p>" + escaped(signature()) + "</p><p>"
                + escaped(Words.of("handover.sheetCaution")) + "</p></div>";
    }

    private String signature() {
        return Words.of(
                "handover.sheetSigned",
                signer,
                held.competence(),
                Formats.date(held.validTo()),
                format.full(at),
                rules.template().revision());
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }
}
