package wainbook.isolation;

import static wainbook.isolation.fact.Sources.*;
import static wainbook.process.sheet.Condition.DEAD;
import static wainbook.process.sheet.Condition.LIVE;
import static wainbook.process.sheet.Condition.NO_SOURCE_ABOARD;
import static wainbook.process.sheet.Condition.TEST_UNDER_ISOLATION;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import wainbook.act.Reason;
import wainbook.isolation.fact.Facts;
import wainbook.isolation.permit.LivePermit;
import wainbook.isolation.permit.Permit;
import wainbook.isolation.permit.Sanction;
import wainbook.process.sheet.Condition;

/**
 * Whether a person may work under an electrical condition at this instant: what the entries say, and the clock, and today’s
 * competences, calibrations and withdrawals. One line a rule, as in {@link Guards}.
 */
final class Permission {

    record Wish(Condition condition, String person, Instant time, Facts facts, Isolation isolation) {

        int level() {
            return levelOf(person);
        }

        int levelOf(String other) {
            return facts.person(other).levelAt(time);
        }

        boolean ownLockOn() {
            return isolation.lockOn(person);
        }

        boolean isolatorReady() {
            return levelOf(isolation.isolator()) >= 2;
        }

        boolean isolatorLockOn() {
            return isolation.lockOn(isolation.isolator());
        }

        boolean permitRead() {
            return isolation
                    .permit()
                    .filter(permit -> permit.readers().contains(person))
                    .isPresent();
        }

        boolean receiverThere() {
            return isolation
                    .permit()
                    .filter(permit -> isolation.lockOn(permit.receiver()))
                    .isPresent();
        }

        /** A person at level 1 works only while somebody at level 2 works beside them, lock on and permit read. */
        boolean supervised() {
            return level() >= 2
                    || isolation.permit().map(Permit::readers).orElse(List.of()).stream()
                            .anyMatch(reader -> levelOf(reader) >= 2 && isolation.lockOn(reader));
        }

        boolean atItsStation() {
            return isolation.station().equals(facts.station());
        }

        boolean planCurrent() {
            return isolation.plan().equals(facts.plan());
        }

        boolean stateIs(State... wanted) {
            return Set.of(wanted).contains(isolation.state());
        }

        boolean holds() {
            return isolation
                    .sanction()
                    .filter(sanction -> sanction.holder().equals(person))
                    .isPresent();
        }

        boolean alone() {
            return isolation.locksOnBesides(isolation.isolator(), person).isEmpty();
        }

        boolean valid(Optional<String> code) {
            return code.flatMap(facts::instrument)
                    .filter(instrument -> instrument.validAt(time))
                    .isPresent();
        }

        Optional<LivePermit> live() {
            return isolation.live();
        }
    }

    private record Rule(String key, String source, Set<Condition> conditions, Predicate<Wish> holds) {}

    private static final Set<Condition> ISOLATED = Set.of(DEAD, TEST_UNDER_ISOLATION);

    private static final Set<String> WITHOUT = Set.of("notInForce", "notUnderTest", "noLivePermit");
    private static final Set<String> PERSONAL =
            Set.of("notInstructed", "notAuthorised", "notForLiveWork", "isolationOpen");

    private static final List<Rule> TABLE = List.of(
            new Rule("notInForce", FIVE_RULES, Set.of(DEAD), w -> w.stateIs(State.IN_FORCE)),
            new Rule("notInstructed", COMPETENT, Set.of(DEAD), w -> w.level() >= 1),
            new Rule("notSupervised", LEVELS, Set.of(DEAD), Wish::supervised),
            new Rule("permitNotRead", PERMITS, Set.of(DEAD), Wish::permitRead),
            new Rule("receiverGone", PERMITS, Set.of(DEAD), Wish::receiverThere),
            new Rule("ownLockMissing", OWN_LOCK, ISOLATED, Wish::ownLockOn),
            new Rule("isolatorLockMissing", FIVE_RULES, ISOLATED, Wish::isolatorLockOn),
            new Rule("isolatorNotAuthorised", COMPETENT, ISOLATED, Wish::isolatorReady),
            new Rule("planSuperseded", WORKS, ISOLATED, Wish::planCurrent),
            new Rule("movedSince", PRACTICE, ISOLATED, Wish::atItsStation),
            new Rule("proofDoubted", PRACTICE, ISOLATED, w -> w.isolation().undoubted(w.facts())),
            new Rule("liveWorkOpen", WORKS, ISOLATED, w -> w.live().isEmpty()),
            new Rule("notUnderTest", PERMITS, Set.of(TEST_UNDER_ISOLATION), w -> w.stateIs(State.UNDER_TEST)),
            new Rule("notTheHolder", PERMITS, Set.of(TEST_UNDER_ISOLATION), Wish::holds),
            new Rule("notAuthorised", LEVELS, Set.of(TEST_UNDER_ISOLATION), w -> w.level() >= 2),
            new Rule("othersLocksOn", PRACTICE, Set.of(TEST_UNDER_ISOLATION), Wish::alone),
            new Rule(
                    "insulationTesterUnfit",
                    PRACTICE,
                    Set.of(TEST_UNDER_ISOLATION),
                    w -> w.valid(w.isolation().sanction().map(Sanction::instrument))),
            new Rule(
                    "noLivePermit",
                    DEAD_OR_LIVE,
                    Set.of(LIVE),
                    w -> w.live().filter(LivePermit::accepted).isPresent()),
            new Rule("isolationOpen", WORKS, Set.of(LIVE), w -> w.stateIs(State.LIVE, State.READY)),
            new Rule(
                    "notTheTester",
                    PERMITS,
                    Set.of(LIVE),
                    w -> w.live()
                            .filter(live -> live.tester().equals(w.person()))
                            .isPresent()),
            new Rule("notForLiveWork", LEVELS, Set.of(LIVE), w -> w.level() >= 3),
            new Rule(
                    "secondNotAuthorised",
                    COMPETENT,
                    Set.of(LIVE),
                    w -> w.live().filter(live -> w.levelOf(live.second()) >= 2).isPresent()),
            new Rule("glovesUnfit", GLOVES, Set.of(LIVE), w -> w.valid(w.live().map(LivePermit::gloves))),
            new Rule(
                    "sourceMayBeAboard",
                    FIVE_RULES,
                    Set.of(NO_SOURCE_ABOARD),
                    w -> w.isolation().noSource().isPresent()));

    private Permission() {}

    /** Where there is no paper at all, what would be asked of it is left unsaid; who may never work is always told so. */
    static List<Reason> reasons(Wish wish) {
        List<Rule> unmet = unmet(wish).toList();
        boolean nothing = unmet.stream().anyMatch(rule -> WITHOUT.contains(rule.key()));
        return unmet.stream()
                .filter(rule -> !nothing || WITHOUT.contains(rule.key()) || PERSONAL.contains(rule.key()))
                .map(rule -> Reason.of("isolation." + rule.key(), rule.source()))
                .toList();
    }

    /** The same answer as {@link #reasons} being empty, without saying why. */
    static boolean allow(Wish wish) {
        return unmet(wish).findAny().isEmpty();
    }

    private static Stream<Rule> unmet(Wish wish) {
        return TABLE.stream()
                .filter(rule -> rule.conditions().contains(wish.condition())
                        && !rule.holds().test(wish));
    }

    static List<String> keys() {
        return TABLE.stream().map(Rule::key).distinct().toList();
    }
}
