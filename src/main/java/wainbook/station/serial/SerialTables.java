package wainbook.station.serial;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.Optional;
import wainbook.act.Reason;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.ledger.Ledger;
import wainbook.ledger.Projection;
import wainbook.station.StationSaying.SerialRead;
import wainbook.station.StationSaying.Voided;
import wainbook.station.serial.StandingSerials.Serial;

/**
 * Which part is on which vehicle. Judged by the whole stream and not entry by entry: when all tables are made again, a serial
 * that one vehicle had for an hour must not meet the vehicle that has it now.
 */
@ApplicationScoped
class SerialTables implements Projection {

    private final Ledger ledger;

    SerialTables(Ledger ledger) {
        this.ledger = ledger;
    }

    @Override
    public void take(Entry entry) {
        if (!(entry.saying() instanceof SerialRead) && !(entry.saying() instanceof Voided)) {
            return;
        }
        String order = entry.subject().code();
        History history = ledger.history(entry.subject());
        var standing = StandingSerials.of(history);
        StandingSerials.replacedBy(entry, history)
                .filter(serial -> !standing.has(serial))
                .forEach(serial -> row(order, serial).ifPresent(PartSerial::delete));
        StandingSerials.serial(entry)
                .filter(serial -> stands(entry, serial, standing))
                .filter(serial -> StandingSerials.firstTime(entry, serial, history)
                        || PartSerial.findByIdOptional(PartSerial.id(order, serial))
                                .isEmpty())
                .ifPresent(serial -> PartSerial.of(order, serial).persist());
    }

    /** By its id and not by a query, which would flush what other tables hold only for a moment while they are made again. */
    private static Optional<PartSerial> row(String order, Serial serial) {
        return PartSerial.findByIdOptional(PartSerial.id(order, serial));
    }

    private static boolean stands(Entry entry, Serial serial, StandingSerials standing) {
        return standing.first(serial)
                .filter(first -> first.id().equals(entry.id()))
                .isPresent();
    }

    @Override
    public void forget() {
        PartSerial.deleteAll();
    }

    @Override
    public Optional<Reason> clash(String constraint) {
        return constraint.contains("one_vehicle_a_part")
                ? Optional.of(Reason.of("station.serialTaken", Reason.WORKS_RULE))
                : Optional.empty();
    }
}
