package wainbook.isolation;

import static wainbook.isolation.Step.*;
import static wainbook.isolation.fact.Sources.*;

import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BiPredicate;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import wainbook.act.Reason;
import wainbook.isolation.Ask.Paper;
import wainbook.isolation.IsolationSaying.*;
import wainbook.isolation.fact.Register;
import wainbook.isolation.proof.Scope;

/**
 * The rules of every step, one line each: what is said when it is not met, where the rule comes from, which steps it guards,
 * and what must hold. All are asked, so that a refusal names everything that stands in the way. The safe-making steps
 * (stop, own lock off, hand back, report danger) have no rule.
 */
final class Guards {

    private record Rule(
            String key, String source, Set<Step> steps, Predicate<Ask> holds, Function<Ask, Object> argument) {}

    private static final Set<Step> ALL = EnumSet.allOf(Step.class);
    private static final Set<Step> TOUCHING = Set.of(MEASURE_POINT, MEASURE_POINT_AGAIN, PROVE_TESTER_AFTER);
    private static final Set<Step> ISSUING = Set.of(ISSUE_PERMIT, RESUME, ISSUE_SANCTION);
    private static final Set<Step> APPOINTED = and(ISSUING, ISSUE_LIVE_PERMIT, CANCEL_PERMIT);
    private static final Set<Step> PROVING_STEPS = and(TOUCHING, PROVE_TESTER_BEFORE);
    private static final Set<Step> ON_THE_PLAN = and(PROVING_STEPS, SHUT_DOWN, ISSUE_PERMIT, RESUME, ISSUE_SANCTION);
    private static final Set<Step> NOT_BESIDE_LIVE =
            and(PROVING_STEPS, PLAN, ISSUE_PERMIT, RESUME, ISSUE_SANCTION, ISSUE_LIVE_PERMIT);
    private static final Set<Step> BY_ISOLATOR = Set.of(SHUT_DOWN, OPEN_SOURCE, RESTORE);
    private static final Set<Step> BEHIND_OWN_LOCK = and(PROVING_STEPS, TAKE_OVER, RESTORE);
    private static final Set<Step> BEHIND_ISOLATOR =
            and(PROVING_STEPS, TAKE_OVER, ISSUE_PERMIT, RESUME, ISSUE_SANCTION);
    private static final Set<Step> AUTHORISED = and(
            NOT_BESIDE_LIVE,
            SHUT_DOWN,
            OPEN_SOURCE,
            TAKE_OVER,
            WITNESS_PROOF,
            END_TEST,
            CHECK_RESTORATION,
            RESTORE,
            DECLARE_NO_SOURCE);
    private static final Set<Step> ABANDONED = Set.of(REPORT_ABANDONED_LOCK, REMOVE_ABANDONED_LOCK);

