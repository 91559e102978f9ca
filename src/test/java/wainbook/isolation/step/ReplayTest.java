package wainbook.isolation.step;

import static org.assertj.core.api.Assertions.assertThat;
import static wainbook.isolation.Cast.AUTHORISED;
import static wainbook.isolation.Cast.LEARNER;
import static wainbook.isolation.Cast.OUTSIDER;
import static wainbook.isolation.Cast.SECOND_AUTHORISED;
import static wainbook.isolation.Cast.TECHNICIAN;
import static wainbook.isolation.step.PaperDay.at;
import static wainbook.isolation.step.PaperDay.locked;
import static wainbook.isolation.step.PaperDay.permitted;
import static wainbook.isolation.step.PaperDay.proved;
import static wainbook.isolation.step.PaperDay.touched;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import wainbook.act.Reason;
import wainbook.isolation.Cast;
import wainbook.isolation.Isolation;
import wainbook.isolation.State;
import wainbook.isolation.paper.IsolationForm;
import wainbook.isolation.paper.IsolationForm.Checked;
import wainbook.isolation.paper.IsolationForm.Opened;
import wainbook.isolation.paper.IsolationForm.Restored;
import wainbook.isolation.paper.IsolationForm.Signed;
import wainbook.isolation.permit.Precaution;
import wainbook.process.sheet.Condition;

/** A paper isolation is judged by the rules of the machine: whatever the machine would refuse leaves the vehicle not shown dead. */
class ReplayTest {

    @Test
    void a_form_that_keeps_every_rule_shows_the_vehicle_dead_from_the_signing_of_the_permit_to_its_return() {
        Replay replay = replay(PaperDay.good());
        assertThat(replay.notTaken()).isEmpty();
        assertThat(replay.at(at(9)).state()).isEqualTo(State.LOCKED);
        assertThat(mayWork(replay, TECHNICIAN, 15)).isFalse();
        assertThat(mayWork(replay, TECHNICIAN, 16)).isTrue();
        assertThat(mayWork(replay, TECHNICIAN, 58)).isTrue();
        assertThat(mayWork(replay, TECHNICIAN, 59)).isFalse();
        assertThat(replay.at(at(65)).state()).isEqualTo(State.LIVE);
    }

    @Test
    void nobody_works_on_it_whose_own_lock_is_not_on_or_who_did_not_read_the_permit() {
        Replay replay = replay(PaperDay.good());
        assertThat(mayWork(replay, SECOND_AUTHORISED, 30)).isFalse();
        assertThat(mayWork(replay, LEARNER, 30)).isFalse();
        Replay both = replay(PaperDay.with(day -> {
            day.locks.add(locked(LEARNER, 6, Optional.of(40)));
            day.readers.add(new Signed(LEARNER, at(20)));
        }));
        assertThat(both.notTaken()).isEmpty();
        assertThat(mayWork(both, LEARNER, 19)).isFalse();
        assertThat(mayWork(both, LEARNER, 39)).isTrue();
        assertThat(mayWork(both, LEARNER, 40)).isFalse();
    }

    @Test
    void a_form_still_in_use_shows_what_stands_on_it_so_far() {
        IsolationForm open = PaperDay.with(day -> {
            day.back = Optional.empty();
            day.cancelled = Optional.empty();
            day.checks.clear();
            day.restored = Optional.empty();
            day.locks.set(1, locked(TECHNICIAN, 5, Optional.empty()));
        });
        assertThat(open.closed()).isFalse();
        Replay replay = replay(open);
        assertThat(replay.notTaken()).isEmpty();
        assertThat(mayWork(replay, TECHNICIAN, 100)).isTrue();
        assertThat(mayWork(replay, TECHNICIAN, 301))
                .as("the permit has run out")
                .isFalse();
    }

