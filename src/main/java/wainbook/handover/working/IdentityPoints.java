package wainbook.handover.working;

import jakarta.inject.Singleton;
import java.util.List;
import java.util.Map;
import wainbook.engineering.Answer;
import wainbook.engineering.Calculation;
import wainbook.engineering.Sentence;
import wainbook.engineering.Source;
import wainbook.engineering.Step;

/** Whether a converted vehicle keeps its registration mark, by the points of the parts it keeps. */
@Singleton
public class IdentityPoints implements Calculation<IdentityPoints.Inputs, IdentityPoints.Results> {

    private static final Points GREAT_BRITAIN = RuleData.read("identity-points-GB", Points.class);

    /** What stayed as it was. A chassis that was cut, drilled or made longer is modified. */
    public record Inputs(
            boolean chassisModified,
            boolean suspensionKept,
            boolean axlesKept,
            boolean transmissionKept,
            boolean steeringKept,
            boolean engineKept) {}

    public record Results(int points, int pointsAsked, boolean keepsMark) {}

    /** The rule file. */
    record Points(int least, Map<Part, Integer> points, List<Source> sources) {
        int of(Part part, boolean kept) {
            return kept ? points.get(part) : 0;
        }
    }

    /** What points are given for. */
    enum Part {
        CHASSIS,
        SUSPENSION,
        AXLES,
        TRANSMISSION,
        STEERING,
        ENGINE
    }

    @Override
    public String name() {
        return "identity-points";
    }

    @Override
    public List<Source> sources() {
        return GREAT_BRITAIN.sources();
    }

    @Override
    public List<Sentence> cautions() {
        return List.of(Sentence.of("engineering.caution.readCurrentGuidance"), Sentence.of("handover.noAdvice"));
    }

    @Override
    public Answer<Results> work(Inputs in) {
        Points rule = GREAT_BRITAIN;
        int chassis = rule.of(Part.CHASSIS, !in.chassisModified());
        int suspension = rule.of(Part.SUSPENSION, in.suspensionKept());
        int axles = rule.of(Part.AXLES, in.axlesKept());
        int transmission = rule.of(Part.TRANSMISSION, in.transmissionKept());
        int steering = rule.of(Part.STEERING, in.steeringKept());
        int engine = rule.of(Part.ENGINE, in.engineKept());
        int points = chassis + suspension + axles + transmission + steering + engine;
        boolean keeps = points >= rule.least() && !in.chassisModified();
        return found(
                new Results(points, rule.least(), keeps),
                Sentence.of("engineering.identity-points." + word(in, keeps), points, rule.least()),
                Step.of(
                        "identityPoints",
                        "chassis + suspension + axles + transmission + steering + engine",
                        points,
                        "",
                        "%s + %s + %s + %s + %s + %s",
                        (double) chassis,
                        (double) suspension,
                        (double) axles,
                        (double) transmission,
                        (double) steering,
                        (double) engine));
    }

    private static String word(Inputs in, boolean keeps) {
        return keeps ? "none" : in.chassisModified() ? "modified" : "tooFew";
    }
}
