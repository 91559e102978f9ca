package wainbook.isolation;

import static org.assertj.core.api.Assertions.assertThat;
import static wainbook.isolation.Cast.*;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import wainbook.isolation.IsolationSaying.*;
import wainbook.isolation.fact.Facts;
import wainbook.isolation.fact.Instrument;
import wainbook.isolation.fact.Register;
import wainbook.isolation.permit.StopCause;
import wainbook.isolation.proof.Lock;
import wainbook.isolation.proof.Scope;

/**
 * Every rule of the table refuses, and is the only one that does: whatever else was asked is as it should be. That it lets
 * pass what is right is shown by {@link Shift}, which takes every one of these steps in good order.
 */
class GuardsTest {

    record Case(String key, boolean alone, Shift shift, String who, IsolationSaying said) {
        @Override
        public String toString() {
            return key + " " + Step.of(said) + " when " + shift.state();
        }
    }

    private static final Instant UNTIL = MORNING.plus(Duration.ofHours(5));

    private static Case refuses(String key, Shift shift, String who, IsolationSaying said) {
        return new Case(key, true, shift, who, said);
    }

    /** Where one thing missing makes others missing too. */
    private static Case amongOthers(String key, Shift shift, String who, IsolationSaying said) {
        return new Case(key, false, shift, who, said);
    }

    private static Shift on(UnaryOperator<Facts> today, Shift shift) {
        shift.today = today;
        return shift;
    }

    @ParameterizedTest
    @MethodSource("cases")
    void refuses_for_this_reason_alone(Case asked) {
        var keys = asked.shift().refusal(asked.who(), asked.said());
        assertThat(keys).contains(asked.key());
        assertThat(asked.alone() && keys.size() > 1).as("also " + keys).isFalse();
    }

    @Test
    void no_rule_is_without_a_case() {
        var keys = cases().map(Case::key).collect(Collectors.toCollection(TreeSet::new));
        assertThat(keys).isEqualTo(new TreeSet<>(Guards.keys()));
    }

    static Stream<Case> cases() {
        return Stream.of(people(), locks(), proofs(), permits(), papers(), ends(), states())
                .flatMap(cases -> cases);
    }

    private static Stream<Case> people() {
        return Stream.of(
                refuses("notAuthorised", new Shift(), LEARNER, planned(1, PLAN)),
                refuses("notInstructed", new Shift().locked(), OUTSIDER, lockedOn(OUTSIDER)),
                refuses("notAppointed", new Shift().provedDead(), TECHNICIAN, permit(1, AUTHORISED, UNTIL)),
                refuses("notTheIsolator", new Shift().planned(), SECOND_AUTHORISED, shutDown()),
                refuses(
                        "precautionMissing",
                        new Shift().planned(),
                        AUTHORISED,
                        new ShutDown("BOX-1", List.of("KEY-1"), List.of())),
                refuses("liveWorkOpen", new Shift().livePermitOut(), AUTHORISED, planned(1, PLAN)),
                refuses(
                        "planSuperseded",
                        on(Today.plan(TRAVELLING_PLAN), new Shift().planned()),
                        AUTHORISED,
                        shutDown()),
                refuses("workOrderClosed", on(Today.closed(), new Shift()), AUTHORISED, planned(1, PLAN)),
                refuses("planNotReleased", new Shift(), AUTHORISED, planned(1, TRAVELLING_PLAN)),
                refuses("notAtThisStation", on(Today.standsAt("S5"), new Shift()), AUTHORISED, planned(1, PLAN)),
                refuses(
                        "boxUnknown",
                        new Shift().planned(),
                        AUTHORISED,
                        new ShutDown("TAG-P-01", List.of("KEY-1"), Step.SHUT_DOWN.confirmed())),
                refuses(
                        "keyUnknown",
                        new Shift().planned(),
                        AUTHORISED,
                        new ShutDown("BOX-1", List.of(), Step.SHUT_DOWN.confirmed())),
                refuses("locksStillOn", voided(), AUTHORISED, planned(2, PLAN)),
                refuses(
                        "sourceNotOnPlan",
                        new Shift().does(OUTSIDER, new SourceRecorded("PACK-9")),
                        AUTHORISED,
                        planned(1, PLAN)));
    }

