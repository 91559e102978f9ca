package wainbook.engineering.balance;

import java.util.OptionalDouble;

/**
 * How far a search is.
 *
 * @param best stations or minutes, whichever is sought; absent until there is a balance
 * @param bound what no balance is below
 * @param seconds since it began
 */
public record Progress(Phase phase, OptionalDouble best, double bound, double seconds) {

    /** First the least stations or minutes, then which of the equals. */
    public enum Phase {
        SEARCHING,
        CHOOSING
    }
}
