package wainbook.isolation.step;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import wainbook.act.Moment;
import wainbook.act.Reason;
import wainbook.isolation.Isolation;
import wainbook.isolation.IsolationSaying;
import wainbook.isolation.Step;
import wainbook.isolation.fact.Facts;
import wainbook.isolation.fact.Limits;
import wainbook.isolation.paper.IsolationForm;
import wainbook.isolation.paper.IsolationForm.Proved;
import wainbook.isolation.proof.Scope;

/**
 * A form judged by taking its steps one after the other, as it says they were taken, through the same rules that the tool
 * takes them by. A step that the rules refuse is not taken; what was not taken shows nothing. So a missing witness, a point
 * that was left out, or a waiting time cut short leaves the vehicle not shown to be isolated, and says which.
 */
public final class Replay {

    /** One step as the form has it. */
    public record Taken(String who, Instant at, Wanted wanted) {

        public Step step() {
            return Wanted.step(wanted.getClass());
        }
    }

    /** A step that the rules refuse. */
    public record NotTaken(Taken taken, List<Reason> reasons) {}

    private record After(Instant at, Isolation isolation) {}

    private final Isolation before;
    private final List<After> after = new ArrayList<>();
    private final List<NotTaken> notTaken = new ArrayList<>();

    private Replay(Isolation before) {
        this.before = before;
    }

    /**
     * @param before how the tool knew the vehicle when the form was begun
     * @param facts what was true at a step
     */
    public static Replay of(Isolation before, IsolationForm form, Function<Taken, Facts> facts) {
        var replay = new Replay(before);
        Isolation now = before;
        for (Taken taken : steps(form, before.nextPaper())) {
            Facts then = byTheMinute(facts.apply(taken));
            Moment moment = Moment.of(taken.who(), taken.at());
            var situation = new Situation(now.at(taken.at()), then, taken.who());
            List<Reason> against = List.of(Reason.of("isolating.noPlan", Reason.WORKS_RULE));
            if (!(taken.wanted() instanceof Wanted.Plan && then.plan().isEmpty())) {
                IsolationSaying said = taken.wanted().said(situation);
                against = now.reasonsAgainst(said, moment, then);
                if (against.isEmpty()) {
                    now = now.and(said, moment);
                    replay.after.add(new After(taken.at(), now));
                }
            }
            if (!against.isEmpty()) {
                replay.notTaken.add(new NotTaken(taken, against));
            }
        }
        return replay;
    }

    /** The steps that the rules refuse; none of them leaves a form that shows what it says. */
    public List<NotTaken> notTaken() {
        return List.copyOf(notTaken);
    }

    /** How it stood at an instant. */
    public Isolation at(Instant time) {
        Isolation standing = before;
        for (After one : after) {
            if (!one.at().isAfter(time)) {
                standing = one.isolation();
            }
        }
        return standing.at(time);
    }

    /**
     * A form has minutes: that no hand goes from point to point in less than some seconds cannot be read off it. The second
     * touch a minute later can, and is asked for.
     */
    static Facts byTheMinute(Facts facts) {
        Limits usual = facts.limits();
        return new Facts(
                facts.workOrderOpen(),
                facts.station(),
                facts.plan(),
                new Limits(
                        usual.deadVolt(),
                        usual.dangerDcVolt(),
                        usual.dangerAcVolt(),
                        usual.riseVolt(),
                        usual.reprobeAfterSeconds(),
                        0,
                        usual.windowBaseSeconds(),
                        usual.windowPointSeconds(),
                        usual.permitWithinMinutes(),
                        usual.testerPercent()),
                facts.isolatorMayIssue(),
                facts.shiftEnd(),
                facts.people(),
                facts.instruments(),
                facts.register(),
                facts.locksElsewhere(),
                facts.sources(),
                facts.energisingBarredBy());
    }

    /**
     * In the order of their times; those of one minute in the order of the form.
     *
     * @param paper the number that the permit on it gets
     */
    static List<Taken> steps(IsolationForm form, int paper) {
        return Stream.of(begin(form), locksOn(form), proof(form), papers(form, paper), end(form, paper))
                .flatMap(part -> part)
                .sorted(Comparator.comparing(Taken::at))
                .toList();
    }