    private static Stream<Case> locks() {
        return Stream.of(
                refuses("sourceUnknown", new Shift().shutDown(), AUTHORISED, new SourceOpened("FUEL", true)),
                refuses("sourceNotShownOpen", new Shift().shutDown(), AUTHORISED, new SourceOpened("INLET", false)),
                refuses("sourceAlreadyOpen", new Shift().locked(), AUTHORISED, new SourceOpened("INLET", true)),
                refuses(
                        "lockUnknown",
                        new Shift().locked(),
                        TECHNICIAN,
                        new LockedOn("TAG-P-11", "TAG-P-11", level(2))),
                refuses(
                        "lockNotYours",
                        new Shift().locked(),
                        TECHNICIAN,
                        new LockedOn(lockOf(LEARNER), "TAG-P-11", level(2))),
                refuses(
                        "lockInUse",
                        on(Today.lockElsewhere(lockOf(TECHNICIAN)), new Shift().locked()),
                        TECHNICIAN,
                        lockedOn(TECHNICIAN)),
                refuses(
                        "tagUnknown",
                        new Shift().locked(),
                        TECHNICIAN,
                        new LockedOn(lockOf(TECHNICIAN), "?", level(2))),
                refuses(
                        "ownLockOnAlready",
                        new Shift().locked(),
                        AUTHORISED,
                        new LockedOn("SPARE-1", "TAG-P-01", level(3))),
                refuses("isolatorLocksFirst", new Shift().shutDown(), TECHNICIAN, lockedOn(TECHNICIAN)),
                refuses(
                        "ownerNotTold",
                        lockRemoved().shutDown().does(AUTHORISED, lockedOn(AUTHORISED)),
                        TECHNICIAN,
                        new LockedOn("SPARE-1", "TAG-P-11", level(2))),
                refuses("lockNotOn", new Shift().locked(), TECHNICIAN, lockedOff(TECHNICIAN)),
                refuses("notYourLock", new Shift().locked(), TECHNICIAN, lockedOff(AUTHORISED)),
                refuses("ownLockMissing", new Shift().waited(), SECOND_AUTHORISED, new TakenOver(level(3))),
                refuses("isolatorAlready", new Shift().waited(), AUTHORISED, new TakenOver(level(3))),
                refuses(
                        "isolatorLockMissing",
                        withoutIsolatorsLock(new Shift().provedDead()),
                        SECOND_AUTHORISED,
                        permit(1, TECHNICIAN, UNTIL)));
    }

