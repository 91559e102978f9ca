package wainbook.safety.page.view;

import java.util.List;
import wainbook.act.Reason;
import wainbook.page.Filled;
import wainbook.page.Option;

/**
 * One safety stop with what can be done about it.
 *
 * @param stations where it can still be said to be, while nobody said
 */
public record StopView(StopLine line, List<Reason> againstLifting, List<Option> stations, Filled filled) {}
