package wainbook.station.serial;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.station.StationSaying.SerialRead;
import wainbook.station.StationSaying.Voided;
import wainbook.station.serial.BroughtSaying.PartBrought;
import wainbook.station.serial.BroughtSaying.PartTakenOff;

/**
 * The serials that stand on a vehicle's record. An entry that was voided does not, nor does one that a later entry for the
 * same item replaced: another part is there now. Nor does a part that the vehicle came back with and that was taken off.
 *
 * @param byLine for each item, and each part brought along, the entry that stands
 */
public record StandingSerials(Map<String, Entry> byLine) {

    /** The code of the vehicle itself, whose number is its VIN: that there is one order a vehicle is said elsewhere. */
    private static final String VEHICLE = "VEHICLE";

    /** A part by its serial. */
    public record Serial(String part, String number) {}

    public static StandingSerials of(History history) {
        var byLine = new LinkedHashMap<String, Entry>();
        for (Entry entry : history.entries()) {
            if (serial(entry).isPresent()) {
                byLine.remove(line(entry));
                byLine.put(line(entry), entry);
            } else if (entry.saying() instanceof PartTakenOff off) {
                byLine.remove(line(off));
            } else if (entry.saying() instanceof Voided voided) {
                byLine.values().removeIf(known -> known.id().equals(voided.entry()));
            }
        }
        return new StandingSerials(byLine);
    }

    /** The serial that an entry says; none of another kind, and none of the vehicle itself. */
    public static Optional<Serial> serial(Entry entry) {
        if (entry.saying() instanceof PartBrought brought) {
            return Optional.of(brought.named());
        }
        return entry.saying() instanceof SerialRead read ? serial(read) : Optional.empty();
    }

    public static Optional<Serial> serial(SerialRead said) {
        return Optional.of(new Serial(said.part(), said.serial()))
                .filter(serial -> !serial.part().equals(VEHICLE));
    }

    /** What an entry takes off the vehicle, or would if nothing else stood for it. */
    static Stream<Serial> replacedBy(Entry entry, History history) {
        if (entry.saying() instanceof Voided voided) {
            UUID id = voided.entry();
            return history.entry(id).flatMap(StandingSerials::serial).stream();
        }
        if (entry.saying() instanceof PartTakenOff off) {
            return Stream.of(off.named());
        }
        if (entry.saying() instanceof PartBrought) {
            return Stream.empty();
        }
        return history.entries().stream()
                .filter(former -> former.number() < entry.number())
                .filter(former -> serial(former).isPresent() && line(former).equals(line(entry)))
                .flatMap(former -> serial(former).stream());
    }

    static boolean firstTime(Entry entry, Serial serial, History history) {
        return history.entries().stream()
                .filter(former -> former.number() < entry.number())
                .noneMatch(former -> serial(former).equals(Optional.of(serial)));
    }

    /** All that stand. */
    public List<Serial> all() {
        return byLine.values().stream().flatMap(entry -> serial(entry).stream()).toList();
    }

    /** Those that the vehicle came back with and that are on it still. */
    public List<Serial> brought() {
        return byLine.values().stream()
                .filter(entry -> entry.saying() instanceof PartBrought)
                .flatMap(entry -> serial(entry).stream())
                .toList();
    }

    boolean has(Serial serial) {
        return first(serial).isPresent();
    }

    /** The serials that stand for a part. */
    public List<Serial> of(String part) {
        return byLine.values().stream()
                .flatMap(entry -> serial(entry).stream())
                .filter(serial -> serial.part().equals(part))
                .toList();
    }

    /** The oldest entry by which the part stands. */
    Optional<Entry> first(Serial serial) {
        return byLine.values().stream()
                .filter(entry -> serial(entry).equals(Optional.of(serial)))
                .findFirst();
    }

    private static String line(Entry entry) {
        return entry.saying() instanceof SerialRead read ? read.about().line() : line((BroughtSaying) entry.saying());
    }

    /** No sheet has a code with a blank. */
    private static String line(BroughtSaying saying) {
        return "brought " + saying.part() + " " + saying.serial();
    }
}
