package wainbook.trace.campaign;

import java.util.Optional;

/**
 * What has happened for one vehicle.
 *
 * @param handedOver whether its operator has it: handed over, or awaited back and not come yet
 * @param out taken out of the scope
 * @param askedOutBy who asked to take it out; absent where nobody did, or it is decided
 */
public record Progress(
        boolean handedOver,
        boolean out,
        Optional<String> askedOutBy,
        boolean letter,
        boolean answered,
        Rework rework,
        boolean settled) {

    public Standing standing() {
        if (out) {
            return Standing.TAKEN_OUT;
        } else if (settled) {
            return Standing.SETTLED;
        }
        return switch (rework) {
            case HANDED_OVER -> Standing.DONE;
            case IN_WORKS -> Standing.BACK_IN_WORKS;
            case ORDERED -> Standing.REWORK_ORDERED;
            case NONE, REJECTED -> answered ? Standing.ANSWERED : letter ? Standing.LETTER_SENT : Standing.IN_SCOPE;
        };
    }
}
