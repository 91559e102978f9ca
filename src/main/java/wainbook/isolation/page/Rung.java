package wainbook.isolation.page;

import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import wainbook.isolation.Isolation;
import wainbook.isolation.Step;
import wainbook.page.Words;

/** The way of an isolation from live to live, in the order in which it is gone; one of these is open at a time. */
enum Rung {
    PLAN(Step.PLAN),
    SHUT_DOWN(Step.SHUT_DOWN),
    OPEN(Step.OPEN_SOURCE),
    LOCK(Step.LOCK_ON),
    WAIT(),
    TESTER_BEFORE(Step.PROVE_TESTER_BEFORE),
    POINTS(Step.MEASURE_POINT, Step.MEASURE_POINT_AGAIN),
    TESTER_AFTER(Step.PROVE_TESTER_AFTER),
    WITNESS(Step.WITNESS_PROOF),
    PERMIT(Step.ISSUE_PERMIT, Step.ISSUE_SANCTION),
    READ(Step.READ_PAPER),
    WORK(),
    HAND_BACK(Step.HAND_BACK, Step.CANCEL_PERMIT),
    CHECKS(Step.CHECK_RESTORATION),
    RESTORE(Step.RESTORE);

    @SuppressWarnings("ImmutableEnumChecker") // an unmodifiable copy
    private final Set<Step> leaves;

    Rung(Step... leaves) {
        this.leaves = Set.of(leaves);
    }

    /** The steps that are recorded on it. */
    Set<Step> leaves() {
        return leaves;
    }

    String title() {
        return Words.of("isolating.rung." + name());
    }

    /** Where the isolation stands. */
    static Rung of(Isolation now, java.time.Instant time) {
        return switch (now.state()) {
            case LIVE, VOID -> PLAN;
            case PLANNED -> SHUT_DOWN;
            case SHUT_DOWN -> now.waitOverAt().isEmpty() ? OPEN : LOCK;
            case LOCKED -> proof(now, time);
            case PROVED_DEAD -> now.sanction().isPresent() || permitOut(now) ? READ : PERMIT;
            case IN_FORCE, UNDER_TEST -> WORK;
            case STOPPED -> now.proof().isPresent() && !proved(now) ? proof(now, time) : WORK;
            case HANDED_BACK -> now.proof().isPresent() ? proof(now, time) : permitStands(now) ? HAND_BACK : CHECKS;
            case READY -> RESTORE;
        };
    }

    private static boolean permitOut(Isolation now) {
        return now.permit().filter(permit -> !permit.ended()).isPresent();
    }

    private static boolean permitStands(Isolation now) {
        return now.permit().filter(permit -> !permit.cancelled()).isPresent();
    }

    private static boolean proved(Isolation now) {
        return now.proof().filter(proof -> proof.complete()).isPresent();
    }

    private static Rung proof(Isolation now, java.time.Instant time) {
        if (now.waitOverAt().filter(over -> !time.isBefore(over)).isEmpty()) {
            return WAIT;
        }
        boolean running = now.provingEndsAt().filter(end -> !time.isAfter(end)).isPresent() || proved(now);
        if (now.proof().isEmpty() || !running) {
            return TESTER_BEFORE;
        }
        var proof = now.proof().get();
        if (!proof.covers(now.points(proof.scope()))) {
            return POINTS;
        }
        return proof.testerProvedAgainAt().isEmpty() ? TESTER_AFTER : WITNESS;
    }

    /** The steps whose forms it shows this reader now, the one that is next for them first. */
    List<Step> forms(Isolation now, String who) {
        return switch (this) {
            case PLAN -> List.of(Step.PLAN);
            case SHUT_DOWN -> List.of(Step.SHUT_DOWN);
            case OPEN -> List.of(Step.OPEN_SOURCE);
            case LOCK -> List.of(Step.LOCK_ON);
            case WAIT -> List.of();
            case TESTER_BEFORE -> now.charged() ? List.of(Step.END_TEST) : List.of(Step.PROVE_TESTER_BEFORE);
            case POINTS -> points(now);
            case TESTER_AFTER -> List.of(Step.PROVE_TESTER_AFTER);
            case WITNESS -> List.of(Step.WITNESS_PROOF);
            case PERMIT -> List.of(Step.ISSUE_PERMIT, Step.ISSUE_SANCTION);
            case READ -> List.of(Step.READ_PAPER, Step.CANCEL_PERMIT);
            case WORK -> work(now, who);
            case HAND_BACK -> List.of(Step.CANCEL_PERMIT);
            case CHECKS -> now.charged() ? List.of(Step.END_TEST) : List.of(Step.CHECK_RESTORATION);
            case RESTORE -> List.of(Step.RESTORE);
        };
    }

    private static List<Step> points(Isolation now) {
        boolean first = now.proof()
                .filter(proof -> now.points(proof.scope()).stream()
                        .allMatch(code -> proof.point(code).isPresent()))
                .isEmpty();
        return List.of(first ? Step.MEASURE_POINT : Step.MEASURE_POINT_AGAIN);
    }

    private static List<Step> work(Isolation now, String who) {
        return switch (now.state()) {
            case IN_FORCE -> inForce(now, who);
            case UNDER_TEST -> List.of(Step.END_TEST);
            default ->
                proved(now)
                        ? List.of(Step.RESUME, Step.HAND_BACK)
                        : List.of(
                                now.charged() ? Step.END_TEST : Step.PROVE_TESTER_BEFORE,
                                Step.HAND_BACK,
                                Step.CANCEL_PERMIT);
        };
    }

    /** One joins by one's own lock first, then by reading the permit; nobody reads it twice. */
    private static List<Step> inForce(Isolation now, String who) {
        boolean read =
                now.permit().filter(permit -> permit.readers().contains(who)).isPresent();
        Stream<Step> joining = Stream.concat(
                now.lockOn(who) ? Stream.of() : Stream.of(Step.LOCK_ON),
                read ? Stream.of() : Stream.of(Step.READ_PAPER));
        return Stream.concat(joining, Stream.of(Step.HAND_BACK, Step.ISSUE_SANCTION))
                .toList();
    }
}
