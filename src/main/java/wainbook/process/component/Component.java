package wainbook.process.component;

import java.math.BigDecimal;
import java.util.Optional;
import wainbook.process.Code;

/**
 * A part that a conversion of one kind of vehicle takes out or puts in.
 *
 * @param sort a pack is one place for a pack: so many rows of a pack type, so many places
 * @param massKg of the part itself, above nought whichever way it goes
 * @param fromFrontM its centre behind the foremost axle; below nought before it
 * @param heightM its centre above the road
 * @param massUncertaintyKg standard uncertainty of the mass; {@code placeUncertaintyM} of the place along the vehicle
 * @param origin how the mass is known, with {@code reference} to the ticket or sheet
 * @param packType what the pack is called; for packs alone, as {@code nominalKwh}
 * @param part under which check sheets read its serial; for what goes in and is no pack, where it has one
 */
public record Component(
        String code,
        String vehicleKind,
        String title,
        Sort sort,
        BigDecimal massKg,
        BigDecimal fromFrontM,
        Optional<BigDecimal> heightM,
        BigDecimal massUncertaintyKg,
        BigDecimal placeUncertaintyM,
        Origin origin,
        String reference,
        Optional<String> packType,
        Optional<BigDecimal> nominalKwh,
        Optional<String> part) {

    private static final BigDecimal HEAVIEST_KG = BigDecimal.valueOf(10_000);
    private static final BigDecimal FARTHEST_M = BigDecimal.valueOf(20);

    /** Which way a part goes. */
    public enum Sort {
        PACK,
        IN,
        OUT
    }

    /** How a mass is known. */
    public enum Origin {
        SCALES,
        DATA_SHEET,
        ESTIMATE
    }

    public Component {
        Code.checked("a part", code);
        Code.titled("a part", title);
        if (massKg.signum() <= 0 || massKg.compareTo(HEAVIEST_KG) > 0) {
            throw new IllegalArgumentException("a part weighs more than 0 and at most 10000 kg, not " + massKg);
        }
        if (fromFrontM.abs().compareTo(FARTHEST_M) > 0) {
            throw new IllegalArgumentException("a part lies within 20 m of the foremost axle, not at " + fromFrontM);
        }
        if (massUncertaintyKg.signum() < 0 || placeUncertaintyM.signum() < 0) {
            throw new IllegalArgumentException("an uncertainty is not below 0");
        }
        boolean pack = sort == Sort.PACK;
        if (packType.isPresent() != pack || nominalKwh.isPresent() != pack) {
            throw new IllegalArgumentException("a pack, and no other part, has a pack_type and its nominal_kwh");
        }
        if (nominalKwh.filter(kwh -> kwh.signum() <= 0).isPresent()) {
            throw new IllegalArgumentException("a pack holds more than 0 kWh, not " + nominalKwh.get());
        }
        part.ifPresent(read -> Code.checked("what a serial is read as", read));
        if (part.isPresent() && sort != Sort.IN) {
            throw new IllegalArgumentException(
                    "only what goes in and is no pack names the part that its serial is read as");
        }
    }

    /** @return what it adds to the vehicle, below nought for what comes out */
    public BigDecimal addedKg() {
        return sort == Sort.OUT ? massKg.negate() : massKg;
    }
}
