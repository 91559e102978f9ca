package wainbook.process.plan;

/**
 * A check before the last lock comes off.
 *
 * @param onlyIfOpened asked only if a high-voltage joint or cover was opened under this isolation
 */
public record Check(String code, String what, boolean onlyIfOpened) {}
