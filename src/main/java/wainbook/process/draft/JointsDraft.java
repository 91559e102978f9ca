package wainbook.process.draft;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import wainbook.act.Reason;
import wainbook.page.Words;
import wainbook.process.ProcessSaying;
import wainbook.process.joint.BoltLoad;
import wainbook.process.joint.Joint;
import wainbook.process.joint.Serving;
import wainbook.process.rule.Draft;
import wainbook.process.rule.Known;
import wainbook.process.sheet.CheckSheet;

/** The works' joints, all of them, as a draft. */
public record JointsDraft(List<Joint> joints) implements Drafted {

    public JointsDraft {
        joints = List.copyOf(joints);
    }

    @Override
    public About about() {
        return About.JOINTS;
    }

    @Override
    public String title() {
        return Words.of("process.jointsTitle");
    }

    @Override
    public List<Reason> faults(Surroundings surroundings) {
        var faults = new ArrayList<Reason>();
        var codes = new HashSet<String>();
        for (Joint joint : joints) {
            if (!codes.add(joint.code())) {
                faults.add(Reason.of("process.duplicateJoint", Reason.WORKS_RULE, joint.code()));
            }
            if (!surroundings.kindOfInstrument(joint.toolKind())) {
                faults.add(Reason.of("process.unknownToolKind", Reason.WORKS_RULE, joint.code(), joint.toolKind()));
            } else if (isNew(joint, surroundings)) {
                serving(joint, surroundings).refusal().ifPresent(faults::add);
            }
        }
        Known now = surroundings.known();
        var then = new Known(joints, now.stages(), now.instrumentKinds(), now.predicates());
        for (CheckSheet sheet : surroundings.sheets()) {
            var before = new Draft(sheet).check(now);
            new Draft(sheet)
                    .check(then).stream()
                            .filter(fault -> !before.contains(fault))
                            .map(fault -> broken(sheet, fault))
                            .forEach(faults::add);
        }
        now.joints().stream()
                .map(Joint::code)
                .filter(joint -> !codes.contains(joint))
                .forEach(joint -> boundTo(joint, surroundings).ifPresent(faults::add));
        return List.copyOf(faults);
    }

    /**
     * Cautions that do not bar a release. A joint that stays as it is in force is told here what it would be refused for
     * today: a wrench at its calibration must not keep other joints from being mended.
     */
    @Override
    public List<Reason> remarks(Surroundings surroundings) {
        var remarks = new ArrayList<Reason>();
        for (Joint joint : joints) {
            if (surroundings.kindOfInstrument(joint.toolKind())) {
                Serving serving = serving(joint, surroundings);
                serving.remark()
                        .or(() -> isNew(joint, surroundings) ? Optional.empty() : serving.refusal())
                        .ifPresent(remarks::add);
            }
            BoltLoad.of(joint).flatMap(BoltLoad::remark).ifPresent(remarks::add);
        }
        return remarks;
    }

    private static boolean isNew(Joint joint, Surroundings surroundings) {
        return !surroundings.known().joints().contains(joint);
    }

    private static Serving serving(Joint joint, Surroundings surroundings) {
        return new Serving(joint, surroundings.tools().fit(joint.toolKind()));
    }

    /** A vehicle goes on by the sheet it is bound to, and its entries are judged by the joint as it is released then. */
    private static Optional<Reason> boundTo(String joint, Surroundings surroundings) {
        return surroundings.vehicles().stream()
                .flatMap(vehicle -> vehicle.sheets().stream()
                        .filter(sheet -> !surroundings.sheets().contains(sheet))
                        .filter(sheet -> sheet.items().stream()
                                .anyMatch(item -> item.joint().equals(Optional.of(joint))))
                        .map(sheet -> Reason.of(
                                        "process.jointAtVehicle",
                                        Reason.WORKS_RULE,
                                        joint,
                                        vehicle.order(),
                                        sheet.code())
                                .liftedAt("/orders/" + vehicle.order())))
                .findFirst();
    }

    /** What would be wrong with a sheet that is in force, said of the joint that the sheet names. */
    private static Reason broken(CheckSheet sheet, Reason fault) {
        String item = fault.arguments().get(0);
        String joint = fault.arguments().size() > 1 ? fault.arguments().get(1) : item;
        Reason reason = fault.key().equals("process.unknownJoint")
                ? Reason.of("process.jointStillAsked", Reason.WORKS_RULE, joint, sheet.code(), item)
                : Reason.of("process.jointBreaksSheet", Reason.WORKS_RULE, joint, sheet.code(), item);
        return reason.liftedAt(About.sheet(sheet.code()).path());
    }

    @Override
    public List<ProcessSaying> sayings(Revisions former) {
        return List.of(new ProcessSaying.JointsReleased(joints, former.revision() + 1));
    }

    /** By class, the gravest first. */
    @Override
    public List<Part> parts() {
        return joints.stream()
                .sorted(Comparator.comparing(Joint::jointClass).thenComparing(Joint::code))
                .map(JointsDraft::part)
                .toList();
    }

    private static Part part(Joint joint) {
        return Part.of(Part.Group.JOINT, joint.code(), joint.title())
                .say("title", joint.title())
                .say("jointClass", joint.jointClass())
                .say("bolts", joint.bolts())
                .say("order", Words.of("process.order." + joint.order()))
                .say("jointRows", joint.rows())
                .say("passes", passes(joint.passesInForce()))
                .say("target", joint.torque().targetNm().toPlainString() + " N·m")
                .say("torqueLimits", ItemInWords.window(joint.torque().limitsNm()) + " N·m")
                .say("angle", joint.angle().map(angle -> ItemInWords.window(angle.degrees()) + "°"))
                .say("residual", joint.residualNm().map(window -> ItemInWords.window(window) + " N·m"))
                .say("toolKind", joint.toolKind())
                .say("tries", joint.tries())
                .say("thread", joint.thread())
                .worked("preload", BoltLoad.inWords(joint), BoltLoad.of(joint).map(BoltLoad::calculation))
                .yes("highVoltage", joint.highVoltage())
                .say("place", joint.place())
                .say("source", joint.source())
                .part();
    }

    /** Nothing where the torque is reached in one go. */
    private static String passes(Joint.Passes passes) {
        return passes.equals(Joint.Passes.ONE)
                ? ""
                : passes.percent().stream().map(share -> share + " %").collect(Collectors.joining(", "));
    }
}
