package wainbook.ledger;

/**
 * One place where the stored record is not what was written.
 *
 * @param where the stream, entry or file
 * @param what in which way, in plain words for a person with the format's page open
 */
public record Finding(String where, String what) {}
