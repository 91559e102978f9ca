package wainbook.isolation;

import static wainbook.isolation.State.*;
import static wainbook.isolation.permit.Precaution.*;

import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import wainbook.isolation.permit.Precaution;

/** Every step there is: the kind of entry it leaves, from which states it may be taken, and what is confirmed with it. */
public enum Step {
    PLAN(IsolationSaying.Planned.class, Set.of(LIVE, VOID), DAMAGE_LOOKED_FOR, AREA_BARRIERED),
    SHUT_DOWN(
            IsolationSaying.ShutDown.class,
            Set.of(PLANNED),
            STATIONARY,
            WHEELS_CHOCKED,
            INLET_UNPLUGGED,
            CAB_EMPTY,
            KEYS_IN_BOX),
    OPEN_SOURCE(IsolationSaying.SourceOpened.class, EnumSet.range(State.SHUT_DOWN, STOPPED)),
    LOCK_ON(
            IsolationSaying.LockedOn.class,
            Set.of(State.SHUT_DOWN, LOCKED, PROVED_DEAD, IN_FORCE, STOPPED, HANDED_BACK, READY)),
    LOCK_OFF(IsolationSaying.LockedOff.class, EnumSet.allOf(State.class)),
    TAKE_OVER(IsolationSaying.TakenOver.class, Set.of(LOCKED, PROVED_DEAD, IN_FORCE, STOPPED)),
    PROVE_TESTER_BEFORE(
            IsolationSaying.TesterProvedBefore.class, Set.of(LOCKED, PROVED_DEAD, STOPPED, HANDED_BACK, READY)),
    MEASURE_POINT(IsolationSaying.PointMeasured.class, Set.of(LOCKED, STOPPED, HANDED_BACK)),
    MEASURE_POINT_AGAIN(IsolationSaying.PointMeasuredAgain.class, Set.of(LOCKED, STOPPED, HANDED_BACK)),
    PROVE_TESTER_AFTER(IsolationSaying.TesterProvedAfter.class, Set.of(LOCKED, STOPPED, HANDED_BACK)),
    WITNESS_PROOF(IsolationSaying.ProofWitnessed.class, Set.of(LOCKED, STOPPED, HANDED_BACK)),
    OBSERVE(IsolationSaying.Observed.class, EnumSet.allOf(State.class)),
    ISSUE_PERMIT(IsolationSaying.PermitIssued.class, Set.of(PROVED_DEAD), ADJACENT_PARTS_SHROUDED),
    READ_PAPER(IsolationSaying.PaperRead.class, Set.of(LIVE, PROVED_DEAD, IN_FORCE, READY)),
    STOP(IsolationSaying.WorkStopped.class, EnumSet.allOf(State.class)),
    RESUME(IsolationSaying.WorkResumed.class, Set.of(STOPPED), PLAN_READ_AGAIN, AREA_NEVER_LEFT),
    HAND_BACK(IsolationSaying.HandedBack.class, EnumSet.allOf(State.class)),
    CANCEL_PERMIT(IsolationSaying.PermitCancelled.class, EnumSet.range(PROVED_DEAD, READY)),
    ISSUE_SANCTION(IsolationSaying.SanctionIssued.class, Set.of(PROVED_DEAD, IN_FORCE), AREA_CLEAR),
    END_TEST(IsolationSaying.TestEnded.class, Set.of(UNDER_TEST, LOCKED, STOPPED, HANDED_BACK), DISCHARGED),
    ISSUE_LIVE_PERMIT(
            IsolationSaying.LivePermitIssued.class,
            Set.of(LIVE, READY),
            NO_OTHER_WAY,
            AREA_BARRIERED,
            CUT_OFF_AT_HAND,
            RESCUE_READY,
            GLOVES_AIR_TESTED,
            GLOVES_FIT,
            PROTECTION_WORN),
    CHECK_RESTORATION(IsolationSaying.RestorationChecked.class, Set.of(HANDED_BACK, READY)),
    RESTORE(IsolationSaying.Restored.class, Set.of(READY), PEOPLE_WARNED, AREA_BARRIERED, TOOLS_COUNTED),
    MOVE_VEHICLE(IsolationSaying.VehicleMoved.class, EnumSet.allOf(State.class)),
    RECORD_SOURCE(IsolationSaying.SourceRecorded.class, EnumSet.allOf(State.class)),
    REPORT_DANGER(IsolationSaying.DangerReported.class, EnumSet.allOf(State.class)),
    REPORT_ABANDONED_LOCK(
            IsolationSaying.LockReportedAbandoned.class,
            EnumSet.allOf(State.class),
            OWNER_NOT_ON_SITE,
            OWNER_TRIED,
            OWNER_WILL_BE_TOLD),
    REMOVE_ABANDONED_LOCK(
            IsolationSaying.AbandonedLockRemoved.class, EnumSet.allOf(State.class), VEHICLE_INSPECTED, PEOPLE_COUNTED),
    TELL_OWNER(IsolationSaying.OwnerTold.class, EnumSet.allOf(State.class)),
    DECLARE_NO_SOURCE(IsolationSaying.NoSourceDeclared.class, Set.of(LIVE)),
    REGISTER_ITEM(IsolationSaying.ItemRegistered.class, EnumSet.allOf(State.class)),
    RETIRE_ITEM(IsolationSaying.ItemRetired.class, EnumSet.allOf(State.class));

    private final Class<? extends IsolationSaying> kind;

    @SuppressWarnings("ImmutableEnumChecker") // an unmodifiable copy
    private final Set<State> from;

    @SuppressWarnings("ImmutableEnumChecker") // an unmodifiable list
    private final List<Precaution> confirmed;

    Step(Class<? extends IsolationSaying> kind, Set<State> from, Precaution... confirmed) {
        this.kind = kind;
        this.from = Set.copyOf(from);
        this.confirmed = List.of(confirmed);
    }

    private static final Map<Class<?>, Step> LEAVING =
            Arrays.stream(values()).collect(Collectors.toUnmodifiableMap(Step::kind, step -> step));

    public static Step of(IsolationSaying said) {
        return leaving(said.getClass());
    }

    static Step leaving(Class<? extends IsolationSaying> kind) {
        return Objects.requireNonNull(LEAVING.get(kind), () -> "no step leaves " + kind);
    }

    public Class<? extends IsolationSaying> kind() {
        return kind;
    }

    /** From which states the step may be taken. */
    public Set<State> from() {
        return from;
    }

    /** What the person must confirm with it. */
    public List<Precaution> confirmed() {
        return confirmed;
    }

    /** The key of the refusal in any other state: it says what has to come first. */
    String notNow() {
        var key = new StringBuilder("notNow");
        for (String word : name().split("_", -1)) {
            key.append(word.charAt(0)).append(word.substring(1).toLowerCase(Locale.ROOT));
        }
        return key.toString();
    }
}
