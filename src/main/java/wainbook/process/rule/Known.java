package wainbook.process.rule;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import wainbook.predicate.Predicates;
import wainbook.process.joint.Joint;

/** What a draft may refer to: all that the works has released so far, and the facts that a condition may speak of. */
public record Known(List<Joint> joints, Set<String> stages, Set<String> instrumentKinds, Predicates predicates) {

    public Known {
        joints = List.copyOf(joints);
        stages = Set.copyOf(stages);
        instrumentKinds = Set.copyOf(instrumentKinds);
    }

    Optional<Joint> joint(String code) {
        return joints.stream().filter(joint -> joint.code().equals(code)).findFirst();
    }
}
