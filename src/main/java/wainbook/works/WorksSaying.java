package wainbook.works;

import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import wainbook.ledger.Kind;
import wainbook.ledger.Saying;
import wainbook.ledger.Superseded;
import wainbook.works.instruments.InstrumentKind;
import wainbook.works.shift.Break;
import wainbook.works.shift.Shift;

/** What is said of the works, its people and its instruments. */
public sealed interface WorksSaying extends Saying {

    /** The works as a whole. */
    @Kind("works.named/1")
    record Named(String title, String zone) implements WorksSaying {}

    /** A shift as it was said before shifts had places. */
    record ShiftBefore(String title, int fromMinute, int toMinute, List<DayOfWeek> weekdays) {
        public ShiftBefore {
            weekdays = List.copyOf(weekdays);
        }

        Shift newer() {
            return Shift.everywhere(title, fromMinute, toMinute, weekdays);
        }
    }

    /** As it was said before shifts had places: each is one of the whole works. */
    @Kind("works.shiftsSet/1")
    record ShiftsSetBefore(List<ShiftBefore> shifts) implements WorksSaying, Superseded {
        public ShiftsSetBefore {
            shifts = List.copyOf(shifts);
        }

        @Override
        public ShiftsSet newer() {
            return new ShiftsSet(shifts.stream().map(ShiftBefore::newer).toList());
        }
    }

    /** The works' shifts, all of them; each set replaces the one before. */
    @Kind("works.shiftsSet/2")
    record ShiftsSet(List<Shift> shifts) implements WorksSaying {
        public ShiftsSet {
            shifts = List.copyOf(shifts);
        }
    }

    /** The works' breaks, all of them; each list replaces the one before. */
    @Kind("works.breaksSet/1")
    record BreaksSet(List<Break> breaks) implements WorksSaying {
        public BreaksSet {
            breaks = List.copyOf(breaks);
        }
    }

    /** Days on which no shift begins, all of them; each list replaces the one before. */
    @Kind("works.holidaysSet/1")
    record HolidaysSet(List<LocalDate> days) implements WorksSaying {
        public HolidaysSet {
            days = List.copyOf(days);
        }
    }

    /** Working minutes in which the line makes one vehicle, as the works has set it. */
    @Kind("works.taktSet/1")
    record TaktSet(int minutes) implements WorksSaying {
        public TaktSet {
            if (minutes < 1 || minutes > 10_000) {
                throw new IllegalArgumentException("a takt is 1 to 10000 minutes, not " + minutes);
            }
        }
    }

    /** Whether an isolator may issue the permit on their own isolation; every permit then shows it. */
    @Kind("works.isolatorMayIssueSet/1")
    record IsolatorMayIssueSet(boolean allowed) implements WorksSaying {}

    /** The works' short name. */
    @Kind("works.codeSet/1")
    record CodeSet(String code) implements WorksSaying {}

    /** Who runs the vehicles, all of them; each list replaces the one before. */
    @Kind("works.operatorsListed/1")
    record OperatorsListed(List<Operator> operators) implements WorksSaying {
        public OperatorsListed {
            operators = List.copyOf(operators);
        }
    }

    /** What kinds of instrument sheets and joints may ask for, all of them; each list replaces the one before. */
    @Kind("works.instrumentKindsListed/1")
    record InstrumentKindsListed(List<InstrumentKind> kinds) implements WorksSaying {
        public InstrumentKindsListed {
            kinds = List.copyOf(kinds);
        }
    }

    /** A person works here. The name itself lies outside the ledger and can be deleted there. */
    @Kind("works.engaged/1")
    record Engaged(String nameHash, List<Role> roles) implements WorksSaying {
        public Engaged {
            roles = List.copyOf(roles);
        }
    }

    @Kind("works.rolesGiven/1")
    record RolesGiven(List<Role> roles) implements WorksSaying {
        public RolesGiven {
            roles = List.copyOf(roles);
        }
    }

    /** The person no longer works here; may not sign in. */
    @Kind("works.left/1")
    record Left(String reason) implements WorksSaying {}

    /**
     * A competence with its validity, both days included.
     *
     * @param level 0 where the competence has no levels
     */
    @Kind("works.competenceGiven/1")
    record CompetenceGiven(String competence, int level, LocalDate validFrom, LocalDate validTo, String evidence)
            implements WorksSaying {}

    @Kind("works.competenceWithdrawn/1")
    record CompetenceWithdrawn(String competence, String reason) implements WorksSaying {}

    /**
     * An instrument is on the register.
     *
     * @param lower smallest value it may be used for, in {@code unit}
     * @param upper largest value it may be used for, in {@code unit}
     */
    @Kind("works.instrumentRegistered/1")
    record InstrumentRegistered(
            String kind,
            String title,
            String unit,
            BigDecimal lower,
            BigDecimal upper,
            Optional<BigDecimal> accuracyPercent)
            implements WorksSaying {}

