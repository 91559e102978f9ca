package wainbook.isolation;

import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import wainbook.act.Moment;
import wainbook.isolation.IsolationSaying.AtPoint;
import wainbook.isolation.IsolationSaying.Confirmed;
import wainbook.isolation.IsolationSaying.PaperRead;
import wainbook.isolation.IsolationSaying.Used;
import wainbook.isolation.fact.Facts;
import wainbook.isolation.fact.Instrument;
import wainbook.isolation.fact.Person;
import wainbook.isolation.fact.Register;
import wainbook.isolation.permit.LivePermit;
import wainbook.isolation.permit.Permit;
import wainbook.isolation.permit.Precaution;
import wainbook.isolation.permit.Sanction;
import wainbook.isolation.proof.Lock;
import wainbook.process.plan.Plan;

/** A step somebody asks to take, with all it is judged by. Its questions are the words of the {@link Guards} table. */
record Ask(Isolation isolation, IsolationSaying said, Moment moment, Facts facts) {

    /** The papers that are read before anybody acts on them. */
    enum Paper {
        PERMIT,
        SANCTION,
        LIVE_PERMIT;

        Optional<Integer> number(Isolation isolation) {
            return switch (this) {
                case PERMIT ->
                    isolation.permit().filter(permit -> !permit.ended()).map(Permit::number);
                case SANCTION -> isolation.sanction().map(Sanction::number);
                case LIVE_PERMIT -> isolation.live().map(LivePermit::number);
            };
        }

        static boolean known(Ask ask) {
            return Arrays.stream(values()).anyMatch(ask::reads);
        }
    }

    String who() {
        return moment.who();
    }

    Instant now() {
        return moment.at();
    }

    Step step() {
        return Step.of(said);
    }

    State state() {
        return isolation.state();
    }

    boolean is(String person) {
        return who().equals(person);
    }

    Person person() {
        return facts.person(who());
    }

    int level() {
        return levelOf(who());
    }

    int levelOf(String person) {
        return facts.person(person).levelAt(now());
    }

    /** What is asked about the proof of dead. */
    AskOfProof proof() {
        return new AskOfProof(this);
    }

    static String words(List<?> list) {
        return list.stream().map(String::valueOf).collect(Collectors.joining(", "));
    }

    /** What the request is about, for the text of a refusal. */
    String subject() {
        if (said instanceof IsolationSaying.SourceOpened opened) {
            return opened.source();
        } else if (said instanceof IsolationSaying.LockedOn on) {
            return on.lock();
        } else if (said instanceof IsolationSaying.LockedOff off) {
            return off.lock();
        } else if (said instanceof AtPoint at) {
            return at.point();
        }
        return "";
    }

    boolean isolates() {
        return is(isolation.isolator());
    }

    boolean ownLockOn() {
        return isolation.lockOn(who());
    }

    boolean isolatorLockOn() {
        return isolation.lockOn(isolation.isolator());
    }

    List<Precaution> unconfirmed() {
        var confirmed = said instanceof Confirmed with ? with.confirmed() : List.<Precaution>of();
        return step().confirmed().stream()
                .filter(precaution -> !confirmed.contains(precaution))
                .toList();
    }

    boolean released(Plan plan) {
        return facts.plan().filter(plan::equals).isPresent();
    }

    boolean planCurrent() {
        return isolation.plan().equals(facts.plan());
    }

    /** A source that is aboard and not on the plan would be proved nowhere. */
    boolean knowsAllAboard(Plan plan) {
        return isolation.aboard().stream()
                .allMatch(source -> plan.source(source).isPresent());
    }

    boolean planNames(String source) {
        return isolation.plan().flatMap(plan -> plan.source(source)).isPresent();
    }

    boolean standsAt(String station) {
        return facts.station().filter(station::equals).isPresent();
    }

    boolean registered(Register.Sort sort, String number) {
        return facts.register().holds(sort, number);
    }

    boolean registeredKeys(List<String> keys) {
        return !keys.isEmpty() && keys.stream().allMatch(key -> registered(Register.Sort.VEHICLE_KEY, key));
    }

    boolean usable(String lock) {
        return registered(Register.Sort.LOCK, lock) && !isolation.retiredLocks.contains(lock);
    }

    boolean ownsOrSpare(String lock) {
        return facts.register()
                .item(lock)
                .flatMap(Register.Item::owner)
                .map(this::is)
                .orElse(true);
    }