    static Stream<Arguments> what_leaves_it_not_shown() {
        return Stream.of(
                leaves("tester not proved before", "noProofBegun", day -> day.before = Optional.empty()),
                leaves("tester not proved after", "proofNotFinished", day -> day.after = Optional.empty()),
                leaves(
                        "tester proved after on another source",
                        "otherKnownSource",
                        day -> day.after = Optional.of(proved(AUTHORISED, 13, "VT-1", "PU-2", "240", "241"))),
                leaves(
                        "another tester after",
                        "otherTester",
                        day -> day.after = Optional.of(proved(AUTHORISED, 13, "VT-2", "PU-1", "240", "241"))),
                leaves(
                        "tester off by more than ten per cent before",
                        "testerDisagrees",
                        day -> day.before = Optional.of(proved(AUTHORISED, 10, "VT-1", "PU-1", "240", "215"))),
                leaves(
                        "known source too low to look like danger",
                        "knownSourceUnsuitable",
                        day -> day.before = Optional.of(proved(AUTHORISED, 10, "VT-1", "PU-1", "48", "48"))),
                leaves(
                        "an unknown tester",
                        "testerUnsuitable",
                        day -> day.before = Optional.of(proved(AUTHORISED, 10, "VT-9", "PU-1", "240", "239"))),
                leaves(
                        "a point left out",
                        "pointsLeft",
                        day -> day.touches.removeIf(t -> t.point().equals("JB-B"))),
                leaves("a point not touched again", "pointsLeft", day -> day.touches.remove(3)),
                leaves(
                        "a pair of a point missing",
                        "pairMissing",
                        day -> day.touches.set(
                                0,
                                new IsolationForm.Touched(
                                        "JB-A",
                                        false,
                                        at(11),
                                        Cast.readings("0.3").subList(0, 2)))),
                leaves(
                        "second touch in the same minute",
                        "againTooSoon",
                        day -> day.touches.set(2, touched("JB-A", true, 11, "0.3"))),
                leaves(
                        "a reading above dead",
                        "notMeasuredYet",
                        day -> day.touches.set(0, touched("JB-A", false, 11, "9"))),
                leaves(
                        "a dangerous reading",
                        "notNowProveTesterAfter",
                        day -> day.touches.set(3, touched("JB-B", true, 12, "412"))),
                leaves("waiting time cut short", "waitNotOver", day -> day.opened.set(1, new Opened("INLET", at(6)))),
                leaves("a source not opened", "waitNotOver", day -> day.opened.remove(1)),
                leaves("proof drawn out beyond its window", "provingWindowOver", day -> {
                    day.after = Optional.of(proved(AUTHORISED, 20, "VT-1", "PU-1", "240", "241"));
                    day.witness = Optional.of(new Signed(SECOND_AUTHORISED, at(21)));
                }),
                leaves("no witness", "notNowIssuePermit", day -> day.witness = Optional.empty()),
                leaves(
                        "the isolator as witness",
                        "witnessIsProver",
                        day -> day.witness = Optional.of(new Signed(AUTHORISED, at(14)))),
                leaves(
                        "a witness who is not authorised",
                        "notAuthorised",
                        day -> day.witness = Optional.of(new Signed(LEARNER, at(14)))),
                leaves("not shut down", "notNowOpenSource", day -> day.shutDown = Optional.empty()),
                leaves("isolator’s own lock not on", "isolatorLocksFirst", day -> day.locks.remove(0)),
                leaves(
                        "a lock that is nobody’s of the register",
                        "lockUnknown",
                        day -> day.locks.set(
                                0,
                                new IsolationForm.Locked(
                                        AUTHORISED, "LOCK-X", "TAG-" + AUTHORISED, at(4), Optional.empty()))),
                leaves(
                        "a precaution not ticked",
                        "precautionMissing",
                        day -> day.confirmed.remove(Precaution.INLET_UNPLUGGED)),
                leaves(
                        "the isolator as issuer",
                        "issuerIsIsolator",
                        day -> day.permit = Optional.of(permitted(AUTHORISED, TECHNICIAN))),
                leaves(
                        "issuer and receiver one person",
                        "issuerIsReceiver",
                        day -> day.permit = Optional.of(permitted(SECOND_AUTHORISED, SECOND_AUTHORISED))),
                leaves(
                        "an issuer who is not appointed",
                        "notAppointed",
                        day -> day.permit = Optional.of(permitted(OUTSIDER, TECHNICIAN))),
                leaves("a receiver without a lock", "receiverLockMissing", day -> day.locks.remove(1)),
                leaves("a permit too long after the proof", "proofTooOld", day -> {
                    day.permit = Optional.of(new IsolationForm.Permitted(
                            SECOND_AUTHORISED, at(44), TECHNICIAN, "work", List.of("JB-A"), at(300)));
                    day.readers.set(0, new Signed(TECHNICIAN, at(45)));
                }),
                leaves(
                        "restored with a lock of somebody on",
                        "notNowRestore",
                        day -> day.locks.set(1, locked(TECHNICIAN, 5, Optional.empty()))),
                leaves("restored without its checks", "notNowRestore", day -> day.checks.clear()),
                leaves(
                        "checked by whoever worked under it",
                        "checkedOwnWork",
                        day -> day.checks.set(0, new Checked("COVERS", TECHNICIAN, at(62)))),
                leaves(
                        "restored by another than the isolator",
                        "notTheIsolator",
                        day -> day.restored =
                                Optional.of(new Restored(SECOND_AUTHORISED, at(65), Cast.lockOf(AUTHORISED)))),
                leaves("permit not cancelled", "notNowRestore", day -> day.cancelled = Optional.empty()));
    }