    private static final List<Rule> TABLE = List.of(
            // who, when, and beside what
            rule("notAuthorised", LEVELS, AUTHORISED, a -> a.level() >= 2),
            rule("notInstructed", COMPETENT, Set.of(LOCK_ON, READ_PAPER), a -> a.level() >= 1),
            rule("notAppointed", PERMITS, APPOINTED, a -> a.person().issuer()),
            rule("notTheIsolator", WORKS, BY_ISOLATOR, a -> a.isolates()),
            rule("precautionMissing", PRACTICE, ALL, a -> a.unconfirmed().isEmpty(), a -> Ask.words(a.unconfirmed())),
            rule(
                    "liveWorkOpen",
                    WORKS,
                    NOT_BESIDE_LIVE,
                    a -> a.isolation().live().isEmpty()),
            rule("planSuperseded", WORKS, ON_THE_PLAN, a -> a.planCurrent()),
            rule("ownLockMissing", OWN_LOCK, BEHIND_OWN_LOCK, a -> a.ownLockOn()),
            rule("isolatorLockMissing", FIVE_RULES, BEHIND_ISOLATOR, a -> a.isolatorLockOn()),

            // plan and shut down
            rule(
                    "workOrderClosed",
                    WORKS,
                    Set.of(PLAN, ISSUE_PERMIT),
                    a -> a.facts().workOrderOpen()),
            on(Planned.class, "planNotReleased", WORKS, (a, s) -> a.released(s.plan())),
            on(Planned.class, "notAtThisStation", PRACTICE, (a, s) -> a.standsAt(s.station())),
            on(ShutDown.class, "boxUnknown", WORKS, (a, s) -> a.registered(Register.Sort.LOCK_BOX, s.box())),
            on(ShutDown.class, "keyUnknown", WORKS, (a, s) -> a.registeredKeys(s.keys())),
            rule("locksStillOn", WORKS, Set.of(Step.PLAN), a -> !a.anyLockOn()),
            on(Planned.class, "sourceNotOnPlan", FIVE_RULES, (a, s) -> a.knowsAllAboard(s.plan())),

            // open and lock
            on(SourceOpened.class, "sourceUnknown", FIVE_RULES, (a, s) -> a.planNames(s.source())),
            on(SourceOpened.class, "sourceNotShownOpen", FIVE_RULES, (a, s) -> s.shownOpen()),
            on(
                    SourceOpened.class,
                    "sourceAlreadyOpen",
                    WORKS,
                    (a, s) -> !a.isolation().isOpen(s.source())),
            on(LockedOn.class, "lockUnknown", WORKS, (a, s) -> a.usable(s.lock())),
            on(LockedOn.class, "lockNotYours", OWN_LOCK, (a, s) -> a.ownsOrSpare(s.lock())),
            on(LockedOn.class, "lockInUse", WORKS, (a, s) -> !a.inUse(s.lock())),
            on(LockedOn.class, "tagUnknown", WORKS, (a, s) -> a.registered(Register.Sort.TAG, s.tag())),
            on(LockedOn.class, "ownLockOnAlready", WORKS, (a, s) -> !a.ownLockOn()),
            on(LockedOn.class, "isolatorLocksFirst", FIVE_RULES, (a, s) -> a.isolates() || a.isolatorLockOn()),
            on(LockedOn.class, "ownerNotTold", OWN_LOCK, (a, s) -> !a.toBeTold()),
            on(LockedOff.class, "lockNotOn", WORKS, (a, s) -> a.lockHangs(s.lock())),
            on(LockedOff.class, "notYourLock", OWN_LOCK, (a, s) -> !a.anothers(s.lock())),
            on(TakenOver.class, "isolatorAlready", WORKS, (a, s) -> !a.isolates()),

            // prove dead
            proof("waitNotOver", PRACTICE, Set.of(PROVE_TESTER_BEFORE), p -> p.waited(), p -> p.waitOverAt()),
            rule(
                    "notDischarged",
                    FIVE_RULES,
                    Set.of(PROVE_TESTER_BEFORE),
                    a -> !a.isolation().charged()),
            onProof(TesterProvedBefore.class, "everyPointDue", PRACTICE, (p, s) -> p.scopeWillDo(s.scope())),
            onProof(TesterProvedBefore.class, "testerUnsuitable", INSTRUMENT, (p, s) -> p.provesDead(s.tester())),
            onProof(TesterProvedBefore.class, "testerRatedTooLow", INSTRUMENT, (p, s) -> p.rated(s.tester())),
            on(TesterProvedBefore.class, "testerNotValid", PRACTICE, (a, s) -> a.valid(s.tester())),
            onProof(TesterProvedBefore.class, "testerElsewhere", PRACTICE, (p, s) -> p.free(s.tester())),
            onProof(TesterProvedBefore.class, "knownSourceUnsuitable", PROVING, (p, s) -> p.knownSource(s.proving())),
            onProof(TesterProvedBefore.class, "testerDisagrees", PROVING, (p, s) -> p.agrees(s.proving())),
            proof("noProofBegun", PROVING, TOUCHING, p -> p.proving()),
            proof("otherProver", PROVING, TOUCHING, p -> p.proves()),
            proof("provingWindowOver", PRACTICE, TOUCHING, p -> p.inWindow()),
            proof("tooQuick", PRACTICE, TOUCHING, p -> p.unhurried()),
            proof("otherTester", PROVING, TOUCHING, p -> p.provesWith(p.testerUsed())),
            rule("testerNotValid", PRACTICE, TOUCHING, a -> a.valid(a.proof().testerUsed())),
            onProof(
                    PointMeasured.class,
                    "pointUnknown",
                    FIVE_RULES,
                    (p, s) -> p.scopePoints().contains(s.point())),
            onProof(PointMeasured.class, "pairMissing", FIVE_RULES, (p, s) -> p.everyPairOnce(s)),
            onProof(PointMeasuredAgain.class, "notMeasuredYet", PRACTICE, (p, s) -> p.measured(s.point())),
            onProof(PointMeasuredAgain.class, "againTooSoon", PRACTICE, (p, s) -> p.settled(s.point())),
            onProof(PointMeasuredAgain.class, "pairMissing", FIVE_RULES, (p, s) -> p.everyPairOnce(s)),
            onProof(TesterProvedAfter.class, "otherKnownSource", PROVING, (p, s) -> p.sameSource(s.proving())),
            proof(
                    "pointsLeft",
                    PROVING,
                    Set.of(PROVE_TESTER_AFTER),
                    p -> p.left().isEmpty(),
                    p -> Ask.words(p.left())),
            proof("proofNotFinished", PROVING, Set.of(WITNESS_PROOF), p -> p.provedAgain()),
            proof("witnessIsProver", WORKS, Set.of(WITNESS_PROOF), p -> !p.proves()),

            // permit to work
            proof("proofTooOld", PRACTICE, ISSUING, p -> p.fresh()),
            proof("proofDoubted", PRACTICE, ISSUING, p -> p.undoubted()),
            rule("issuerIsIsolator", WORKS, ISSUING, a -> a.issuerApart()),
            rule(
                    "sanctionOut",
                    WORKS,
                    Set.of(ISSUE_PERMIT, ISSUE_SANCTION),
                    a -> a.isolation().sanction().isEmpty()),
            rule("permitOut", PERMITS, Set.of(ISSUE_PERMIT), a -> !a.permitOut()),
            on(PermitIssued.class, "ownIsolationHidden", WORKS, (a, s) -> s.ownIsolation() == a.isolates()),
            on(PermitIssued.class, "issuerIsReceiver", PERMITS, (a, s) -> !a.is(s.receiver())),
            on(PermitIssued.class, "receiverNotAuthorised", COMPETENT, (a, s) -> a.levelOf(s.receiver()) >= 2),
            on(
                    PermitIssued.class,
                    "receiverLockMissing",
                    OWN_LOCK,
                    (a, s) -> a.isolation().lockOn(s.receiver())),
            on(PermitIssued.class, "pointOfWorkUnknown", PERMITS, (a, s) -> a.someOf(s.pointsOfWork())),
            on(PermitIssued.class, "validTooLong", PRACTICE, (a, s) -> a.endsInTime(s.validUntil())),
            rule("paperUnknown", PERMITS, Set.of(READ_PAPER), a -> Paper.known(a)),
            reading(Paper.PERMIT, "ownLockMissing", OWN_LOCK, a -> a.ownLockOn()),
            reading(Paper.PERMIT, "receiverFirst", PERMITS, a -> a.receives() || a.received()),
            reading(Paper.PERMIT, "notAuthorised", COMPETENT, a -> !a.receives() || a.level() >= 2),
            reading(Paper.PERMIT, "proofTooOld", PRACTICE, a -> a.proof().fresh()),

            // after a break; taking a permit back
            on(WorkResumed.class, "noBreak", PRACTICE, (a, s) -> a.isolation().due() == Scope.POINTS_OF_WORK),
            on(WorkResumed.class, "permitGone", PERMITS, (a, s) -> a.received() && a.permitIs(s.permit())),
            on(WorkResumed.class, "issuerIsReceiver", PERMITS, (a, s) -> !a.receives()),
            onProof(WorkResumed.class, "pointsNotProved", PROVING, (p, s) -> p.provedScope()),
            on(WorkResumed.class, "locksNotSeen", PRACTICE, (a, s) -> a.allLocks(s.locksSeen())),
            on(WorkResumed.class, "receiverLockMissing", OWN_LOCK, (a, s) -> a.receiverLockOn()),
            on(PermitCancelled.class, "permitUnknown", PERMITS, (a, s) -> a.canCancel(s.permit())),

            // sanction for test
            on(SanctionIssued.class, "issuerIsHolder", PERMITS, (a, s) -> !a.is(s.holder())),
            on(SanctionIssued.class, "holderNotAuthorised", COMPETENT, (a, s) -> a.levelOf(s.holder()) >= 2),
            on(
                    SanctionIssued.class,
                    "holderLockMissing",
                    OWN_LOCK,
                    (a, s) -> a.isolation().lockOn(s.holder())),
            on(SanctionIssued.class, "othersLocksOn", PRACTICE, (a, s) -> a.aloneWith(s.holder())),
            on(SanctionIssued.class, "insulationTesterUnfit", PRACTICE, (a, s) -> a.insulationTester(s.instrument())),
            on(SanctionIssued.class, "validTooLong", PRACTICE, (a, s) -> a.endsInTime(s.validUntil())),
            reading(Paper.SANCTION, "notTheHolder", PERMITS, a -> a.holds()),
            reading(Paper.SANCTION, "ownLockMissing", OWN_LOCK, a -> a.ownLockOn()),
            reading(Paper.SANCTION, "notAuthorised", COMPETENT, a -> a.level() >= 2),
            reading(Paper.SANCTION, "othersLocksOn", PRACTICE, a -> a.aloneWith(a.holder())),
            rule("noTestToEnd", WORKS, Set.of(END_TEST), a -> a.testing()),

            // live work
            on(LivePermitIssued.class, "issuerIsTester", PERMITS, (a, s) -> !a.is(s.tester())),
            on(
                    LivePermitIssued.class,
                    "secondIsTester",
                    DEAD_OR_LIVE,
                    (a, s) -> !s.second().equals(s.tester())),
            on(LivePermitIssued.class, "testerNotForLiveWork", LEVELS, (a, s) -> a.levelOf(s.tester()) >= 3),
            on(LivePermitIssued.class, "secondNotAuthorised", COMPETENT, (a, s) -> a.levelOf(s.second()) >= 2),
            on(LivePermitIssued.class, "glovesUnfit", GLOVES, (a, s) -> a.gloves(s.gloves())),
            on(LivePermitIssued.class, "validTooLong", PRACTICE, (a, s) -> a.endsInTime(s.validUntil())),
            reading(Paper.LIVE_PERMIT, "notNamed", PERMITS, a -> a.namedForLiveWork()),

            // restore
            rule(
                    "energisingBarred",
                    WORKS,
                    Set.of(RESTORE, ISSUE_LIVE_PERMIT),
                    a -> a.facts().energisingBarredBy().isEmpty(),
                    a -> Ask.words(a.facts().energisingBarredBy())),
            on(RestorationChecked.class, "checkUnknown", PRACTICE, (a, s) -> a.asksFor(s.check())),
            rule("checkedOwnWork", WORKS, Set.of(CHECK_RESTORATION), a -> !a.worked()),
            on(Restored.class, "lockNotOn", WORKS, (a, s) -> a.lockHangs(s.lock())),
            on(Restored.class, "notYourLock", OWN_LOCK, (a, s) -> !a.anothers(s.lock())),

            // a lock whose owner is away
            rule("notForLocks", WORKS, and(ABANDONED, TELL_OWNER, REGISTER_ITEM, RETIRE_ITEM), a -> a.keepsLocks()),
            rule("wantsToGoOn", WORKS, ABANDONED, a -> !a.goesOn()),
            on(LockReportedAbandoned.class, "lockNotOn", WORKS, (a, s) -> a.lockHangs(s.lock())),
            on(
                    LockReportedAbandoned.class,
                    "reportedAlready",
                    WORKS,
                    (a, s) -> a.abandoned(s.lock()).isEmpty()),
            on(
                    AbandonedLockRemoved.class,
                    "notReported",
                    OWN_LOCK,
                    (a, s) -> a.abandoned(s.lock()).isPresent()),
            on(AbandonedLockRemoved.class, "sameTwice", OWN_LOCK, (a, s) -> !a.reportedMyself(s.lock())),
            on(AbandonedLockRemoved.class, "managerAndIssuer", WORKS, (a, s) -> a.managerAndIssuer(s.lock())),
            on(OwnerTold.class, "nobodyToTell", OWN_LOCK, (a, s) -> a.somebodyToTell(s.lock())),

            // nothing aboard; the register
            rule(
                    "sourceAboard",
                    FIVE_RULES,
                    Set.of(DECLARE_NO_SOURCE),
                    a -> a.isolation().aboard().isEmpty(),
                    a -> Ask.words(a.isolation().aboard())),
            on(NoSourceDeclared.class, "sourcesNotLookedFor", FIVE_RULES, (a, s) -> a.allSources(s.lookedFor())),
            on(
                    ItemRegistered.class,
                    "numberTaken",
                    WORKS,
                    (a, s) -> a.facts().register().item(s.number()).isEmpty()),
            on(
                    ItemRetired.class,
                    "numberUnknown",
                    WORKS,
                    (a, s) -> a.facts().register().item(s.number()).isPresent()));

