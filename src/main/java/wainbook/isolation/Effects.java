package wainbook.isolation;

import static wainbook.isolation.Isolation.plus;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import wainbook.act.Moment;
import wainbook.isolation.Isolation.Abandoned;
import wainbook.isolation.Isolation.Declaration;
import wainbook.isolation.Isolation.Opened;
import wainbook.isolation.Isolation.ToBeTold;
import wainbook.isolation.IsolationSaying.*;
import wainbook.isolation.permit.LivePermit;
import wainbook.isolation.permit.Permit;
import wainbook.isolation.permit.Precaution;
import wainbook.isolation.permit.Sanction;
import wainbook.isolation.permit.StopCause;
import wainbook.isolation.proof.Lock;
import wainbook.isolation.proof.Proof;
import wainbook.isolation.proof.Scope;

/** What each kind of entry changes. An entry stands, whoever asked for it: here nothing is refused any more. */
final class Effects {

    /** One kind’s effect on a fresh copy of the isolation. */
    private interface Effect<S extends IsolationSaying> {
        void on(Isolation next, S said, Moment moment);
    }

    private static final Map<Class<?>, Effect<?>> TABLE = new HashMap<>();

    static {
        of(Planned.class, Effects::planned);
        of(ShutDown.class, (next, said, moment) -> next.state = State.SHUT_DOWN);
        of(SourceOpened.class, Effects::sourceOpened);
        of(LockedOn.class, (next, said, moment) -> next.locks = plus(next.locks, new Lock(said.lock(), moment.who())));
        of(LockedOff.class, Effects::lockedOff);
        of(TakenOver.class, Effects::takenOver);
        of(TesterProvedBefore.class, Effects::testerProvedBefore);
        of(PointMeasured.class, Effects::pointMeasured);
        of(PointMeasuredAgain.class, Effects::pointMeasuredAgain);
        of(TesterProvedAfter.class, Effects::testerProvedAfter);
        of(
                ProofWitnessed.class,
                (next, said, moment) -> next.proof = next.proof.map(shown -> shown.witnessedBy(moment.who())));
        of(Observed.class, (next, said, moment) -> voidIfDangerous(next, said));
        of(PermitIssued.class, Effects::permitIssued);
        of(PaperRead.class, Effects::paperRead);
        of(WorkStopped.class, Effects::workStopped);
        of(WorkResumed.class, (next, said, moment) -> next.state = State.IN_FORCE);
        of(HandedBack.class, Effects::handedBack);
        of(PermitCancelled.class, Effects::permitCancelled);
        of(SanctionIssued.class, Effects::sanctionIssued);
        of(TestEnded.class, Effects::testEnded);
        of(LivePermitIssued.class, Effects::livePermitIssued);
        of(RestorationChecked.class, Effects::restorationChecked);
        of(Restored.class, Effects::restored);
        of(VehicleMoved.class, Effects::vehicleMoved);
        of(SourceRecorded.class, Effects::sourceRecorded);
        of(DangerReported.class, (next, said, moment) -> next.voidIt());
        of(LockReportedAbandoned.class, Effects::lockReportedAbandoned);
        of(AbandonedLockRemoved.class, Effects::abandonedLockRemoved);
        of(
                OwnerTold.class,
                (next, said, moment) -> next.toBeTold = next.toBeTold.stream()
                        .filter(told -> !told.lock().equals(said.lock()))
                        .toList());
        of(
                NoSourceDeclared.class,
                (next, said, moment) -> next.noSource = Optional.of(new Declaration(moment.who(), moment.at())));
        of(ItemRegistered.class, (next, said, moment) -> {});
        of(ItemRetired.class, (next, said, moment) -> {});
    }

    private Effects() {}

    @SuppressWarnings("unchecked")
    static <S extends IsolationSaying> void of(S said, Isolation next, Moment moment) {
        ((Effect<S>) TABLE.get(said.getClass())).on(next, said, moment);
    }

    static Set<Class<?>> kinds() {
        return Set.copyOf(TABLE.keySet());
    }

    private static <S extends IsolationSaying> void of(Class<S> kind, Effect<S> effect) {
        TABLE.put(kind, effect);
    }

    private static void planned(Isolation next, Planned said, Moment moment) {
        clear(next);
        next.number = said.isolation();
        next.state = State.PLANNED;
        next.plan = Optional.of(said.plan());
        next.limits = said.limits();
        next.isolator = moment.who();
        next.station = Optional.of(said.station());
        next.noSource = Optional.empty();
    }

