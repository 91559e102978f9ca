package wainbook.isolation;

import static wainbook.isolation.Cast.*;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.function.Predicate;
import java.util.stream.Stream;
import wainbook.act.Moment;
import wainbook.isolation.IsolationSaying.*;
import wainbook.isolation.fact.Facts;
import wainbook.isolation.fact.Limits;
import wainbook.isolation.permit.LivePermit;
import wainbook.isolation.permit.Permit;
import wainbook.isolation.permit.Sanction;
import wainbook.isolation.permit.StopCause;
import wainbook.isolation.proof.Lock;
import wainbook.isolation.proof.Proof;
import wainbook.isolation.proof.Scope;
import wainbook.process.plan.Plan;
import wainbook.process.plan.Source;

/**
 * Goes through everything that can be said in every order, from nothing to wherever the guards let it. Two places of the walk
 * are the same when all later answers are the same: times count only by which window they lie in.
 */
final class Walk {

    /** A place reached: the folded state, the time, and how it was reached. */
    record Place(Isolation isolation, Instant now, int from, String who, IsolationSaying said) {}

    /** What somebody may try to say. */
    record Try(String who, IsolationSaying said) {}

    /** The usual figures without the least time between two points, which only slows hands down. */
    private static final Limits UNHURRIED = new Limits(
            LIMITS.deadVolt(),
            LIMITS.dangerDcVolt(),
            LIMITS.dangerAcVolt(),
            LIMITS.riseVolt(),
            LIMITS.reprobeAfterSeconds(),
            0,
            LIMITS.windowBaseSeconds(),
            LIMITS.windowPointSeconds(),
            LIMITS.permitWithinMinutes(),
            LIMITS.testerPercent());

    private static final Map<String, String> PLAYED =
            Map.of("", "-", AUTHORISED, "a", SECOND_AUTHORISED, "b", TECHNICIAN, "c", LEARNER, "d", OUTSIDER, "e");

    private final Plan plan;
    private final List<Map<String, String>> parts = List.of(PLAYED, swapped(PLAYED, AUTHORISED, SECOND_AUTHORISED));
    private final Facts facts;
    private final List<Try> always;
    private final List<String> people;
    private final Predicate<Try> roster;
    private final Set<String> landing;
    private final List<Place> places = new ArrayList<>();
    private final Map<String, Integer> known = new HashMap<>();
    private final Consumer<Walk> judge;
    private int current;
    private long edges;
    private Place arrived;
    private boolean first;

    /** @param landing sources that may be opened and landed, and whose points are measured */
    Walk(Plan plan, List<String> people, Predicate<Try> roster, Consumer<Walk> judge, Set<String> landing) {
        this.plan = plan;
        this.people = people;
        this.roster = roster;
        this.judge = judge;
        this.landing = landing;
        this.always = always();
        this.facts = facts(MORNING.plus(Duration.ofDays(90)), plan);
    }

    Walk run() {
        arrive(new Place(Isolation.none(), MORNING, -1, "", null), true);
        for (current = 0; current < places.size(); current++) {
            leave(places.get(current));
        }
        return this;
    }

    int states() {
        return places.size();
    }

    long edges() {
        return edges;
    }

    private void leave(Place place) {
        var standing = place.isolation().at(place.now());
        var tries = Stream.concat(always.stream(), only(place).stream()).toList();
        for (Try attempt : tries) {
            var moment = Moment.of(attempt.who(), place.now());
            if (Guards.allow(new Ask(standing, attempt.said(), moment, facts))) {
                edges++;
                var next = new Place(
                        place.isolation().and(attempt.said(), moment),
                        place.now(),
                        current,
                        attempt.who(),
                        attempt.said());
                arrive(next, roster.test(attempt));
            }
        }
        for (Instant next : times(place)) {
            edges++;
            arrive(new Place(place.isolation(), next, current, "", null), true);
        }
    }

    private void arrive(Place place, boolean goOn) {
        arrived = place;
        first = known.putIfAbsent(key(place), places.size()) == null;
        judge.accept(this);
        if (first && goOn) {
            places.add(place);
        } else if (first) {
            known.remove(key(place));
        }
    }

