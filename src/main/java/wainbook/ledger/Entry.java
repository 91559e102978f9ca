package wainbook.ledger;

import java.util.UUID;
import wainbook.act.Moment;

/**
 * One entry of the ledger as it is read back: never changed, never removed.
 *
 * @param number its place in the stream, from 1
 * @param hash SHA-256 of its canonical bytes, 64 hexadecimal digits
 * @param saying always in the newest version of its kind
 */
public record Entry(UUID id, Subject subject, long number, Moment moment, String hash, Saying saying) {}
