package wainbook.station.judgement;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wainbook.act.Reason;
import wainbook.engineering.Verdict;
import wainbook.process.joint.Acceptance;
import wainbook.process.joint.Joint;
import wainbook.process.joint.JointClass;
import wainbook.process.joint.Slip;
import wainbook.station.Reply;
import wainbook.station.StationSaying;
import wainbook.station.StationSaying.About;
import wainbook.station.StationSaying.Basis;

/**
 * Judges a joint bolt by bolt. The limits are drawn in by the tool's uncertainty as far as the joint class asks.
 *
 * @param toolPercent expanded uncertainty of the tool, in percent of its reading
 */
record TighteningJudge(About about, Basis basis, Joint joint, BigDecimal toolPercent) {

    Judged of(Reply reply) {
        if (reply.boltsNm().isEmpty() && joint.jointClass() == JointClass.A) {
            return Judged.faulty("boltsNm", "station.classAByTick", joint.code());
        }
        if (reply.boltsNm().size() != joint.bolts()) {
            return Judged.faulty(
                    "boltsNm",
                    "station.boltsMissing",
                    joint.bolts(),
                    reply.boltsNm().size());
        }
        int anglesWanted = joint.angle().isPresent() ? joint.bolts() : 0;
        if (reply.anglesDeg().size() != anglesWanted) {
            return Judged.faulty(
                    "anglesDeg",
                    "station.anglesMissing",
                    anglesWanted,
                    reply.anglesDeg().size());
        }
        List<Reason> slips = reply.sure().orElse(false) ? List.of() : slips(reply);
        if (!slips.isEmpty()) {
            return new Judged.Faulty(slips);
        }
        List<Integer> outside = outside(reply);
        return Judged.answered(new StationSaying.Tightened(
                about,
                basis,
                joint.code(),
                joint.jointClass(),
                joint.torque(),
                joint.angle(),
                Optional.of(
                        new StationSaying.Guard(toolPercent, joint.jointClass().decisionFactor())),
                reply.boltsNm(),
                reply.anglesDeg(),
                outside,
                Judge.verdict(outside.isEmpty())));
    }

    /** Asked once, before anything is kept; whoever is sure sends it again and says so. */
    private List<Reason> slips(Reply reply) {
        var slips = new ArrayList<Reason>();
        for (int bolt = 1; bolt <= joint.bolts(); bolt++) {
            int number = bolt;
            Slip.of(joint.torque(), reply.boltsNm().get(bolt - 1))
                    .map(slip -> Reason.of("station.didYouMean", Reason.WORKS_RULE, number, slip.inWords())
                            .liftedAt("#bolt" + number))
                    .ifPresent(slips::add);
        }
        return slips;
    }

    private List<Integer> outside(Reply reply) {
        var outside = new ArrayList<Integer>();
        for (int bolt = 1; bolt <= joint.bolts(); bolt++) {
            BigDecimal torque = reply.boltsNm().get(bolt - 1);
            boolean angleOutside = joint.angle().isPresent()
                    && !joint.angle().get().degrees().holds(reply.anglesDeg().get(bolt - 1));
            if (!accepted(torque) || angleOutside) {
                outside.add(bolt);
            }
        }
        return outside;
    }

    /** A reading not shown to conform does not pass. */
    private boolean accepted(BigDecimal torqueNm) {
        return new Acceptance(joint, toolPercent).guarded().verdict(torqueNm) == Verdict.PASS;
    }
}
