package wainbook.isolation.permit;

import java.time.Instant;

/**
 * A sanction for test: one person may put a test voltage on the dead, isolated system while everyone else is off it.
 *
 * @param accepted its holder read it
 */
public record Sanction(int number, String holder, String instrument, Instant validUntil, boolean accepted) {
    public Sanction accept() {
        return new Sanction(number, holder, instrument, validUntil, true);
    }
}