    /** Locks stay, and so does what was brought aboard: they are on the vehicle, whatever the papers say. */
    private static void clear(Isolation next) {
        next.plan = Optional.empty();
        next.isolator = "";
        next.openings = List.of();
        next.proof = Optional.empty();
        next.due = Scope.ALL_POINTS;
        next.permit = Optional.empty();
        next.sanction = Optional.empty();
        next.charged = false;
        next.workers = List.of();
        next.opened = false;
        next.handedBack = false;
        next.checksPassed = List.of();
    }

    private static void sourceOpened(Isolation next, SourceOpened said, Moment moment) {
        next.disturbed = true;
        next.openings = plus(
                next.openings.stream()
                        .filter(seen -> !seen.source().equals(said.source()))
                        .toList(),
                new Opened(said.source(), moment.at()));
    }

    private static void lockedOff(Isolation next, LockedOff said, Moment moment) {
        boolean held = next.lockOn(next.isolator);
        next.locks = next.locks.stream()
                .filter(lock ->
                        !lock.number().equals(said.lock()) || !lock.owner().equals(moment.who()))
                .toList();
        if (!next.lockOn(moment.who())) {
            next.permit = next.permit.map(permit -> permit.leftBy(moment.who()));
        }
        if (held && !next.lockOn(next.isolator)) {
            next.voidIt();
        }
    }

    private static void takenOver(Isolation next, TakenOver said, Moment moment) {
        next.isolator = moment.who();
        next.stop(Scope.ALL_POINTS);
    }

    private static void testerProvedBefore(Isolation next, TesterProvedBefore said, Moment moment) {
        if (next.state == State.PROVED_DEAD || next.state == State.READY) {
            next.stop(Scope.ALL_POINTS);
        }
        next.proof = Optional.of(Proof.begun(moment.who(), moment.at(), said));
    }

    private static void pointMeasured(Isolation next, PointMeasured said, Moment moment) {
        boolean dead = said.readings().stream().allMatch(reading -> next.limits.dead(reading.volt()));
        next.proof = next.proof.map(begun ->
                dead ? begun.measured(said.point(), said.readings(), moment.at()) : begun.failedAt(said.point()));
        voidIfDangerous(next, said);
    }

    private static void pointMeasuredAgain(Isolation next, PointMeasuredAgain said, Moment moment) {
        next.proof = next.proof.map(begun -> stillDead(next, begun, said)
                ? begun.measuredAgain(said.point(), moment.at())
                : begun.failedAt(said.point()));
        voidIfDangerous(next, said);
    }

    private static boolean stillDead(Isolation next, Proof begun, PointMeasuredAgain said) {
        var highest = Proof.highest(said.readings());
        return next.limits.dead(highest)
                && begun.point(said.point())
                        .filter(first -> highest.subtract(first.highestVolt()).compareTo(next.limits.riseVolt()) <= 0)
                        .isPresent();
    }

    private static void voidIfDangerous(Isolation next, AtPoint said) {
        if (said.readings().stream().anyMatch(reading -> next.limits.dangerous(reading.pair(), reading.volt()))) {
            next.voidIt();
        }
    }

    private static void testerProvedAfter(Isolation next, TesterProvedAfter said, Moment moment) {
        if (next.limits.agrees(said.proving().readingVolt(), said.proving().sourceVolt())) {
            next.proof = next.proof.map(begun -> begun.testerProvedAgain(moment.at()));
        } else {
            next.voidIt();
        }
    }

    private static void permitIssued(Isolation next, PermitIssued said, Moment moment) {
        next.papers = said.permit();
        next.permit = Optional.of(Permit.issued(moment.who(), said));
        next.handedBack = false;
        next.checksPassed = List.of();
    }

    private static void paperRead(Isolation next, PaperRead said, Moment moment) {
        if (next.permit.filter(permit -> permit.number() == said.paper()).isPresent()) {
            next.permit = next.permit.map(permit -> permit.readBy(moment.who()));
            next.workers = plus(next.workers, moment.who()).stream()
                    .distinct()
                    .sorted()
                    .toList();
            if (next.state == State.PROVED_DEAD && next.permit.orElseThrow().received()) {
                next.state = State.IN_FORCE;
            }
        }
        if (next.sanction.filter(sanction -> sanction.number() == said.paper()).isPresent()) {
            next.sanction = next.sanction.map(Sanction::accept);
            next.state = State.UNDER_TEST;
        }
        if (next.live.filter(live -> live.number() == said.paper()).isPresent()) {
            next.live = next.live.map(live -> live.readBy(moment.who()));
        }
    }

    private static void workStopped(Isolation next, WorkStopped said, Moment moment) {
        next.live = Optional.empty();
        next.stop(said.cause() == StopCause.BREAK ? Scope.POINTS_OF_WORK : Scope.ALL_POINTS);
    }

