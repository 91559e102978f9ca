package wainbook.isolation;

/**
 * A lock that is on.
 *
 * @param isolation the isolation it was put on for: under a later one it holds nothing until put on again
 */
public record Lock(String number, String owner, int isolation) {}
