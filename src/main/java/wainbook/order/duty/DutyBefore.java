package wainbook.order.duty;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/** A duty as it was stated before packs in the cold and years were asked. */
public record DutyBefore(
        String words,
        List<Duty.Leg> legs,
        Optional<Duty.RecordedWay> recorded,
        BigDecimal payloadKg,
        Optional<Duty.People> people,
        BigDecimal auxiliaryKw,
        BigDecimal bodyKwh,
        Optional<Duty.Hydraulics> hydraulics,
        Duty.Heating heating,
        Duty.Worst worst,
        BigDecimal startOnPercent,
        Duty.Charging charging) {

    public DutyBefore {
        legs = List.copyOf(legs);
    }

    public Duty newer() {
        return new Duty(
                words,
                legs,
                recorded,
                payloadKg,
                people,
                auxiliaryKw,
                bodyKwh,
                hydraulics,
                heating,
                worst,
                startOnPercent,
                charging,
                Optional.empty(),
                Optional.empty());
    }
}
