package wainbook.process;

import java.util.List;
import wainbook.ledger.Kind;
import wainbook.ledger.Saying;
import wainbook.ledger.Superseded;
import wainbook.process.calibration.Calibration;
import wainbook.process.component.Component;
import wainbook.process.component.ComponentBefore;
import wainbook.process.draft.About;
import wainbook.process.draft.Drafted;
import wainbook.process.draft.DraftedBefore;
import wainbook.process.joint.Joint;
import wainbook.process.joint.JointBefore;
import wainbook.process.outline.Outline;
import wainbook.process.plan.Plan;
import wainbook.process.sheet.CheckSheet;
import wainbook.process.sheet.SheetBefore;

/**
 * What the ledger hears about the process. Each entry holds the whole of what it releases, so that any old revision can be
 * shown as it was. Who released it, and when, is the entry's moment.
 */
public sealed interface ProcessSaying extends Saying {

    /** As it was said before items named what no concession is given for. */
    @Kind("process.released/1")
    record ReleasedBefore(SheetBefore sheet, int revision) implements ProcessSaying, Superseded {
        @Override
        public Released newer() {
            return new Released(sheet.newer(), revision);
        }
    }

    /** As it was said before tables named the instrument that they are read with. */
    @Kind("process.released/2")
    record ReleasedWithoutTableTools(CheckSheet sheet, int revision) implements ProcessSaying, Superseded {
        @Override
        public Released newer() {
            return new Released(sheet, revision);
        }
    }

    /** As it was said before items that weigh or dip named the stream that comes out. */
    @Kind("process.released/3")
    record ReleasedWithoutStreams(CheckSheet sheet, int revision) implements ProcessSaying, Superseded {
        @Override
        public Released newer() {
            return new Released(sheet, revision);
        }
    }

    /** A revision of a check sheet came into force: in the sheet's own stream. */
    @Kind("process.released/4")
    record Released(CheckSheet sheet, int revision) implements ProcessSaying {
        public Released {
            Revision.checked(revision);
        }
    }

    /** A revision of a route came into force. */
    @Kind("process.routeReleased/1")
    record RouteReleased(Route route, int revision) implements ProcessSaying {
        public RouteReleased {
            Revision.checked(revision);
        }
    }

    /** As it was said before joints knew rows, passes and residual torque. */
    @Kind("process.jointsReleased/1")
    record JointsReleasedBefore(List<JointBefore> joints, int revision) implements ProcessSaying, Superseded {
        public JointsReleasedBefore {
            joints = List.copyOf(joints);
            Revision.checked(revision);
        }

        @Override
        public JointsReleased newer() {
            return new JointsReleased(joints.stream().map(JointBefore::newer).toList(), revision);
        }
    }

    /** The works' joints, all of them, in a new revision. */
    @Kind("process.jointsReleased/2")
    record JointsReleased(List<Joint> joints, int revision) implements ProcessSaying {
        public JointsReleased {
            joints = List.copyOf(joints);
            Revision.checked(revision);
        }
    }

    /** As it was said before parts named what their serial is read as. */
    @Kind("process.componentsReleased/1")
    record ComponentsReleasedBefore(List<ComponentBefore> components, int revision)
            implements ProcessSaying, Superseded {
        public ComponentsReleasedBefore {
            components = List.copyOf(components);
            Revision.checked(revision);
        }

        @Override
        public ComponentsReleased newer() {
            return new ComponentsReleased(
                    components.stream().map(ComponentBefore::newer).toList(), revision);
        }
    }

    /** The parts that conversions take out and put in, all of them, in a new revision. */
    @Kind("process.componentsReleased/2")
    record ComponentsReleased(List<Component> components, int revision) implements ProcessSaying {
        public ComponentsReleased {
            components = List.copyOf(components);
            Revision.checked(revision);
        }
    }

    /** The calibrations of control units, all of them, those withdrawn too. */
    @Kind("process.calibrationsReleased/1")
    record CalibrationsReleased(List<Calibration> calibrations, int revision) implements ProcessSaying {
        public CalibrationsReleased {
            calibrations = List.copyOf(calibrations);
            Revision.checked(revision);
        }
    }

    /** A revision of a variant's isolation plan came into force. */
    @Kind("process.planReleased/1")
    record PlanReleased(Plan plan) implements ProcessSaying {}

    /** The drawing of a kind of vehicle came into force. */
    @Kind("process.outlineReleased/1")
    record OutlineReleased(Outline outline, int revision) implements ProcessSaying {
        public OutlineReleased {
            Revision.checked(revision);
        }
    }

    /** A stage was defined, or defined anew. */
    @Kind("process.stageDefined/1")
    record StageDefined(Stage stage) implements ProcessSaying {}

    /** A station was defined, or defined anew. */
    @Kind("process.stationDefined/1")
    record StationDefined(Station station) implements ProcessSaying {}

    /** As it was said before joints knew rows, passes and residual torque. */
    @Kind("process.draftKept/1")
    record DraftKeptBefore(DraftedBefore draft, int base) implements ProcessSaying, Superseded {
        @Override
        public DraftKept newer() {
            return new DraftKept(draft.newer(), base);
        }
    }

    /** As it was said before tables named the instrument that they are read with. */
    @Kind("process.draftKept/2")
    record DraftKeptWithoutTableTools(Drafted draft, int base) implements ProcessSaying, Superseded {
        @Override
        public DraftKept newer() {
            return new DraftKept(draft, base);
        }
    }

    /** As it was said before items that weigh or dip named the stream that comes out. */
    @Kind("process.draftKept/3")
    record DraftKeptWithoutStreams(Drafted draft, int base) implements ProcessSaying, Superseded {
        @Override
        public DraftKept newer() {
            return new DraftKept(draft, base);
        }
    }

    /** A draft was begun or changed: the whole of it, in the stream in which it would be released. */
    @Kind("process.draftKept/4")
    record DraftKept(Drafted draft, int base) implements ProcessSaying {}

    /** Its author holds the draft for finished and asks a second person to release it. */
    @Kind("process.draftProposed/1")
    record DraftProposed(About about) implements ProcessSaying {}

    @Kind("process.draftDropped/1")
    record DraftDropped(About about) implements ProcessSaying {}
}
