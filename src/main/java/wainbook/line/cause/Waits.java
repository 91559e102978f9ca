package wainbook.line.cause;

import wainbook.line.station.StationState;

/** What a station waits for in the end: another one, and what that is doing. */
public record Waits(String station, StationState state) {}
