package wainbook.isolation;

import static wainbook.isolation.Cast.*;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.stream.Stream;
import wainbook.act.Moment;
import wainbook.isolation.IsolationSaying.*;
import wainbook.process.plan.Plan;

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

    private final Plan plan;
    private final List<String> people;
    private final boolean papers;
    private final List<Place> places = new ArrayList<>();
    private final Map<String, Integer> known = new HashMap<>();
    private final Consumer<Walk> judge;
    private int current;
    private long edges;

    Walk(Plan plan, List<String> people, boolean papers, Consumer<Walk> judge) {
        this.plan = plan;
        this.people = people;
        this.papers = papers;
        this.judge = judge;
    }

    Walk run() {
        arrive(new Place(Isolation.none(), MORNING, -1, "", null));
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

    List<Place> places() {
        return Collections.unmodifiableList(places);
    }

    private void leave(Place place) {
        var facts = facts(place.now(), plan);
        for (Try attempt : tries(place)) {
            var moment = Moment.of(attempt.who(), place.now());
            if (place.isolation().reasonsAgainst(attempt.said(), moment, facts).isEmpty()) {
                edges++;
                arrive(new Place(
                        place.isolation().and(attempt.said(), moment),
                        place.now(),
                        current,
                        attempt.who(),
                        attempt.said()));
            }
        }
        for (Instant next : times(place)) {
            edges++;
            arrive(new Place(place.isolation(), next, current, "", null));
        }
    }

    private Place arrived;

    private void arrive(Place place) {
        arrived = place;
        judge.accept(this);
        if (known.putIfAbsent(key(place), places.size()) == null) {
            places.add(place);
        }
    }

    Place here() {
        return arrived;
    }

    Facts factsHere() {
        return facts(arrived.now(), plan);
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

    private Stream<Try> each(java.util.function.Function<String, IsolationSaying> saying) {
        return people.stream().map(who -> new Try(who, saying.apply(who)));
    }

    private Stream<Try> all(IsolationSaying saying) {
        return each(who -> saying);
    }

    private List<Try> tries(Place place) {
        var isolation = place.isolation();
        var soon = place.now().plus(Duration.ofHours(1));
        int paper = isolation.nextPaper();
        var tries = new ArrayList<Stream<Try>>();
        tries.add(all(new Planned(isolation.number() + 1, STATION, plan, UNHURRIED, level(3), Step.PLAN.confirmed())));
        tries.add(all(shutDown()));
        Stream.concat(plan.sources().stream(), plan.later().stream().limit(plan.mayTravel() ? 1 : 0))
                .forEach(source -> tries.add(all(new SourceOpened(source.code(), true))));
        tries.add(each(Cast::lockedOn));
        tries.add(each(Cast::lockedOff));
        tries.add(all(new TakenOver(level(3))));
        tries.add(all(testerProvedBefore(Scope.ALL_POINTS)));
        tries.add(all(testerProvedBefore(Scope.POINTS_OF_WORK)));
        for (String point : isolation.points()) {
            tries.add(all(measured(point, "0.3")));
            tries.add(all(measured(point, "12")));
            tries.add(all(measuredAgain(point, "0.3")));
            tries.add(all(measuredAgain(point, "2.3")));
        }
        tries.add(Stream.of(new Try(AUTHORISED, measured("JB-A", "-640"))));
        tries.add(all(testerProvedAfter("240")));
        tries.add(all(testerProvedAfter("0")));
        tries.add(all(witnessed()));
        people.forEach(receiver -> tries.add(all(permit(paper, receiver, soon))));
        tries.add(all(read(paper - 1)));
        tries.add(Stream.of(new Try(TECHNICIAN, read(paper - 2))));
        for (StopCause cause : List.of(StopCause.BREAK, StopCause.SHIFT_END)) {
            tries.add(Stream.of(new Try(OUTSIDER, stopped(cause))));
        }
        tries.add(all(handedBack(true)));
        tries.add(Stream.of(new Try(TECHNICIAN, handedBack(false))));
        isolation.permit().ifPresent(permit -> {
            tries.add(all(new PermitCancelled(permit.number())));
            tries.add(all(resumed(
                    permit.number(),
                    isolation.locks().stream().map(Lock::number).toList())));
        });
        tries.add(all(checked("COVERS")));
        tries.add(each(Cast::restored));
        tries.add(Stream.of(new Try(OUTSIDER, new VehicleMoved(STATION, java.util.Optional.of(STATION)))));
        tries.add(Stream.of(new Try(OUTSIDER, new SourceRecorded("PACK-2"))));
        tries.add(Stream.of(new Try(OUTSIDER, new DangerReported(Danger.OTHER, "cab"))));
        if (papers) {
            people.forEach(holder -> tries.add(all(sanction(paper, holder, soon))));
            tries.add(all(testEnded()));
            people.forEach(tester -> people.forEach(second -> tries.add(all(livePermit(paper, tester, second, soon)))));
            tries.add(all(reportedAbandoned(TECHNICIAN)));
            tries.add(all(removed(TECHNICIAN)));
            tries.add(all(new OwnerTold(lockOf(TECHNICIAN))));
        }
        return tries.stream().flatMap(some -> some).toList();
    }

    private String key(Place place) {
        var now = place.now();
        var i = place.isolation().at(now);
        var key = new StringBuilder();
        key.append(i.state).append(i.isolator).append(i.disturbed).append(i.due).append(i.charged);
        key.append(i.openings.stream().map(Isolation.Opened::source).sorted().toList())
                .append(i.landed);
        key.append(i.waitOverAt().map(end -> !now.isBefore(end)));
        i.locks.stream()
                .map(lock -> lock.owner() + (lock.isolation() == i.number))
                .sorted()
                .forEach(key::append);
        i.proof.ifPresent(proof -> {
            key.append(proof.prover()).append(proof.scope()).append(proof.witness());
            key.append(i.provingEndsAt().map(now::isAfter));
            proof.points().stream()
                    .map(read -> read.point()
                            + read.againAt().isPresent()
                            + now.isBefore(read.at().plusSeconds(60)))
                    .sorted()
                    .forEach(key::append);
            key.append(proof.testerProvedAgainAt().map(end -> now.isAfter(end.plus(Duration.ofMinutes(30)))));
        });
        i.permit.ifPresent(permit -> key.append(permit.ended() ? "" : permit.issuer())
                .append(permit.receiver())
                .append(permit.readers().stream().sorted().toList())
                .append(permit.ended())
                .append(permit.cancelled())
                .append(permit.number() == i.papers));
        i.sanction.ifPresent(sanction -> key.append(sanction.holder()).append(sanction.accepted()));
        i.live.ifPresent(live -> key.append(live.issuer())
                .append(live.tester())
                .append(live.second())
                .append(live.testerRead())
                .append(live.secondRead()));
        key.append(i.workers)
                .append(i.opened)
                .append(i.handedBack)
                .append(i.checksPassed.stream().sorted().toList());
        i.abandoned.forEach(lock -> key.append("abandoned").append(lock.reportedBy()));
        key.append(i.retiredLocks.isEmpty()).append(i.toBeTold.isEmpty());
        return key.toString();
    }
}