    /** The place just reached: every one of them, also where others were before. */
    Place here() {
        return arrived;
    }

    /** Whether nobody was here before. */
    boolean first() {
        return first;
    }

    Facts factsHere() {
        return facts;
    }

    List<String> people() {
        return people;
    }

    /** The plain entries that lead here. */
    List<RawEntries.Line> history() {
        var lines = new ArrayList<RawEntries.Line>();
        for (var place = arrived; place.from() >= 0; place = places.get(place.from())) {
            if (place.said() != null) {
                lines.add(new RawEntries.Line(place.said(), Moment.of(place.who(), place.now())));
            }
        }
        Collections.reverse(lines);
        return lines;
    }

    private static Map<String, String> swapped(Map<String, String> part, String one, String other) {
        var swapped = new HashMap<>(part);
        swapped.put(one, part.get(other));
        swapped.put(other, part.get(one));
        return Map.copyOf(swapped);
    }

    private List<Instant> times(Place place) {
        var times = new TreeSet<Instant>();
        deadlines(place.isolation())
                .filter(end -> !end.isBefore(place.now()))
                .forEach(end -> times.addAll(List.of(end, end.plusSeconds(1))));
        times.remove(place.now());
        return List.copyOf(times);
    }

    private static Stream<Instant> deadlines(Isolation isolation) {
        return Stream.of(
                        isolation.waitOverAt().stream(),
                        opensLater(isolation),
                        isolation.provingEndsAt().stream(),
                        isolation.proof().stream()
                                .flatMap(proof -> proof.points().stream())
                                .filter(read -> read.againAt().isEmpty())
                                .map(read -> read.at().plusSeconds(60)),
                        isolation.proof().flatMap(Proof::testerProvedAgainAt).stream()
                                .map(end -> end.plus(Duration.ofMinutes(30))),
                        isolation.permit().filter(permit -> !permit.ended()).map(Permit::validUntil).stream(),
                        isolation.sanction().map(Sanction::validUntil).stream(),
                        isolation.live().map(LivePermit::validUntil).stream())
                .flatMap(ends -> ends);
    }

    /** When a source that is open and not yet aboard would have waited long enough. */
    private static Stream<Instant> opensLater(Isolation isolation) {
        var counted = isolation.sources().stream().map(Source::code).toList();
        return isolation.openings().stream()
                .filter(seen -> !counted.contains(seen.source()))
                .map(seen -> seen.at()
                        .plus(Duration.ofMinutes(isolation.plan().orElseThrow().waitMinutes())));
    }

    /** What is tried everywhere by everybody. */
    private List<Try> always() {
        var tries = new ArrayList<Try>();
        all(tries, shutDown());
        plan.sources().forEach(source -> all(tries, new SourceOpened(source.code(), true)));
        people.forEach(who -> tries.add(new Try(who, lockedOn(who))));
        people.forEach(who -> tries.add(new Try(who, lockedOff(who))));
        people.forEach(who -> tries.add(new Try(who, restored(who))));
        all(tries, new TakenOver(level(3)));
        all(tries, testerProvedBefore(Scope.ALL_POINTS));
        all(tries, testerProvedBefore(Scope.POINTS_OF_WORK));
        landing.forEach(source -> all(tries, new SourceOpened(source, true)));
        for (String point : landing.isEmpty() ? List.of("JB-A", "JB-B") : List.of("JB-A", "JB-B", "JB-C")) {
            all(tries, measured(point, "0.3"));
            all(tries, measured(point, "12"));
            all(tries, measuredAgain(point, "0.3"));
            all(tries, measuredAgain(point, "2.3"));
        }
        all(tries, measured("JB-A", "-640"));
        all(tries, testerProvedAfter("240"));
        all(tries, testerProvedAfter("0"));
        all(tries, witnessed());
        all(tries, handedBack(true));
        all(tries, handedBack(false));
        all(tries, checked("COVERS"));
        all(tries, testEnded());
        all(tries, reportedAbandoned(TECHNICIAN));
        all(tries, removed(TECHNICIAN));
        all(tries, new OwnerTold(lockOf(TECHNICIAN)));
        tries.add(new Try(OUTSIDER, stopped(StopCause.BREAK)));
        tries.add(new Try(OUTSIDER, stopped(StopCause.SHIFT_END)));
        tries.add(new Try(OUTSIDER, new VehicleMoved(STATION, Optional.of(STATION))));
        tries.add(new Try(OUTSIDER, new SourceRecorded("PACK-2")));
        tries.add(new Try(OUTSIDER, new DangerReported(Danger.OTHER, "cab")));
        return List.copyOf(tries);
    }

