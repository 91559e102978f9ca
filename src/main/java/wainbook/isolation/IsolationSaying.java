package wainbook.isolation;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import wainbook.isolation.fact.Instrument;
import wainbook.isolation.fact.Limits;
import wainbook.isolation.fact.Register;
import wainbook.isolation.permit.Precaution;
import wainbook.isolation.permit.StopCause;
import wainbook.isolation.permit.Work;
import wainbook.isolation.proof.Scope;
import wainbook.ledger.Kind;
import wainbook.ledger.Saying;
import wainbook.process.plan.Plan;
import wainbook.process.plan.Point.Pair;

/**
 * Everything that can be said about a vehicle’s isolation; each kind is what one {@link Step} leaves behind. Who and when
 * stand in the entry itself. Whatever a decision used is copied into the body, so that it can be judged years later.
 */
public sealed interface IsolationSaying extends Saying {

    /** A competence as it stood: level 1 instructed, 2 competent, 3 for live work. */
    record Level(int level, Instant validUntil) {}

    /** An instrument as it stood. */
    record Used(String code, Instrument.Sort sort, BigDecimal ratedVolt, Instant validUntil) {}

    /** One reading, with its sign. */
    record Reading(Pair pair, BigDecimal volt) {}

    /** A known source and what the tester showed on it. */
    record Proving(Used tester, Used source, BigDecimal sourceVolt, BigDecimal readingVolt) {}

    /** Said together with what the person confirmed. */
    interface Confirmed {
        List<Precaution> confirmed();
    }

    /** Said with the voltage tester at a point. */
    interface AtPoint {
        String point();

        String tester();

        List<Reading> readings();
    }

    @Kind("isolation.planned/1")
    record Planned(int isolation, String station, Plan plan, Limits limits, Level isolator, List<Precaution> confirmed)
            implements IsolationSaying, Confirmed {}

    @Kind("isolation.shutDown/1")
    record ShutDown(String box, List<String> keys, List<Precaution> confirmed) implements IsolationSaying, Confirmed {}

    @Kind("isolation.sourceOpened/1")
    record SourceOpened(String source, boolean shownOpen) implements IsolationSaying {}

    @Kind("isolation.lockedOn/1")
    record LockedOn(String lock, String tag, Level owner) implements IsolationSaying {}

    @Kind("isolation.lockedOff/1")
    record LockedOff(String lock) implements IsolationSaying {}

    @Kind("isolation.takenOver/1")
    record TakenOver(Level isolator) implements IsolationSaying {}

    @Kind("isolation.testerProvedBefore/1")
    record TesterProvedBefore(Scope scope, Proving proving, Level prover) implements IsolationSaying {
        public String tester() {
            return proving.tester().code();
        }
    }

    @Kind("isolation.pointMeasured/1")
    record PointMeasured(String point, String tester, List<Reading> readings) implements IsolationSaying, AtPoint {}

    @Kind("isolation.pointMeasuredAgain/1")
    record PointMeasuredAgain(String point, String tester, List<Reading> readings)
            implements IsolationSaying, AtPoint {}

    @Kind("isolation.testerProvedAfter/1")
    record TesterProvedAfter(Proving proving) implements IsolationSaying {}

    @Kind("isolation.proofWitnessed/1")
    record ProofWitnessed(Level witness) implements IsolationSaying {}

    /** A reading by the wrong person, with the wrong instrument or out of order: kept, and can pass nothing. */
    @Kind("isolation.observed/1")
    record Observed(String point, String tester, List<Reading> readings, List<String> notCountedFor)
            implements IsolationSaying, AtPoint {}

    /** A permit; where issuer and isolator are one person, which a works may allow, every print shows it. */
    @Kind("isolation.permitIssued/1")
    record PermitIssued(
            int permit,
            String receiver,
            Work work,
            List<String> pointsOfWork,
            Instant validUntil,
            Level issuer,
            boolean ownIsolation,
            List<Precaution> confirmed)
            implements IsolationSaying, Confirmed {}

    /** Read and accepted: a permit to work by its receiver or someone joining, any other paper by those it names. */
    @Kind("isolation.paperRead/1")
    record PaperRead(int paper, Level reader) implements IsolationSaying {}

    @Kind("isolation.workStopped/1")
    record WorkStopped(StopCause cause, Optional<String> note) implements IsolationSaying {}

    @Kind("isolation.workResumed/1")
    record WorkResumed(int permit, List<String> locksSeen, Level issuer, List<Precaution> confirmed)
            implements IsolationSaying, Confirmed {}

    @Kind("isolation.handedBack/1")
    record HandedBack(boolean complete, boolean clear, boolean opened) implements IsolationSaying {}

    @Kind("isolation.permitCancelled/1")
    record PermitCancelled(int permit) implements IsolationSaying {}

    @Kind("isolation.sanctionIssued/1")
    record SanctionIssued(
            int sanction,
            String holder,
            Work work,
            Used instrument,
            Instant validUntil,
            Level issuer,
            List<Precaution> confirmed)
            implements IsolationSaying, Confirmed {}

    @Kind("isolation.testEnded/1")
    record TestEnded(List<Precaution> confirmed) implements IsolationSaying, Confirmed {}

    @Kind("isolation.livePermitIssued/1")
    record LivePermitIssued(
            int permit,
            String tester,
            Work work,
            String second,
            Used gloves,
            Instant validUntil,
            Level issuer,
            List<Precaution> confirmed)
            implements IsolationSaying, Confirmed {}

    @Kind("isolation.restorationChecked/1")
    record RestorationChecked(String check, boolean passed, Optional<String> note) implements IsolationSaying {}

    /** The isolator takes the last lock off and the vehicle may be energised. */
    @Kind("isolation.restored/1")
    record Restored(String lock, Level isolator, List<Precaution> confirmed) implements IsolationSaying, Confirmed {}

    @Kind("isolation.vehicleMoved/1")
    record VehicleMoved(String from, Optional<String> to) implements IsolationSaying {}

    @Kind("isolation.sourceRecorded/1")
    record SourceRecorded(String source) implements IsolationSaying {}

    @Kind("isolation.dangerReported/1")
    record DangerReported(Danger danger, String where) implements IsolationSaying {}

    @Kind("isolation.lockReportedAbandoned/1")
    record LockReportedAbandoned(String lock, String reason, List<Precaution> confirmed)
            implements IsolationSaying, Confirmed {}

    @Kind("isolation.abandonedLockRemoved/1")
    record AbandonedLockRemoved(String lock, List<Precaution> confirmed) implements IsolationSaying, Confirmed {}

    @Kind("isolation.ownerTold/1")
    record OwnerTold(String lock) implements IsolationSaying {}

    @Kind("isolation.noSourceDeclared/1")
    record NoSourceDeclared(List<String> lookedFor, Level declarer) implements IsolationSaying {}

    @Kind("isolation.itemRegistered/1")
    record ItemRegistered(String number, Register.Sort sort, Optional<String> owner) implements IsolationSaying {}

    @Kind("isolation.itemRetired/1")
    record ItemRetired(String number, String reason) implements IsolationSaying {}
}