    private static Stream<Case> proofs() {
        var before = testerProvedBefore(Scope.ALL_POINTS);
        return Stream.of(
                refuses("waitNotOver", new Shift().locked(), AUTHORISED, before),
                refuses(
                        "notDischarged",
                        new Shift().underTest().does(OUTSIDER, stopped(StopCause.ASKED)),
                        AUTHORISED,
                        before),
                refuses("everyPointDue", new Shift().waited(), AUTHORISED, testerProvedBefore(Scope.POINTS_OF_WORK)),
                refuses(
                        "testerUnsuitable",
                        on(Today.instrument(tester(Instrument.Sort.OTHER, "1000")), new Shift().waited()),
                        AUTHORISED,
                        before),
                refuses(
                        "testerRatedTooLow",
                        on(Today.instrument(tester(Instrument.Sort.TWO_POLE_DETECTOR, "690")), new Shift().waited()),
                        AUTHORISED,
                        before),
                refuses("testerNotValid", on(Today.instrument(withdrawn()), new Shift().waited()), AUTHORISED, before),
                refuses("testerElsewhere", on(Today.instrument(busy()), new Shift().waited()), AUTHORISED, before),
                refuses("knownSourceUnsuitable", new Shift().waited(), AUTHORISED, provedOn("48", "48")),
                refuses("testerDisagrees", new Shift().waited(), AUTHORISED, provedOn("240", "200")),
                amongOthers(
                        "noProofBegun",
                        new Shift().provedDead().seconds(5).does(OUTSIDER, stopped(StopCause.ASKED)),
                        AUTHORISED,
                        measured("JB-A", "0")),
                refuses("otherProver", proving().seconds(5), TECHNICIAN, measured("JB-A", "0")),
                refuses("provingWindowOver", proving().seconds(541), AUTHORISED, measured("JB-A", "0")),
                refuses("tooQuick", proving().seconds(4), AUTHORISED, measured("JB-A", "0")),
                refuses(
                        "otherTester",
                        proving().seconds(5),
                        AUTHORISED,
                        new PointMeasured("JB-A", OTHER_TESTER.code(), readings("0"))),
                refuses("pointUnknown", proving().seconds(5), AUTHORISED, measured("JB-C", "0")),
                refuses(
                        "pairMissing",
                        proving().seconds(5),
                        AUTHORISED,
                        new PointMeasured("JB-A", TESTER.code(), readings("0").subList(0, 2))),
                amongOthers("notMeasuredYet", proving().seconds(5), AUTHORISED, measuredAgain("JB-A", "0")),
                refuses(
                        "againTooSoon",
                        proving()
                                .seconds(5)
                                .does(AUTHORISED, measured("JB-A", "0"))
                                .seconds(59),
                        AUTHORISED,
                        measuredAgain("JB-A", "0")),
                refuses("otherKnownSource", pointsDone(), AUTHORISED, new TesterProvedAfter(known("48", "48"))),
                refuses("pointsLeft", proving().seconds(5), AUTHORISED, testerProvedAfter("240")),
                refuses("proofNotFinished", proving(), SECOND_AUTHORISED, witnessed()),
                refuses(
                        "witnessIsProver",
                        pointsDone().does(AUTHORISED, testerProvedAfter("240")),
                        AUTHORISED,
                        witnessed()));
    }

    private static Stream<Case> permits() {
        return Stream.of(
                refuses(
                        "proofTooOld",
                        new Shift().provedDead().seconds(1801),
                        SECOND_AUTHORISED,
                        permit(1, TECHNICIAN, UNTIL)),
                refuses(
                        "proofDoubted",
                        on(Today.instrument(withdrawn()), new Shift().provedDead()),
                        SECOND_AUTHORISED,
                        permit(1, TECHNICIAN, UNTIL)),
                refuses("issuerIsIsolator", new Shift().provedDead(), AUTHORISED, ownPermit(true)),
                refuses(
                        "ownIsolationHidden",
                        on(Today.isolatorMayIssue(), new Shift().provedDead()),
                        AUTHORISED,
                        ownPermit(false)),
                refuses(
                        "sanctionOut",
                        new Shift().sanctionOut().does(TECHNICIAN, lockedOn(TECHNICIAN)),
                        SECOND_AUTHORISED,
                        permit(2, TECHNICIAN, UNTIL)),
                refuses("permitOut", new Shift().permitOut(), SECOND_AUTHORISED, permit(2, TECHNICIAN, UNTIL)),
                refuses(
                        "issuerIsReceiver",
                        new Shift()
                                .waited()
                                .does(SECOND_AUTHORISED, lockedOn(SECOND_AUTHORISED))
                                .proof(Scope.ALL_POINTS, List.of("JB-A", "JB-B")),
                        SECOND_AUTHORISED,
                        permit(1, SECOND_AUTHORISED, UNTIL)),
                refuses(
                        "receiverNotAuthorised",
                        new Shift().provedDead().does(LEARNER, lockedOn(LEARNER)),
                        SECOND_AUTHORISED,
                        permit(1, LEARNER, UNTIL)),
                refuses(
                        "receiverLockMissing",
                        new Shift().provedDead().does(TECHNICIAN, lockedOff(TECHNICIAN)),
                        SECOND_AUTHORISED,
                        permit(1, TECHNICIAN, UNTIL)),
                refuses("pointOfWorkUnknown", new Shift().provedDead(), SECOND_AUTHORISED, permitAt("JB-C")),
                refuses(
                        "validTooLong",
                        new Shift().provedDead(),
                        SECOND_AUTHORISED,
                        permit(1, TECHNICIAN, MORNING.plus(Duration.ofDays(2)))),
                refuses("paperUnknown", new Shift().permitOut(), TECHNICIAN, read(7)),
                refuses("receiverFirst", new Shift().permitOut(), AUTHORISED, read(1)),
                amongOthers(
                        "noBreak",
                        new Shift().inForce().does(OUTSIDER, stopped(StopCause.SHIFT_END)),
                        SECOND_AUTHORISED,
                        resumed(1, bothLocks())),
                refuses("permitGone", afterBreak(), SECOND_AUTHORISED, resumed(2, bothLocks())),
                amongOthers(
                        "pointsNotProved",
                        new Shift().inForce().does(OUTSIDER, stopped(StopCause.BREAK)),
                        SECOND_AUTHORISED,
                        resumed(1, bothLocks())),
                refuses("locksNotSeen", afterBreak(), SECOND_AUTHORISED, resumed(1, List.of(lockOf(AUTHORISED)))),
                refuses("permitUnknown", new Shift().permitOut(), SECOND_AUTHORISED, new PermitCancelled(9)));
    }

