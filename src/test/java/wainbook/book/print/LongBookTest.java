package wainbook.book.print;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import wainbook.book.chapter.BuildBook;
import wainbook.house.Cast;
import wainbook.print.PdfPage;
import wainbook.print.Printer;
import wainbook.print.Validated;
import wainbook.rehearsal.PlayedVehicles;

/**
 * How long a long book takes, and how much of that is the printing engine. Asked for by hand: {@code mvn test
 * -Dtest=LongBookTest -Dbook.pages=300}, with {@code -DargLine=-Xmx512m} to bound the memory. Prints seconds of processor
 * time beside those of the clock, since the machine may have other work.
 */
@QuarkusTest
@EnabledIfSystemProperty(named = "book.pages", matches = "\\d+")
class LongBookTest {

    @Inject
    BuildBook buildBook;

    @Test
    void a_long_book_is_made_mostly_by_the_engine() {
        Cast.assemble();
        int wanted = Integer.getInteger("book.pages");
        String order = new PlayedVehicles().handedOver();
        var once = buildBook.of(order).orElseThrow();
        int times = wanted / Validated.pages(once.pdf()) + 1;
        Book longer = repeated(once.book(), times);
        String body = Drawn.body(longer);
        timed("engine, warming", () -> Printer.pdf(new PdfPage(body, longer.heading(), List.of())));
        double engine = timed("engine alone", () -> Printer.pdf(new PdfPage(body, longer.heading(), List.of())));
        double whole = timed("whole", () -> {
            for (int time = 1; time < times; time++) {
                buildBook.written(order);
            }
            return Drawn.pdf(repeated(once.book(), times), once.attachments());
        });
        byte[] pdf = Drawn.pdf(longer, once.attachments());
        System.out.printf(
                "pages %d, bytes %d, engine's share %.2f, in a heap of %d MB%n",
                Validated.pages(pdf),
                pdf.length,
                engine / whole,
                Runtime.getRuntime().maxMemory() / 1_048_576);
        assertThat(Validated.pages(pdf)).isGreaterThanOrEqualTo(wanted);
    }

    private static Book repeated(Book book, int times) {
        var chapters = new ArrayList<Chapter>();
        for (int time = 0; time < times; time++) {
            for (Chapter chapter : book.chapters()) {
                String mark = time == 0 ? "" : "-" + time;
                chapters.add(new Chapter(chapter.key() + mark, chapter.title(), unnamed(chapter, time)));
            }
        }
        return new Book(book.heading(), book.cover(), book.running(), chapters);
    }

    /** Two blocks or rows of one name would make the document's links fail. */
    private static List<Block> unnamed(Chapter chapter, int time) {
        return chapter.blocks().stream()
                .map(block -> new Block(
                        block.kind(),
                        block.id().isEmpty() ? "" : block.id() + "-" + time,
                        block.text(),
                        block.facts(),
                        block.grid()
                                .map(grid -> new Grid(
                                        grid.columns(),
                                        grid.rows().stream()
                                                .map(row -> new Row("", row.head(), row.cells()))
                                                .toList())),
                        block.bar()))
                .toList();
    }

    private static double timed(String what, Supplier<byte[]> work) {
        System.gc();
        var threads = ManagementFactory.getThreadMXBean();
        long from = threads.getCurrentThreadCpuTime();
        long clock = System.nanoTime();
        assertThat(work.get()).isNotEmpty();
        double seconds = (threads.getCurrentThreadCpuTime() - from) / 1e9;
        System.out.printf("%s: %.1f s processor, %.1f s clock%n", what, seconds, (System.nanoTime() - clock) / 1e9);
        return seconds;
    }
}
