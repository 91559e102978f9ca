package wainbook.engineering.weights;

import java.util.List;
import wainbook.engineering.Answer;
import wainbook.engineering.Calculation;
import wainbook.engineering.Domain;
import wainbook.engineering.Plain;
import wainbook.engineering.Preset;
import wainbook.engineering.Sentence;
import wainbook.engineering.Source;
import wainbook.engineering.Step;

/** The unladen weight of British law from a weighing: without the packs that drive the vehicle, and so never its tare. */
public final class UnladenWeight implements Calculation<UnladenWeight.Inputs, UnladenWeight.Results> {

    /**
     * @param weighedKg on the weighbridge, without a load
     * @param packs aboard that drive the vehicle
     * @param packKg one of them
     * @param aboardKg water, fuel, loose tools and people that were weighed with it
     */
    public record Inputs(
            @Domain(above = 0) double weighedKg,
            @Domain(from = 0, to = 100) int packs,
            @Domain(from = 0) double packKg,
            @Preset("0") @Domain(from = 0) double aboardKg) {

        private double excludedKg() {
            return packs * packKg + aboardKg;
        }
    }

    public record Results(double excludedKg, double unladenKg) {}

    @Override
    public String name() {
        return "unladen-weight";
    }

    @Override
    public List<Source> sources() {
        return List.of(Source.memory(
                "Road Traffic Act 1988, s.190",
                "the heavier set of parts, without water, fuel or accumulators used for propulsion, and loose tools"));
    }

    @Override
    public List<Sentence> cautions() {
        return List.of(Sentence.of("engineering.caution.unladenIsNoTare"));
    }

    @Override
    public Answer<Results> work(Inputs in) {
        if (Plain.compared(in.excludedKg()) >= Plain.compared(in.weighedKg())) {
            return Double.isFinite(in.excludedKg())
                    ? Answer.impossible("more-than-there-was", in.excludedKg(), in.weighedKg())
                    : Answer.impossible("beyond-reckoning");
        }
        double unladenKg = in.weighedKg() - in.excludedKg();
        return found(
                new Results(in.excludedKg(), unladenKg),
                Sentence.brief("engineering.unladen-weight.none", unladenKg, in.excludedKg()),
                Step.of(
                        "excluded",
                        "packs · mass of one + what else is aboard",
                        in.excludedKg(),
                        "kg",
                        "%s · %s + %s",
                        (double) in.packs(),
                        in.packKg(),
                        in.aboardKg()),
                Step.of("unladen", "weighed − excluded", unladenKg, "kg", "%s − %s", in.weighedKg(), in.excludedKg()));
    }
}
