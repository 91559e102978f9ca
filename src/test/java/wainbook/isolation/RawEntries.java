package wainbook.isolation;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import wainbook.act.Moment;
import wainbook.isolation.IsolationSaying.*;
import wainbook.isolation.fact.Facts;
import wainbook.isolation.fact.Person;
import wainbook.isolation.permit.StopCause;
import wainbook.isolation.proof.Scope;
import wainbook.process.plan.Plan;
import wainbook.process.plan.Point;
import wainbook.process.plan.Source;

/**
 * A second, independent judge: reads the plain list of what was said, knows nothing of the folded state or of the guards, and
 * says what is missing from it if somebody is let to work on the dead system. Written from the rules, not from the code.
 */
final class RawEntries {

    /** One entry as it stands in the stream. */
    record Line(IsolationSaying said, Moment moment) {
        String who() {
            return moment.who();
        }

        Instant at() {
            return moment.at();
        }
    }

    private final List<Line> lines;
    private final List<String> missing = new ArrayList<>();

    RawEntries(List<Line> lines) {
        this.lines = lines;
    }

    /** What is missing for this person to work dead at this time; empty if nothing. */
    List<String> missingForDeadWork(String person, Instant time, Facts facts) {
        int begin = last(Planned.class, 0);
        if (begin < 0) {
            return List.of("never planned");
        }
        var planned = (Planned) lines.get(begin).said();
        String isolator = isolatorSince(begin);
        need(nothingVoidsAfter(begin, planned.plan()), "something voided the isolation");
        need(secured(begin, planned.plan()), "a source was never opened");
        need(lockOn(person, begin), "own lock off");
        need(lockOn(isolator, begin), "isolator's lock off");
        need(facts.plan().filter(planned.plan()::equals).isPresent(), "the plan is not today's");
        need(level(facts, person, time) >= 1, "not competent today");
        need(level(facts, isolator, time) >= 2, "isolator not competent today");

        int permitAt = last(PermitIssued.class, begin);
        if (permitAt < 0) {
            return List.of("no permit");
        }
        var issue = lines.get(permitAt);
        var permit = (PermitIssued) issue.said();
        need(!issue.who().equals(isolator), "the isolator issued the permit");
        need(!issue.who().equals(permit.receiver()), "the receiver issued the permit");
        need(!time.isAfter(permit.validUntil()), "permit expired");
        need(lockOn(permit.receiver(), begin), "receiver's lock off");
        int received = readAfter(permitAt, permit.permit(), permit.receiver());
        need(received > permitAt, "the receiver never read the permit");
        need(stillReading(person, permitAt, permit.permit()), "never read the permit, or left since");
        need(supervised(person, permitAt, permit, facts, time, begin), "nobody supervises");

        full(begin, permitAt, received, planned.plan(), facts);
        sinceReceived(permitAt, received, permit, facts);
        need(!liveWorkOpen(time), "live work is open");
        return List.copyOf(missing);
    }

    private void full(int begin, int permitAt, int received, Plan plan, Facts facts) {
        var aboard = landed(permitAt, plan);
        var points = plan.pointsWith(aboard).stream().map(Point::code).toList();
        int before = lastBefore(TesterProvedBefore.class, permitAt);
        int after = lastBefore(TesterProvedAfter.class, permitAt);
        need(before > begin && after > before, "tester not proved before and after");
        if (before < 0 || after < before) {
            return;
        }
        for (int i = before; i < received; i++) {
            need(
                    !breaksProof(i),
                    "something happened between the proof and the work: "
                            + lines.get(i).said());
        }
        need(((TesterProvedBefore) lines.get(before).said()).scope() == Scope.ALL_POINTS, "not every point in scope");
        proof(before, after, points, facts);
        need(witnessed(after, permitAt, lines.get(before).who()), "nobody else witnessed the proof");
        need(within(lines.get(after).at(), lines.get(received).at(), Duration.ofMinutes(30)), "proof too old");
        // A pack that is open and not aboard yet has no charge to lose; once it is aboard its opening counts.
        var counted = plan.sourcesWith(landed(before, plan)).stream()
                .map(Source::code)
                .toList();
        var waitFrom = lines.subList(begin, before).stream()
                .filter(line -> line.said() instanceof SourceOpened open && counted.contains(open.source()))
                .map(Line::at)
                .max(Instant::compareTo)
                .orElse(Instant.MAX);
        need(
                !waitFrom.equals(Instant.MAX)
                        && !lines.get(before).at().isBefore(waitFrom.plus(Duration.ofMinutes(plan.waitMinutes()))),
                "waiting time cut short");
    }

