package wainbook.engineering.energy;

import java.util.List;
import wainbook.engineering.Answer;
import wainbook.engineering.Calculation;
import wainbook.engineering.Checked;
import wainbook.engineering.Domain;
import wainbook.engineering.Fault;
import wainbook.engineering.Sentence;
import wainbook.engineering.Source;
import wainbook.engineering.Step;

/**
 * What a conversion saves in carbon dioxide equivalents: years · km · (litres · diesel factor − kWh · grid factor) − packs. The factors are
 * a published set’s, named with its year; none is kept here.
 */
public final class Carbon implements Calculation<Carbon.Inputs, Carbon.Results> {

    /**
     * @param kwhPerKm at the inlet, losses of charger and packs counted
     * @param gridKgPerKwh in the same boundary as {@code dieselKgPerLitre}: both at the vehicle, or both from the well
     * @param packKgPerKwhLow to make a kilowatt-hour of pack, at the least
     */
    public record Inputs(
            @Domain(from = 0) double annualKm,
            @Domain(from = 0) double years,
            @Domain(from = 0) double dieselLitrePer100Km,
            @Domain(from = 0) double kwhPerKm,
            @Domain(from = 0) double gridKgPerKwh,
            @Domain(from = 0) double dieselKgPerLitre,
            @Domain(from = 0) double packKwh,
            @Domain(from = 0) double packKgPerKwhLow,
            @Domain(from = 0) double packKgPerKwhHigh)
            implements Checked {

        @Override
        public List<Fault> faults() {
            return packKgPerKwhHigh < packKgPerKwhLow
                    ? List.of(Fault.of("packKgPerKwhHigh", "notBelow", "packKgPerKwhLow", packKgPerKwhLow))
                    : List.of();
        }

        private double km() {
            return annualKm * years;
        }
    }

    /** @param savedKgLow with the packs at their highest; below nought if nothing is saved */
    public record Results(
            double savedKgLow,
            double savedKgHigh,
            double dieselKg,
            double electricKg,
            double packKgLow,
            double packKgHigh) {}

    @Override
    public String name() {
        return "carbon";
    }

    @Override
    public List<Source> sources() {
        return List.of(
                Source.seen(
                        "EN 16258:2012, withdrawn in favour of ISO 14083:2023, as restated",
                        "both factors from the well to the wheel"),
                Source.seen("Review of battery making, 2020", "median 120 kg a kWh, quartiles 70 to 175"));
    }

    @Override
    public List<Sentence> cautions() {
        return List.of(Sentence.of("engineering.caution.oneBoundary"), Sentence.of("engineering.caution.engineRunsOn"));
    }

    @Override
    public Answer<Results> work(Inputs in) {
        double dieselKg = in.km() * in.dieselLitrePer100Km() / 100 * in.dieselKgPerLitre();
        double electricKg = in.km() * in.kwhPerKm() * in.gridKgPerKwh();
        double packKgLow = in.packKwh() * in.packKgPerKwhLow();
        double packKgHigh = in.packKwh() * in.packKgPerKwhHigh();
        double drivingKg = dieselKg - electricKg;
        return found(
                new Results(drivingKg - packKgHigh, drivingKg - packKgLow, dieselKg, electricKg, packKgLow, packKgHigh),
                Sentence.brief(
                        drivingKg < packKgHigh ? "engineering.carbon.more" : "engineering.carbon.none",
                        drivingKg - packKgHigh,
                        drivingKg - packKgLow,
                        in.years()),
                Step.of(
                        "dieselBurnt",
                        "km · litres / 100 · factor",
                        dieselKg,
                        "kg",
                        "%s · %s / 100 · %s",
                        in.km(),
                        in.dieselLitrePer100Km(),
                        in.dieselKgPerLitre()),
                Step.of(
                        "gridDrawn",
                        "km · kWh/km · factor",
                        electricKg,
                        "kg",
                        "%s · %s · %s",
                        in.km(),
                        in.kwhPerKm(),
                        in.gridKgPerKwh()),
                Step.of(
                        "packsMade",
                        "kWh · factor, at the highest",
                        packKgHigh,
                        "kg",
                        "%s · %s",
                        in.packKwh(),
                        in.packKgPerKwhHigh()),
                Step.of(
                        "saved",
                        "diesel − grid − packs, at the least",
                        drivingKg - packKgHigh,
                        "kg",
                        "%s − %s − %s",
                        dieselKg,
                        electricKg,
                        packKgHigh));
    }
}
