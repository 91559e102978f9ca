package wainbook.isolation.page;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import wainbook.isolation.Isolation;
import wainbook.page.Words;
import wainbook.process.plan.Plan;

/** What the isolation plan names, and how far each of it has come. */
record PlanLines(Plan plan, Isolation now) {

    List<IsolationView.SourceLine> sources() {
        return Stream.concat(plan.sources().stream(), plan.later().stream())
                .map(source -> new IsolationView.SourceLine(
                        source,
                        plan.foresees(source.code()) && !now.aboard().contains(source.code()),
                        now.openings().stream()
                                .filter(seen -> seen.source().equals(source.code()))
                                .map(Isolation.Opened::at)
                                .findFirst()))
                .toList();
    }

    List<IsolationView.PointLine> points() {
        List<String> counted = now.plan().isPresent()
                ? now.points()
                : plan.pointsWith(now.aboard()).stream()
                        .map(point -> point.code())
                        .toList();
        return counted.stream()
                .flatMap(code -> plan.point(code).stream())
                .map(point -> {
                    var read = now.proof().flatMap(proof -> proof.point(point.code()));
                    return new IsolationView.PointLine(
                            point.code(),
                            point.where(),
                            point.pairs().stream()
                                    .map(pair -> Words.of("isolating.pair." + pair.name()))
                                    .collect(Collectors.joining(", ")),
                            read.map(known -> known.at()),
                            read.map(known -> known.highestVolt().toPlainString())
                                    .orElse(""),
                            read.flatMap(known -> known.againAt()));
                })
                .toList();
    }

    List<IsolationView.CheckLine> checks() {
        return plan.restoration().stream()
                .filter(check -> now.checks().contains(check.code()))
                .map(check -> new IsolationView.CheckLine(
                        check.code(), check.what(), now.checksPassed().contains(check.code())))
                .toList();
    }
}
