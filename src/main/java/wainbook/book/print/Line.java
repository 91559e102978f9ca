package wainbook.book.print;

/**
 * A line of a cell.
 *
 * @param look of the stylesheets: {@code quiet}, {@code fixed}, {@code struck}, {@code danger}; {@code file} for the name of
 *     a file beside the pages; empty for plain text
 */
public record Line(String text, String look) {}