    private void proof(int before, int after, List<String> points, Facts facts) {
        var start = ((TesterProvedBefore) lines.get(before).said()).proving();
        var end = ((TesterProvedAfter) lines.get(after).said()).proving();
        need(agrees(start) && agrees(end), "the tester was not right on the known source");
        need(start.tester().code().equals(end.tester().code()), "two testers");
        need(start.source().code().equals(end.source().code()), "two known sources");
        need(lines.get(before).who().equals(lines.get(after).who()), "two provers");
        need(start.tester().validUntil().isAfter(lines.get(after).at()), "tester past its calibration");
        need(
                facts.instrument(start.tester().code())
                        .filter(tester -> tester.withdrawnFrom()
                                .filter(from -> !from.isAfter(lines.get(after).at()))
                                .isEmpty())
                        .isPresent(),
                "tester withdrawn with effect before the proof");
        var window = Duration.ofSeconds(300 + 120L * points.size());
        need(within(lines.get(before).at(), lines.get(after).at(), window), "outside the proving window");
        for (String point : points) {
            int first = -1;
            int second = -1;
            for (int i = before + 1; i < after; i++) {
                var said = lines.get(i).said();
                if (said instanceof PointMeasured read && read.point().equals(point)) {
                    first = isDead(read.readings()) ? i : -1;
                    second = -1;
                } else if (said instanceof PointMeasuredAgain read
                        && read.point().equals(point)) {
                    second = first >= 0 && isDead(read.readings()) ? i : -1;
                    first = second < 0 ? -1 : first;
                }
            }
            need(second > first && first > 0, "point not read dead twice: " + point);
            need(
                    second > 0
                            && !lines.get(second)
                                    .at()
                                    .isBefore(lines.get(first).at().plusSeconds(60)),
                    "second touch too soon: " + point);
        }
    }

    /** After a break, the points of work are proved again before anybody goes on; after anything else a new permit is needed. */
    private void sinceReceived(int permitAt, int received, PermitIssued permit, Facts facts) {
        int stop = -1;
        for (int i = received + 1; i < lines.size(); i++) {
            var said = lines.get(i).said();
            if (said instanceof WorkStopped stopped) {
                need(stopped.cause() == StopCause.BREAK, "stopped for good after the permit");
                stop = i;
            } else if (said instanceof WorkResumed) {
                int before = lastBefore(TesterProvedBefore.class, i);
                int after = lastBefore(TesterProvedAfter.class, i);
                need(stop > 0 && before > stop && after > before, "resumed without a proof");
                if (before > 0 && after > before) {
                    proof(before, after, permit.pointsOfWork(), facts);
                    need(witnessed(after, i, lines.get(before).who()), "resumed without a witness");
                    need(within(lines.get(after).at(), lines.get(i).at(), Duration.ofMinutes(30)), "resumed too late");
                }
                need(!lines.get(i).at().isAfter(permit.validUntil()), "resumed after the permit had run out");
                stop = -1;
            } else if (breaksWork(i, permitAt, permit)) {
                need(false, "the permit had ended: " + said);
            }
        }
        need(stop < 0, "stopped and not resumed");
    }

    private boolean breaksProof(int i) {
        var said = lines.get(i).said();
        return said instanceof WorkStopped
                || said instanceof TakenOver
                || said instanceof SanctionIssued
                || said instanceof TestEnded
                || said instanceof VehicleMoved
                || said instanceof SourceRecorded
                || said instanceof DangerReported
                || (i > lastBefore(TesterProvedBefore.class, i + 1) && said instanceof TesterProvedBefore);
    }

    private boolean breaksWork(int i, int permitAt, PermitIssued permit) {
        var line = lines.get(i);
        if (line.said() instanceof HandedBack) {
            return line.who().equals(permit.receiver()) || readAfter(permitAt, permit.permit(), line.who()) < 0;
        }
        return line.said() instanceof TakenOver
                || line.said() instanceof SanctionIssued
                || line.said() instanceof PermitCancelled
                || line.said() instanceof VehicleMoved
                || line.said() instanceof SourceRecorded
                || line.said() instanceof TestEnded;
    }

    private boolean nothingVoidsAfter(int begin, Plan plan) {
        String isolator = lines.get(begin).who();
        Set<String> opened = new HashSet<>();
        for (Line line : lines.subList(begin, lines.size())) {
            var said = line.said();
            if (said instanceof TakenOver) {
                isolator = line.who();
            }
            if (said instanceof SourceOpened source) {
                opened.add(source.source());
            }
            boolean voids = said instanceof DangerReported
                    || said instanceof Restored
                    || said instanceof AbandonedLockRemoved
                    || (said instanceof LockedOff && line.who().equals(isolator))
                    || (said instanceof VehicleMoved && !plan.mayTravel())
                    || (said instanceof SourceRecorded recorded
                            && !(plan.foresees(recorded.source()) && opened.contains(recorded.source())))
                    || (said instanceof TesterProvedAfter after && !agrees(after.proving()))
                    || (said instanceof AtPoint at && at.readings().stream().anyMatch(read -> above(read, 60)));
            if (voids) {
                return false;
            }
        }
        return true;
    }

