package wainbook.order.duty;

import java.math.BigDecimal;
import java.util.Optional;
import wainbook.order.limit.Body;

/**
 * The vehicle that a specification is worked for. Places count from the foremost axle, backwards positive.
 *
 * @param market whose limits count: GB, EU or DE
 * @param wheelbaseM to the first axle of the rear group
 * @param secondFrontM distance of a second steered axle
 * @param twinAir twin tyres and air suspension; absent: not known
 * @param otherEngine another engine aboard; absent: not known
 * @param extraMassKg what the technology weighs more; absent: not known
 * @param steeringPercent least share of the laden total on the steered axles
 */
public record ChassisFigures(
        Body body,
        String market,
        BigDecimal wheelbaseM,
        Optional<BigDecimal> secondFrontM,
        Optional<SecondRear> secondRear,
        Optional<Boolean> twinAir,
        Optional<Boolean> otherEngine,
        Optional<Integer> extraMassKg,
        Received received,
        Plates plates,
        BigDecimal steeringPercent,
        Places places,
        Drive drive,
        Road road,
        Store store) {

    /**
     * A second rear axle.
     *
     * @param behindM the first one
     * @param sharePercent of the group’s load that it takes
     */
    public record SecondRear(BigDecimal behindM, BigDecimal sharePercent, boolean driven, boolean lifts) {}

    /**
     * The donor as it was weighed, without driver.
     *
     * @param uncertaintyKg standard, of each of the two loads
     * @param from the survey’s item, or where else it is known from
     */
    public record Received(BigDecimal frontKg, BigDecimal rearKg, BigDecimal uncertaintyKg, String from) {}

    /** What plates and maker let it carry: each front axle, each rear axle, the total by design, the total of a plate that stays. */
    public record Plates(
            BigDecimal frontAxleKg,
            BigDecimal rearAxleKg,
            Optional<BigDecimal> secondRearAxleKg,
            BigDecimal grossDesignKg,
            Optional<BigDecimal> grossPlatedKg) {}

    /** @param loadMiddleM of the payload; of the seated people in a bus */
    public record Places(
            BigDecimal driverM, BigDecimal loadMiddleM, BigDecimal loadLengthM, Optional<BigDecimal> standingM) {}

    /** @param torqueNm at the shaft into the axle of this ratio */
    public record Drive(BigDecimal torqueNm, BigDecimal ratio, BigDecimal efficiencyPercent, BigDecimal wheelRadiusM) {}

    /** @param cdA drag coefficient by frontal area, m² */
    public record Road(BigDecimal cdA, BigDecimal rolling) {}

    /** Shares of the nominal energy: the window that may be used, and what is left at the end of life. */
    public record Store(BigDecimal windowPercent, BigDecimal endOfLifePercent) {}

    public int axles() {
        return frontAxles() + 1 + (secondRear.isPresent() ? 1 : 0);
    }

    /** One, or two where two are steered. */
    public int frontAxles() {
        return secondFrontM.isPresent() ? 2 : 1;
    }
}