    private static Stream<Case> papers() {
        var dead = new Shift().provedDead();
        return Stream.of(
                refuses(
                        "issuerIsHolder",
                        alone().does(SECOND_AUTHORISED, lockedOn(SECOND_AUTHORISED)),
                        SECOND_AUTHORISED,
                        sanction(1, SECOND_AUTHORISED, UNTIL)),
                refuses(
                        "holderNotAuthorised",
                        alone().does(LEARNER, lockedOn(LEARNER)),
                        SECOND_AUTHORISED,
                        sanction(1, LEARNER, UNTIL)),
                refuses("holderLockMissing", alone(), SECOND_AUTHORISED, sanction(1, TECHNICIAN, UNTIL)),
                refuses("othersLocksOn", dead, SECOND_AUTHORISED, sanction(1, AUTHORISED, UNTIL)),
                refuses("insulationTesterUnfit", alone(), SECOND_AUTHORISED, sanctionWith(TESTER)),
                amongOthers("notTheHolder", new Shift().sanctionOut(), SECOND_AUTHORISED, read(1)),
                refuses("noTestToEnd", new Shift().waited(), AUTHORISED, testEnded()),
                refuses(
                        "issuerIsTester",
                        new Shift(),
                        SECOND_AUTHORISED,
                        livePermit(1, SECOND_AUTHORISED, TECHNICIAN, UNTIL)),
                refuses("secondIsTester", new Shift(), SECOND_AUTHORISED, livePermit(1, AUTHORISED, AUTHORISED, UNTIL)),
                refuses(
                        "testerNotForLiveWork",
                        new Shift(),
                        SECOND_AUTHORISED,
                        livePermit(1, TECHNICIAN, AUTHORISED, UNTIL)),
                refuses(
                        "secondNotAuthorised",
                        new Shift(),
                        SECOND_AUTHORISED,
                        livePermit(1, AUTHORISED, LEARNER, UNTIL)),
                refuses(
                        "glovesUnfit",
                        on(Today.instrument(oldGloves()), new Shift()),
                        SECOND_AUTHORISED,
                        livePermit(1, AUTHORISED, TECHNICIAN, UNTIL)),
                refuses("notNamed", new Shift().livePermitOut(), SECOND_AUTHORISED, read(1)));
    }

