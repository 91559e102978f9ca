package wainbook.station;

import java.util.ArrayList;
import java.util.List;
import wainbook.engineering.Answer;
import wainbook.engineering.tightening.TighteningOrder;
import wainbook.process.Joint;

/** In which order a joint's fasteners are tightened: crosswise round a circle, else as they are listed. */
final class TighteningSequence {

    private TighteningSequence() {}

    static List<StationView.Bolt> of(Joint joint) {
        var bolts = new ArrayList<StationView.Bolt>();
        for (int position : positions(joint)) {
            bolts.add(new StationView.Bolt(bolts.size() + 1, position));
        }
        return bolts;
    }

    private static List<Integer> positions(Joint joint) {
        if (joint.order() == Joint.Order.CIRCLE && joint.bolts() > 2) {
            Answer<TighteningOrder.Results> answer =
                    new TighteningOrder().of(new TighteningOrder.Inputs(joint.bolts()));
            return answer.fold(working -> working.results().order(), faults -> List.of(), refusal -> List.of());
        }
        var listed = new ArrayList<Integer>();
        for (int bolt = 1; bolt <= joint.bolts(); bolt++) {
            listed.add(bolt);
        }
        return listed;
    }
}
