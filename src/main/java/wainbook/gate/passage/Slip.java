package wainbook.gate.passage;

import java.time.Instant;
import java.util.Optional;

/**
 * Something at a stage that did not come right the first time.
 *
 * @param cause as messages name it, under {@code quality.slip.}
 * @param item the check item; empty for something seen beside the sheet
 * @param part what the item fits, or several with a plus between; empty where it fits nothing
 * @param number of the entry in the vehicle's record
 * @param lostMinutes working minutes from the failure to the pass of the same item, or until a nonconformity was decided
 */
public record Slip(
        Sort sort,
        String cause,
        String order,
        String vehicleKind,
        String stage,
        String item,
        String part,
        Instant at,
        long number,
        Optional<Long> lostMinutes) {

    /** The sorts of slip. Each takes a vehicle out of first-pass; not each is a defect. */
    public enum Sort {
        FAILED(true),
        /** Reported by a person. One that a failed entry opened is counted by that entry. */
        REPORTED(true),
        VOIDED(false),
        /** An item that had passed was done again, since something disturbed it. */
        DONE_AGAIN(false);

        private final boolean defect;

        Sort(boolean defect) {
            this.defect = defect;
        }
    }

    public boolean defect() {
        return sort.defect;
    }
}