    private static final Map<Step, List<Rule>> BY_STEP = ALL.stream()
            .collect(Collectors.toMap(
                    step -> step,
                    step -> TABLE.stream()
                            .filter(rule -> rule.steps().contains(step))
                            .toList()));

    private Guards() {}

    static List<Reason> reasons(Ask ask) {
        var step = ask.step();
        var notNow = Stream.of(step)
                .filter(asked -> !asked.from().contains(ask.state()))
                .map(asked -> Reason.of("isolation." + asked.notNow(), WORKS));
        var unmet = unmet(ask)
                .map(rule -> Reason.of(
                        "isolation." + rule.key(),
                        rule.source(),
                        rule.argument().apply(ask)));
        return Stream.concat(notNow, unmet).toList();
    }

    /** The same answer as {@link #reasons} being empty, without saying why. */
    static boolean allow(Ask ask) {
        return ask.step().from().contains(ask.state()) && unmet(ask).findAny().isEmpty();
    }

    private static Stream<Rule> unmet(Ask ask) {
        return BY_STEP.get(ask.step()).stream().filter(rule -> !rule.holds().test(ask));
    }

    /** The keys of all refusals of this table. */
    static List<String> keys() {
        return Stream.concat(
                        Stream.of(values())
                                .filter(step -> step.from().size() < State.values().length)
                                .map(Step::notNow),
                        TABLE.stream().map(Rule::key))
                .distinct()
                .toList();
    }