    private static Stream<Case> ends() {
        return Stream.of(
                refuses(
                        "energisingBarred",
                        on(Today.energisingBarred("FIT/pack1-lugs"), new Shift().ready()),
                        AUTHORISED,
                        restored(AUTHORISED)),
                refuses(
                        "energisingBarred",
                        on(Today.energisingBarred("FIT/pack1-lugs"), new Shift()),
                        SECOND_AUTHORISED,
                        livePermit(1, AUTHORISED, TECHNICIAN, UNTIL)),
                refuses(
                        "sourceAboard",
                        new Shift().does(OUTSIDER, new SourceRecorded("PACK-2")),
                        AUTHORISED,
                        new NoSourceDeclared(List.of("PACK-1", "INLET"), level(3))),
                refuses("checkUnknown", new Shift().handedBack(), SECOND_AUTHORISED, checked("BOND")),
                refuses("checkedOwnWork", new Shift().handedBack(), TECHNICIAN, checked("COVERS")),
                refuses("notForLocks", new Shift().waited(), LEARNER, reportedAbandoned(TECHNICIAN)),
                refuses("wantsToGoOn", new Shift().waited(), AUTHORISED, reportedAbandoned(TECHNICIAN)),
                refuses("lockNotOn", new Shift().locked(), SECOND_AUTHORISED, reportedAbandoned(TECHNICIAN)),
                refuses("reportedAlready", reported(), SECOND_AUTHORISED, reportedAbandoned(TECHNICIAN)),
                refuses("notReported", new Shift().waited(), SECOND_AUTHORISED, removed(TECHNICIAN)),
                amongOthers("sameTwice", reported(), OUTSIDER, removed(TECHNICIAN)),
                refuses("managerAndIssuer", reportedByIssuer(), OTHER_ISSUER, removed(TECHNICIAN)),
                refuses("nobodyToTell", new Shift().waited(), SECOND_AUTHORISED, new OwnerTold(lockOf(TECHNICIAN))),
                refuses(
                        "sourcesNotLookedFor",
                        new Shift(),
                        AUTHORISED,
                        new NoSourceDeclared(List.of("INLET"), level(3))),
                refuses(
                        "numberTaken",
                        new Shift(),
                        AUTHORISED,
                        new ItemRegistered("BOX-1", Register.Sort.LOCK_BOX, Optional.empty())),
                refuses("numberUnknown", new Shift(), AUTHORISED, new ItemRetired("BOX-9", "bent")));
    }

    /** Each step in a state from which it may not be taken. */
    private static Stream<Case> states() {
        var force = new Shift().inForce();
        return Stream.of(
                amongOthers("notNowPlan", force, AUTHORISED, planned(2, PLAN)),
                refuses("notNowShutDown", force, AUTHORISED, shutDown()),
                refuses("notNowOpenSource", new Shift().planned(), AUTHORISED, new SourceOpened("INLET", true)),
                refuses("notNowLockOn", new Shift().underTest(), TECHNICIAN, lockedOn(TECHNICIAN)),
                amongOthers("notNowTakeOver", new Shift().planned(), SECOND_AUTHORISED, new TakenOver(level(3))),
                refuses("notNowProveTesterBefore", force, AUTHORISED, testerProvedBefore(Scope.ALL_POINTS)),
                amongOthers("notNowMeasurePoint", force, AUTHORISED, measured("JB-A", "0")),
                amongOthers("notNowMeasurePointAgain", force, AUTHORISED, measuredAgain("JB-A", "0")),
                amongOthers("notNowProveTesterAfter", force, AUTHORISED, testerProvedAfter("240")),
                refuses("notNowWitnessProof", force, SECOND_AUTHORISED, witnessed()),
                amongOthers("notNowIssuePermit", new Shift().waited(), SECOND_AUTHORISED, permit(1, TECHNICIAN, UNTIL)),
                refuses("notNowReadPaper", afterBreak(), TECHNICIAN, read(1)),
                amongOthers("notNowResume", force, SECOND_AUTHORISED, resumed(1, bothLocks())),
                amongOthers("notNowCancelPermit", new Shift(), SECOND_AUTHORISED, new PermitCancelled(1)),
                amongOthers(
                        "notNowIssueSanction", new Shift().waited(), SECOND_AUTHORISED, sanction(1, AUTHORISED, UNTIL)),
                amongOthers("notNowEndTest", force, AUTHORISED, testEnded()),
                refuses(
                        "notNowIssueLivePermit",
                        force,
                        SECOND_AUTHORISED,
                        livePermit(2, AUTHORISED, TECHNICIAN, UNTIL)),
                refuses("notNowCheckRestoration", force, SECOND_AUTHORISED, checked("COVERS")),
                refuses("notNowRestore", force, AUTHORISED, restored(AUTHORISED)),
                refuses(
                        "notNowDeclareNoSource",
                        force,
                        AUTHORISED,
                        new NoSourceDeclared(List.of("PACK-1", "INLET"), level(3))));
    }

