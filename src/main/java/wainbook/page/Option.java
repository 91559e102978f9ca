package wainbook.page;

/** One choice of a select or of a row of radio buttons. */
public record Option(String value, String text) {}
