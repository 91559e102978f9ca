package wainbook.quality;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import wainbook.ledger.Kind;
import wainbook.ledger.Saying;

/** What is said of entries in doubt. A containment is opened and closed in the stream of its cause; each vehicle keeps its own. */
public sealed interface QualitySaying extends Saying {

    /** What turned out wrong. */
    enum Sort {
        INSTRUMENT,
        LOT,
        REVISION,
        COMPETENCE
    }

    /**
     * What a containment is about.
     *
     * @param code of the instrument, lot, check sheet or person
     * @param part whose lot it is; absent for every part under that number
     * @param revision of the check sheet
     * @param item of the check sheet; absent for all of it
     * @param competence that turned out invalid
     */
    record About(
            Sort sort,
            String code,
            Optional<String> part,
            Optional<Integer> revision,
            Optional<String> item,
            Optional<String> competence) {}

    /** Why the window begins where it does. */
    enum Basis {
        CALIBRATED,
        STATED,
        PAST_DUE,
        NEVER_GOOD,
        ASKED,
        ALL_TIME
    }

    /** From when to when entries are in doubt, both included. */
    record Window(Instant from, Instant to, Basis basis) {}

    /**
     * An error at one point.
     *
     * @param at in the instrument's unit
     * @param errorPercent (shown − true) / true
     */
    record ErrorAt(BigDecimal at, BigDecimal errorPercent) {}

    /**
     * What readings are worked back with.
     *
     * @param good errors when last known good; empty where only {@code goodWithinPercent} is known
     * @param found errors as found
     * @param goodWithinPercent what it was known to keep to when last good, to either side
     * @param uncertaintyPercent of a reading worked back
     */
    record Errors(
            String unit,
            List<ErrorAt> good,
            List<ErrorAt> found,
            Optional<BigDecimal> goodWithinPercent,
            BigDecimal uncertaintyPercent) {
        public Errors {
            good = List.copyOf(good);
            found = List.copyOf(found);
        }
    }

    /** A vehicle and how many of its readings came to which verdict. */
    record Touched(String order, int sureOut, int possible, int safe) {}

    /** A tool that was checked on the instrument in doubt: the next in the chain. */
    record Chained(String tool, int checks, Instant last) {}

    /**
     * A containment is opened.
     *
     * @param cause the entry that put the instrument in doubt; absent where a person asked
     * @param errors absent where nothing can be worked out
     * @param holdsAll whether vehicles are held whatever the joint class
     */
    @Kind("quality.doubtOpened/1")
    record DoubtOpened(
            String containment,
            About about,
            Optional<UUID> cause,
            String reason,
            Window window,
            Optional<Errors> errors,
            boolean holdsAll,
            List<Touched> vehicles,
            List<Chained> chain)
            implements QualitySaying {
        public DoubtOpened {
            vehicles = List.copyOf(vehicles);
            chain = List.copyOf(chain);
        }
    }

    /** Figures have come that the readings can be worked back with. */
    @Kind("quality.doubtWorkedOut/1")
    record DoubtWorkedOut(String containment, UUID cause, Errors errors, List<Touched> vehicles)
            implements QualitySaying {
        public DoubtWorkedOut {
            vehicles = List.copyOf(vehicles);
        }
    }

    @Kind("quality.doubtClosed/1")
    record DoubtClosed(String containment, String reason) implements QualitySaying {}

    /** What hangs on a reading: the joint class it was made under, or that it was made at high voltage. */
    enum Gravity {
        HIGH_VOLTAGE,
        A,
        B,
        C,
        UNCLASSED;

        /** Whether somebody may be hurt. */
        public boolean grave() {
            return this == HIGH_VOLTAGE || this == A;
        }
    }

    /** Whether what a reading stands for can be within its limits. */
    enum Sureness {
        SURE_OUT,
        POSSIBLE,
        SAFE
    }

    /** What a verdict rests on. */
    enum Ground {
        WORKED_OUT,
        NO_FIGURES,
        PROOF_OF_DEAD,
        NOT_COMPUTABLE,
        CHECKED_SINCE,
        FAILED_THEN,
        RESTS_ON_IT
    }

    /**
     * A reading worked back, in its unit.
     *
     * @param best with the error when last good
     * @param even with the error growing evenly in time
     * @param worst with the error as found
     */
    record Worked(
            BigDecimal goodPercent,
            BigDecimal foundPercent,
            BigDecimal best,
            BigDecimal even,
            BigDecimal worst,
            BigDecimal low,
            BigDecimal high) {}

