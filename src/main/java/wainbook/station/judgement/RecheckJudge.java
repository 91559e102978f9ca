package wainbook.station.judgement;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import wainbook.engineering.Verdict;
import wainbook.process.joint.CheckWay;
import wainbook.process.joint.CheckWay.Found;
import wainbook.process.joint.GuardedLimits;
import wainbook.process.joint.Joint;
import wainbook.station.Reply;
import wainbook.station.StationSaying.About;
import wainbook.station.StationSaying.Basis;
import wainbook.station.StationSaying.Guard;
import wainbook.station.StationSaying.Rechecked;

/**
 * Judges the check of a tightened joint, in the way that its kind asks for.
 *
 * @param toolPercent expanded uncertainty of the tool, in percent of its reading
 */
record RecheckJudge(About about, Basis basis, Joint joint, BigDecimal toolPercent) {

    private static final BigDecimal PERCENT = BigDecimal.valueOf(100);

    Judged of(Reply reply) {
        return switch (CheckWay.of(joint)) {
            case BY_MARK -> byMark(reply);
            case RESIDUAL -> counted(reply, bolt -> !residual(reply.boltsNm().get(bolt)));
            case FIRST_MOTION ->
                counted(reply, bolt -> movedEarly(reply.boltsNm().get(bolt)));
        };
    }

    private Judged byMark(Reply reply) {
        if (!reply.boltsNm().isEmpty()) {
            return Judged.faulty("boltsNm", "station.markedNeverTurned", joint.code(), checkNm());
        }
        Optional<BigDecimal> atNm = reply.reading();
        if (atNm.isEmpty()) {
            return Judged.faulty("reading", "station.checkTorqueMissing", checkNm());
        }
        if (atNm.get().compareTo(CheckWay.mostCheckNm(joint)) > 0) {
            return Judged.faulty(
                    "reading",
                    "station.markedNotTurned",
                    joint.code(),
                    atNm.get().toPlainString(),
                    checkNm(),
                    CheckWay.mostCheckNm(joint).toPlainString());
        }
        if (atNm.get().compareTo(CheckWay.leastCheckNm(joint)) < 0) {
            return Judged.faulty(
                    "reading",
                    "station.checkTorqueLow",
                    atNm.get().toPlainString(),
                    checkNm(),
                    CheckWay.leastCheckNm(joint).toPlainString());
        }
        if (reply.found().size() != joint.bolts()) {
            return Judged.faulty(
                    "found",
                    "station.foundMissing",
                    joint.bolts(),
                    reply.found().size());
        }
        return said(atNm, reply, bolt -> reply.found().get(bolt) != Found.HELD);
    }

    private Judged counted(Reply reply, IntPredicate fails) {
        return reply.boltsNm().size() == joint.bolts()
                ? said(Optional.empty(), reply, fails)
                : Judged.faulty(
                        "boltsNm",
                        "station.movedMissing",
                        joint.bolts(),
                        reply.boltsNm().size());
    }

    private Judged said(Optional<BigDecimal> atNm, Reply reply, IntPredicate fails) {
        List<Integer> failing = IntStream.range(0, joint.bolts())
                .filter(fails)
                .map(bolt -> bolt + 1)
                .boxed()
                .toList();
        return Judged.answered(new Rechecked(
                about,
                basis,
                joint.code(),
                joint.jointClass(),
                CheckWay.of(joint),
                joint.torque().targetNm(),
                joint.residualNm(),
                new Guard(toolPercent, joint.jointClass().decisionFactor()),
                atNm,
                reply.boltsNm(),
                reply.found(),
                failing,
                Judge.verdict(failing.isEmpty())));
    }

    private boolean residual(BigDecimal movedAtNm) {
        return new GuardedLimits(
                                joint.residualNm().orElseThrow(),
                                toolPercent,
                                joint.jointClass().decisionFactor())
                        .verdict(movedAtNm)
                == Verdict.PASS;
    }

    /** Before the check torque, the tool's uncertainty kept clear of it as far as the class asks. */
    private boolean movedEarly(BigDecimal movedAtNm) {
        BigDecimal guard =
                toolPercent.multiply(joint.jointClass().decisionFactor()).divide(PERCENT);
        BigDecimal leastNm = CheckWay.checkNm(joint).multiply(BigDecimal.ONE.add(guard));
        return movedAtNm.compareTo(leastNm) < 0;
    }

    private String checkNm() {
        return CheckWay.checkNm(joint).toPlainString();
    }
}
