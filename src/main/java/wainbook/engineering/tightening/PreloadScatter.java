package wainbook.engineering.tightening;

import java.util.List;
import java.util.Optional;
import wainbook.engineering.Answer;
import wainbook.engineering.Calculation;
import wainbook.engineering.Domain;
import wainbook.engineering.Sentence;
import wainbook.engineering.Source;
import wainbook.engineering.Step;

/** Tightening factor of a method of tightening that scatters by ± x: αA = F_max / F_min = (1 + x) / (1 − x). */
public final class PreloadScatter implements Calculation<PreloadScatter.Inputs, PreloadScatter.Results> {

    /** @param greatestN the preload that must not be exceeded */
    public record Inputs(
            @Domain(from = 0, below = 100) double scatterPercent, Optional<@Domain(above = 0) Double> greatestN) {}

    /** @param leastN what some of the bolts get no more than */
    public record Results(double factor, Optional<Double> leastN) {}

    @Override
    public String name() {
        return "preload-scatter";
    }

    @Override
    public List<Source> sources() {
        return List.of(
                Source.seen("VDI 2230:1986, as a fastener maker’s table has it", "scatter by method"),
                Source.seen(
                        "VDI 2230:2015, as a distributor’s page quotes it", "factor of a torque wrench 1.6 to 2.0"));
    }

    @Override
    public List<Sentence> cautions() {
        return Cautions.TORQUE;
    }

    @Override
    public Answer<Results> work(Inputs in) {
        double share = in.scatterPercent() / 100;
        double factor = (1 + share) / (1 - share);
        return found(
                new Results(factor, in.greatestN().map(greatest -> greatest / factor)),
                Sentence.brief("engineering.preload-scatter.none", factor),
                Step.of("scatterFactor", "αA = (1 + x) / (1 − x)", factor, "", "(1 + %s) / (1 − %s)", share, share));
    }
}
