package wainbook.order.duty;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import wainbook.order.limit.Body;

/** A vehicle as it was stated before the ageing of its packs and its tyres were asked. */
public record ChassisBefore(
        Body body,
        String market,
        BigDecimal wheelbaseM,
        Optional<BigDecimal> secondFrontM,
        Optional<ChassisFigures.SecondRear> secondRear,
        Optional<Boolean> twinAir,
        Optional<Boolean> otherEngine,
        Optional<Integer> extraMassKg,
        ChassisFigures.Received received,
        ChassisFigures.Plates plates,
        BigDecimal steeringPercent,
        ChassisFigures.Places places,
        ChassisFigures.Drive drive,
        ChassisFigures.Road road,
        ChassisFigures.Store store) {

    public ChassisFigures newer() {
        return new ChassisFigures(
                body,
                market,
                wheelbaseM,
                secondFrontM,
                secondRear,
                twinAir,
                otherEngine,
                extraMassKg,
                received,
                plates,
                steeringPercent,
                places,
                drive,
                road,
                store,
                Optional.empty(),
                List.of());
    }
}
