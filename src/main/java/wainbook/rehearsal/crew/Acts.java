package wainbook.rehearsal.crew;

import jakarta.inject.Inject;
import jakarta.inject.Singleton;
import java.time.Clock;
import wainbook.gate.GateLook;
import wainbook.gate.SignOff;
import wainbook.handover.HandingOver;
import wainbook.handover.HandoverLook;
import wainbook.handover.Noting;
import wainbook.handover.carbon.CarbonStating;
import wainbook.handover.issue.IssueLook;
import wainbook.handover.issue.Issuing;
import wainbook.handover.record.RecordLook;
import wainbook.handover.record.act.Condition;
import wainbook.handover.record.act.Instructing;
import wainbook.handover.record.act.Receipting;
import wainbook.handover.record.act.Snagging;
import wainbook.handover.record.act.WarrantyStart;
import wainbook.handover.road.RoadDrive;
import wainbook.handover.road.RoadLook;
import wainbook.handover.road.RoadRelease;
import wainbook.isolation.step.TakeStep;
import wainbook.ledger.Ledger;
import wainbook.ledger.evidence.EvidenceFiles;
import wainbook.line.appointment.Attendance;
import wainbook.line.awaited.Awaiting;
import wainbook.line.awaited.Coming;
import wainbook.line.move.Move;
import wainbook.matter.nonconformity.Disposal;
import wainbook.matter.nonconformity.Reporting;
import wainbook.order.Intake;
import wainbook.order.Ordering;
import wainbook.order.calibration.Asking;
import wainbook.order.hold.Holding;
import wainbook.order.promise.Promising;
import wainbook.order.specification.SpecificationLook;
import wainbook.order.specification.Specifying;
import wainbook.pack.act.Judging;
import wainbook.pack.act.Keeping;
import wainbook.pack.act.Quarantining;
import wainbook.pack.act.Receiving;
import wainbook.pack.act.StorageChecking;
import wainbook.pack.act.Watching;
import wainbook.permit.Permitting;
import wainbook.process.Releases;
import wainbook.safety.miss.Handling;
import wainbook.safety.visit.Visiting;
import wainbook.station.deferral.Deferral;
import wainbook.station.entry.Recording;
import wainbook.station.entry.Voiding;
import wainbook.station.help.Calling;
import wainbook.station.work.Workplace;
import wainbook.trace.campaign.Campaigns;
import wainbook.trace.campaign.act.Answering;
import wainbook.trace.campaign.act.Holds;
import wainbook.trace.campaign.act.Lettering;
import wainbook.trace.campaign.act.ReworkOrdering;
import wainbook.trace.campaign.act.TakingOut;
import wainbook.trace.campaign.letter.Letters;
import wainbook.waste.TakenOut;
import wainbook.waste.act.Closing;
import wainbook.waste.act.Collecting;
import wainbook.waste.act.Deciding;
import wainbook.waste.act.EngineFate;
import wainbook.waste.act.Opening;
import wainbook.waste.act.PuttingIn;
import wainbook.waste.act.Returning;
import wainbook.works.appointment.AppointmentKinds;
import wainbook.works.instruments.Register;
import wainbook.works.instruments.calibration.Calibrating;
import wainbook.works.shift.WorksDay;

/** Everything that people of a works do and look at, as the pages and the API do it. */
@Singleton
public class Acts {
    @Inject
    public Clock clock;

    @Inject
    public Ledger ledger;

    @Inject
    public Releases releases;

    @Inject
    public WorksDay day;

    @Inject
    public EvidenceFiles files;

    @Inject
    public Ordering ordering;

    @Inject
    public Specifying specifying;

    @Inject
    public Promising promising;

    @Inject
    public SpecificationLook specifications;

    @Inject
    public Asking askingCalibration;

    @Inject
    public Intake intake;

    @Inject
    public wainbook.order.returning.Returning comingBack;

    @Inject
    public Holding holding;

    @Inject
    public Keeping keepingPacks;

    @Inject
    public Receiving receivingPacks;

    @Inject
    public StorageChecking checkingPacks;

    @Inject
    public Quarantining quarantining;

    @Inject
    public Watching watchingPacks;

    @Inject
    public Judging judgingPacks;

    @Inject
    public Recording recording;

    @Inject
    public Workplace workplace;

    @Inject
    public Voiding voiding;

    @Inject
    public Deferral deferral;

    @Inject
    public Calling calling;

    @Inject
    public TakeStep isolation;

    @Inject
    public Reporting reporting;

    @Inject
    public Disposal disposal;

    @Inject
    public GateLook gates;

    @Inject
    public SignOff signing;

    @Inject
    public Calibrating calibrating;

    @Inject
    public Register register;

    @Inject
    public Move moving;

    @Inject
    public HandoverLook documents;

    @Inject
    public Noting noting;

    @Inject
    public HandingOver handing;

    @Inject
    public AppointmentKinds appointments;

    @Inject
    public Attendance attendance;

    @Inject
    public RoadLook roads;

    @Inject
    public RoadRelease roadRelease;

    @Inject
    public RoadDrive roadDrive;

    @Inject
    public IssueLook issues;

    @Inject
    public Issuing issuing;

    @Inject
    public Awaiting awaiting;

    @Inject
    public Coming coming;

    @Inject
    public Permitting permitting;

    @Inject
    public wainbook.safety.miss.Reporting nearMisses;

    @Inject
    public Handling handling;

    @Inject
    public Visiting visiting;

    @Inject
    public TakenOut takenOut;

    @Inject
    public Deciding decidingParts;

    @Inject
    public EngineFate engineFate;

    @Inject
    public Opening openingContainers;

    @Inject
    public PuttingIn puttingIn;

    @Inject
    public Closing closing;

    @Inject
    public Collecting collecting;

    @Inject
    public Returning returning;

    @Inject
    public CarbonStating carbon;

    @Inject
    public RecordLook handoverRecords;

    @Inject
    public Condition condition;

    @Inject
    public Snagging snagging;

    @Inject
    public Instructing instructing;

    @Inject
    public WarrantyStart warrantyStart;

    @Inject
    public Receipting receipting;

    @Inject
    public Campaigns campaigns;

    @Inject
    public wainbook.trace.campaign.act.Opening openingCampaigns;

    @Inject
    public Holds holds;

    @Inject
    public Letters letters;

    @Inject
    public Lettering lettering;

    @Inject
    public Answering answering;

    @Inject
    public ReworkOrdering reworking;

    @Inject
    public wainbook.trace.campaign.act.Settling settling;

    @Inject
    public TakingOut takingOut;
}
