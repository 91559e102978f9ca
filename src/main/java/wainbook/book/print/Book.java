package wainbook.book.print;

import java.util.List;
import wainbook.print.Heading;

/**
 * A build book ready to be drawn.
 *
 * @param running what stands at the head of every page
 */
public record Book(Heading heading, Cover cover, String running, List<Chapter> chapters) {

    /** The first page. */
    public record Cover(String number, String kind, String state, boolean finished, Chapter first) {}

    public Book {
        chapters = List.copyOf(chapters);
    }
}
