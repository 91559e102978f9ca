package wainbook.isolation.proof;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import wainbook.isolation.IsolationSaying;
import wainbook.isolation.IsolationSaying.Reading;
import wainbook.isolation.fact.Facts;

/**
 * A proof of the dead state as far as it has come: tester proved, points measured and touched a second time, tester proved
 * again, witnessed. Only {@link #complete()} proves anything.
 */
public record Proof(
        String prover,
        Instant begunAt,
        Scope scope,
        String tester,
        String source,
        List<PointRead> points,
        Optional<Instant> testerProvedAgainAt,
        Optional<String> witness) {

    /** A point that read dead at the first touch, and perhaps at the second. */
    public record PointRead(String point, Instant at, BigDecimal highestVolt, Optional<Instant> againAt) {}

    public static Proof begun(String prover, Instant at, IsolationSaying.TesterProvedBefore said) {
        var proving = said.proving();
        return new Proof(
                prover,
                at,
                said.scope(),
                proving.tester().code(),
                proving.source().code(),
                List.of(),
                Optional.empty(),
                Optional.empty());
    }

    public boolean complete() {
        return testerProvedAgainAt.isPresent() && witness.isPresent();
    }

    public Optional<PointRead> point(String code) {
        return points.stream().filter(read -> read.point().equals(code)).findFirst();
    }

    /** Whether every one of these points read dead twice. */
    public boolean covers(Collection<String> codes) {
        return codes.stream()
                .allMatch(code -> point(code).flatMap(PointRead::againAt).isPresent());
    }

    /** When the tester last touched anything. */
    public Instant lastTouchAt() {
        return points.stream()
                .flatMap(read -> Stream.concat(Stream.of(read.at()), read.againAt().stream()))
                .max(Instant::compareTo)
                .orElse(begunAt);
    }

    public boolean undoubted(Facts facts, String isolator) {
        var at = testerProvedAgainAt.orElse(begunAt);
        return Stream.of(tester, source)
                        .allMatch(code -> facts.instrument(code)
                                .filter(used -> !used.doubtedAt(at))
                                .isPresent())
                && Stream.of(prover, isolator)
                        .noneMatch(person -> facts.person(person).doubtedAt(at));
    }

    public Proof measured(String code, List<Reading> readings, Instant at) {
        return replaced(code, List.of(new PointRead(code, at, highest(readings), Optional.empty())));
    }

    public Proof measuredAgain(String code, Instant at) {
        return replaced(
                code,
                point(code).stream()
                        .map(read -> new PointRead(code, read.at(), read.highestVolt(), Optional.of(at)))
                        .toList());
    }

    public Proof failedAt(String code) {
        return replaced(code, List.of());
    }

    public Proof testerProvedAgain(Instant at) {
        return new Proof(prover, begunAt, scope, tester, source, points, Optional.of(at), witness);
    }

    public Proof witnessedBy(String person) {
        return new Proof(prover, begunAt, scope, tester, source, points, testerProvedAgainAt, Optional.of(person));
    }

    public static BigDecimal highest(List<Reading> readings) {
        return readings.stream()
                .map(reading -> reading.volt().abs())
                .max(BigDecimal::compareTo)
                .orElse(BigDecimal.ZERO);
    }

    private Proof replaced(String code, List<PointRead> by) {
        var others = new ArrayList<>(points);
        others.removeIf(read -> read.point().equals(code));
        others.addAll(by);
        return new Proof(prover, begunAt, scope, tester, source, List.copyOf(others), testerProvedAgainAt, witness);
    }
}
