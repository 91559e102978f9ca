package wainbook.quality.containment.doubt;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import wainbook.isolation.IsolationSaying;
import wainbook.isolation.paper.OnPaperSaying.OnPaper;
import wainbook.ledger.Entry;
import wainbook.process.joint.Joint;
import wainbook.process.joint.JointClass;
import wainbook.process.sheet.Ask;
import wainbook.process.sheet.Condition;
import wainbook.process.sheet.Limits;
import wainbook.quality.QualitySaying.Gravity;
import wainbook.quality.QualitySaying.ReadingsDecided;
import wainbook.quality.containment.doubt.Found.Nature;
import wainbook.quality.containment.doubt.Found.Value;
import wainbook.station.StationSaying.About;
import wainbook.station.StationSaying.Determined;
import wainbook.station.StationSaying.Measured;
import wainbook.station.StationSaying.Rechecked;
import wainbook.station.StationSaying.Result;
import wainbook.station.StationSaying.Tabled;
import wainbook.station.StationSaying.Tightened;
import wainbook.station.StationSaying.Verdict;

/**
 * What an entry holds that an instrument can have got wrong: every bolt, every cell, one reading, a proof of dead.
 *
 * @param sheets finds the table that an item asks for, in the revision it was recorded under
 */
public record Readings(Sheets sheets) {

    /** Finds what an item asked. */
    public interface Sheets {
        Optional<Ask.Table> table(About about);
    }

    private static final String TORQUE = "N·m";

    /** One by one. */
    public List<Found> of(Entry entry) {
        if (entry.saying() instanceof Tightened said) {
            return bolts(entry, said);
        }
        if (entry.saying() instanceof Rechecked said && said.residualNm().isPresent()) {
            return moved(entry, said, said.residualNm().get());
        }
        if (entry.saying() instanceof Measured said) {
            boolean failed = said.verdict() == Verdict.FAIL;
            Value value = value(said.reading(), said.unit(), said.works(), said.legal());
            return List.of(found(entry, said, 0, gravity(said, said.unit()), Optional.of(value), failed));
        }
        if (entry.saying() instanceof Tabled said) {
            return cells(entry, said);
        }
        if (entry.saying() instanceof ReadingsDecided) {
            return List.of(other(entry, "", "containment", Gravity.UNCLASSED));
        }
        return List.of(whole(entry));
    }

    /** The entry as one, whatever it holds. */
    public Found whole(Entry entry) {
        if (entry.saying() instanceof Tightened said) {
            return joint(entry, 0, said.about(), said.joint(), said.jointClass(), Optional.empty(), false);
        }
        if (entry.saying() instanceof Rechecked said) {
            return joint(entry, 0, said.about(), said.joint(), said.jointClass(), Optional.empty(), false);
        }
        if (entry.saying() instanceof Result said) {
            String unit = said instanceof Measured measured
                    ? measured.unit()
                    : said instanceof Determined determined ? determined.unit() : "";
            return found(entry, said, 0, gravity(said, unit), Optional.empty(), false);
        }
        if (entry.saying() instanceof IsolationSaying said) {
            String point = said instanceof IsolationSaying.AtPoint at ? at.point() : "isolation";
            boolean proof = said instanceof IsolationSaying.AtPoint
                    || said instanceof IsolationSaying.TesterProvedBefore
                    || said instanceof IsolationSaying.TesterProvedAfter;
            return new Found(
                    entry,
                    0,
                    "",
                    point,
                    Optional.empty(),
                    Gravity.HIGH_VOLTAGE,
                    Optional.empty(),
                    false,
                    proof ? Nature.PROOF_OF_DEAD : Nature.OTHER);
        }
        if (entry.saying() instanceof OnPaper) {
            return new Found(
                    entry,
                    0,
                    "",
                    "isolation",
                    Optional.empty(),
                    Gravity.HIGH_VOLTAGE,
                    Optional.empty(),
                    false,
                    Nature.PROOF_OF_DEAD);
        }
        return other(entry, "", "gate", Gravity.UNCLASSED);
    }

    private static Found other(Entry entry, String stage, String item, Gravity gravity) {
        return new Found(entry, 0, stage, item, Optional.empty(), gravity, Optional.empty(), false, Nature.OTHER);
    }