    /** What carries a number or a time of its own. */
    private List<Try> only(Place place) {
        var isolation = place.isolation();
        var soon = place.now().plus(Duration.ofHours(1));
        int paper = isolation.nextPaper();
        var tries = new ArrayList<Try>();
        all(tries, new Planned(isolation.number() + 1, STATION, plan, UNHURRIED, level(3), Step.PLAN.confirmed()));
        all(tries, read(paper - 1));
        tries.add(new Try(TECHNICIAN, read(paper - 2)));
        for (String one : people) {
            all(tries, permit(paper, one, soon));
            all(tries, sanction(paper, one, soon));
            people.forEach(second -> all(tries, livePermit(paper, one, second, soon)));
        }
        isolation.permit().ifPresent(permit -> {
            all(tries, new PermitCancelled(permit.number()));
            all(
                    tries,
                    resumed(
                            permit.number(),
                            isolation.locks().stream().map(Lock::number).toList()));
        });
        return tries;
    }

    private void all(List<Try> tries, IsolationSaying saying) {
        people.forEach(who -> tries.add(new Try(who, saying)));
    }

    /** The same place whichever of two equal people plays which part. */
    private String key(Place place) {
        var now = place.now();
        var isolation = place.isolation().at(now);
        String first = null;
        for (Map<String, String> part : parts) {
            String key = key(isolation, now, part);
            first = first == null || key.compareTo(first) < 0 ? key : first;
        }
        return first;
    }

    private static String key(Isolation i, Instant now, Map<String, String> part) {
        var key = new StringBuilder(200);
        key.append(i.state)
                .append(part.get(i.isolator))
                .append(i.disturbed)
                .append(i.due)
                .append(i.charged);
        i.openings.stream().map(Isolation.Opened::source).sorted().forEach(key::append);
        opensLater(i).map(now::isBefore).forEach(key::append);
        key.append(i.landed.size())
                .append(i.waitOverAt().filter(end -> now.isBefore(end)).isPresent());
        names(key.append("locks"), i.locks.stream().map(Lock::owner), part);
        if (i.proof.isPresent()) {
            var proof = i.proof.get();
            key.append(proof.scope());
            if (!proof.complete()) {
                key.append(part.get(proof.prover()))
                        .append(now.isAfter(i.provingEndsAt().orElseThrow()));
            }
            proof.points().stream()
                    .map(read -> read.point()
                            + read.againAt().isPresent()
                            + now.isBefore(read.at().plusSeconds(60)))
                    .sorted()
                    .forEach(key::append);
            proof.testerProvedAgainAt().ifPresent(end -> key.append(now.isAfter(end.plus(Duration.ofMinutes(30)))));
        }
        if (i.permit.isPresent()) {
            var permit = i.permit.get();
            key.append(part.get(permit.receiver())).append(permit.ended()).append(permit.cancelled());
            key.append(permit.number() == i.papers);
            names(key.append("read"), permit.readers().stream(), part);
        }
        i.sanction.ifPresent(sanction ->
                key.append("sanction").append(part.get(sanction.holder())).append(sanction.accepted()));
        i.live.ifPresent(live -> key.append("live")
                .append(part.get(live.tester()))
                .append(part.get(live.second()))
                .append(live.testerRead())
                .append(live.secondRead()));
        names(key.append("worked"), i.workers.stream(), part);
        key.append(i.handedBack).append(i.checksPassed.size());
        names(key.append("abandoned"), i.abandoned.stream().map(Isolation.Abandoned::reportedBy), part);
        key.append(i.retiredLocks.size()).append(i.toBeTold.size());
        return key.toString();
    }

    private static void names(StringBuilder key, Stream<String> people, Map<String, String> part) {
        people.map(part::get).sorted().forEach(key::append);
    }
}