    private boolean secured(int begin, Plan plan) {
        var opened = lines.subList(begin, lines.size()).stream()
                .filter(line -> line.said() instanceof SourceOpened open && open.shownOpen())
                .map(line -> ((SourceOpened) line.said()).source())
                .toList();
        return last(ShutDown.class, begin) > begin
                && opened.containsAll(plan.sourcesWith(landed(lines.size(), plan)).stream()
                        .map(Source::code)
                        .toList());
    }

    /** What came aboard before this isolation is still aboard. */
    private List<String> landed(int end, Plan plan) {
        return lines.subList(0, end).stream()
                .filter(line -> line.said() instanceof SourceRecorded)
                .map(line -> ((SourceRecorded) line.said()).source())
                .filter(plan::foresees)
                .toList();
    }

    private String isolatorSince(int begin) {
        int over = last(TakenOver.class, begin);
        return lines.get(Math.max(over, begin)).who();
    }

    private boolean lockOn(String person, int begin) {
        boolean on = false;
        for (Line line : lines.subList(begin, lines.size())) {
            if (line.who().equals(person)) {
                on = line.said() instanceof LockedOn || (on && !(line.said() instanceof LockedOff));
            }
        }
        return on;
    }

    private boolean stillReading(String person, int permitAt, int permit) {
        boolean reading = false;
        for (Line line : lines.subList(permitAt, lines.size())) {
            if (line.who().equals(person)) {
                boolean reads = line.said() instanceof PaperRead read && read.paper() == permit;
                boolean leaves = line.said() instanceof LockedOff || line.said() instanceof HandedBack;
                reading = reads || (reading && !leaves);
            }
        }
        return reading;
    }

    private boolean supervised(String person, int permitAt, PermitIssued permit, Facts facts, Instant time, int begin) {
        return level(facts, person, time) >= 2
                || facts.people().stream()
                        .map(Person::number)
                        .anyMatch(other -> level(facts, other, time) >= 2
                                && lockOn(other, begin)
                                && stillReading(other, permitAt, permit.permit()));
    }

    private boolean liveWorkOpen(Instant time) {
        int issued = last(LivePermitIssued.class, 0);
        if (issued < 0) {
            return false;
        }
        var live = (LivePermitIssued) lines.get(issued).said();
        boolean closed = lines.subList(issued, lines.size()).stream()
                .anyMatch(line -> line.said() instanceof WorkStopped
                        || line.said() instanceof DangerReported
                        || line.said() instanceof VehicleMoved
                        || line.said() instanceof Planned
                        || (line.said() instanceof HandedBack
                                && List.of(live.tester(), live.second()).contains(line.who())));
        boolean ranOut = lines.subList(issued, lines.size()).stream()
                .anyMatch(line -> line.at().isAfter(live.validUntil()));
        return !closed && !ranOut && !time.isAfter(live.validUntil());
    }

    private boolean witnessed(int after, int until, String prover) {
        return lines.subList(after, until).stream()
                .anyMatch(line ->
                        line.said() instanceof ProofWitnessed && !line.who().equals(prover));
    }

    private int readAfter(int index, int paper, String person) {
        for (int i = index + 1; i < lines.size(); i++) {
            if (lines.get(i).who().equals(person)
                    && lines.get(i).said() instanceof PaperRead read
                    && read.paper() == paper) {
                return i;
            }
        }
        return -1;
    }

    private static int level(Facts facts, String person, Instant time) {
        return facts.people().stream()
                .filter(known -> known.number().equals(person))
                .filter(known -> known.validUntil().isAfter(time))
                .filter(known -> known.withdrawnFrom()
                        .filter(from -> !from.isAfter(time))
                        .isEmpty())
                .mapToInt(Person::level)
                .max()
                .orElse(0);
    }

    private static boolean isDead(List<Reading> readings) {
        return readings.size() == 3 && readings.stream().noneMatch(read -> above(read, 5));
    }

    private static boolean above(Reading read, int volt) {
        return read.volt().abs().compareTo(BigDecimal.valueOf(volt)) > 0;
    }

    private static boolean agrees(Proving proving) {
        return Math.abs(proving.readingVolt().doubleValue()
                                / proving.sourceVolt().doubleValue()
                        - 1)
                <= 0.1;
    }

    private static boolean within(Instant from, Instant to, Duration longest) {
        return !to.isBefore(from) && !to.isAfter(from.plus(longest));
    }

    private int last(Class<? extends IsolationSaying> kind, int from) {
        int found = lastBefore(kind, lines.size());
        return found >= from ? found : -1;
    }

    private int lastBefore(Class<? extends IsolationSaying> kind, int end) {
        for (int i = end - 1; i >= 0; i--) {
            if (kind.isInstance(lines.get(i).said())) {
                return i;
            }
        }
        return -1;
    }

    private void need(boolean holds, String otherwise) {
        if (!holds) {
            missing.add(otherwise);
        }
    }
}
