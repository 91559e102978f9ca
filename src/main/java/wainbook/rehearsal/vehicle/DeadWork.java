package wainbook.rehearsal.vehicle;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wainbook.isolation.Isolation;
import wainbook.isolation.State;
import wainbook.isolation.Step;
import wainbook.isolation.fact.Register;
import wainbook.isolation.permit.Permit;
import wainbook.isolation.permit.Precaution;
import wainbook.isolation.proof.Lock;
import wainbook.isolation.step.Wanted;
import wainbook.ledger.Subject;
import wainbook.process.plan.Plan;

/** The isolation of one vehicle at one stage, done as it is taught: by several people, each with a part of their own. */
final class DeadWork {

    private static final Duration WORTH_A_PAPER = Duration.ofMinutes(15);

    private final AtVehicle at;
    private final int station;
    private final String isolator;
    private final String receiver;
    private final String witness;
    private final String issuer;
    private final String checker;

    private DeadWork(
            AtVehicle at, int station, Optional<String> receiver, Optional<String> issuer, Optional<String> isolator) {
        this.at = at;
        this.station = station;
        this.receiver =
                receiver.orElseGet(() -> AtVehicle.needed(at.crew.receiver(station, at.now(), at.dice), "dead work"));
        this.issuer = issuer.orElseGet(
                () -> AtVehicle.needed(at.crew.issuer(at.now(), at.dice, this.receiver), "issuing a permit"));
        this.isolator = isolator.orElseGet(() -> AtVehicle.needed(
                at.crew.authorised(2, at.now(), at.dice, this.receiver, this.issuer), "making the vehicle dead"));
        this.witness = AtVehicle.needed(
                at.crew.authorised(2, at.now(), at.dice, this.isolator, this.issuer, this.receiver),
                "witnessing the proof");
        this.checker = witness;
    }

    /** By new people, or by those who have it in hand. */
    static DeadWork begun(AtVehicle at, int station) {
        if (!isUnderWay(at)) {
            return new DeadWork(at, station, Optional.empty(), Optional.empty(), Optional.empty());
        }
        Isolation found = at.isolation();
        Optional<Permit> permit = found.permit().filter(held -> !held.cancelled());
        return new DeadWork(
                at, station, permit.map(Permit::receiver), permit.map(Permit::issuer), Optional.of(found.isolator()));
    }

    static boolean isUnderWay(AtVehicle at) {
        State state = at.isolation().state();
        return state != State.LIVE && state != State.VOID;
    }

    /** Whoever works on the dead system. */
    String receiver() {
        return receiver;
    }

    /** Brings the isolation into force for the receiver, with these sources open that the work will bring aboard. */
    void inForce(String work, List<String> landing) {
        endWhatWasLeft();
        if (at.isolation().state() == State.HANDED_BACK || at.isolation().state() == State.READY) {
            restore();
        }
        secure();
        if (!at.isolation().lockOn(receiver)) {
            lock(receiver);
        }
        landing.stream().filter(source -> !at.isolation().isOpen(source)).forEach(this::open);
        State state = at.isolation().state();
        if (state == State.LOCKED || state == State.STOPPED) {
            new ProofOfDead(at, station, isolator, witness).prove();
        }
        if (at.isolation().state() == State.PROVED_DEAD) {
            permit(work);
        }
    }

    /** Gives the system over for a test by the isolator, with everybody else's locks off. */
    void underTest(String work, String instrument) {
        if (at.isolation().state() != State.IN_FORCE && at.isolation().state() != State.PROVED_DEAD) {
            inForce(work, List.of());
        }
        locksOff(isolator);
        at.step(
                issuer,
                new Wanted.IssueSanction(
                        isolator,
                        work,
                        "Packs and everything beyond the test leads",
                        "The tester itself makes the bus live",
                        instrument,
                        paperEnds(),
                        confirmed(Step.ISSUE_SANCTION)));
        at.step(
                isolator,
                new Wanted.ReadPaper(at.isolation().sanction().orElseThrow().number()));
    }

    /** Who holds the sanction. */
    String tester() {
        return isolator;
    }

    void testOver() {
        at.step(isolator, new Wanted.EndTest(confirmed(Step.END_TEST)));
    }

    /** Hands back, checks and restores; nothing where the vehicle is live already. */
    void restore() {
        if (!isUnderWay(at)) {
            return;
        }
        endWhatWasLeft();
        secure();
        if (at.isolation().state() == State.IN_FORCE) {
            at.step(receiver, new Wanted.HandBack(true, true, true));
        }
        locksOff(isolator);
        at.isolation()
                .permit()
                .filter(permit -> !permit.cancelled())
                .map(Permit::number)
                .ifPresent(number -> at.step(issuer, new Wanted.CancelPermit(number)));
        if (at.isolation().state() != State.HANDED_BACK && at.isolation().state() != State.READY) {
            at.step(isolator, new Wanted.HandBack(true, true, true));
        }
        for (String check : at.isolation().checks()) {
            at.step(checker, new Wanted.CheckRestoration(check, true, Optional.empty()));
        }
        at.step(isolator, new Wanted.Restore(lockOf(isolator), confirmed(Step.RESTORE)));
    }

