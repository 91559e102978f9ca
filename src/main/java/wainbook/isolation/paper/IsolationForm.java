package wainbook.isolation.paper;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import wainbook.isolation.IsolationSaying.Reading;
import wainbook.isolation.permit.Precaution;

/**
 * An isolation form as it was filled in by hand. People are numbers; times are to the minute. What the form leaves blank is
 * absent here, and {@link wainbook.isolation.step.Replay} says what that means.
 *
 * @param isolator who made the isolation
 * @param begunAt when the plan was taken in hand
 * @param confirmed the precautions that are ticked
 * @param locks the isolator’s own among them
 * @param touches first and second touch of each point
 * @param checks before the last lock came off
 */
public record IsolationForm(
        String isolator,
        Instant begunAt,
        List<Precaution> confirmed,
        Optional<ShutDown> shutDown,
        List<Opened> opened,
        List<Locked> locks,
        Optional<Proved> provedBefore,
        List<Touched> touches,
        Optional<Proved> provedAfter,
        Optional<Signed> witness,
        Optional<Permitted> permit,
        List<Signed> readers,
        Optional<Returned> handedBack,
        Optional<Signed> cancelled,
        List<Checked> checks,
        Optional<Restored> restored) {

    /** A person’s sign, and when. */
    public record Signed(String who, Instant at) {}

    /** Where the keys went. */
    public record ShutDown(Instant at, String box, List<String> keys) {
        public ShutDown {
            keys = List.copyOf(keys);
        }
    }

    /** A source seen open. */
    public record Opened(String source, Instant at) {}

    /** A personal lock and when it went on and came off. */
    public record Locked(String who, String lock, String tag, Instant onAt, Optional<Instant> offAt) {}

    /** The tester on a known source, both in volts. */
    public record Proved(
            String who, Instant at, String tester, String source, BigDecimal sourceVolt, BigDecimal readingVolt) {}

    /** A point touched: the first time, or again. */
    public record Touched(String point, boolean again, Instant at, List<Reading> readings) {
        public Touched {
            readings = List.copyOf(readings);
        }
    }

    /** The permit to work that was written on the form. */
    public record Permitted(
            String issuer, Instant at, String receiver, String work, List<String> pointsOfWork, Instant validUntil) {
        public Permitted {
            pointsOfWork = List.copyOf(pointsOfWork);
        }
    }

    /** The receiver’s hand-back; {@code opened} if a high-voltage joint or cover was opened. */
    public record Returned(String who, Instant at, boolean opened) {}

    /** One check before restoration. */
    public record Checked(String check, String who, Instant at) {}

    /** The last lock off. */
    public record Restored(String who, Instant at, String lock) {}

    public IsolationForm {
        confirmed = List.copyOf(confirmed);
        opened = List.copyOf(opened);
        locks = List.copyOf(locks);
        touches = List.copyOf(touches);
        readers = List.copyOf(readers);
        checks = List.copyOf(checks);
    }

    /** Whether the form says that it was taken to its end: every lock off, and the last of them with the restoration. */
    public boolean closed() {
        return restored.filter(last -> locks.stream()
                        .filter(lock -> !lock.lock().equals(last.lock()))
                        .allMatch(lock -> lock.offAt()
                                .filter(off -> !off.isAfter(last.at()))
                                .isPresent()))
                .isPresent();
    }

    /** Everybody who is named on it. */
    public Set<String> people() {
        var people = new TreeSet<String>();
        people.add(isolator);
        locks.forEach(lock -> people.add(lock.who()));
        Stream.of(provedBefore, provedAfter)
                .flatMap(Optional::stream)
                .map(Proved::who)
                .forEach(people::add);
        Stream.of(witness, cancelled).flatMap(Optional::stream).map(Signed::who).forEach(people::add);
        permit.ifPresent(paper -> people.addAll(List.of(paper.issuer(), paper.receiver())));
        readers.forEach(reader -> people.add(reader.who()));
        handedBack.ifPresent(back -> people.add(back.who()));
        checks.forEach(check -> people.add(check.who()));
        restored.ifPresent(last -> people.add(last.who()));
        return people;
    }

    /** Tester and known source, each as often as it is named. */
    public List<Proved> provings() {
        return Stream.of(provedBefore, provedAfter).flatMap(Optional::stream).toList();
    }

    /** Every time that stands on it but the end of the permit, which may lie ahead. */
    public List<Instant> times() {
        var times = new ArrayList<Instant>();
        times.add(begunAt);
        shutDown.ifPresent(said -> times.add(said.at()));
        opened.forEach(source -> times.add(source.at()));
        locks.forEach(lock -> {
            times.add(lock.onAt());
            lock.offAt().ifPresent(times::add);
        });
        provings().forEach(proved -> times.add(proved.at()));
        touches.forEach(touch -> times.add(touch.at()));
        Stream.of(witness, cancelled).flatMap(Optional::stream).map(Signed::at).forEach(times::add);
        permit.ifPresent(paper -> times.add(paper.at()));
        readers.forEach(reader -> times.add(reader.at()));
        handedBack.ifPresent(back -> times.add(back.at()));
        checks.forEach(check -> times.add(check.at()));
        restored.ifPresent(last -> times.add(last.at()));
        return times;
    }
}
