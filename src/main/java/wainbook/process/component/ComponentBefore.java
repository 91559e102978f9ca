package wainbook.process.component;

import java.math.BigDecimal;
import java.util.Optional;

/** A part as it was said before it named what its serial is read as. */
public record ComponentBefore(
        String code,
        String vehicleKind,
        String title,
        Component.Sort sort,
        BigDecimal massKg,
        BigDecimal fromFrontM,
        Optional<BigDecimal> heightM,
        BigDecimal massUncertaintyKg,
        BigDecimal placeUncertaintyM,
        Component.Origin origin,
        String reference,
        Optional<String> packType,
        Optional<BigDecimal> nominalKwh) {

    public Component newer() {
        return new Component(
                code,
                vehicleKind,
                title,
                sort,
                massKg,
                fromFrontM,
                heightM,
                massUncertaintyKg,
                placeUncertaintyM,
                origin,
                reference,
                packType,
                nominalKwh,
                Optional.empty());
    }
}
