package wainbook.order.specification;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wainbook.engineering.energy.driving.Spent;
import wainbook.engineering.energy.driving.Vehicle;
import wainbook.engineering.specification.ColdDay;
import wainbook.engineering.specification.DutyDay;
import wainbook.engineering.specification.DutyPart;
import wainbook.order.duty.Way;

/**
 * Where the energy of a day goes with so many packs, part by part. Its sums are those of the table of packs.
 *
 * @param hydraulicsKwh on a usual day; {@code bodyKwh} besides, at a stand
 * @param worstDriving times the driving of a usual day; likewise {@code worstBody}
 */
public record DayEnergy(
        int packs,
        List<Part> parts,
        double hydraulicsKwh,
        double bodyKwh,
        double worstDriving,
        double worstBody,
        ColdDay coldest) {

    /**
     * A part of the day.
     *
     * @param way empty for a recorded one
     * @param massKg that is driven, with the load of this part
     */
    public record Part(Optional<Way> way, double km, double hours, double massKg, Spent spent) {
        public double kwhPerKm() {
            return spent.totalKwh() / km;
        }
    }

    public DayEnergy {
        parts = List.copyOf(parts);
    }

    /** @param packs from 1 to the places there are */
    public static DayEnergy of(Working working, int packs) {
        DutyInFigures figures = working.inFigures();
        DutyDay day = figures.day();
        DutyDay.Carrying carrying = working.table().packs().carrying(packs);
        List<Spent> spent = day.spent(carrying);
        var parts = new ArrayList<Part>();
        for (int i = 0; i < spent.size(); i++) {
            DutyPart part = day.parts().get(i);
            Vehicle weighed = day.weighed(part, carrying);
            parts.add(new Part(
                    i < working.duty().legs().size()
                            ? Optional.of(working.duty().legs().get(i).way())
                            : Optional.empty(),
                    part.km(),
                    part.hours(),
                    weighed.massKg(),
                    spent.get(i)));
        }
        return new DayEnergy(
                packs,
                parts,
                figures.hydraulicsKwh(),
                working.duty().bodyKwh().doubleValue(),
                day.worstDriving(),
                day.worstHydraulic(),
                day.coldest());
    }

    public Spent driving() {
        return parts.stream().map(Part::spent).reduce(Spent.NOTHING, Spent::and);
    }

    public double km() {
        return parts.stream().mapToDouble(Part::km).sum();
    }

    public double hours() {
        return parts.stream().mapToDouble(Part::hours).sum();
    }

    public double usualKwh() {
        return driving().totalKwh() + hydraulicsKwh + bodyKwh;
    }

    /** The median need of the worst day. */
    public double worstKwh() {
        return worstDriving * driving().totalKwh() + worstBody * (hydraulicsKwh + bodyKwh) + coldest.kwh();
    }
}
