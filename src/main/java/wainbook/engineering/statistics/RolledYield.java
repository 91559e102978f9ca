package wainbook.engineering.statistics;

import java.util.List;
import wainbook.engineering.Answer;
import wainbook.engineering.Calculation;
import wainbook.engineering.Domain;
import wainbook.engineering.Sentence;
import wainbook.engineering.Size;
import wainbook.engineering.Source;
import wainbook.engineering.Step;

/** Share of vehicles that go through every stage right the first time: the product of the stages' first-pass shares. */
public final class RolledYield implements Calculation<RolledYield.Inputs, RolledYield.Results> {

    /** @param firstPassShares passed the first time over begun, stage by stage */
    public record Inputs(@Size(from = 1, to = 1000) List<@Domain(from = 0, to = 1) Double> firstPassShares) {
        public Inputs {
            firstPassShares = List.copyOf(firstPassShares);
        }
    }

    public record Results(double rolledShare, double lowestShare) {}

    @Override
    public String name() {
        return "rolled-yield";
    }

    @Override
    public List<Source> sources() {
        return List.of(Source.practice("rolled yield as product of first-pass yields"));
    }

    @Override
    public Answer<Results> work(Inputs in) {
        double rolled = in.firstPassShares().stream().reduce(1.0, (one, other) -> one * other);
        double lowest = in.firstPassShares().stream().min(Double::compare).orElseThrow();
        return found(
                new Results(rolled, lowest),
                Sentence.brief(
                        "engineering.rolled-yield.none", in.firstPassShares().size(), rolled),
                Step.of(
                        "rolled",
                        "Π first-pass share",
                        rolled,
                        "",
                        "%s stages",
                        in.firstPassShares().size()));
    }
}
