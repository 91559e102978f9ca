package wainbook.station.joint;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.stream.IntStream;
import wainbook.engineering.Answer;
import wainbook.engineering.tightening.TighteningOrder;
import wainbook.page.Words;
import wainbook.process.joint.BoltPlaces;
import wainbook.process.joint.Joint;
import wainbook.station.outline.BoltPattern;

/**
 * In which order a joint's fasteners are tightened, and in which steps: crosswise round a circle, inside out in rows and
 * frames, else as they are listed.
 */
public final class TighteningSequence {

    private static final BigDecimal PERCENT = BigDecimal.valueOf(100);

    private TighteningSequence() {}

    public static BoltPattern of(Joint joint) {
        return switch (joint.order()) {
            case CIRCLE -> BoltPattern.of(true, joint.bolts() > 2 ? star(joint.bolts()) : listed(joint));
            case ROWS, FRAME -> {
                BoltPlaces places = BoltPlaces.of(joint);
                yield BoltPattern.of(places, places.insideOut());
            }
            case LIST -> BoltPattern.of(false, listed(joint));
        };
    }

    /** Each pass with the torque that every fastener is brought to; none where the torque is reached in one go. */
    public static List<String> passes(Joint joint) {
        List<Integer> shares = joint.passesInForce().percent();
        if (shares.size() == 1) {
            return List.of();
        }
        return IntStream.range(0, shares.size())
                .mapToObj(pass -> Words.of(
                        pass > 0 && shares.get(pass).equals(shares.get(pass - 1))
                                ? "station.passAgain"
                                : "station.pass",
                        shares.get(pass),
                        torqueNm(joint, shares.get(pass))))
                .toList();
    }

    /** To as many decimals as the target has, and one more below it. */
    private static String torqueNm(Joint joint, int share) {
        BigDecimal targetNm = joint.torque().targetNm();
        if (share == 100) {
            return targetNm.toPlainString();
        }
        BigDecimal shareNm = targetNm.multiply(BigDecimal.valueOf(share)).divide(PERCENT);
        int decimals = Math.max(0, targetNm.scale()) + 1;
        BigDecimal rounded = shareNm.setScale(decimals, RoundingMode.HALF_EVEN).stripTrailingZeros();
        return rounded.setScale(Math.max(0, rounded.scale()), RoundingMode.UNNECESSARY)
                .toPlainString();
    }

    private static List<Integer> star(int bolts) {
        Answer<TighteningOrder.Results> answer = new TighteningOrder().of(new TighteningOrder.Inputs(bolts));
        return answer.fold(working -> working.results().order(), faults -> List.of(), refusal -> List.of());
    }

    private static List<Integer> listed(Joint joint) {
        return IntStream.rangeClosed(1, joint.bolts()).boxed().toList();
    }
}
