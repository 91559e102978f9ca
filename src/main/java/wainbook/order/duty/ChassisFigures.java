package wainbook.order.duty;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
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
 * @param ageing of the packs; absent: not stated, new and end of life alone are shown
 * @param tyres of the axles whose tyres are known; an axle without them is limited by plate and law alone
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
        Store store,
        Optional<PackAgeing> ageing,
        List<Tyres> tyres) {

    public ChassisFigures {
        tyres = tyres == null ? List.of() : List.copyOf(tyres);
    }

    /** The same vehicle, weighed otherwise. */
    public ChassisFigures weighing(Received other) {
        return new ChassisFigures(
                body,
                market,
                wheelbaseM,
                secondFrontM,
                secondRear,
                twinAir,
                otherEngine,
                extraMassKg,
                other,
                plates,
                steeringPercent,
                places,
                drive,
                road,
                store,
                ageing,
                tyres);
    }

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

    /**
     * What the packs lose, from their data sheet.
     *
     * @param thousandCyclesPercent of the nominal capacity with a thousand full cycles
     * @param yearPercent of it with a year
     * @param source where the two are known from
     */
    public record PackAgeing(BigDecimal thousandCyclesPercent, BigDecimal yearPercent, String source) {}

    /** Which axle. */
    public enum AxlePlace {
        FRONT,
        SECOND_FRONT,
        REAR,
        SECOND_REAR
    }

    /**
     * Tyres of an axle as read from their sides.
     *
     * @param number on this axle
     * @param loadKg of one, single or twin as it is fitted
     * @param speedKmh to which that load holds
     */
    public record Tyres(AxlePlace axle, int number, BigDecimal loadKg, BigDecimal speedKmh) {
        public double axleKg() {
            return number * loadKg.doubleValue();
        }
    }

    public Optional<Tyres> tyres(AxlePlace axle) {
        return tyres.stream().filter(one -> one.axle() == axle).findFirst();
    }

    /** The axles that it has, from the front. */
    public List<AxlePlace> axlePlaces() {
        var places = new ArrayList<AxlePlace>(List.of(AxlePlace.FRONT));
        secondFrontM.ifPresent(second -> places.add(AxlePlace.SECOND_FRONT));
        places.add(AxlePlace.REAR);
        secondRear.ifPresent(second -> places.add(AxlePlace.SECOND_REAR));
        return places;
    }

    public int axles() {
        return axlePlaces().size();
    }

    /** One, or two where two are steered. */
    public int frontAxles() {
        return secondFrontM.isPresent() ? 2 : 1;
    }
}
