package wainbook.line.measure;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import wainbook.gate.passage.Passage;
import wainbook.gate.past.VehicleWay;

/**
 * A vehicle that was on the line at some time of a period.
 *
 * @param taktMin of the works, or of its own route where the works has set none
 * @param doneSince where it stands at a station with nothing more to do before the signature
 */
record Gathered(VehicleWay way, List<Passage> passages, double taktMin, Optional<Instant> doneSince) {

    Gathered {
        passages = List.copyOf(passages);
    }

    boolean of(String kind) {
        return kind.isEmpty() || way.kind().equals(kind);
    }
}
