package wainbook.order.limit;

import java.util.Optional;
import wainbook.engineering.Source;

/**
 * What an axle, or a group that counts as one, may carry.
 *
 * @param fromM least spacing inside the group, itself counted in
 * @param belowM greatest spacing, itself left out; {@code toM} itself counted in
 * @param twinAir with twin tyres and road-friendly suspension
 */
public record AxleRule(
        String id,
        Group group,
        boolean driven,
        Optional<Double> fromM,
        Optional<Double> aboveM,
        Optional<Double> belowM,
        Optional<Double> toM,
        Optional<Boolean> twinAir,
        int kg,
        Optional<Force> force,
        Source source) {

    /** How many axles count as one. */
    public enum Group {
        SINGLE,
        TANDEM,
        TRIAXLE
    }

    public AxleRule {
        force = force.or(() -> Optional.of(Force.ALWAYS));
    }

    boolean fits(Group asked, boolean isDriven, double spacingM) {
        return group == asked
                && driven == isDriven
                && fromM.map(least -> spacingM >= least).orElse(true)
                && aboveM.map(least -> spacingM > least).orElse(true)
                && belowM.map(most -> spacingM < most).orElse(true)
                && toM.map(most -> spacingM <= most).orElse(true);
    }
}
