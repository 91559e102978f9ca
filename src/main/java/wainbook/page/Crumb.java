package wainbook.page;

/** A step of the breadcrumb: a page above the present one. */
public record Crumb(String path, String text) {}
