package wainbook.station.entry;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Optional;
import wainbook.act.Reason;
import wainbook.pack.Fitting;
import wainbook.station.StationSaying;
import wainbook.station.StationSaying.SerialRead;
import wainbook.station.serial.PartSerial;
import wainbook.station.serial.StandingSerials;
import wainbook.station.work.Work;

/** What stands against an entry by what it says of parts and people elsewhere, whether it was typed live or taken from paper. */
@ApplicationScoped
public class AgainstSaid {

    private final Fitting packs;
    private final NamedBesides besides;

    AgainstSaid(Fitting packs, NamedBesides besides) {
        this.packs = packs;
        this.besides = besides;
    }

    public Optional<List<Reason>> of(StationSaying saying, Work work) {
        return onAnotherVehicle(saying, work.history().subject().code())
                .or(() -> noFitPack(saying, work))
                .or(() -> besides.against(saying, work));
    }

    /** Two who read the same serial at once meet the unique key, which sends the later one here. */
    private static Optional<List<Reason>> onAnotherVehicle(StationSaying saying, String order) {
        return serial(saying)
                .flatMap(serial -> PartSerial.elsewhere(serial, order)
                        .map(other -> Reason.of(
                                        "station.serialElsewhere",
                                        Reason.WORKS_RULE,
                                        serial.number(),
                                        serial.part(),
                                        other)
                                .liftedAt("/orders/" + other)))
                .map(List::of);
    }

    /** A pack in quarantine, of a held lot, or not received is read as fitted nowhere. */
    private Optional<List<Reason>> noFitPack(StationSaying saying, Work work) {
        return serial(saying)
                .map(serial -> packs.against(
                        serial.part(), serial.number(), false, work.moment().at()))
                .filter(against -> !against.isEmpty());
    }

    private static Optional<StandingSerials.Serial> serial(StationSaying saying) {
        return Optional.of(saying)
                .filter(SerialRead.class::isInstance)
                .flatMap(said -> StandingSerials.serial((SerialRead) said));
    }
}
