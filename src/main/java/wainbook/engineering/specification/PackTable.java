package wainbook.engineering.specification;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import wainbook.engineering.Plain;
import wainbook.engineering.energy.store.NeedOdds;
import wainbook.engineering.weights.AxleLimits;
import wainbook.engineering.weights.PayloadLimit;
import wainbook.engineering.weights.TwoAxles;

/**
 * Every number of packs there is room for, feasible or not: range, odds, payload and loads, and what rules it out. Price never hides a row.
 *
 * @param bare weighed without packs and payload
 * @param payloadCentreM behind the front axle
 * @param odds wanted at the end of life
 */
public record PackTable(
        TwoAxles bare,
        AxleLimits limits,
        PackType pack,
        double payloadKg,
        double payloadCentreM,
        DutyDay day,
        NeedOdds need,
        double odds) {

    public List<PackRow> rows() {
        return IntStream.rangeClosed(1, pack.placesM().size())
                .mapToObj(this::row)
                .toList();
    }

    /** A vehicle with so many packs. */
    public DutyDay.Carrying carrying(int packs) {
        return new DutyDay.Carrying(pack.into(bare, packs).totalKg(), payloadKg, packs);
    }

    private PackRow row(int packs) {
        TwoAxles without = pack.into(bare, packs);
        var carrying = carrying(packs);
        double drivingKwh = day.drivingKwh(carrying);
        double kwhPerKm = day.usualKwh(drivingKwh) / day.km();
        double worstKwh = day.worstKwh(drivingKwh);
        double newKwh = pack.usableNewKwh(packs);
        double endKwh = pack.usableAtEndKwh(packs);
        double coldShare = day.coldest().packShare();
        double coldKwhPerKm = day.coldKwh(drivingKwh) / day.km();
        double shortKwh = Math.max(0, need.factor(odds) * worstKwh - coldShare * endKwh);
        PayloadLimit limit = limits.payload(without, payloadCentreM);
        double carriedKg = Math.max(0, Math.min(payloadKg, limit.kg()));
        return new PackRow(
                packs,
                limit,
                drivingKwh,
                day.usualKwh(drivingKwh),
                kwhPerKm,
                newKwh / kwhPerKm,
                endKwh / kwhPerKm,
                coldShare * newKwh / coldKwhPerKm,
                coldShare * endKwh / coldKwhPerKm,
                worstKwh,
                need.met(coldShare * newKwh, worstKwh),
                need.met(coldShare * endKwh, worstKwh),
                without,
                without.with(carriedKg, payloadCentreM),
                shortKwh,
                ruledOut(limit, shortKwh, carrying));
    }

    private List<RuledOut> ruledOut(PayloadLimit limit, double shortKwh, DutyDay.Carrying carrying) {
        var reasons = new ArrayList<RuledOut>();
        if (Plain.compared(payloadKg) > Plain.compared(limit.kg())) {
            reasons.add(new RuledOut.Payload(limit.binding(), payloadKg - limit.kg()));
        }
        if (shortKwh > 0) {
            reasons.add(new RuledOut.Energy(shortKwh));
        }
        day.beyond(carrying)
                .map(beyond -> new RuledOut.Power(beyond.interval(), beyond.neededW(), beyond.greatestW()))
                .ifPresent(reasons::add);
        return reasons;
    }
}
