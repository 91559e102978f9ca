package wainbook.station;

import java.util.List;
import java.util.stream.IntStream;
import wainbook.engineering.Answer;
import wainbook.engineering.tightening.TighteningOrder;
import wainbook.process.Joint;
import wainbook.station.outline.BoltPattern;

/** In which order a joint's fasteners are tightened: crosswise round a circle, else as they are listed. */
final class TighteningSequence {

    private TighteningSequence() {}

    static BoltPattern of(Joint joint) {
        return BoltPattern.of(joint.order() == Joint.Order.CIRCLE, positions(joint));
    }

    private static List<Integer> positions(Joint joint) {
        if (joint.order() == Joint.Order.CIRCLE && joint.bolts() > 2) {
            Answer<TighteningOrder.Results> answer =
                    new TighteningOrder().of(new TighteningOrder.Inputs(joint.bolts()));
            return answer.fold(working -> working.results().order(), faults -> List.of(), refusal -> List.of());
        }
        return IntStream.rangeClosed(1, joint.bolts()).boxed().toList();
    }
}
