package wainbook.isolation;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wainbook.act.Moment;
import wainbook.act.Reason;
import wainbook.isolation.fact.Facts;
import wainbook.isolation.fact.Limits;
import wainbook.isolation.permit.LivePermit;
import wainbook.isolation.permit.Permit;
import wainbook.isolation.permit.Sanction;
import wainbook.isolation.proof.Lock;
import wainbook.isolation.proof.Proof;
import wainbook.isolation.proof.Scope;
import wainbook.ledger.History;
import wainbook.process.plan.Check;
import wainbook.process.plan.Plan;
import wainbook.process.plan.Point;
import wainbook.process.plan.Source;
import wainbook.process.sheet.Condition;

/**
 * A vehicle’s isolation as its entries tell it. Immutable to those who hold it. Time makes no entry: ask {@link #at} for how
 * it stands at an instant, and {@link Permission} for what today’s competences and instruments leave of it.
 */
public final class Isolation {

    /** When a source was seen open. */
    public record Opened(String source, Instant at) {}

    /** A declaration that nothing aboard can make the vehicle live. */
    public record Declaration(String by, Instant at) {}

    /** A lock whose owner was looked for and not found, and who says so. */
    public record Abandoned(String lock, String owner, String reportedBy) {}

    /** A lock that was removed in its owner’s absence. */
    public record ToBeTold(String lock, String owner) {}

    int number;
    int papers;
    State state = State.LIVE;
    Optional<Plan> plan = Optional.empty();
    Limits limits = Limits.usual();
    String isolator = "";
    Optional<String> station = Optional.empty();
    boolean disturbed;
    List<Opened> openings = List.of();
    List<String> landed = List.of();
    List<Lock> locks = List.of();
    Optional<Proof> proof = Optional.empty();
    Scope due = Scope.ALL_POINTS;
    Optional<Permit> permit = Optional.empty();
    Optional<Sanction> sanction = Optional.empty();
    boolean charged;
    Optional<LivePermit> live = Optional.empty();
    List<String> workers = List.of();
    boolean opened;
    boolean handedBack;
    List<String> checksPassed = List.of();
    Optional<Declaration> noSource = Optional.empty();
    List<Abandoned> abandoned = List.of();
    List<String> retiredLocks = List.of();
    List<ToBeTold> toBeTold = List.of();

    private Isolation() {}

    public static Isolation none() {
        return new Isolation();
    }

    public static Isolation of(History vehicle) {
        return vehicle.folded(
                Isolation.class,
                none(),
                (isolation, entry) -> entry.saying() instanceof IsolationSaying said
                        ? isolation.and(said, entry.moment())
                        : isolation);
    }

    /** This isolation after one more thing was said. */
    public Isolation and(IsolationSaying said, Moment moment) {
        var next = at(moment.at()).copy();
        Effects.of(said, next, moment);
        next.settle();
        return next;
    }

    /** This isolation at a later instant: papers run out by the clock, which stops work and voids nothing. */
    public Isolation at(Instant time) {
        var next = this;
        if (permit.filter(held -> !held.ended() && held.validUntil().isBefore(time))
                .isPresent()) {
            next = next.copy();
            next.stop(Scope.ALL_POINTS);
        }
        if (sanction.filter(held -> held.validUntil().isBefore(time)).isPresent()) {
            next = next.copy();
            next.stop(Scope.ALL_POINTS);
        }
        if (live.filter(held -> held.validUntil().isBefore(time)).isPresent()) {
            next = next.copy();
            next.live = Optional.empty();
        }
        return next;
    }

    public State state() {
        return state;
    }

    /** How many isolations were planned on this vehicle so far. */
    public int number() {
        return number;
    }

    public int nextPaper() {
        return papers + 1;
    }

    public Optional<Plan> plan() {
        return plan;
    }

    public Limits limits() {
        return limits;
    }

    public String isolator() {
        return isolator;
    }

    /** Where it was isolated, or was moved to with its locks on. */
    public Optional<String> station() {
        return station;
    }

    public List<Opened> openings() {
        return openings;
    }

    public List<Lock> locks() {
        return locks;
    }

    public Optional<Proof> proof() {
        return proof;
    }

    /** Sources that the work brought aboard, in this isolation or in an earlier one. */
    public List<String> aboard() {
        return landed;
    }

    /** Which points the next proof must cover at least. */
    public Scope due() {
        return due;
    }

    public Optional<Permit> permit() {
        return permit;
    }

    public Optional<Sanction> sanction() {
        return sanction;
    }

    /** After a test, until somebody has discharged what was tested. */
    public boolean charged() {
        return charged;
    }

    public Optional<LivePermit> live() {
        return live;
    }

    public Optional<Declaration> noSource() {
        return noSource;
    }

    public List<String> checksPassed() {
        return checksPassed;
    }

    public List<Abandoned> abandoned() {
        return abandoned;
    }

    public List<ToBeTold> toBeTold() {
        return toBeTold;
    }

    /** The sources that count now. */
    public List<Source> sources() {
        return plan.map(known -> known.sourcesWith(landed)).orElse(List.of());
    }

    /** The points that count now. */
    public List<String> points() {
        return plan.map(known -> known.pointsWith(landed)).orElse(List.of()).stream()
                .map(Point::code)
                .toList();
    }

    /** The points that a proof of this scope covers. */
    public List<String> points(Scope scope) {
        return scope == Scope.ALL_POINTS
                ? points()
                : permit.map(Permit::pointsOfWork).orElse(List.of());
    }

    public boolean isOpen(String source) {
        return openings.stream().anyMatch(seen -> seen.source().equals(source));
    }

