package wainbook.engineering.flow.sequence;

import wainbook.engineering.flow.forecast.Effort;

/**
 * What a search may cost, counted in orders and draws, never in time: the same question has the same answer on any machine. Three
 * sorts of draws, none used for two purposes, so that what is told has not been fitted to chance.
 *
 * @param seed of the draws to search with; the two after it are those to choose with and to compare with
 * @param searching draws of each order tried
 * @param choosing draws of each of the few that are looked at again
 * @param comparing draws of the one chosen and of today's
 * @param orders tried at most
 */
public record Budget(long seed, int searching, int choosing, int comparing, int orders) {

    private static final int SEARCHING = 200;
    private static final int CHOOSING = 1000;
    private static final int COMPARING = 2000;
    private static final int ORDERS = 3000;

    public Budget {
        if (searching < 2 || choosing < 2 || comparing < 2 || orders < 1) {
            throw new IllegalArgumentException("no search comes of " + orders + " orders with " + searching + ", "
                    + choosing + " and " + comparing + " draws");
        }
    }

    public static Budget usual(long seed) {
        return new Budget(seed, SEARCHING, CHOOSING, COMPARING, ORDERS);
    }

    /** On one core: somebody else works meanwhile. */
    Effort search() {
        return effort(seed, searching);
    }

    Effort choice() {
        return effort(seed + 1, choosing);
    }

    Effort comparison() {
        return effort(seed + 2, comparing);
    }

    private static Effort effort(long seed, int draws) {
        return new Effort(seed, draws, draws, 0, 1, false);
    }
}
