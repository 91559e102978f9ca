package wainbook.engineering.energy;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import wainbook.engineering.Always;
import wainbook.engineering.Answer;
import wainbook.engineering.Calculation;
import wainbook.engineering.Domain;
import wainbook.engineering.Sentence;
import wainbook.engineering.Source;
import wainbook.engineering.Step;
import wainbook.engineering.energy.pull.Slope;
import wainbook.engineering.energy.resistance.Gravity;

/** The steepest slope that a force at the wheels holds, or on which it still sets a vehicle going. */
public final class Gradeability implements Calculation<Gradeability.Inputs, Gradeability.Results> {

    /**
     * @param forceN at the wheels, air drag taken off
     * @param startAcceleration m/s²: 0 for a steady climb
     */
    public record Inputs(
            @Domain(from = 0) double forceN,
            @Domain(above = 0) double massKg,
            @Domain(from = 1) double rotatingFactor,
            @Domain(from = 0, below = 1) double rolling,
            @Domain(from = 0) double startAcceleration) {

        private double weightN() {
            return massKg * Gravity.MPS2;
        }

        private double pull() {
            return (forceN - massKg * rotatingFactor * startAcceleration) / weightN();
        }
    }

    /**
     * @param grade rise over run; absent where the force is more than any slope asks, below nought where the vehicle needs a descent
     * @param limited whether this force is what limits
     */
    public record Results(@Always Optional<Double> grade, boolean limited) {}

    @Override
    public String name() {
        return "gradeability";
    }

    @Override
    public List<Source> sources() {
        return List.of(
                Origins.MOTION,
                Source.memory(
                        "Regulation (EU) 2021/535 and its forerunners",
                        "five starts in five minutes on 12 % at the mass of the combination, clause not read"),
                Source.practice("12 to 15 % for distribution, 18 to 25 % for steep towns, solo"));
    }

    @Override
    public List<Sentence> cautions() {
        return List.of(
                Sentence.of("engineering.caution.gripFirst"),
                Sentence.of("engineering.caution.whichShaft"),
                Origins.APPROVAL_DECIDES);
    }

    @Override
    public Answer<Results> work(Inputs in) {
        double pull = in.pull();
        OptionalDouble grade = Slope.steepest(pull, in.rolling());
        if (grade.isEmpty() && pull < 0) {
            return Answer.impossible("no-start", in.forceN(), in.startAcceleration());
        }
        Step force = Step.of(
                "pullOverWeight",
                "X = (F − m · λ · a) / (m · g)",
                pull,
                "",
                "(%s − %s · %s · %s) / %s",
                in.forceN(),
                in.massKg(),
                in.rotatingFactor(),
                in.startAcceleration(),
                in.weightN());
        if (grade.isEmpty()) {
            return found(
                    new Results(Optional.empty(), false), Sentence.of("engineering.gradeability.notTheLimit"), force);
        }
        double found = grade.getAsDouble();
        return found(
                new Results(Optional.of(found), true),
                Sentence.brief("engineering.gradeability.none", 100 * found),
                force,
                Step.of(
                        "grade",
                        "tan(asin(X · cos φ) − φ), φ = atan f",
                        found,
                        "",
                        "X = %s, f = %s",
                        pull,
                        in.rolling()));
    }
}
