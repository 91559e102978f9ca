package wainbook.isolation;

import static org.assertj.core.api.Assertions.assertThat;
import static wainbook.isolation.Cast.*;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.Execution;
import org.junit.jupiter.api.parallel.ExecutionMode;
import wainbook.act.Moment;
import wainbook.isolation.IsolationSaying.*;
import wainbook.isolation.fact.Facts;
import wainbook.isolation.fact.Instrument;
import wainbook.isolation.permit.StopCause;
import wainbook.process.plan.Plan;
import wainbook.process.sheet.Condition;

/**
 * Tries everything, in every order. At every place reached, {@link RawEntries} judges from the plain entries whoever is let
 * to work dead; live and dead work never stand beside each other; and the safe-making steps work.
 */
@Execution(ExecutionMode.CONCURRENT)
class ExhaustiveWalkTest {

    private List<Facts> days = List.of();

    private static final List<String> SHORT_HANDED = List.of(AUTHORISED, SECOND_AUTHORISED, TECHNICIAN, OUTSIDER);

    private int workedWithThePackAboard;
    private final Map<Condition, Integer> allowed = new EnumMap<>(Condition.class);

    /** Anybody may play any part. */
    @Test
    void two_authorised_people_and_an_outsider_in_any_part() {
        walk(PLAN, List.of(AUTHORISED, SECOND_AUTHORISED, OUTSIDER), anything -> true, Set.of());
        assertThat(allowed).containsKeys(Condition.TEST_UNDER_ISOLATION, Condition.LIVE);
    }

    /** Everybody tries everything and every try is judged; the walk goes on where people keep to their parts. */
    @Test
    void two_technicians_two_authorised_people_and_an_outsider_in_their_parts() {
        walk(PLAN, PEOPLE, ExhaustiveWalkTest::inTheirParts, Set.of());
        assertThat(allowed).containsKeys(Condition.DEAD);
    }

    /** The vehicle is moved with its locks on, as its plan allows. */
    @Test
    void the_locks_travel_with_the_vehicle() {
        walk(TRAVELLING_PLAN, SHORT_HANDED, ExhaustiveWalkTest::inTheirParts, Set.of());
        assertThat(allowed).containsKeys(Condition.DEAD);
    }

    /** A pack that the plan foresees is opened and landed at any time, and its point is proved with the others. */
    @Test
    void a_pack_is_landed_while_others_work() {
        walk(PLAN, SHORT_HANDED, ExhaustiveWalkTest::inTheirParts, Set.of("PACK-2"));
        assertThat(allowed).containsKeys(Condition.DEAD);
        assertThat(workedWithThePackAboard).isPositive();
    }

    private void walk(Plan plan, List<String> people, Predicate<Walk.Try> parts, Set<String> landing) {
        days = days(plan);
        var walk = new Walk(plan, people, parts, this::judge, landing).run();
        System.out.println(people.size() + " people" + (plan.mayTravel() ? ", locks travel" : "") + landing + ": "
                + walk.states() + " states, " + walk.edges() + " steps and waits, work allowed " + allowed);
        assertThat(walk.states()).isGreaterThan(5_000);
    }

    private static boolean inTheirParts(Walk.Try attempt) {
        var step = Step.of(attempt.said());
        if (attempt.said() instanceof PermitIssued permit && !permit.receiver().equals(TECHNICIAN)) {
            return false;
        }
        if (Set.of(Step.ISSUE_SANCTION, Step.ISSUE_LIVE_PERMIT, Step.TAKE_OVER).contains(step)) {
            return false;
        }
        return switch (attempt.who()) {
            case AUTHORISED -> step != Step.READ_PAPER;
            case SECOND_AUTHORISED ->
                !Set.of(Step.PLAN, Step.PROVE_TESTER_BEFORE, Step.READ_PAPER).contains(step);
            case TECHNICIAN, LEARNER ->
                Set.of(Step.LOCK_ON, Step.LOCK_OFF, Step.READ_PAPER, Step.HAND_BACK)
                        .contains(step);
            default -> true;
        };
    }

