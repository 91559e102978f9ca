package wainbook.trace;

import java.util.Set;
import wainbook.ledger.Saying;
import wainbook.station.StationSaying.Attended;
import wainbook.station.StationSaying.LotUsed;
import wainbook.station.StationSaying.Rechecked;
import wainbook.station.StationSaying.Result;
import wainbook.station.StationSaying.SerialRead;
import wainbook.station.StationSaying.SoftwareRead;
import wainbook.station.StationSaying.TakenFromPaper;
import wainbook.station.StationSaying.Tightened;
import wainbook.station.serial.BroughtSaying;
import wainbook.trace.Mention.Sort;

/** What work at a vehicle names. */
final class AtStations {

    private AtStations() {}

    static void add(Saying saying, Set<Mention> named) {
        if (saying instanceof Result said) {
            said.basis().used().ifPresent(used -> named.add(Mention.of(Sort.INSTRUMENT, used.instrument())));
        }
        if (saying instanceof SerialRead said) {
            named.add(Mention.of(Sort.SERIAL, said.serial()));
        } else if (saying instanceof BroughtSaying said) {
            named.add(Mention.of(Sort.SERIAL, said.serial()));
        } else if (saying instanceof LotUsed said) {
            named.add(Mention.of(Sort.LOT, said.lot()));
        } else if (saying instanceof Rechecked said) {
            named.add(Mention.of(Sort.JOINT, said.joint()));
        } else if (saying instanceof Tightened said) {
            named.add(Mention.of(Sort.JOINT, said.joint()));
        } else if (saying instanceof SoftwareRead said) {
            software(said, named);
        } else if (saying instanceof Attended said) {
            named.add(Mention.of(Sort.PERSON, said.second()));
        } else if (saying instanceof TakenFromPaper said) {
            named.add(Mention.of(Sort.PERSON, said.doer()));
        }
    }

    /** By its module and version, and by the version alone. */
    private static void software(SoftwareRead said, Set<Mention> named) {
        var whole = Mention.of(Sort.SOFTWARE, said.module() + " " + said.version());
        named.add(whole);
        named.add(whole.alsoBy(said.version()));
    }
}
