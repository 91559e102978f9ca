package wainbook.station.serial;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Optional;
import wainbook.act.Reason;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.ledger.Ledger;
import wainbook.ledger.Projection;
import wainbook.order.OrderSaying.ReturnedUnder;
import wainbook.station.StationSaying.SerialRead;
import wainbook.station.StationSaying.Voided;
import wainbook.station.serial.StandingSerials.Serial;

/**
 * Which part is on which vehicle, by the vehicle's newest order. Judged by the whole stream and not entry by entry: when all
 * tables are made again, a serial that one vehicle had for an hour must not meet the vehicle that has it now.
 */
@ApplicationScoped
class SerialTables implements Projection {

    private final Ledger ledger;

    SerialTables(Ledger ledger) {
        this.ledger = ledger;
    }

    @Override
    public void take(Entry entry) {
        if (entry.saying() instanceof ReturnedUnder) {
            letGo(entry);
        } else if (entry.saying() instanceof SerialRead
                || entry.saying() instanceof Voided
                || entry.saying() instanceof BroughtSaying) {
            change(entry);
        }
    }

    private void change(Entry entry) {
        String order = entry.subject().code();
        History history = ledger.history(entry.subject());
        var standing = StandingSerials.of(history);
        StandingSerials.replacedBy(entry, history)
                .filter(serial -> !standing.has(serial))
                .forEach(serial -> row(order, serial).ifPresent(PartSerial::delete));
        StandingSerials.serial(entry)
                .filter(serial -> stands(entry, serial, standing))
                .filter(serial -> !cameBack(history))
                .filter(serial -> StandingSerials.firstTime(entry, serial, history)
                        || PartSerial.findByIdOptional(PartSerial.id(order, serial))
                                .isEmpty())
                .ifPresent(serial -> PartSerial.of(order, serial).persist());
    }

    /** Gone from the database before the new record brings the same parts, since the unique key looks at once. */
    private void letGo(Entry entry) {
        List<PartSerial> rows = StandingSerials.of(ledger.history(entry.subject())).all().stream()
                .distinct()
                .flatMap(serial -> row(entry.subject().code(), serial).stream())
                .toList();
        rows.forEach(PartSerial::delete);
        if (!rows.isEmpty()) {
            PartSerial.flush();
        }
    }

    /** The vehicle is here again under another order, whose record says what is on it. */
    private static boolean cameBack(History history) {
        return history.saying(ReturnedUnder.class).findAny().isPresent();
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