    /** As it was said before a calibration's results were kept: calibrated and found fit. */
    @Kind("works.calibrated/1")
    record CalibratedBefore(LocalDate on, LocalDate due, String certificate) implements WorksSaying, Superseded {
        @Override
        public Calibrated newer() {
            return Calibrated.certified(on, due, certificate);
        }
    }

    /** What was done to an instrument between being found and being left. */
    enum Adjustment {
        NONE,
        ADJUSTED,
        REPAIRED,
        WITHDRAWN
    }

    /**
     * One point of a calibration.
     *
     * @param target set or shown, in the instrument's unit
     * @param references what the reference read each time; empty where only the certificate's figures were taken over
     * @param errorPercent mean of (shown − reference) / reference; above zero the instrument shows too much
     * @param expandedPercent expanded uncertainty W of that error, k = 2, without the error itself
     */
    record CalibrationPoint(
            BigDecimal target, List<BigDecimal> references, BigDecimal errorPercent, BigDecimal expandedPercent) {
        public CalibrationPoint {
            references = List.copyOf(references);
        }
    }

    /**
     * Calibrated. It may be used up to and including the due day, and not at all where that is absent.
     *
     * @param laboratory who calibrated it, with its accreditation; no person's name
     * @param permittedPercent the permitted deviation that the points were judged by: |error| + W within it passes
     * @param asFound as it came; empty where that was not kept
     * @param asLeft as it went back; empty where nothing was done to it, then as found is as left
     * @param operations what its own counter read, where it has one
     */
    @Kind("works.calibrated/2")
    record Calibrated(
            LocalDate on,
            Optional<LocalDate> due,
            String certificate,
            Optional<String> laboratory,
            Optional<BigDecimal> permittedPercent,
            List<CalibrationPoint> asFound,
            Adjustment adjustment,
            List<CalibrationPoint> asLeft,
            Optional<Long> operations)
            implements WorksSaying {
        public Calibrated {
            asFound = List.copyOf(asFound);
            asLeft = List.copyOf(asLeft);
        }

        /** Found fit, with nothing known but the certificate. */
        public static Calibrated certified(LocalDate on, LocalDate due, String certificate) {
            return new Calibrated(
                    on,
                    Optional.of(due),
                    certificate,
                    Optional.empty(),
                    Optional.empty(),
                    List.of(),
                    Adjustment.NONE,
                    List.of(),
                    Optional.empty());
        }

        /** The points that hold from this calibration on. */
        public List<CalibrationPoint> left() {
            return asLeft.isEmpty() ? asFound : asLeft;
        }
    }

    /**
     * Pulled on the works' own tester before work.
     *
     * @param tester the instrument it was checked on
     * @param references what the tester read each time
     * @param errorPercent mean of (shown − tester) / tester
     * @param limitPercent beyond this it is looked at, beyond {@code actionPercent} it is withdrawn
     */
    @Kind("works.toolChecked/1")
    record ToolChecked(
            String tester,
            BigDecimal target,
            List<BigDecimal> references,
            BigDecimal errorPercent,
            BigDecimal limitPercent,
            BigDecimal actionPercent,
            boolean passed)
            implements WorksSaying {
        public ToolChecked {
            references = List.copyOf(references);
        }
    }

    /**
     * Out of the tool store.
     *
     * @param to number of the person who has it
     * @param place station it is taken to
     * @param on the works' day, from which the tests of gloves count
     */
    @Kind("works.issued/1")
    record Issued(String to, Optional<String> place, LocalDate on) implements WorksSaying {}

    /**
     * Back in the tool store.
     *
     * @param sound whether it looks and works as it should
     */
    @Kind("works.returned/1")
    record Returned(boolean sound, Optional<String> remark) implements WorksSaying {}

    /**
     * What is printed on protective gear.
     *
     * @param rating voltage class or load, as printed
     * @param expires the last day it may be worn or used, whatever its tests say
     */
    @Kind("works.gearDescribed/1")
    record GearDescribed(Optional<String> size, Optional<String> rating, Optional<LocalDate> expires)
            implements WorksSaying {}

    /** As it was said before the cause of a withdrawal was kept. */
    @Kind("works.instrumentWithdrawn/1")
    record InstrumentWithdrawnBefore(String reason) implements WorksSaying, Superseded {
        @Override
        public InstrumentWithdrawn newer() {
            return InstrumentWithdrawn.because(reason);
        }
    }

    /** Why an instrument is withdrawn. All but the last put in doubt what was measured with it. */
    enum WithdrawalCause {
        OUT_OF_TOLERANCE,
        CHECK_FAILED,
        DAMAGED,
        LOST,
        USED_OUT_OF_DATE,
        OTHER
    }

    /**
     * Not to be used any more.
     *
     * @param since when a fall or an overload happened, where that is known; doubt begins there
     */
    @Kind("works.instrumentWithdrawn/2")
    record InstrumentWithdrawn(WithdrawalCause cause, String reason, Optional<Instant> since) implements WorksSaying {

        /** For a reason that puts no reading in doubt. */
        public static InstrumentWithdrawn because(String reason) {
            return new InstrumentWithdrawn(WithdrawalCause.OTHER, reason, Optional.empty());
        }
    }
}
