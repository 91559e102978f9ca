package wainbook.station.joint;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import wainbook.ledger.Entry;
import wainbook.page.Words;
import wainbook.process.joint.Joint;
import wainbook.station.ItemState;
import wainbook.station.StationSaying;
import wainbook.station.outline.BoltPattern;

/**
 * A joint as it was last recorded, drawn at its bolts.
 *
 * @param passed whether every bolt was within its limits
 */
public record Tightened(BoltPattern pattern, List<Value> values, boolean passed, boolean undecided, String verdict) {

    /** What was read at one bolt. */
    public record Value(BoltPattern.Bolt bolt, Optional<String> angleDegrees, BoltReading reading) {
        public String torqueNm() {
            return reading.torqueNm().toPlainString();
        }

        public boolean outside() {
            return reading.finding() == BoltReading.Finding.FAILS;
        }

        public boolean notShown() {
            return reading.finding() == BoltReading.Finding.NOT_SHOWN;
        }
    }

    /** The bolts that do not pass. */
    public List<Value> notPassing() {
        return values.stream()
                .filter(value -> value.outside() || value.notShown())
                .toList();
    }

    /** The last one that was not voided; none when the joint was given other bolts since. */
    public static Optional<Tightened> last(ItemState item, Joint joint) {
        return item.entries().stream()
                .filter(entry -> entry.saying() instanceof StationSaying.Tightened && !voided(entry, item))
                .reduce((former, latter) -> latter)
                .flatMap(entry -> of((StationSaying.Tightened) entry.saying(), joint));
    }

    private static boolean voided(Entry entry, ItemState item) {
        return item.entries().stream()
                .anyMatch(other -> other.saying() instanceof StationSaying.Voided said
                        && said.entry().equals(entry.id()));
    }

    private static Optional<Tightened> of(StationSaying.Tightened said, Joint joint) {
        BoltPattern pattern = TighteningSequence.of(joint);
        if (!said.joint().equals(joint.code()) || said.boltsNm().size() != joint.bolts()) {
            return Optional.empty();
        }
        List<Value> values = IntStream.range(0, joint.bolts())
                .mapToObj(bolt -> new Value(
                        pattern.bolts().get(bolt),
                        bolt < said.anglesDeg().size()
                                ? Optional.of(said.anglesDeg().get(bolt).toPlainString())
                                : Optional.empty(),
                        new BoltReading(said, bolt + 1)))
                .toList();
        boolean passed = said.verdict() == StationSaying.Verdict.PASS;
        return Optional.of(new Tightened(
                pattern,
                values,
                passed,
                BoltReading.undecided(said),
                passed
                        ? Words.of("station.allWithin")
                        : Words.of(
                                BoltReading.undecided(said) ? "station.boltsNotShown" : "station.boltsOutside",
                                said.boltsOutside().size())));
    }
}
