package wainbook.engineering.weights;

import java.util.List;
import wainbook.engineering.Answer;
import wainbook.engineering.Calculation;
import wainbook.engineering.Domain;
import wainbook.engineering.Plain;
import wainbook.engineering.Sentence;
import wainbook.engineering.Source;
import wainbook.engineering.Step;

/** How much of what was taken out was used again, recycled or burnt for its energy, in the form of ISO 22628. */
public final class RecoveryRate implements Calculation<RecoveryRate.Inputs, RecoveryRate.Results> {

    /** @param vehicleKg of all that is reckoned: a vehicle, or what a conversion takes out of one */
    public record Inputs(
            @Domain(above = 0) double vehicleKg,
            @Domain(from = 0) double reuseKg,
            @Domain(from = 0) double recycleKg,
            @Domain(from = 0) double energyKg) {

        private double recycledKg() {
            return reuseKg + recycleKg;
        }

        private double recoveredKg() {
            return recycledKg() + energyKg;
        }
    }

    /** @param recyclingPercent used again or recycled; {@code recoveryPercent} with energy */
    public record Results(double recyclingPercent, double recoveryPercent) {}

    @Override
    public String name() {
        return "recovery-rate";
    }

    @Override
    public List<Source> sources() {
        return List.of(
                Source.seen("ISO 22628, as restated in a training page", "Rcyc and Rcov, new vehicles, borrowed here"),
                Source.seen(
                        "Target for end-of-life vehicles since 1 January 2015, as restated",
                        "85 % used again and recycled, 95 % recovered, by mass"));
    }

    @Override
    public List<Sentence> cautions() {
        return List.of(
                Sentence.of("engineering.caution.drainedLiquids"), Sentence.of("engineering.caution.notesDecide"));
    }

    @Override
    public Answer<Results> work(Inputs in) {
        if (Plain.compared(in.recoveredKg()) > Plain.compared(in.vehicleKg())) {
            return Double.isFinite(in.recoveredKg())
                    ? Answer.impossible("more-than-there-was", in.recoveredKg(), in.vehicleKg())
                    : Answer.impossible("beyond-reckoning");
        }
        double recyclingPercent = 100 * in.recycledKg() / in.vehicleKg();
        double recoveryPercent = 100 * in.recoveredKg() / in.vehicleKg();
        return found(
                new Results(recyclingPercent, recoveryPercent),
                Sentence.brief("engineering.recovery-rate.none", recyclingPercent, recoveryPercent),
                Step.of(
                        "recycled",
                        "100 · (reuse + recycling) / all",
                        recyclingPercent,
                        "%",
                        "100 · (%s + %s) / %s",
                        in.reuseKg(),
                        in.recycleKg(),
                        in.vehicleKg()),
                Step.of(
                        "recovered",
                        "100 · (reuse + recycling + energy) / all",
                        recoveryPercent,
                        "%",
                        "100 · (%s + %s + %s) / %s",
                        in.reuseKg(),
                        in.recycleKg(),
                        in.energyKg(),
                        in.vehicleKg()));
    }
}
