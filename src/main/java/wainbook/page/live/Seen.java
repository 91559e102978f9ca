package wainbook.page.live;

import java.time.Instant;

/**
 * What a drawing rests on: while it is the same, so is the drawing.
 *
 * @param entries how many the ledger holds
 * @param minute since time alone changes a page as well
 * @param worked how often something was worked out behind the pages
 */
record Seen(long entries, Instant minute, long worked) {}
