package wainbook.quality.chart;

/**
 * A chart says that the process has changed.
 *
 * @param point that completes it, counted from 0
 */
public record Signal(int point, Sign sign) {}
