package wainbook.bench;

import java.util.concurrent.Callable;

/**
 * Two things whose times are set against each other.
 *
 * @param what is measured
 * @param things how many entries, say, one go takes: its time is given for one of them too
 * @param against what the baseline is
 */
record Comparison(String what, int things, Go candidate, String against, Go baseline) {

    /** One go at it: getting ready is not timed, what that gives back is. */
    interface Go {
        Callable<?> ready() throws Exception;
    }
}