    private void judge(Walk walk) {
        var place = walk.here();
        var standing = place.isolation().at(place.now());
        boolean near = Set.of(State.IN_FORCE, State.UNDER_TEST).contains(standing.state())
                || standing.live().isPresent();
        for (Facts day : near || walk.first() ? days : days.subList(0, 1)) {
            boolean dead = false;
            boolean live = false;
            for (String who : walk.people()) {
                if (works(Condition.DEAD, who, walk, standing, day)) {
                    dead = true;
                    workedWithThePackAboard += standing.aboard().isEmpty() ? 0 : 1;
                    var missing = new RawEntries(walk.history()).missingForDeadWork(who, place.now(), day);
                    if (!missing.isEmpty()) {
                        throw new AssertionError(who + " was let to work dead: " + missing + "\n" + walk.history());
                    }
                }
                live |= works(Condition.LIVE, who, walk, standing, day);
                dead |= works(Condition.TEST_UNDER_ISOLATION, who, walk, standing, day);
            }
            assertThat(dead && live).isFalse();
        }
        assertThat(standing.state() == State.IN_FORCE && standing.live().isPresent())
                .isFalse();
        if (walk.first()) {
            safeMaking(walk, standing);
        }
    }

    private boolean works(Condition condition, String who, Walk walk, Isolation standing, Facts day) {
        boolean may =
                Permission.allow(new Permission.Wish(condition, who, walk.here().now(), day, standing));
        if (may) {
            allowed.merge(condition, 1, Integer::sum);
        }
        return may;
    }

    private void safeMaking(Walk walk, Isolation standing) {
        for (String who : walk.people()) {
            var everybody = walk.people();
            then(walk, standing, who, stopped(StopCause.BREAK), everybody);
            then(walk, standing, who, stopped(StopCause.ALARM), everybody);
            then(walk, standing, who, new DangerReported(Danger.HEAT_OR_FIRE, "pack"), everybody);
            then(walk, standing, who, handedBack(true), List.of(who));
            then(walk, standing, who, handedBack(false), List.of(who));
            if (standing.lockOn(who)) {
                then(walk, standing, who, lockedOff(who), List.of(who));
            }
        }
    }

    /** The step is taken, whatever the state; and afterwards these people may not work where electricity matters. */
    private void then(Walk walk, Isolation standing, String who, IsolationSaying said, List<String> idle) {
        var moment = Moment.of(who, walk.here().now());
        for (Facts day : days) {
            if (!Guards.allow(new Ask(standing, said, moment, day))) {
                throw new AssertionError(who + " was refused " + said + " when " + standing.state());
            }
        }
        var after = standing.and(said, moment);
        for (String person : idle) {
            for (var condition : Set.of(Condition.DEAD, Condition.TEST_UNDER_ISOLATION)) {
                assertThat(Permission.allow(new Permission.Wish(condition, person, moment.at(), days.get(0), after)))
                        .isFalse();
            }
            boolean live =
                    Permission.allow(new Permission.Wish(Condition.LIVE, person, moment.at(), days.get(0), after));
            assertThat(live && !(said instanceof LockedOff)).isFalse();
        }
    }

    /** An ordinary day, and days on which something that was good no longer is. */
    private static List<Facts> days(Plan plan) {
        var other = plan.mayTravel() ? PLAN : TRAVELLING_PLAN;
        var day = Cast.facts(MORNING.plus(java.time.Duration.ofDays(90)), plan);
        var instruments = day.instruments();
        var withdrawn = instruments.stream()
                .map(one -> one.code().equals(TESTER.code())
                        ? new Instrument(
                                one.code(),
                                one.sort(),
                                one.ratedVolt(),
                                one.validUntil(),
                                Optional.of(MORNING),
                                Optional.empty())
                        : one)
                .toList();
        return Stream.concat(
                        Stream.of(
                                day,
                                Cast.facts(day.shiftEnd(), plan, AUTHORITIES, withdrawn),
                                Cast.facts(day.shiftEnd(), other)),
                        Arrays.asList(AUTHORISED, TECHNICIAN).stream()
                                .map(gone -> Cast.facts(
                                        day.shiftEnd(),
                                        plan,
                                        AUTHORITIES.stream()
                                                .filter(person ->
                                                        !person.number().equals(gone))
                                                .toList(),
                                        instruments)))
                .toList();
    }
}
