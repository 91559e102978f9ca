package wainbook.line.forecast.past;

import java.util.OptionalDouble;
import wainbook.engineering.flow.history.Finished;

/**
 * One vehicle's stay at one stage, in working minutes of the works' shifts.
 *
 * @param workMinutes from its arrival to the last evidence before the gate was first looked at, less holds and bays; above 0
 * @param plannedMinutes of the check sheet it was bound to, above 0
 * @param signatureMinutes from that evidence to the gate's being signed or refused first
 * @param refused the first time
 * @param againMinutes from the refusal to the last evidence before the signature; empty where it is not signed since
 */
public record PastVisit(
        String order,
        String kind,
        String stage,
        double workMinutes,
        double plannedMinutes,
        double signatureMinutes,
        boolean refused,
        OptionalDouble againMinutes) {

    Finished finished() {
        return new Finished(order, kind, stage, workMinutes, plannedMinutes);
    }

    PastVisit again(double minutes) {
        return new PastVisit(
                order, kind, stage, workMinutes, plannedMinutes, signatureMinutes, refused, OptionalDouble.of(minutes));
    }
}