    private static Shift voided() {
        return new Shift().locked().does(OUTSIDER, new DangerReported(Danger.OTHER, "cab"));
    }

    private static Shift lockRemoved() {
        return reported().does(SECOND_AUTHORISED, removed(TECHNICIAN)).does(AUTHORISED, lockedOff(AUTHORISED));
    }

    private static Shift reported() {
        return new Shift().waited().does(OUTSIDER, reportedAbandoned(TECHNICIAN));
    }

    private static Shift reportedByIssuer() {
        return new Shift().waited().does(SECOND_AUTHORISED, reportedAbandoned(TECHNICIAN));
    }

    private static Shift proving() {
        return new Shift().waited().does(AUTHORISED, testerProvedBefore(Scope.ALL_POINTS));
    }

    private static Shift pointsDone() {
        return new Shift().waited().pointsDone(Scope.ALL_POINTS, List.of("JB-A", "JB-B"));
    }

    private static Shift alone() {
        return new Shift().provedDead().does(TECHNICIAN, lockedOff(TECHNICIAN));
    }

    private static Shift afterBreak() {
        return new Shift()
                .inForce()
                .does(OUTSIDER, stopped(StopCause.BREAK))
                .proof(Scope.POINTS_OF_WORK, List.of("JB-A"));
    }

    private static Shift withoutIsolatorsLock(Shift shift) {
        shift.isolation = shift.isolation.copy();
        shift.isolation.locks = List.of(new Lock(lockOf(TECHNICIAN), TECHNICIAN));
        return shift;
    }

    private static List<String> bothLocks() {
        return List.of(lockOf(AUTHORISED), lockOf(TECHNICIAN));
    }

    private static TesterProvedBefore provedOn(String sourceVolt, String readingVolt) {
        return new TesterProvedBefore(Scope.ALL_POINTS, known(sourceVolt, readingVolt), level(3));
    }

    private static Proving known(String sourceVolt, String readingVolt) {
        return new Proving(TESTER.used(), KNOWN_SOURCE.used(), new BigDecimal(sourceVolt), new BigDecimal(readingVolt));
    }

    private static Instrument tester(Instrument.Sort sort, String ratedVolt) {
        return new Instrument(
                TESTER.code(),
                sort,
                new BigDecimal(ratedVolt),
                TESTER.validUntil(),
                Optional.empty(),
                Optional.empty());
    }

    private static Instrument withdrawn() {
        return new Instrument(
                TESTER.code(),
                TESTER.sort(),
                TESTER.ratedVolt(),
                TESTER.validUntil(),
                Optional.of(MORNING),
                Optional.empty());
    }

    private static Instrument busy() {
        return new Instrument(
                TESTER.code(),
                TESTER.sort(),
                TESTER.ratedVolt(),
                TESTER.validUntil(),
                Optional.empty(),
                Optional.of("WB-0099"));
    }

    private static Instrument oldGloves() {
        return new Instrument(
                GLOVES.code(), GLOVES.sort(), GLOVES.ratedVolt(), MORNING, Optional.empty(), Optional.empty());
    }

    private static PermitIssued ownPermit(boolean shown) {
        return new PermitIssued(
                1, TECHNICIAN, work(), List.of("JB-A"), UNTIL, level(3), shown, Step.ISSUE_PERMIT.confirmed());
    }

    private static PermitIssued permitAt(String point) {
        return new PermitIssued(
                1, TECHNICIAN, work(), List.of(point), UNTIL, level(3), false, Step.ISSUE_PERMIT.confirmed());
    }

    private static SanctionIssued sanctionWith(Instrument instrument) {
        return new SanctionIssued(
                1, AUTHORISED, work(), instrument.used(), UNTIL, level(3), Step.ISSUE_SANCTION.confirmed());
    }
}
