package wainbook.process.joint;

import java.util.Optional;

/** A joint in the shape of {@code process.jointsReleased/1}. Works have such entries on record: it never changes. */
public record JointBefore(
        String code,
        String title,
        JointClass jointClass,
        int bolts,
        Joint.Order order,
        Joint.Torque torque,
        Optional<Joint.Angle> angle,
        String toolKind,
        int tries,
        Optional<String> thread,
        boolean highVoltage,
        Optional<String> place,
        Optional<String> source) {

    public Joint newer() {
        return new Joint(
                code,
                title,
                jointClass,
                bolts,
                order,
                torque,
                angle,
                toolKind,
                tries,
                thread,
                highVoltage,
                place,
                source,
                Optional.empty(),
                Optional.empty(),
                Optional.empty());
    }
}
