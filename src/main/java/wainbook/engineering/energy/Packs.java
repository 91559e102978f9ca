package wainbook.engineering.energy;

import java.util.List;
import wainbook.engineering.Answer;
import wainbook.engineering.Calculation;
import wainbook.engineering.Domain;
import wainbook.engineering.Sentence;
import wainbook.engineering.Source;
import wainbook.engineering.Step;
import wainbook.engineering.energy.store.NeedOdds;
import wainbook.engineering.energy.store.Window;

/** How many packs a need takes with a margin, and how likely that is enough: a margin is not a probability. */
public final class Packs implements Calculation<Packs.Inputs, Packs.Results> {

    private static final double MOST = 1e9;

    /**
     * @param needKwh median need of the day that is to be met
     * @param window share of the nominal energy between highest and lowest state of charge, less the reserve
     * @param stateOfHealth capacity over nominal on that day
     * @param sigma standard deviation of the need’s logarithm
     */
    public record Inputs(
            @Domain(above = 0) double needKwh,
            @Domain(from = 0) double marginShare,
            @Domain(above = 0) double packKwh,
            @Domain(above = 0, to = 1) double window,
            @Domain(above = 0, to = 1) double stateOfHealth,
            @Domain(above = 0) double sigma) {

        private Window pack() {
            return new Window(packKwh, window, stateOfHealth);
        }
    }

    /**
     * @param usableKwh of all packs together
     * @param probability that the need stays within it
     */
    public record Results(long packs, double usableKwh, double probability) {}

    @Override
    public String name() {
        return "packs";
    }

    @Override
    public List<Source> sources() {
        return List.of(
                Source.memory("Lognormal law", "p = Φ(ln(usable / need) / σ)"),
                Source.seen(
                        "Declared values of the European Union’s consumption method, public copy",
                        "state of charge from 5 to 95 %"),
                Source.memory("Warranties of traction batteries", "80 % of the nominal capacity at their end, usual"),
                Source.practice("a reserve of 10 % for a vehicle that must come home"));
    }

    @Override
    public List<Sentence> cautions() {
        return List.of(Origins.WORST_DAY, Sentence.of("engineering.caution.endOfLife"), Origins.MAKERS_PACK);
    }

    @Override
    public Answer<Results> work(Inputs in) {
        double wantedKwh = in.needKwh() * (1 + in.marginShare());
        double eachKwh = in.pack().usableKwh();
        double packs = in.pack().packsFor(wantedKwh);
        if (!(packs <= MOST)) {
            return Answer.impossible("beyond-reckoning");
        }
        double usableKwh = packs * eachKwh;
        double probability = new NeedOdds(in.sigma()).met(usableKwh, in.needKwh());
        return found(
                new Results((long) packs, usableKwh, probability),
                Sentence.brief("engineering.packs.none", (long) packs, usableKwh, 100 * probability),
                Step.of(
                        "usableOfOne",
                        "nominal · state of health · window",
                        eachKwh,
                        "kWh",
                        "%s · %s · %s",
                        in.packKwh(),
                        in.stateOfHealth(),
                        in.window()),
                Step.of(
                        "packsNeeded",
                        "need · (1 + margin) / usable of one, rounded up",
                        wantedKwh / eachKwh,
                        "",
                        "%s · (1 + %s) / %s",
                        in.needKwh(),
                        in.marginShare(),
                        eachKwh),
                Step.of(
                        "oddsMet",
                        "p = Φ(ln(usable / need) / σ)",
                        probability,
                        "",
                        "Φ(ln(%s / %s) / %s)",
                        usableKwh,
                        in.needKwh(),
                        in.sigma()));
    }
}
