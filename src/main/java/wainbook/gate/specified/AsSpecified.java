package wainbook.gate.specified;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;
import wainbook.act.Reason;
import wainbook.order.calibration.Comparison;
import wainbook.order.fitted.Match;
import wainbook.process.sheet.Ask;
import wainbook.station.ItemState;
import wainbook.station.ItemState.Status;
import wainbook.station.StageRecord;

/**
 * Whether a vehicle is what was specified and asked. Packs and parts are compared at the gate of the stage that reads their serials,
 * where a mistake costs least, and all of them once more at the last gate, since a specification may be chosen anew in between. The
 * calibration is compared at the last gate: nothing is driven before, and a control unit may be given another one until then.
 *
 * @param last whether this is the gate before the vehicle leaves the line
 */
public record AsSpecified(StageRecord record, boolean last, Match fitted, Comparison calibration) {

    public List<Reason> against() {
        if (!last) {
            return fitted.against(this::readHere);
        }
        var against = new ArrayList<>(fitted.against());
        against.addAll(calibration.against());
        return against;
    }

    /** Whether the gate has anything to say of it. */
    public boolean shown() {
        return last || fitted.lines().stream().anyMatch(line -> reads().anyMatch(line::readAs));
    }

    /** Read at this stage, and not given to a later one: there it is compared. */
    private boolean readHere(String part) {
        return reads().anyMatch(part::equals)
                && serials(AsSpecified::later).noneMatch(late -> fitted.together(late, part));
    }

    private Stream<String> reads() {
        return serials(item -> true);
    }

    private Stream<String> serials(Predicate<ItemState> which) {
        return record.items().stream()
                .filter(which)
                .map(item -> item.item().asks())
                .filter(Ask.Serial.class::isInstance)
                .map(ask -> ((Ask.Serial) ask).part());
    }

    private static boolean later(ItemState item) {
        return item.status() == Status.CARRIED_OVER || item.status() == Status.RE_SEQUENCED;
    }
}
