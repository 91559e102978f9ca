package wainbook.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import wainbook.engineering.balance.Aim;
import wainbook.engineering.balance.Found;
import wainbook.engineering.balance.Graphs;
import wainbook.engineering.balance.Graphs.Optimum;
import wainbook.engineering.balance.Search;
import wainbook.engineering.balance.Work;

/**
 * Every published optimum, each for so many seconds: what was proved and how fast. {@code mvn test -Dtest=LineBalancingBenchTest
 * -Dsalbp.seconds=5} writes a table of graphs and one of rows to target/salbp.
 */
@EnabledIfSystemProperty(named = "salbp.seconds", matches = "[0-9.]+")
class LineBalancingBenchTest {

    private static final Path TO = Path.of("target/salbp");

    /** One row as it went. */
    record Went(Optimum row, Found found, double seconds) {

        boolean best() {
            return found.best() == row.best();
        }

        String line() {
            return String.format(
                    Locale.ROOT,
                    "%d,%s,%d,%d,%s,%s,%s,%.2f",
                    row.type(),
                    row.file(),
                    row.given(),
                    row.best(),
                    figure(found.best()),
                    figure(found.lowerBound()),
                    found.proven() ? "proved" : "open",
                    seconds);
        }

        private static String figure(double value) {
            return String.format(Locale.ROOT, "%.0f", value);
        }
    }

    @Test
    void no_published_optimum_is_undercut_and_no_bound_passes_it() throws IOException {
        double seconds = Double.parseDouble(System.getProperty("salbp.seconds"));
        Files.createDirectories(TO);
        List<Went> all = new ArrayList<>();
        for (Optimum row : Graphs.optima()) {
            all.add(went(row, seconds));
            write(all);
        }

        assertThat(all).allSatisfy(went -> {
            assertThat(went.found().best())
                    .as(went.line())
                    .isGreaterThanOrEqualTo(went.row().best());
            assertThat(went.found().lowerBound())
                    .as(went.line())
                    .isLessThanOrEqualTo(went.row().best());
        });
    }

    private static Went went(Optimum row, double seconds) {
        var tasks = Graphs.read(row.file());
        long begun = System.nanoTime();
        Found found = Search.of(Work.of(tasks), row.aim(tasks.size(), seconds).then(Aim.Then.ANY, Map.of()))
                .orElseThrow()
                .find(progress -> {});
        return new Went(row, found, (System.nanoTime() - begun) / 1e9);
    }

    private static void write(List<Went> all) throws IOException {
        Files.write(TO.resolve("rows.csv"), all.stream().map(Went::line).toList());
        Map<String, List<Went>> graphs = new LinkedHashMap<>();
        all.forEach(went -> graphs.computeIfAbsent(
                        went.row().file() + " | " + went.row().type(), key -> new ArrayList<>())
                .add(went));
        List<String> lines = new ArrayList<>();
        lines.add("| graph | type | rows | proved | best, not proved | worse | worst by % | median s | all s |");
        lines.add("|---|--:|--:|--:|--:|--:|--:|--:|--:|");
        graphs.forEach((key, rows) -> lines.add(line(key, rows)));
        lines.add(line("all | ", all));
        Files.write(TO.resolve("graphs.md"), lines);
    }

    private static String line(String key, List<Went> rows) {
        double[] sorted = rows.stream().mapToDouble(Went::seconds).sorted().toArray();
        return String.format(
                Locale.ROOT,
                "| %s | %d | %d | %d | %d | %.2f | %.2f | %.0f |",
                key,
                rows.size(),
                rows.stream().filter(went -> went.found().proven()).count(),
                rows.stream()
                        .filter(went -> went.best() && !went.found().proven())
                        .count(),
                rows.stream().filter(went -> !went.best()).count(),
                rows.stream()
                        .mapToDouble(
                                went -> 100 * (went.found().best() / went.row().best() - 1))
                        .max()
                        .orElse(0),
                sorted[sorted.length / 2],
                rows.stream().mapToDouble(Went::seconds).sum());
    }
}