    private static List<Found> bolts(Entry entry, Tightened said) {
        return IntStream.range(0, said.boltsNm().size())
                .mapToObj(bolt -> joint(
                        entry,
                        bolt + 1,
                        said.about(),
                        said.joint(),
                        said.jointClass(),
                        Optional.of(
                                torque(said.boltsNm().get(bolt), said.torque().limitsNm())),
                        said.boltsOutside().contains(bolt + 1)))
                .toList();
    }

    /** Where each fastener moved again, held against limits of its own. */
    private static List<Found> moved(Entry entry, Rechecked said, Joint.Window residualNm) {
        return IntStream.range(0, said.movedAtNm().size())
                .mapToObj(bolt -> joint(
                        entry,
                        bolt + 1,
                        said.about(),
                        said.joint(),
                        said.jointClass(),
                        Optional.of(torque(said.movedAtNm().get(bolt), residualNm)),
                        said.boltsFailing().contains(bolt + 1)))
                .toList();
    }

    private static Value torque(BigDecimal readNm, Joint.Window limitsNm) {
        return new Value(TORQUE, readNm, Optional.of(limitsNm.lower()), Optional.of(limitsNm.upper()), false);
    }

    private static Found joint(
            Entry entry,
            int place,
            About about,
            String joint,
            JointClass jointClass,
            Optional<Value> value,
            boolean failed) {
        return new Found(
                entry,
                place,
                about.stage(),
                about.line(),
                Optional.of(joint),
                Gravity.valueOf(jointClass.name()),
                value,
                failed,
                value.isPresent() ? Nature.READING : Nature.OTHER);
    }

    private List<Found> cells(Entry entry, Tabled said) {
        Optional<Ask.Table> table = sheets.table(said.about());
        var found = new ArrayList<Found>();
        for (int i = 0; i < said.cells().size(); i++) {
            BigDecimal cell = said.cells().get(i);
            int at = i;
            Optional<Ask.Table.Column> column =
                    table.map(known -> known.columns().get(at % known.columns().size()));
            Optional<Value> value = column.map(known -> value(cell, known.unit(), known.works(), known.legal()));
            boolean failed = column.map(known -> !admits(known.works(), cell) || !admits(known.legal(), cell))
                    .orElse(false);
            String unit = column.map(Ask.Table.Column::unit).orElse("");
            found.add(found(entry, said, i + 1, gravity(said, unit), value, failed));
        }
        return found;
    }

    private static boolean admits(Optional<Limits> limits, BigDecimal reading) {
        return limits.map(known -> known.admits(reading)).orElse(true);
    }

    private static Found found(
            Entry entry, Result said, int place, Gravity gravity, Optional<Value> value, boolean failed) {
        return new Found(
                entry,
                place,
                said.about().stage(),
                said.about().line(),
                Optional.empty(),
                gravity,
                value,
                failed,
                value.isPresent() ? Nature.READING : Nature.OTHER);
    }

    /** The narrower of the works' and the law's limits, end by end. */
    private static Value value(BigDecimal reading, String unit, Optional<Limits> works, Optional<Limits> legal) {
        List<Limits> both = Stream.of(works, legal).flatMap(Optional::stream).toList();
        return new Value(
                unit,
                reading,
                both.stream().flatMap(limits -> limits.lower().stream()).max(Comparator.naturalOrder()),
                both.stream().flatMap(limits -> limits.upper().stream()).min(Comparator.naturalOrder()),
                both.stream().anyMatch(Limits::strict));
    }

    /** Work on the high-voltage system, and whatever is read in ohms or volts: a wrong one of these hides a shock or a fire. */
    private static Gravity gravity(Result said, String unit) {
        Condition condition = said.basis().condition();
        boolean electrical = switch (condition) {
            case DEAD, TEST_UNDER_ISOLATION, LIVE -> true;
            case NONE, NO_SOURCE_ABOARD -> unit.contains("Ω") || unit.matches("[mk]?V");
        };
        return electrical ? Gravity.HIGH_VOLTAGE : Gravity.UNCLASSED;
    }
}