    private static Stream<Taken> begin(IsolationForm form) {
        var steps = new ArrayList<Taken>();
        steps.add(new Taken(form.isolator(), form.begunAt(), new Wanted.Plan(form.confirmed())));
        form.shutDown()
                .ifPresent(said -> steps.add(new Taken(
                        form.isolator(), said.at(), new Wanted.ShutDown(said.box(), said.keys(), form.confirmed()))));
        form.opened()
                .forEach(source -> steps.add(
                        new Taken(form.isolator(), source.at(), new Wanted.OpenSource(source.source(), true))));
        return steps.stream();
    }

    /** The isolator’s own goes on first. */
    private static Stream<Taken> locksOn(IsolationForm form) {
        return form.locks().stream()
                .sorted(Comparator.comparing(lock -> !lock.who().equals(form.isolator())))
                .map(lock -> new Taken(lock.who(), lock.onAt(), new Wanted.LockOn(lock.lock(), lock.tag())));
    }

    private static Stream<Taken> proof(IsolationForm form) {
        var steps = new ArrayList<Taken>();
        form.provedBefore()
                .ifPresent(said -> steps.add(new Taken(
                        said.who(),
                        said.at(),
                        new Wanted.ProveTesterBefore(
                                Scope.ALL_POINTS,
                                said.tester(),
                                said.source(),
                                said.sourceVolt(),
                                said.readingVolt()))));
        String prover = form.provedBefore().map(Proved::who).orElse(form.isolator());
        String tester = form.provedBefore().map(Proved::tester).orElse("–");
        form.touches().stream()
                .sorted(Comparator.comparing(IsolationForm.Touched::again))
                .map(touch -> new Taken(
                        prover,
                        touch.at(),
                        touch.again()
                                ? new Wanted.MeasurePointAgain(touch.point(), tester, touch.readings())
                                : new Wanted.MeasurePoint(touch.point(), tester, touch.readings())))
                .forEach(steps::add);
        form.provedAfter()
                .ifPresent(said -> steps.add(new Taken(
                        said.who(),
                        said.at(),
                        new Wanted.ProveTesterAfter(
                                said.tester(), said.source(), said.sourceVolt(), said.readingVolt()))));
        form.witness().ifPresent(sign -> steps.add(new Taken(sign.who(), sign.at(), new Wanted.WitnessProof())));
        return steps.stream();
    }

    private static Stream<Taken> papers(IsolationForm form, int number) {
        Optional<Taken> issued = form.permit()
                .map(paper -> new Taken(
                        paper.issuer(),
                        paper.at(),
                        new Wanted.IssuePermit(
                                paper.receiver(),
                                paper.work(),
                                "",
                                "",
                                paper.pointsOfWork(),
                                paper.validUntil(),
                                form.confirmed())));
        Stream<Taken> read = form.readers().stream()
                .sorted(Comparator.comparing(reader -> !form.permit()
                        .filter(paper -> paper.receiver().equals(reader.who()))
                        .isPresent()))
                .map(reader -> new Taken(reader.who(), reader.at(), new Wanted.ReadPaper(number)));
        Stream<Taken> back = form.handedBack().stream()
                .map(said -> new Taken(said.who(), said.at(), new Wanted.HandBack(true, true, said.opened())));
        return Stream.of(issued.stream(), read, back).flatMap(part -> part);
    }

    private static Stream<Taken> end(IsolationForm form, int paper) {
        Optional<String> last = form.restored().map(IsolationForm.Restored::lock);
        Stream<Taken> off = form.locks().stream()
                .filter(lock -> !last.equals(Optional.of(lock.lock())))
                .flatMap(lock ->
                        lock.offAt().stream().map(at -> new Taken(lock.who(), at, new Wanted.LockOff(lock.lock()))));
        Stream<Taken> cancelled =
                form.cancelled().stream().map(sign -> new Taken(sign.who(), sign.at(), new Wanted.CancelPermit(paper)));
        Stream<Taken> checks = form.checks().stream()
                .map(check -> new Taken(
                        check.who(), check.at(), new Wanted.CheckRestoration(check.check(), true, Optional.empty())));
        Stream<Taken> restored = form.restored().stream()
                .map(said -> new Taken(said.who(), said.at(), new Wanted.Restore(said.lock(), form.confirmed())));
        return Stream.of(off, cancelled, checks, restored).flatMap(part -> part);
    }
}