    @ParameterizedTest(name = "{0}: {1}")
    @MethodSource("what_leaves_it_not_shown")
    void what_the_machine_would_refuse_is_named(String what, String key, Consumer<PaperDay> change) {
        Replay replay = replay(PaperDay.with(change));
        assertThat(replay.notTaken().stream()
                        .flatMap(step -> step.reasons().stream())
                        .map(Reason::key))
                .as(what)
                .contains("isolation." + key);
    }

    @Test
    void whatever_is_left_out_of_the_proof_nobody_may_work_under_it() {
        List<Consumer<PaperDay>> proof = List.of(
                day -> day.before = Optional.empty(),
                day -> day.after = Optional.empty(),
                day -> day.witness = Optional.empty(),
                day -> day.touches.remove(0),
                day -> day.touches.remove(1),
                day -> day.touches.remove(2),
                day -> day.touches.remove(3),
                day -> day.opened.remove(0),
                day -> day.shutDown = Optional.empty(),
                day -> day.locks.remove(0),
                day -> day.locks.remove(1),
                day -> day.permit = Optional.empty(),
                day -> day.readers.clear());
        assertThat(proof).allSatisfy(change -> {
            Replay replay = replay(PaperDay.with(change));
            for (int minute = 0; minute < 70; minute++) {
                assertThat(mayWork(replay, TECHNICIAN, minute)).isFalse();
            }
        });
    }

    @Test
    void a_form_is_closed_only_when_every_lock_on_it_is_off() {
        assertThat(PaperDay.good().closed()).isTrue();
        assertThat(PaperDay.with(day -> day.restored = Optional.empty()).closed())
                .isFalse();
        assertThat(PaperDay.with(day -> day.locks.set(1, locked(TECHNICIAN, 5, Optional.empty())))
                        .closed())
                .isFalse();
        assertThat(PaperDay.with(day -> day.locks.set(1, locked(TECHNICIAN, 5, Optional.of(66))))
                        .closed())
                .as("a lock that came off after the restoration")
                .isFalse();
    }

    private static Replay replay(IsolationForm form) {
        return Replay.of(Isolation.none(), form, taken -> Cast.facts(taken.at()));
    }

    private static boolean mayWork(Replay replay, String who, int minute) {
        return replay.at(at(minute))
                .permitsWork(Condition.DEAD, who, at(minute), Cast.facts(at(minute)))
                .isEmpty();
    }

    private static Arguments leaves(String what, String key, Consumer<PaperDay> change) {
        return Arguments.of(what, key, change);
    }
}
