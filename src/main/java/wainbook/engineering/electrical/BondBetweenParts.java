package wainbook.engineering.electrical;

import java.util.List;
import wainbook.engineering.Answer;
import wainbook.engineering.Calculation;
import wainbook.engineering.Decision;
import wainbook.engineering.Domain;
import wainbook.engineering.Limit;
import wainbook.engineering.Plain;
import wainbook.engineering.Preset;
import wainbook.engineering.Sentence;
import wainbook.engineering.Source;
import wainbook.engineering.Step;

/** Resistance between two parts that can be touched at once, from that of each to the chassis: below 0.2 Ω. */
public final class BondBetweenParts implements Calculation<BondBetweenParts.Inputs, BondBetweenParts.Results> {

    private static final double LIMIT_OHM = 0.2;

    /** @param expandedUncertaintyOhm of the sum */
    public record Inputs(
            @Domain(from = 0) double firstOhm,
            @Domain(from = 0) double secondOhm,
            @Preset("0") @Domain(from = 0) double expandedUncertaintyOhm) {}

    public record Results(double betweenOhm, double limitOhm) {}

    @Override
    public String name() {
        return "bond-between-parts";
    }

    @Override
    public List<Source> sources() {
        return List.of(
                Source.memory("UN R100, 03 series, and UN GTR 20", "parts less than 2.5 m apart, clause not seen"),
                Source.seen("FMVSS 305, 82 FR 44945", "parts within reach of each other"),
                Origins.GUARD_BAND);
    }

    @Override
    public List<Sentence> cautions() {
        return List.of(Origins.MAKES_NOTHING_SAFE, Origins.LOCAL_RULES);
    }

    @Override
    public Answer<Results> work(Inputs in) {
        double betweenOhm = in.firstOhm() + in.secondOhm();
        Decision decision = Limit.below(LIMIT_OHM).judge(betweenOhm, in.expandedUncertaintyOhm(), "ohm");
        return judged(
                new Results(betweenOhm, LIMIT_OHM),
                decision,
                List.of(Plain.beside(LIMIT_OHM, betweenOhm), LIMIT_OHM, in.expandedUncertaintyOhm()),
                Step.of("between", "R = R1 + R2", betweenOhm, "ohm", "%s + %s", in.firstOhm(), in.secondOhm()));
    }
}