    /** When the waiting time is over: counted from the last source opened. Absent while one is still closed. */
    public Optional<Instant> waitOverAt() {
        var codes = sources().stream().map(Source::code).toList();
        if (codes.isEmpty() || !codes.stream().allMatch(this::isOpen)) {
            return Optional.empty();
        }
        return openings.stream()
                .filter(seen -> codes.contains(seen.source()))
                .map(Opened::at)
                .max(Instant::compareTo)
                .map(last -> last.plus(Duration.ofMinutes(plan.orElseThrow().waitMinutes())));
    }

    /** Until when the tester must be proved again. */
    public Optional<Instant> provingEndsAt() {
        return proof.map(begun ->
                begun.begunAt().plus(limits.window(points(begun.scope()).size())));
    }

    /** Whether this person’s own lock is on. */
    public boolean lockOn(String person) {
        return locks.stream().anyMatch(lock -> lock.owner().equals(person));
    }

    public Optional<Lock> lock(String lockNumber) {
        return locks.stream().filter(lock -> lock.number().equals(lockNumber)).findFirst();
    }

    /** Whose locks are on, besides those of the given people. */
    public List<String> locksOnBesides(String... people) {
        var excepted = List.of(people);
        return locks.stream()
                .map(Lock::owner)
                .filter(owner -> !excepted.contains(owner))
                .distinct()
                .toList();
    }

    /** Whether this person worked under a permit of this isolation. */
    public boolean worked(String person) {
        return workers.contains(person);
    }

    /** The checks that restoration asks for: the short list if no joint or cover was opened. */
    public List<String> checks() {
        return plan.map(Plan::restoration).orElse(List.of()).stream()
                .filter(check -> opened || !check.onlyIfOpened())
                .map(Check::code)
                .toList();
    }

    /** What stands in the way of this person’s work under an electrical condition, now. Empty: it is allowed. */
    public List<Reason> permitsWork(Condition condition, String person, Instant time, Facts facts) {
        return Permission.reasons(new Permission.Wish(condition, person, time, facts, at(time)));
    }

    /** What stands in the way of a step, now. Empty: it may be taken. */
    public List<Reason> reasonsAgainst(IsolationSaying said, Moment moment, Facts facts) {
        return Guards.reasons(new Ask(at(moment.at()), said, moment, facts));
    }

    /** Whether nothing that the proof rests on was withdrawn with effect before it. */
    boolean undoubted(Facts facts) {
        return proof.filter(shown -> shown.undoubted(facts, isolator)).isPresent();
    }

    Isolation copy() {
        var copy = new Isolation();
        copy.number = number;
        copy.papers = papers;
        copy.state = state;
        copy.plan = plan;
        copy.limits = limits;
        copy.isolator = isolator;
        copy.station = station;
        copy.disturbed = disturbed;
        copy.openings = openings;
        copy.landed = landed;
        copy.locks = locks;
        copy.proof = proof;
        copy.due = due;
        copy.permit = permit;
        copy.sanction = sanction;
        copy.charged = charged;
        copy.live = live;
        copy.workers = workers;
        copy.opened = opened;
        copy.handedBack = handedBack;
        copy.checksPassed = checksPassed;
        copy.noSource = noSource;
        copy.abandoned = abandoned;
        copy.retiredLocks = retiredLocks;
        copy.toBeTold = toBeTold;
        return copy;
    }

    void stop(Scope needed) {
        boolean brief = needed == Scope.POINTS_OF_WORK && (state == State.IN_FORCE || due == Scope.POINTS_OF_WORK);
        due = brief ? Scope.POINTS_OF_WORK : Scope.ALL_POINTS;
        if (!brief) {
            permit = permit.map(Permit::end);
        }
        charged = charged || state == State.UNDER_TEST;
        sanction = Optional.empty();
        proof = Optional.empty();
        checksPassed = List.of();
        if (State.SECURED.contains(state)) {
            state = permit.isPresent() || handedBack ? State.STOPPED : State.LOCKED;
        }
    }

    /** Whether the system is whole again: nothing planned, locked, voided and left so, and no live work. */
    public boolean closed() {
        return state == State.LIVE && locks.isEmpty() && live.isEmpty();
    }

    void voidIt() {
        live = Optional.empty();
        if (State.OPEN.contains(state)) {
            stop(Scope.ALL_POINTS);
            state = State.VOID;
        }
    }

    /** What follows from what is written without anybody saying it. */
    private void settle() {
        if (state == State.SHUT_DOWN && waitOverAt().isPresent() && lockOn(isolator)) {
            state = State.LOCKED;
        }
        boolean alone = locksOnBesides(isolator).isEmpty();
        if (handedBack && state == State.STOPPED && alone) {
            state = State.HANDED_BACK;
        }
        if ((state == State.HANDED_BACK || state == State.READY) && !alone) {
            state = State.STOPPED;
        }
        boolean provedAll = proof.filter(shown -> shown.complete() && shown.covers(points()))
                .isPresent();
        if (provedAll && (state == State.LOCKED || state == State.STOPPED || state == State.HANDED_BACK)) {
            due = Scope.ALL_POINTS;
            permit = permit.map(Permit::end);
            state = State.PROVED_DEAD;
        }
        if (state == State.HANDED_BACK
                && proof.isEmpty()
                && permit.map(Permit::cancelled).orElse(true)
                && checksPassed.containsAll(checks())) {
            state = State.READY;
        }
    }

    static <T> List<T> plus(List<T> list, T one) {
        var more = new ArrayList<>(list);
        more.add(one);
        return List.copyOf(more);
    }
}
