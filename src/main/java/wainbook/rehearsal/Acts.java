package wainbook.rehearsal;

import jakarta.inject.Inject;
import jakarta.inject.Singleton;
import java.time.Clock;
import wainbook.gate.GateLook;
import wainbook.gate.SignOff;
import wainbook.handover.HandingOver;
import wainbook.handover.HandoverLook;
import wainbook.handover.Noting;
import wainbook.isolation.step.TakeStep;
import wainbook.ledger.EvidenceFiles;
import wainbook.ledger.Ledger;
import wainbook.line.move.Move;
import wainbook.matter.Disposal;
import wainbook.matter.Reporting;
import wainbook.order.Intake;
import wainbook.order.Ordering;
import wainbook.order.hold.Holding;
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
import wainbook.works.WorksDay;
import wainbook.works.instruments.Register;
import wainbook.works.instruments.calibration.Calibrating;

/** Everything that people of a works do and look at, as the pages and the API do it. */
@Singleton
class Acts {
    @Inject
    Clock clock;

    @Inject
    Ledger ledger;

    @Inject
    Releases releases;

    @Inject
    WorksDay day;

    @Inject
    EvidenceFiles files;

    @Inject
    Ordering ordering;

    @Inject
    Intake intake;

    @Inject
    Holding holding;

    @Inject
    Keeping keepingPacks;

    @Inject
    Receiving receivingPacks;

    @Inject
    StorageChecking checkingPacks;

    @Inject
    Quarantining quarantining;

    @Inject
    Watching watchingPacks;

    @Inject
    Judging judgingPacks;

    @Inject
    Recording recording;

    @Inject
    Workplace workplace;

    @Inject
    Voiding voiding;

    @Inject
    Deferral deferral;

    @Inject
    Calling calling;

    @Inject
    TakeStep isolation;

    @Inject
    Reporting reporting;

    @Inject
    Disposal disposal;

    @Inject
    GateLook gates;

    @Inject
    SignOff signing;

    @Inject
    Calibrating calibrating;

    @Inject
    Register register;

    @Inject
    Move moving;

    @Inject
    HandoverLook documents;

    @Inject
    Noting noting;

    @Inject
    HandingOver handing;

    @Inject
    Permitting permitting;

    @Inject
    wainbook.safety.miss.Reporting nearMisses;

    @Inject
    Handling handling;

    @Inject
    Visiting visiting;
}
