package wainbook.book.chapter;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Optional;
import wainbook.book.print.Book;
import wainbook.book.print.Drawn;
import wainbook.page.Words;
import wainbook.print.Attachment;
import wainbook.print.Heading;

/** The build book of one order: the same entries give the same bytes. Long work: never on the thread of a request. */
@ApplicationScoped
public class BuildBook {

    private final MaterialLook look;

    BuildBook(MaterialLook look) {
        this.look = look;
    }

    /** A book that was made. */
    @SuppressWarnings("ArrayRecordComponent") // Nobody compares them.
    public record Made(Material material, Book book, List<Attachment> attachments, byte[] pdf) {}

    /** Empty when nothing was ordered under this number. */
    public Optional<Made> of(String order) {
        return look.of(order).map(material -> {
            Book book = written(material);
            List<Attachment> attachments = Attachments.of(material);
            return new Made(material, book, attachments, Drawn.pdf(book, attachments));
        });
    }

    /** The same without drawing it. */
    public Optional<Book> written(String order) {
        return look.of(order).map(BuildBook::written);
    }

    private static Book written(Material material) {
        return new Book(
                new Heading(
                        Words.of("printed.title", material.number()),
                        Words.of("printed.about", material.number(), material.works()),
                        Words.LOCALE,
                        material.at()),
                Front.of(material),
                Words.of(
                        material.handedOver() ? "printed.running" : "printed.runningUnfinished",
                        material.number(),
                        material.stored().number(),
                        material.stored().hash().substring(0, 16)),
                List.of(
                        Missing.of(material),
                        VehicleChapter.of(material),
                        SheetsChapter.of(material),
                        CalculationsChapter.of(material),
                        JointsChapter.of(material),
                        LinesChapter.isolation(material),
                        InstrumentsChapter.of(material),
                        MattersChapter.of(material),
                        PeopleChapter.of(material),
                        DocumentsChapter.of(material),
                        PhotographsChapter.of(material),
                        LinesChapter.record(material),
                        ProofChapter.of(material)));
    }
}
