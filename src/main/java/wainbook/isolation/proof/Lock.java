package wainbook.isolation.proof;

/** A lock that is on, and whose it is. */
public record Lock(String number, String owner) {}
