package wainbook.book.print;

import java.util.ArrayList;
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

    /** The same with another chapter at its end. */
    public Book and(Chapter last) {
        var more = new ArrayList<>(chapters);
        more.add(last);
        return new Book(heading, cover, running, more);
    }
}
