package wainbook.engineering.flow.forecast;

/** From one minute to another, both since the origin. */
public record Span(double lowMinute, double highMinute) {}
