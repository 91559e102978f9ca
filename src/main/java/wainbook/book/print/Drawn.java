package wainbook.book.print;

import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import wainbook.print.Attachment;
import wainbook.print.Heading;
import wainbook.print.PdfPage;
import wainbook.print.Printer;

/** A build book drawn: as a PDF, and as pages that open from any folder. */
public final class Drawn {

    private Drawn() {}

    public static byte[] pdf(Book book, List<Attachment> attachments) {
        return Printer.pdf(new PdfPage(body(book), book.heading(), attachments));
    }

    /** What is printed, before it is. */
    static String body(Book book) {
        return BookSheets.book(book).render();
    }

    /** A page that stands before a document from elsewhere. */
    public static byte[] divider(Book book, Chapter chapter) {
        Heading heading = book.heading();
        return Printer.pdf(new PdfPage(
                BookSheets.divider(book.running(), chapter).render(),
                new Heading(chapter.title(), heading.about(), heading.language(), heading.at()),
                List.of()));
    }

    /** The pages by the names of their files. They ask for a stylesheet of the name {@code book.css} beside them. */
    public static Map<String, byte[]> site(Book book) {
        Map<String, byte[]> pages = new LinkedHashMap<>();
        pages.put("index.html", leaf(book, book.cover().first(), true));
        book.chapters().forEach(chapter -> pages.put(chapter.file(), leaf(book, chapter, false)));
        return pages;
    }

    private static byte[] leaf(Book book, Chapter chapter, boolean first) {
        return BookSheets.leaf(book, chapter, first).render().strip().getBytes(StandardCharsets.UTF_8);
    }
}
