package wainbook.engineering.flow.status;

import java.util.List;
import java.util.OptionalInt;

/** From a station that waits to the one that it waits for: a blocked one looks ahead, a starved one back. */
public final class Walk {

    /** The cause of a starved station when every station before it is starved too: nothing is released. */
    public static final int RELEASE = -1;

    private Walk() {}

    /**
     * @param line what each station is doing, in the order of the line
     * @param station counted from 0
     * @return the first station on the way that does not wait likewise, or {@link #RELEASE}; empty if this one does not wait
     */
    public static OptionalInt cause(List<Doing> line, int station) {
        Doing doing = line.get(station);
        if (!doing.waits()) {
            return OptionalInt.empty();
        }
        int step = doing == Doing.BLOCKED ? 1 : -1;
        int at = station + step;
        while (at >= 0 && at < line.size() && line.get(at) == doing) {
            at += step;
        }
        return OptionalInt.of(at == line.size() ? RELEASE : at);
    }
}
