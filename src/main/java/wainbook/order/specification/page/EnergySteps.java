package wainbook.order.specification.page;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import wainbook.engineering.energy.driving.Segment;
import wainbook.engineering.energy.driving.Spent;
import wainbook.engineering.energy.driving.Vehicle;
import wainbook.engineering.energy.resistance.Gravity;
import wainbook.engineering.specification.DutyDay;
import wainbook.engineering.specification.DutyPart;
import wainbook.order.specification.DayEnergy;
import wainbook.order.specification.Working;
import wainbook.page.Words;

/** How the energy of a part of the day was worked out, with its figures put in. */
final class EnergySteps {

    private static final String PER_KWH = " / 3.6e6";

    private final DutyDay day;

    EnergySteps(Working working) {
        this.day = working.table().packs().day();
    }

    List<StepLine> of(int index, DayEnergy.Part part) {
        DutyPart worked = day.parts().get(index);
        return worked instanceof DutyPart.Described described
                ? described(described.segment(), part)
                : recorded((DutyPart.Recorded) worked, part);
    }

    private List<StepLine> described(Segment segment, DayEnergy.Part part) {
        Vehicle vehicle = day.vehicle().weighing(part.massKg());
        Spent spent = part.spent();
        String mass = text(part.massKg());
        String metres = text(1000 * part.km());
        return List.of(
                step(
                        "rolling",
                        "m · g · f · d",
                        mass + " · " + Gravity.MPS2 + " · " + text(vehicle.rolling()) + " · " + metres + PER_KWH,
                        spent.rollingKwh()),
                step(
                        "air",
                        "½ · ρ · CdA · v² · d",
                        "0.5 · " + text(vehicle.airDensity()) + " · " + text(vehicle.cdA()) + " · ("
                                + text(segment.effectiveKmh()) + " / 3.6)² · " + metres + PER_KWH,
                        spent.airKwh()),
                step(
                        "climb",
                        "m · g · (up − down)",
                        mass + " · " + Gravity.MPS2 + " · (" + text(segment.upM()) + " − " + text(segment.downM()) + ")"
                                + PER_KWH,
                        spent.climbKwh()),
                step(
                        "braked",
                        "n · d · ½ · m · λ · v² · (1 − φ) + m · g · H · (1 − s₀ / s)",
                        text(segment.stopsPerKm()) + " · " + text(part.km()) + " · 0.5 · " + mass + " · "
                                + text(vehicle.rotatingFactor()) + " · (" + text(segment.stopKmh()) + " / 3.6)² · (1 − "
                                + text(segment.lostShare()) + ")" + PER_KWH + " + H = " + text(segment.steepDownM())
                                + " m, s = " + text(segment.steepSlope()),
                        spent.brakedKwh()),
                step(
                        "drawn",
                        "(rolling + air + climb + braked) / η",
                        text(spent.tractionKwh()) + " / " + text(vehicle.tractionEfficiency()),
                        spent.drawnKwh()),
                step(
                        "back",
                        "braked · r · η · 0.96",
                        text(spent.brakedKwh()) + " · " + text(vehicle.regenerationShare()) + " · "
                                + text(vehicle.regenerationEfficiency()) + " · " + Segment.AFTER_FADING,
                        spent.backKwh()),
                step(
                        "consumers",
                        "P · t",
                        text(vehicle.consumersW() / 1000) + " kW · " + text(part.hours()) + " h",
                        spent.consumersKwh()),
                total(spent));
    }

    private static List<StepLine> recorded(DutyPart.Recorded recorded, DayEnergy.Part part) {
        Spent spent = part.spent();
        String times = recorded.trace().intervals() + " s, × " + text(recorded.timesADay());
        return List.of(
                step("rolling", "Σ m · g · f · cos θ · u", times, spent.rollingKwh()),
                step("air", "Σ ½ · ρ · CdA · u³", times, spent.airKwh()),
                step("climb", "Σ m · g · sin θ · u", times, spent.climbKwh()),
                step("braked", "Σ max(0, −P_w)", times, spent.brakedKwh()),
                step("drawn", "Σ max(0, P_w) / η", times, spent.drawnKwh()),
                step("back", "Σ min(−P_w · q · r · η, P_max)", times, spent.backKwh()),
                step("consumers", "P · t", times, spent.consumersKwh()),
                step("packLoss", "Σ R · I²", times, spent.packLossKwh()),
                total(spent));
    }

    private static StepLine total(Spent spent) {
        return step(
                "total",
                "drawn − back + consumers + loss",
                text(spent.drawnKwh()) + " − " + text(spent.backKwh()) + " + " + text(spent.consumersKwh()) + " + "
                        + text(spent.packLossKwh()),
                spent.totalKwh());
    }

    private static StepLine step(String key, String formula, String figures, double kwh) {
        return new StepLine(
                Words.of("order.energyStep." + key),
                formula,
                figures,
                text(kwh),
                "kWh",
                Words.of("order.energySource." + key),
                Optional.empty());
    }

    private static String text(double value) {
        String text = String.format(Locale.ROOT, Math.abs(value) < 1 ? "%.5f" : "%.3f", value);
        return text.contains(".")
                ? text.replaceAll("0+$", "").replaceAll("\\.$", "").replace('-', '−')
                : text;
    }
}