    /**
     * One reading in question.
     *
     * @param place number of the fastener in the order of tightening, or of the cell; 0 where the entry is one reading
     * @param item the check item's name across all sheets, or the point of an isolation
     * @param strict whether a reading on its limit is outside
     */
    record Doubted(
            UUID entry,
            long number,
            int place,
            Instant at,
            String who,
            String stage,
            String item,
            Optional<String> joint,
            Gravity gravity,
            String unit,
            Optional<BigDecimal> reading,
            Optional<BigDecimal> lower,
            Optional<BigDecimal> upper,
            boolean strict,
            boolean voided,
            Sureness verdict,
            Ground ground,
            Optional<Worked> worked) {

        public Place key() {
            return new Place(entry, place);
        }
    }

    /** Said of a vehicle: these readings are in question. Said again when they are worked out anew; decisions stand. */
    @Kind("quality.readingsDoubted/1")
    record ReadingsDoubted(String containment, About about, List<Doubted> readings, Optional<Integer> hold)
            implements QualitySaying {
        public ReadingsDoubted {
            readings = List.copyOf(readings);
        }
    }

    /** Which reading: an entry, and the place within it. */
    record Place(UUID entry, int place) {}

    /** What settles a reading. */
    enum Disposition {
        RE_CHECKED,
        RENEWED,
        REPLACED,
        ACCEPTED,
        BY_OPERATOR
    }

    /**
     * What was measured at the vehicle to settle readings.
     *
     * @param entry of the vehicle's record; absent where the stage is over and the decision itself is the record
     * @param by number of the person who measured
     * @param instrument with what, and until when that is good; absent where nothing was to be measured
     * @param lowest and highest of what was read
     */
    record Recheck(
            Optional<UUID> entry,
            String by,
            Optional<String> instrument,
            Optional<LocalDate> due,
            Optional<BigDecimal> lowest,
            Optional<BigDecimal> highest) {}

    @Kind("quality.readingsDecided/1")
    record ReadingsDecided(
            String containment, List<Place> places, Disposition disposition, String reason, Optional<Recheck> recheck)
            implements QualitySaying {
        public ReadingsDecided {
            places = List.copyOf(places);
        }
    }

    /** What passed between the works and the operator of a vehicle handed over. It settles nothing by itself. */
    enum Word {
        INFORMED,
        ANSWERED
    }

    @Kind("quality.operatorNoted/1")
    record OperatorNoted(String containment, Word word, String what) implements QualitySaying {}

    /**
     * A signal of a chart was looked into. It and whatever the chart said before are settled.
     *
     * @param chart by its sort and code
     * @param sign by which the chart told
     * @param upTo the newest reading on the chart then
     */
    @Kind("quality.driftSettled/1")
    record DriftSettled(String chart, String sign, Place upTo, String words) implements QualitySaying {}

    /** What a person says of an entry of theirs that was asked about. */
    enum Answer {
        RIGHT,
        TYPED_WRONG,
        SOMETHING_ELSE
    }

    /**
     * A question about a record is answered by the person who made it. What was asked is kept with it.
     *
     * @param rule by which it was asked
     * @param figures the working, as it was shown
     */
    @Kind("quality.questionAnswered/1")
    record QuestionAnswered(
            UUID question, String rule, List<UUID> entries, List<String> figures, Answer answer, Optional<String> words)
            implements QualitySaying {
        public QuestionAnswered {
            entries = List.copyOf(entries);
            figures = List.copyOf(figures);
        }
    }

    /** A question is settled by a quality engineer. No entry is changed by that. */
    @Kind("quality.questionSettled/1")
    record QuestionSettled(UUID question, String rule, List<UUID> entries, List<String> figures, String words)
            implements QualitySaying {
        public QuestionSettled {
            entries = List.copyOf(entries);
            figures = List.copyOf(figures);
        }
    }

    /**
     * The works has agreed to statistics by person.
     *
     * @param document where the agreement stands
     * @param readers numbers of the people who may see them, besides each person their own
     * @param until the last day it holds
     */
    @Kind("quality.statisticsAgreed/1")
    record StatisticsAgreed(String document, List<String> readers, LocalDate until) implements QualitySaying {
        public StatisticsAgreed {
            readers = List.copyOf(readers);
        }
    }

    @Kind("quality.statisticsEnded/1")
    record StatisticsEnded(String reason) implements QualitySaying {}
}
