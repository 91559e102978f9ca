package wainbook.station;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import wainbook.ledger.Kind;
import wainbook.ledger.Saying;
import wainbook.ledger.Superseded;
import wainbook.ledger.evidence.EvidenceFile;
import wainbook.process.determination.Method;
import wainbook.process.joint.CheckWay;
import wainbook.process.joint.Joint;
import wainbook.process.joint.JointClass;
import wainbook.process.sheet.Condition;
import wainbook.process.sheet.Limits;
import wainbook.station.determination.Judgements;

/** What is said at the vehicle, item by item. What a verdict was made from is in the entry itself. */
public sealed interface StationSaying extends Saying {

    /** Which line of which sheet an entry answers, and what was fitted with it. */
    record About(String stage, String sheet, int revision, String item, List<String> fits) {
        public About {
            fits = List.copyOf(fits);
        }

        /** The item's name across all sheets. */
        public String line() {
            return sheet + "/" + item;
        }
    }

    /** A competence as it was at the time. */
    record Held(String competence, int level, LocalDate validTo) {}

    /** An instrument as it was at the time. */
    record Used(String instrument, LocalDate due) {}

    /** What the entry was allowed on: the electrical condition, the competence, the instrument. */
    record Basis(Condition condition, Optional<Held> held, Optional<Used> used) {}

    /** Whether what was recorded is what the item asks for. */
    enum Verdict {
        PASS,
        FAIL
    }

    /** An entry that answers an item and is judged. */
    sealed interface Result extends StationSaying {
        About about();

        Basis basis();

        Verdict verdict();
    }

    /** A result that passes by being there. */
    sealed interface Given extends Result {
        @Override
        default Verdict verdict() {
            return Verdict.PASS;
        }
    }

    @Kind("station.confirmed/1")
    record Confirmed(About about, Basis basis) implements Given {}

    /** One reading, with the limits of the works and of the law that it was judged by, kept apart. */
    @Kind("station.measured/1")
    record Measured(
            About about,
            Basis basis,
            BigDecimal reading,
            String unit,
            Optional<Limits> works,
            Optional<Limits> legal,
            Verdict verdict)
            implements Result {}

    /** A table of readings: {@code cells} row by row, as many as rows times columns. */
    @Kind("station.tabled/1")
    record Tabled(About about, Basis basis, List<BigDecimal> cells, List<CellOutside> outside, Verdict verdict)
            implements Result {
        public Tabled {
            cells = List.copyOf(cells);
            outside = List.copyOf(outside);
        }
    }

    /** A cell of a table outside its limits. */
    record CellOutside(String row, String column, Limits limits, boolean legal) {}

    /** As it was said before the tool's uncertainty stood in the entry. */
    @Kind("station.tightened/1")
    record TightenedBefore(
            About about,
            Basis basis,
            String joint,
            JointClass jointClass,
            Joint.Torque torque,
            Optional<Joint.Angle> angle,
            List<BigDecimal> boltsNm,
            List<BigDecimal> anglesDeg,
            List<Integer> boltsOutside,
            Verdict verdict)
            implements StationSaying, Superseded {
        public TightenedBefore {
            boltsNm = List.copyOf(boltsNm);
            anglesDeg = List.copyOf(anglesDeg);
            boltsOutside = List.copyOf(boltsOutside);
        }

        @Override
        public Tightened newer() {
            return new Tightened(
                    about,
                    basis,
                    joint,
                    jointClass,
                    torque,
                    angle,
                    Optional.empty(),
                    boltsNm,
                    anglesDeg,
                    boltsOutside,
                    verdict);
        }
    }

    /**
     * What the limits were drawn in by.
     *
     * @param toolPercent the tool's relative expanded uncertainty interval (k = 2), in percent
     * @param decisionFactor the share of it that was kept clear of each limit
     */
    record Guard(BigDecimal toolPercent, BigDecimal decisionFactor) {}