    private static Rule rule(String key, String source, Set<Step> steps, Predicate<Ask> holds) {
        return rule(key, source, steps, holds, a -> "");
    }

    private static Rule rule(
            String key, String source, Set<Step> steps, Predicate<Ask> holds, Function<Ask, Object> argument) {
        return new Rule(key, source, steps, holds, argument);
    }

    private static <S extends IsolationSaying> Rule on(
            Class<S> kind, String key, String source, BiPredicate<Ask, S> holds) {
        return rule(key, source, Set.of(Step.leaving(kind)), a -> holds.test(a, kind.cast(a.said())), Ask::subject);
    }

    private static Rule proof(String key, String source, Set<Step> steps, Predicate<AskOfProof> holds) {
        return rule(key, source, steps, a -> holds.test(a.proof()));
    }

    private static Rule proof(
            String key,
            String source,
            Set<Step> steps,
            Predicate<AskOfProof> holds,
            Function<AskOfProof, Object> argument) {
        return rule(key, source, steps, a -> holds.test(a.proof()), a -> argument.apply(a.proof()));
    }

    private static <S extends IsolationSaying> Rule onProof(
            Class<S> kind, String key, String source, BiPredicate<AskOfProof, S> holds) {
        return on(kind, key, source, (a, s) -> holds.test(a.proof(), s));
    }

    private static Rule reading(Paper paper, String key, String source, Predicate<Ask> holds) {
        return rule(key, source, Set.of(READ_PAPER), a -> !a.reads(paper) || holds.test(a));
    }

    private static Set<Step> and(Set<Step> steps, Step... more) {
        var all = EnumSet.copyOf(steps);
        all.addAll(List.of(more));
        return all;
    }
}
