package wainbook.isolation;

import static wainbook.isolation.Cast.*;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.function.UnaryOperator;
import wainbook.act.Moment;
import wainbook.act.Reason;
import wainbook.isolation.fact.Facts;
import wainbook.isolation.proof.Scope;
import wainbook.process.plan.Plan;
import wainbook.process.sheet.Condition;

/** People saying things one after the other at one vehicle: every step goes through the guards, as an act would do it. */
public final class Shift {
    public Isolation isolation = Isolation.none();
    public Instant now = MORNING;
    public Plan plan = PLAN;
    public UnaryOperator<Facts> today = facts -> facts;

    public Facts facts() {
        return today.apply(Cast.facts(now, plan));
    }

    public List<Reason> reasons(String who, IsolationSaying saying) {
        return isolation.reasonsAgainst(saying, Moment.of(who, now), facts());
    }

    public List<String> refusal(String who, IsolationSaying saying) {
        return reasons(who, saying).stream()
                .map(Reason::key)
                .map(key -> key.substring("isolation.".length()))
                .toList();
    }

    public Shift does(String who, IsolationSaying saying) {
        var reasons = reasons(who, saying);
        if (!reasons.isEmpty()) {
            throw new AssertionError(who + " was refused " + saying + ": " + reasons);
        }
        isolation = isolation.and(saying, Moment.of(who, now));
        return this;
    }

    public Shift later(Duration time) {
        now = now.plus(time);
        return this;
    }

    public Shift seconds(long seconds) {
        return later(Duration.ofSeconds(seconds));
    }

    public State state() {
        return isolation.at(now).state();
    }

    public List<String> against(Condition condition, String who) {
        return isolation.permitsWork(condition, who, now, facts()).stream()
                .map(Reason::key)
                .map(key -> key.substring("isolation.".length()))
                .toList();
    }

    public Shift planned() {
        return does(AUTHORISED, Cast.planned(isolation.number() + 1, plan));
    }

    public Shift shutDown() {
        return planned().does(AUTHORISED, Cast.shutDown());
    }

    public Shift locked() {
        shutDown();
        plan.sources().forEach(source -> does(AUTHORISED, new IsolationSaying.SourceOpened(source.code(), true)));
        return does(AUTHORISED, lockedOn(AUTHORISED));
    }

    public Shift waited() {
        return locked().does(TECHNICIAN, lockedOn(TECHNICIAN)).later(Duration.ofMinutes(plan.waitMinutes()));
    }

    public Shift pointsDone(Scope scope, List<String> points) {
        does(AUTHORISED, testerProvedBefore(scope));
        points.forEach(point -> seconds(5).does(AUTHORISED, measured(point, "0.3")));
        seconds(60);
        points.forEach(point -> seconds(5).does(AUTHORISED, measuredAgain(point, "0.2")));
        return seconds(5);
    }

    public Shift proof(Scope scope, List<String> points) {
        return pointsDone(scope, points)
                .does(AUTHORISED, testerProvedAfter("241"))
                .does(SECOND_AUTHORISED, witnessed());
    }

    public Shift provedDead() {
        return waited().proof(Scope.ALL_POINTS, isolation.points());
    }

    public Shift permitOut() {
        return provedDead()
                .does(SECOND_AUTHORISED, permit(isolation.nextPaper(), TECHNICIAN, now.plus(Duration.ofHours(4))));
    }

    public Shift inForce() {
        return permitOut()
                .does(TECHNICIAN, read(isolation.permit().orElseThrow().number()));
    }

    public Shift handedBack() {
        return inForce().does(TECHNICIAN, Cast.handedBack(true)).does(TECHNICIAN, lockedOff(TECHNICIAN));
    }

    public Shift ready() {
        handedBack();
        return does(
                        SECOND_AUTHORISED,
                        new IsolationSaying.PermitCancelled(
                                isolation.permit().orElseThrow().number()))
                .does(SECOND_AUTHORISED, checked("COVERS"));
    }

    public Shift sanctionOut() {
        return provedDead()
                .does(TECHNICIAN, lockedOff(TECHNICIAN))
                .does(SECOND_AUTHORISED, sanction(isolation.nextPaper(), AUTHORISED, now.plus(Duration.ofHours(1))));
    }

    public Shift underTest() {
        return sanctionOut()
                .does(AUTHORISED, read(isolation.sanction().orElseThrow().number()));
    }

    public Shift livePermitOut() {
        return does(
                SECOND_AUTHORISED,
                livePermit(isolation.nextPaper(), AUTHORISED, TECHNICIAN, now.plus(Duration.ofHours(1))));
    }

    public Shift liveWork() {
        livePermitOut();
        int number = isolation.live().orElseThrow().number();
        return does(AUTHORISED, read(number)).does(TECHNICIAN, read(number));
    }
}
