package wainbook.works;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import wainbook.ledger.Kind;
import wainbook.ledger.Saying;

/** What is said of the works, its people and its instruments. */
public sealed interface WorksSaying extends Saying {

    /** The works as a whole. */
    @Kind("works.named/1")
    record Named(String title, String zone) implements WorksSaying {}

    /** The works' shifts, all of them; each set replaces the one before. */
    @Kind("works.shiftsSet/1")
    record ShiftsSet(List<Shift> shifts) implements WorksSaying {
        public ShiftsSet {
            shifts = List.copyOf(shifts);
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

    /** Calibrated and found fit; may be used up to and including the due day. */
    @Kind("works.calibrated/1")
    record Calibrated(LocalDate on, LocalDate due, String certificate) implements WorksSaying {}

    @Kind("works.instrumentWithdrawn/1")
    record InstrumentWithdrawn(String reason) implements WorksSaying {}
}
