package wainbook.ledger;

/**
 * What an entry says. Each room has one sealed interface that extends this one, in one file, with its kinds as nested
 * records; a record's components are strings, integers, longs, booleans, enums, decimals, dates, instants, UUIDs, nested
 * records, lists of those, and optionals of those. No doubles and no maps: what is hashed must have one form.
 */
public interface Saying {}
