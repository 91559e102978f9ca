package wainbook.safety.page.view;

import java.util.List;
import wainbook.act.Reason;

/**
 * The page of safety.
 *
 * @param stops that stand, the oldest first
 * @param open near misses that are not closed, the newest first
 * @param months how many there were, the newest month first
 * @param inside how many visitors are inside now
 * @param reasons what the ledger refused a touch for
 */
public record SafetyView(
        List<StopLine> stops,
        List<MissLine> open,
        List<MissLine> closed,
        List<Month> months,
        int inside,
        List<Reason> reasons) {

    /** How many in a month; counts say how much is told, not how safe it is. */
    public record Month(String name, long nearMisses, long closed, long stops) {}
}