    /** Live work by somebody at level 3, with a second person at the cut-off. */
    String live(String work) {
        restore();
        untilAPaperIsWorthIssuing();
        String tester = AtVehicle.needed(at.crew.authorised(3, at.now(), at.dice, issuer), "live work");
        String second = AtVehicle.needed(at.crew.authorised(2, at.now(), at.dice, tester, issuer), "the cut-off");
        at.step(
                issuer,
                new Wanted.IssueLivePermit(
                        tester,
                        second,
                        work,
                        "Everything else",
                        "The high-voltage bus is live",
                        AtVehicle.needed(
                                at.tools.fit("gloves", List.of(plan().maximumVolt()), at.now(), station), "gloves"),
                        paperEnds(),
                        confirmed(Step.ISSUE_LIVE_PERMIT)));
        int paper = at.isolation().live().orElseThrow().number();
        at.step(tester, new Wanted.ReadPaper(paper));
        at.step(second, new Wanted.ReadPaper(paper));
        return tester;
    }

    void liveOver(String tester) {
        if (at.isolation().live().isPresent()) {
            at.step(tester, new Wanted.HandBack(true, true, false));
        }
    }

    /** A test or live work that was broken off is ended by whoever held its paper. */
    private void endWhatWasLeft() {
        Isolation found = at.isolation();
        if (found.state() == State.UNDER_TEST) {
            found.sanction().ifPresent(held -> at.step(held.holder(), new Wanted.EndTest(confirmed(Step.END_TEST))));
        }
        found.live().ifPresent(held -> liveOver(held.tester()));
    }

    /** From wherever it is: somebody may have begun. */
    private void secure() {
        if (!isUnderWay(at)) {
            at.step(isolator, new Wanted.Plan(confirmed(Step.PLAN)));
        }
        if (at.isolation().state() == State.PLANNED) {
            at.step(
                    isolator,
                    new Wanted.ShutDown(
                            board().spare(Register.Sort.LOCK_BOX),
                            List.of(board().spare(Register.Sort.VEHICLE_KEY)),
                            confirmed(Step.SHUT_DOWN)));
        }
        if (at.isolation().state() == State.SHUT_DOWN) {
            at.isolation().sources().stream()
                    .filter(source -> !at.isolation().isOpen(source.code()))
                    .forEach(source -> open(source.code()));
            lock(isolator);
        }
    }

    private void open(String source) {
        at.step(isolator, new Wanted.OpenSource(source, true));
    }

    private void lock(String person) {
        at.step(person, new Wanted.LockOn(board().lockOf(person), board().spare(Register.Sort.TAG)));
    }

    private void permit(String work) {
        at.step(
                issuer,
                new Wanted.IssuePermit(
                        receiver,
                        work,
                        "Everything not named here",
                        "Pack terminals stay live whatever is switched off",
                        pointsOfWork(),
                        paperEnds(),
                        confirmed(Step.ISSUE_PERMIT)));
        at.step(
                receiver,
                new Wanted.ReadPaper(at.isolation().permit().orElseThrow().number()));
    }

    private List<String> pointsOfWork() {
        List<String> points = at.isolation().points();
        return List.of(points.get(points.size() - 1));
    }

    private void locksOff(String but) {
        for (Lock lock : new ArrayList<>(at.isolation().locks())) {
            if (!lock.owner().equals(but)) {
                at.step(lock.owner(), new Wanted.LockOff(lock.number()));
            }
        }
    }

    private String lockOf(String person) {
        return at.isolation().locks().stream()
                .filter(lock -> lock.owner().equals(person))
                .map(Lock::number)
                .findFirst()
                .orElseThrow();
    }

    private LockBoard board() {
        return new LockBoard(Register.of(at.acts.ledger.history(Subject.works())), at.dice);
    }

    private Plan plan() {
        return AtVehicle.needed(
                at.acts.releases.plan(at.vehicle().ordered().variant()), "an isolation plan of the variant");
    }

    /** Nobody begins live work in the last minutes of a shift: the next one issues its own paper. */
    private void untilAPaperIsWorthIssuing() {
        Instant end = paperEnds();
        if (end.isBefore(at.now().plus(WORTH_A_PAPER))) {
            at.clock.waitUntil(
                    at.acts.day.shiftEnd(end).isPresent()
                            ? end
                            : at.acts.day.shifts().nextBegin(end).orElse(end));
        }
    }

    private Instant paperEnds() {
        Instant usual = at.now().plus(Duration.ofHours(4));
        return at.acts.day.shiftEnd(at.now()).filter(usual::isAfter).orElse(usual);
    }

    private static List<Precaution> confirmed(Step step) {
        return step.confirmed();
    }
}