    boolean lockHangs(String lock) {
        return isolation.lock(lock).isPresent();
    }

    boolean inUse(String lock) {
        return lockHangs(lock) || facts.locksElsewhere().contains(lock);
    }

    boolean anothers(String lock) {
        return isolation.lock(lock).filter(on -> !is(on.owner())).isPresent();
    }

    boolean anyLockOn() {
        return !isolation.locks().isEmpty();
    }

    boolean allLocks(List<String> seen) {
        var on = isolation.locks().stream().map(Lock::number).sorted().toList();
        return seen.stream().sorted().toList().equals(on);
    }

    boolean aloneWith(String person) {
        return isolation.locksOnBesides(isolation.isolator(), person).isEmpty();
    }

    boolean toBeTold() {
        return isolation.toBeTold().stream().anyMatch(told -> is(told.owner()));
    }

    boolean somebodyToTell(String lock) {
        return isolation.toBeTold().stream().anyMatch(told -> told.lock().equals(lock));
    }

    Optional<Instrument> instrument(String code) {
        return facts.instrument(code);
    }

    boolean valid(String code) {
        return instrument(code).filter(found -> found.validAt(now())).isPresent();
    }

    boolean isValid(Used used, Instrument.Sort sort) {
        return instrument(used.code()).filter(found -> found.sort() == sort).isPresent() && valid(used.code());
    }

    boolean insulationTester(Used used) {
        return isValid(used, Instrument.Sort.INSULATION_TESTER);
    }

    boolean gloves(Used used) {
        return isValid(used, Instrument.Sort.GLOVES) && proof().rated(used.code());
    }

    boolean issuerApart() {
        return !isolates() || facts.isolatorMayIssue();
    }

    boolean someOf(List<String> points) {
        return !points.isEmpty() && isolation.points().containsAll(points);
    }

    boolean endsInTime(Instant until) {
        return until.isAfter(now()) && !until.isAfter(facts.shiftEnd());
    }

    boolean permitOut() {
        return Paper.PERMIT.number(isolation).isPresent();
    }

    boolean permitIs(int number) {
        return Paper.PERMIT.number(isolation).filter(out -> out == number).isPresent();
    }

    boolean canCancel(int number) {
        return isolation
                .permit()
                .filter(permit -> permit.number() == number && !permit.cancelled())
                .isPresent();
    }

    boolean reads(Paper paper) {
        return said instanceof PaperRead read
                && paper.number(isolation).filter(out -> out == read.paper()).isPresent();
    }

    boolean receives() {
        return isolation.permit().filter(permit -> is(permit.receiver())).isPresent();
    }

    boolean received() {
        return isolation.permit().filter(Permit::received).isPresent();
    }

    boolean receiverLockOn() {
        return isolation
                .permit()
                .filter(permit -> isolation.lockOn(permit.receiver()))
                .isPresent();
    }

    String holder() {
        return isolation.sanction().map(Sanction::holder).orElse("");
    }

    boolean holds() {
        return is(holder());
    }

    boolean testing() {
        return state() == State.UNDER_TEST || isolation.charged();
    }

    boolean namedForLiveWork() {
        return isolation.live().filter(live -> live.names(who())).isPresent();
    }

    boolean asksFor(String check) {
        return isolation.checks().contains(check);
    }

    boolean worked() {
        return isolation.worked(who());
    }

    boolean keepsLocks() {
        return person().manager() || person().issuer();
    }

    /** Whether this person would gain by another’s lock coming off. */
    boolean goesOn() {
        return ownLockOn() || worked() || (isolates() && State.OPEN.contains(state()));
    }

    Optional<Isolation.Abandoned> abandoned(String lock) {
        return isolation.abandoned().stream()
                .filter(known -> known.lock().equals(lock))
                .findFirst();
    }

    boolean reportedMyself(String lock) {
        return abandoned(lock).filter(known -> is(known.reportedBy())).isPresent();
    }

    /** Whether the two who decide are a manager and an appointed issuer. */
    boolean managerAndIssuer(String lock) {
        var first = abandoned(lock).map(known -> facts.person(known.reportedBy()));
        return Stream.of(first)
                .flatMap(Optional::stream)
                .allMatch(other -> (other.manager() && person().issuer()) || (other.issuer() && person().manager()));
    }

    boolean allSources(List<String> lookedFor) {
        return lookedFor.containsAll(facts.sources());
    }
}
