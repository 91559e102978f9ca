package wainbook.quality.containment.vehicle;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import wainbook.ledger.Entry;
import wainbook.quality.QualitySaying.About;
import wainbook.quality.QualitySaying.Doubted;
import wainbook.quality.QualitySaying.Gravity;
import wainbook.quality.QualitySaying.OperatorNoted;
import wainbook.quality.QualitySaying.Place;
import wainbook.quality.QualitySaying.ReadingsDecided;
import wainbook.quality.QualitySaying.ReadingsDoubted;
import wainbook.quality.QualitySaying.Sureness;
import wainbook.quality.QualitySaying.Word;

/**
 * One containment on one vehicle.
 *
 * @param hold its number in the vehicle's record; absent where none was put on
 * @param holdStands whether it is in force
 * @param entry the number of the entry that opened it
 */
public record VehicleDoubt(
        String containment,
        About about,
        Instant since,
        long entry,
        List<Reading> readings,
        Optional<Integer> hold,
        boolean holdStands,
        List<Entry> notes) {

    /** A reading in question, and the entry that settled it. */
    public record Reading(Doubted said, Optional<Entry> settled) {

        public boolean open() {
            return settled.isEmpty() && said.verdict() != Sureness.SAFE;
        }

        public Optional<ReadingsDecided> decision() {
            return settled.map(entry -> (ReadingsDecided) entry.saying());
        }

        /** How far the reading, worked back evenly, lies outside its limits in shares of them; below zero inside. */
        double outsideBy() {
            BigDecimal even =
                    said.worked().map(worked -> worked.even()).or(said::reading).orElse(BigDecimal.ZERO);
            double below = said.lower()
                    .map(limit -> share(limit.subtract(even), limit))
                    .orElse(-1.0);
            double above = said.upper()
                    .map(limit -> share(even.subtract(limit), limit))
                    .orElse(-1.0);
            return Math.max(below, above);
        }

        private static double share(BigDecimal beyond, BigDecimal limit) {
            return limit.signum() == 0 ? -1 : beyond.doubleValue() / Math.abs(limit.doubleValue());
        }
    }

    /** Sure out first, then what lies furthest out if the error grew evenly: the order of work, never the verdict. */
    public static final Comparator<Reading> ORDER_OF_WORK = Comparator.comparing(
                    (Reading reading) -> reading.said().verdict())
            .thenComparing(Reading::outsideBy, Comparator.reverseOrder())
            .thenComparing(reading -> reading.said().number())
            .thenComparing(reading -> reading.said().place());

    public VehicleDoubt {
        readings = List.copyOf(readings);
        notes = List.copyOf(notes);
    }

    static VehicleDoubt opened(ReadingsDoubted said, Entry entry) {
        return new VehicleDoubt(
                said.containment(),
                said.about(),
                entry.moment().at(),
                entry.number(),
                sorted(said.readings().stream()
                        .map(reading -> new Reading(reading, Optional.empty()))
                        .toList()),
                said.hold(),
                said.hold().isPresent(),
                List.of());
    }

    /** The same readings with new verdicts; what was decided stays decided. */
    VehicleDoubt workedOut(ReadingsDoubted said, Entry entry) {
        Map<Place, Reading> before =
                readings.stream().collect(Collectors.toMap(one -> one.said().key(), Function.identity()));
        List<Reading> now = said.readings().stream()
                .map(reading -> new Reading(
                        reading, Optional.ofNullable(before.get(reading.key())).flatMap(Reading::settled)))
                .toList();
        boolean newHold = said.hold().isPresent() && !said.hold().equals(hold);
        return new VehicleDoubt(
                containment,
                about,
                since,
                entry.number(),
                sorted(now),
                said.hold().or(() -> hold),
                holdStands || newHold,
                notes);
    }

    VehicleDoubt decided(ReadingsDecided said, Entry entry) {
        return with(readings.stream()
                .map(reading -> said.places().contains(reading.said().key())
                        ? new Reading(reading.said(), Optional.of(entry))
                        : reading)
                .toList());
    }

    VehicleDoubt noted(OperatorNoted said, Entry entry) {
        var more = new ArrayList<>(notes);
        more.add(entry);
        return new VehicleDoubt(containment, about, since, this.entry, readings, hold, holdStands, more);
    }

    VehicleDoubt released(int number) {
        return hold.filter(known -> known == number).isPresent()
                ? new VehicleDoubt(containment, about, since, entry, readings, hold, false, notes)
                : this;
    }

    private VehicleDoubt with(List<Reading> now) {
        return new VehicleDoubt(containment, about, since, entry, now, hold, holdStands, notes);
    }

    private static List<Reading> sorted(List<Reading> readings) {
        return readings.stream().sorted(ORDER_OF_WORK).toList();
    }

    /** Where this containment is dealt with on a vehicle. */
    public String path(String order) {
        return "/quality/containments/" + containment + "/vehicles/" + order;
    }

    public List<Reading> open() {
        return readings.stream().filter(Reading::open).toList();
    }

    public int count(Sureness verdict) {
        return (int) readings.stream()
                .filter(reading -> reading.said().verdict() == verdict)
                .count();
    }

    /** Those that somebody has to decide: all but the safe ones. */
    public int toDecide() {
        return readings.size() - count(Sureness.SAFE);
    }

    public boolean noted(Word word) {
        return notes.stream().anyMatch(entry -> ((OperatorNoted) entry.saying()).word() == word);
    }

    /** The gravest of what is not safe. */
    public Gravity gravest() {
        return readings.stream()
                .filter(reading -> reading.said().verdict() != Sureness.SAFE)
                .map(reading -> reading.said().gravity())
                .min(Comparator.naturalOrder())
                .orElse(Gravity.UNCLASSED);
    }
}