    /**
     * A joint tightened.
     *
     * @param guard absent in entries of a time when it was not kept
     * @param boltsNm torque of each fastener in the order of tightening
     * @param anglesDeg angle of each, where the joint asks for it
     * @param boltsOutside numbers, in that order from 1, of those that do not pass
     */
    @Kind("station.tightened/2")
    record Tightened(
            About about,
            Basis basis,
            String joint,
            JointClass jointClass,
            Joint.Torque torque,
            Optional<Joint.Angle> angle,
            Optional<Guard> guard,
            List<BigDecimal> boltsNm,
            List<BigDecimal> anglesDeg,
            List<Integer> boltsOutside,
            Verdict verdict)
            implements Result {
        public Tightened {
            boltsNm = List.copyOf(boltsNm);
            anglesDeg = List.copyOf(anglesDeg);
            boltsOutside = List.copyOf(boltsOutside);
        }
    }

    /**
     * A tightened joint checked again. It never stands for the tightening, nor the tightening for it.
     *
     * @param residualNm limits of the torque at which a fastener moves again, where the way asks for them
     * @param checkedAtNm the torque a marked joint was checked at
     * @param movedAtNm where each fastener first moved, in the order of tightening
     * @param found what was seen at each fastener of a marked joint
     * @param boltsFailing numbers, in that order from 1, of those that do not pass
     */
    @Kind("station.rechecked/1")
    record Rechecked(
            About about,
            Basis basis,
            String joint,
            JointClass jointClass,
            CheckWay way,
            BigDecimal targetNm,
            Optional<Joint.Window> residualNm,
            Guard guard,
            Optional<BigDecimal> checkedAtNm,
            List<BigDecimal> movedAtNm,
            List<CheckWay.Found> found,
            List<Integer> boltsFailing,
            Verdict verdict)
            implements Result {
        public Rechecked {
            movedAtNm = List.copyOf(movedAtNm);
            found = List.copyOf(found);
            boltsFailing = List.copyOf(boltsFailing);
        }
    }

    /** A figure by its name; numbers as typed or in the digits that limits are compared in. */
    record Figure(String name, String value) {}

    /** What a value was judged by. */
    enum By {
        LAW,
        WORKS,
        CALCULATED
    }

    /** What came of it. Undecided: the uncertainty reaches over the limit, which is no pass. */
    enum Finding {
        PASS,
        FAIL,
        UNDECIDED
    }

    /** One limit, and whether the value keeps to it with its whole uncertainty. */
    record Judgement(
            By by, Optional<BigDecimal> lower, Optional<BigDecimal> upper, Optional<String> source, Finding finding) {}

    /**
     * A quantity determined from readings by a calculation.
     *
     * @param readings as typed
     * @param inputs of the calculation, by its own names
     * @param value in the method's unit; absent where the readings give none, with a dead earth for example
     * @param openEnded whether the value is a ceiling of the instrument, so at least that much
     * @param uncertainty expanded, k = 2
     */
    @Kind("station.determined/1")
    record Determined(
            About about,
            Basis basis,
            Method method,
            String quantity,
            List<Figure> readings,
            List<Figure> inputs,
            Optional<BigDecimal> value,
            String unit,
            boolean openEnded,
            Optional<BigDecimal> uncertainty,
            List<Figure> results,
            List<Judgement> judgements,
            Verdict verdict)
            implements Result {
        public Determined {
            readings = List.copyOf(readings);
            inputs = List.copyOf(inputs);
            results = List.copyOf(results);
            judgements = List.copyOf(judgements);
        }

        /** A figure that came out of it, or was put in. */
        public Optional<String> result(String name) {
            return results.stream()
                    .filter(figure -> figure.name().equals(name))
                    .map(Figure::value)
                    .findFirst();
        }

        /** One failure fails, one doubt leaves all undecided. */
        public Finding finding() {
            return Judgements.worst(judgements.stream().map(Judgement::finding).toList());
        }
    }

    @Kind("station.serialRead/1")
    record SerialRead(About about, Basis basis, String part, String serial) implements Given {}

    @Kind("station.lotUsed/1")
    record LotUsed(About about, Basis basis, String part, String lot) implements Given {}

    @Kind("station.counted/1")
    record Counted(
            About about, Basis basis, BigDecimal quantity, String unit, Optional<BigDecimal> expected, Verdict verdict)
            implements Result {}

    @Kind("station.chosen/1")
    record Chosen(About about, Basis basis, String choice, Verdict verdict) implements Result {}

