package wainbook.permit.rule;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wainbook.act.Reason;
import wainbook.permit.Permit;
import wainbook.permit.State;
import wainbook.permit.Step;
import wainbook.works.Role;

/** Whether a step may be taken with a permit. */
public final class StepRules {

    private static final int LONGEST = 500;

    private StepRules() {}

    /** Work is stopped by anybody, at once, and whatever else is true. */
    public static List<Reason> against(
            Permit permit, Step step, Optional<String> words, String who, List<Permit> others, AtHand atHand) {
        return switch (step) {
            case STOP -> List.of();
            case RECEIVE -> receive(permit, who, others, atHand);
            case HAND_BACK -> handBack(permit, words, who, atHand);
            case CLOSE -> close(permit, words, who, atHand);
        };
    }

    private static List<Reason> receive(Permit permit, String who, List<Permit> others, AtHand atHand) {
        var against = new ArrayList<Reason>();
        if (!who.equals(permit.said().receiver())) {
            against.add(rule("permit.receiverOnly", permit));
        }
        if (permit.state(atHand.now()) != State.WAITS_FOR_RECEIVER) {
            against.add(rule("permit.notToReceive", permit));
        }
        against.addAll(IssueRules.conflicts(permit.said(), others, atHand));
        return against;
    }

    private static List<Reason> handBack(Permit permit, Optional<String> words, String who, AtHand atHand) {
        if (permit.received().isEmpty()
                || permit.overAt().isPresent()
                || permit.closed().isPresent()) {
            return List.of(rule("permit.notToHandBack", permit));
        }
        return inPlaceOf(permit, permit.said().receiver(), words, who, atHand);
    }

    private static List<Reason> close(Permit permit, Optional<String> words, String who, AtHand atHand) {
        if (!permit.open()) {
            return List.of(rule("permit.closedAlready", permit));
        }
        var against = new ArrayList<Reason>();
        if (permit.received().isPresent() && permit.overAt().isEmpty()) {
            against.add(rule("permit.notHandedBack", permit));
        }
        permit.lastLookFrom()
                .filter(from -> atHand.now().isBefore(from))
                .ifPresent(from -> against.add(Reason.of(
                        "permit.fireWatch", Reason.PRACTICE, permit.number(), Permit.FIRE_WATCH.toMinutes(), from)));
        if (permit.wantsFireWatch() && missing(words)) {
            against.add(Reason.of("permit.lastLookMissing", Reason.PRACTICE).liftedAt("#words"));
        }
        if (who.equals(permit.said().receiver())) {
            against.add(rule("permit.receiverCannotClose", permit));
        } else {
            against.addAll(inPlaceOf(permit, permit.issuer(), words, who, atHand));
        }
        return against;
    }

    /** Somebody who is gone binds no vehicle for ever: a works engineer acts for them, and says how they know. */
    private static List<Reason> inPlaceOf(
            Permit permit, String owner, Optional<String> words, String who, AtHand atHand) {
        if (who.equals(owner)) {
            return List.of();
        }
        boolean may = atHand.person()
                .apply(who)
                .filter(person -> person.roles().contains(Role.WORKS_ENGINEER))
                .isPresent();
        if (!may) {
            return List.of(Reason.of("permit.ownerOnly", Reason.WORKS_RULE, permit.number(), owner));
        }
        return missing(words)
                ? List.of(Reason.of("permit.wordsMissing", Reason.WORKS_RULE).liftedAt("#words"))
                : List.of();
    }

    private static boolean missing(Optional<String> words) {
        return words.filter(text -> !text.isBlank() && text.length() <= LONGEST).isEmpty();
    }

    private static Reason rule(String key, Permit permit) {
        return Reason.of(key, Reason.WORKS_RULE, permit.number());
    }
}
