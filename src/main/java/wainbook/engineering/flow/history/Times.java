package wainbook.engineering.flow.history;

import wainbook.engineering.flow.forecast.model.Minutes;

/** A time to draw, for a vehicle of usual pace, and what it rests on. */
public record Times(Minutes minutes, Basis basis) {}
