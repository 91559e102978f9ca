package wainbook.engineering.flow.forecast.outcome;

/** From one minute to another, both since the origin. */
public record Span(double lowMinute, double highMinute) {}
