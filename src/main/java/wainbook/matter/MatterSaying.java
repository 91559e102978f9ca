package wainbook.matter;

import java.util.Optional;
import wainbook.ledger.Kind;
import wainbook.ledger.Saying;
import wainbook.process.sheet.BeyondConcession;

/** What is said of a vehicle's open matters. They are numbered within their work order. */
public sealed interface MatterSaying extends Saying {

    /** Why a nonconformity was opened. */
    enum Cause {
        TRIES_USED_UP,
        OVER_TIGHTENED,
        INSULATION,
        BONDING,
        REPORTED,
        /** A marked joint had moved, or moved when it was checked. */
        MOVED_AT_CHECK
    }

    /** Why no concession can be given for it: the limit is not the works' to give away. */
    enum NoConcession {
        LEGAL_LIMIT,
        PROOF_OF_DEAD,
        BRAKES,
        STEERING,
        AXLE_LOADS;

        public static NoConcession of(BeyondConcession belongs) {
            return switch (belongs) {
                case BRAKES -> BRAKES;
                case STEERING -> STEERING;
                case AXLE_LOADS -> AXLE_LOADS;
                case PROOF_OF_DEAD -> PROOF_OF_DEAD;
            };
        }
    }

    /** What is done about it. */
    enum Disposition {
        REWORK,
        REPAIR,
        CONCESSION,
        SCRAP
    }

    /**
     * A nonconformity.
     *
     * @param item the check item it is about; absent for something seen beside the sheet
     * @param what what is not as it should be, in the words of who reported it or of the rule
     */
    @Kind("matter.nonconformityOpened/1")
    record NonconformityOpened(
            int nonconformity,
            String stage,
            Optional<String> item,
            Cause cause,
            String what,
            Optional<NoConcession> noConcession)
            implements MatterSaying {}

    @Kind("matter.disposed/1")
    record Disposed(int nonconformity, Disposition disposition, String because) implements MatterSaying {}
}
