package wainbook.engineering.tightening;

import java.util.List;
import java.util.Optional;
import wainbook.engineering.Answer;
import wainbook.engineering.Calculation;
import wainbook.engineering.Domain;
import wainbook.engineering.Sentence;
import wainbook.engineering.Source;
import wainbook.engineering.Step;
import wainbook.engineering.Working;

/**
 * What a wrench is set to when an extension in line with it makes it longer: T_set = T · L / (L + E). At a right angle to the
 * wrench an extension changes nothing.
 */
public final class Extension implements Calculation<Extension.Inputs, Extension.Results> {

    /**
     * @param leverMm middle of the grip to the drive
     * @param extensionMm drive to the fastener, in line with the wrench
     */
    public record Inputs(
            @Domain(above = 0) double wantedNm,
            @Domain(above = 0) double leverMm,
            @Domain(from = 0) double extensionMm) {}

    public record Results(double setNm) {}

    @Override
    public String name() {
        return "extension";
    }

    @Override
    public List<Source> sources() {
        return List.of(Source.memory("Law of the lever", "same force on a longer arm"));
    }

    @Override
    public List<Sentence> cautions() {
        return Cautions.TORQUE;
    }

    @Override
    public Answer<Results> work(Inputs in) {
        double setNm = in.wantedNm() * in.leverMm() / (in.leverMm() + in.extensionMm());
        return Answer.worked(new Working<>(
                new Results(setNm),
                Optional.empty(),
                Sentence.brief("engineering.extension.none", setNm, in.wantedNm()),
                List.of(Step.of(
                        "setTorque",
                        "T_set = T · L / (L + E)",
                        setNm,
                        "Nm",
                        "%s · %s / (%s + %s)",
                        in.wantedNm(),
                        in.leverMm(),
                        in.leverMm(),
                        in.extensionMm())),
                sources(),
                cautions()));
    }
}