    /** Whatever this person holds goes back. Anybody else’s word stops the work, which is the safe side. */
    private static void handedBack(Isolation next, HandedBack said, Moment moment) {
        var who = moment.who();
        next.opened = next.opened || said.opened();
        if (next.live.filter(live -> live.names(who)).isPresent()) {
            next.live = Optional.empty();
        } else if (next.state == State.PLANNED && next.isolator.equals(who) && !next.disturbed) {
            clear(next);
            next.state = State.LIVE;
        } else if (next.permit
                .filter(permit ->
                        !permit.receiver().equals(who) && permit.readers().contains(who))
                .isPresent()) {
            next.permit = next.permit.map(permit -> permit.leftBy(who));
        } else {
            boolean whole = said.clear() && answersForAll(next, who);
            next.stop(Scope.ALL_POINTS);
            if (whole && State.SECURED.contains(next.state)) {
                next.handedBack = true;
                next.state = State.STOPPED;
            }
        }
    }

    /** The receiver answers for all under the permit; the isolator, when no permit is out. */
    private static boolean answersForAll(Isolation next, String who) {
        return next.permit
                .filter(permit -> !permit.cancelled())
                .map(permit -> permit.receiver().equals(who))
                .orElse(next.isolator.equals(who));
    }

    private static void permitCancelled(Isolation next, PermitCancelled said, Moment moment) {
        if (next.state != State.PROVED_DEAD) {
            next.stop(Scope.ALL_POINTS);
        }
        next.permit = next.permit.map(Permit::cancel);
    }

    private static void sanctionIssued(Isolation next, SanctionIssued said, Moment moment) {
        next.papers = said.sanction();
        next.permit = next.permit.map(Permit::end);
        next.state = State.PROVED_DEAD;
        next.sanction = Optional.of(
                new Sanction(said.sanction(), said.holder(), said.instrument().code(), said.validUntil(), false));
    }

    private static void livePermitIssued(Isolation next, LivePermitIssued said, Moment moment) {
        next.papers = said.permit();
        next.live = Optional.of(LivePermit.issued(moment.who(), said));
        next.noSource = Optional.empty();
    }

    private static void testEnded(Isolation next, TestEnded said, Moment moment) {
        next.stop(Scope.ALL_POINTS);
        next.charged = !said.confirmed().contains(Precaution.DISCHARGED);
    }

    private static void restorationChecked(Isolation next, RestorationChecked said, Moment moment) {
        var others = next.checksPassed.stream()
                .filter(code -> !code.equals(said.check()))
                .toList();
        next.checksPassed = said.passed() ? plus(others, said.check()) : others;
        next.state = State.HANDED_BACK;
    }

    private static void restored(Isolation next, Restored said, Moment moment) {
        next.locks = next.locks.stream()
                .filter(lock -> !lock.number().equals(said.lock()))
                .toList();
        clear(next);
        next.disturbed = false;
        next.state = State.LIVE;
    }

    private static void vehicleMoved(Isolation next, VehicleMoved said, Moment moment) {
        next.live = Optional.empty();
        next.station = said.to();
        boolean travels = next.plan.filter(plan -> plan.mayTravel()).isPresent()
                && State.SECURED.contains(next.state)
                && next.state != State.UNDER_TEST
                && next.lockOn(next.isolator);
        if (travels) {
            next.stop(Scope.ALL_POINTS);
        } else {
            next.voidIt();
        }
    }

    private static void sourceRecorded(Isolation next, SourceRecorded said, Moment moment) {
        next.noSource = Optional.empty();
        boolean foreseen =
                next.plan.filter(plan -> plan.foresees(said.source())).isPresent()
                        && !next.landed.contains(said.source())
                        && next.isOpen(said.source())
                        && next.lockOn(next.isolator)
                        && next.state != State.UNDER_TEST;
        if (!next.landed.contains(said.source())) {
            next.landed = plus(next.landed, said.source());
        }
        if (foreseen) {
            next.stop(Scope.ALL_POINTS);
        } else {
            next.voidIt();
        }
    }

    private static void lockReportedAbandoned(Isolation next, LockReportedAbandoned said, Moment moment) {
        next.lock(said.lock())
                .ifPresent(lock -> next.abandoned =
                        plus(next.abandoned, new Abandoned(lock.number(), lock.owner(), moment.who())));
    }

    private static void abandonedLockRemoved(Isolation next, AbandonedLockRemoved said, Moment moment) {
        next.lock(said.lock())
                .ifPresent(lock -> next.toBeTold = plus(next.toBeTold, new ToBeTold(lock.number(), lock.owner())));
        next.locks = next.locks.stream()
                .filter(lock -> !lock.number().equals(said.lock()))
                .toList();
        next.abandoned = next.abandoned.stream()
                .filter(known -> !known.lock().equals(said.lock()))
                .toList();
        next.retiredLocks = plus(next.retiredLocks, said.lock());
        next.voidIt();
    }
}
