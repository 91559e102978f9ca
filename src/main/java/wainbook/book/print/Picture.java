package wainbook.book.print;

import java.util.Optional;

/**
 * A picture in a cell.
 *
 * @param source a data address
 * @param alternative what it shows, in words
 * @param width in the page's pixels
 * @param file where the whole picture lies beside the pages; empty where it does not
 */
public record Picture(String source, String alternative, int width, int height, Optional<String> file) {}