    /**
     * Work that takes two, with where it was done.
     *
     * @param second number of the person who stood by with no other task
     */
    @Kind("station.attended/1")
    record Attended(About about, Basis basis, String choice, String place, String second, Verdict verdict)
            implements Result {}

    @Kind("station.noted/1")
    record Noted(About about, Basis basis, String words) implements Given {}

    @Kind("station.softwareRead/1")
    record SoftwareRead(About about, Basis basis, String module, String version, String expected, Verdict verdict)
            implements Result {}

    @Kind("station.attached/1")
    record Attached(About about, Basis basis, EvidenceFile file) implements Given {}

    /** A wait has begun; what it waits for goes on by the clock. */
    @Kind("station.waitBegun/1")
    record WaitBegun(About about, Basis basis, int minutes) implements StationSaying {}

    @Kind("station.waited/1")
    record Waited(About about, Basis basis, Instant begunAt, int minutes) implements Given {}

    /** A reading that can pass nothing: by the wrong person, with the wrong instrument, or out of order. */
    @Kind("station.observed/1")
    record Observed(About about, List<BigDecimal> readings, List<String> notCountedFor) implements StationSaying {
        public Observed {
            readings = List.copyOf(readings);
            notCountedFor = List.copyOf(notCountedFor);
        }
    }

    /** An entry does not count, for a reason. It stays on the record, and the item is open again. */
    @Kind("station.voided/1")
    record Voided(UUID entry, String item, String reason) implements StationSaying {}

    /**
     * What the next entry says was written on paper first, while the tool was down: it is marked so for ever, whatever is
     * voided or corrected later.
     *
     * @param form number of the paper
     * @param photograph of the paper as it was filled in
     * @param doer who did it, by the paper
     * @param doneAt when, by the paper; person and instrument were judged as they stood then
     * @param comparedBy who compared it with the photograph and agreed
     */
    @Kind("station.takenFromPaper/1")
    record TakenFromPaper(
            String form,
            EvidenceFile photograph,
            String doer,
            Instant doneAt,
            String transcribedBy,
            String comparedBy,
            About about)
            implements StationSaying {

        /** Whether this person had a hand in it. */
        public boolean by(String person) {
            return List.of(doer, transcribedBy, comparedBy).contains(person);
        }
    }

    /** The item's name is on somebody's list. */
    @Kind("station.taken/1")
    record Taken(String stage, String item) implements StationSaying {}

    /** The name is off the item again: by whoever had it, or by a team leader. */
    @Kind("station.givenBack/1")
    record GivenBack(String stage, String item) implements StationSaying {}

    /** What a re-sequenced item bars until it is done. */
    enum Bar {
        DRIVING,
        ENERGISING,
        LOADING
    }

    /** An item not begun goes to a named later stage. */
    @Kind("station.reSequenced/1")
    record ReSequenced(About about, String toStage, List<Bar> bars, String reason) implements StationSaying {
        public ReSequenced {
            bars = List.copyOf(bars);
        }
    }

    /** An item is finished at a named later stage, by a named person, once. */
    @Kind("station.carriedOver/1")
    record CarriedOver(About about, String toStage, String owner, String reason) implements StationSaying {}

    /**
     * A second check is the operator's to make, by so many kilometres: it goes with the vehicle as an obligation.
     */
    @Kind("station.handedOn/1")
    record HandedOn(About about, String joint, int byKm, String reason) implements StationSaying {}

    /** Who is called for help. */
    enum Help {
        TEAM_LEADER,
        QUALITY,
        MAINTENANCE,
        SAFETY
    }

    /**
     * Help is called to the vehicle.
     *
     * @param call its number within the work order
     * @param stage and place where the vehicle stands; absent where it stands at none
     * @param workStands whether work stands still until somebody comes
     */
    @Kind("station.helpCalled/1")
    record HelpCalled(
            int call,
            Help help,
            Optional<String> stage,
            Optional<String> place,
            Optional<String> words,
            boolean workStands)
            implements StationSaying {}

    /** Somebody comes. */
    @Kind("station.helpAnswered/1")
    record HelpAnswered(int call) implements StationSaying {}

    /** What help was called for is settled. */
    @Kind("station.helpResolved/1")
    record HelpResolved(int call, Optional<String> words) implements StationSaying {}
}
