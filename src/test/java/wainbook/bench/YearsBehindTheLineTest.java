package wainbook.bench;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import jakarta.inject.Inject;
import java.net.URL;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import wainbook.ledger.Ledger;
import wainbook.ledger.Subject;
import wainbook.process.Releases;
import wainbook.tour.FullWorks;

/**
 * Whether the line's pages grow slower with what is long over: the same pages of the same full line with a month of vehicles handed over
 * behind them, and then with ten years of them. {@code mvn test -Dtest=YearsBehindTheLineTest -Dbehind.vehicles=9500} writes a table to
 * target/behind.
 */
@QuarkusTest
@TestProfile(YearsBehindTheLineTest.OnDisk.class)
@EnabledIfSystemProperty(named = "behind.vehicles", matches = "[0-9]+")
class YearsBehindTheLineTest {

    private static final Path TO = Path.of("target/behind");
    private static final Rounds ROUNDS = new Rounds(Duration.ofSeconds(10), Duration.ofSeconds(30), 15, 300);
    private static final int YEARS = 10;
    private static final int MONTHS = 12 * YEARS;

    /** A database of its own, in a file. */
    public static class OnDisk extends FullWorks {
        @Override
        public Map<String, String> getConfigOverrides() {
            var own = new HashMap<>(super.getConfigOverrides());
            own.put(
                    "quarkus.datasource.jdbc.url",
                    "jdbc:h2:file:" + own.get("wainbook.data")
                            + "/behind;WRITE_DELAY=0;DEFAULT_NULL_ORDERING=HIGH;LOCK_TIMEOUT=10000");
            own.put("quarkus.hibernate-orm.statistics", "false");
            return own;
        }
    }

    @TestHTTPResource
    URL base;

    @Inject
    Ledger ledger;

    @Inject
    Releases releases;

    @Inject
    Clock clock;

    @Test
    void the_pages_of_the_line_take_as_long_with_ten_years_behind_them_as_with_a_month() throws Exception {
        int all = Integer.parseInt(System.getProperty("behind.vehicles"));
        Instant now = clock.instant();
        Instant monthAgo = now.minus(Duration.ofDays(30));
        var written = new HandedOverLongAgo(ledger, releases);
        var page = new DrawingAPage(base, "fatima");

        written.between(monthAgo, now.minus(Duration.ofDays(1)), all / MONTHS);
        List<Figures> month = measured(page, "a month behind");
        written.between(now.minus(Duration.ofDays(365L * YEARS)), monthAgo, all - all / MONTHS);
        List<Figures> years = measured(page, "ten years behind");

        assertThat(ledger.subjects(Subject.Sort.WORK_ORDER)).hasSizeGreaterThanOrEqualTo(all);
        report(month, years, all);
    }

    private static List<Figures> measured(DrawingAPage page, String behind) throws Exception {
        var figures = new ArrayList<Figures>();
        figures.add(ROUNDS.of(page.comparison("the line with " + behind, "/line")));
        figures.add(ROUNDS.of(page.comparison("its measures of the last ten days with " + behind, "/line/measures")));
        return figures;
    }

    private static void report(List<Figures> month, List<Figures> years, int vehicles) throws Exception {
        var lines = new ArrayList<String>();
        lines.add("| " + String.join(" | ", Figures.HEAD) + " |");
        lines.add("| "
                + String.join(" | ", Figures.HEAD.stream().map(one -> "---").toList()) + " |");
        for (int i = 0; i < month.size(); i++) {
            lines.add("| " + String.join(" | ", month.get(i).row()) + " |");
            lines.add("| " + String.join(" | ", years.get(i).row()) + " |");
            lines.add(String.format(
                    "Ratio of the ratios to the sign-in page: %.2f (%d vehicles)",
                    years.get(i).ratio() / month.get(i).ratio(), vehicles));
        }
        String table = String.join("\n", lines);
        System.out.println(table);
        Files.createDirectories(TO);
        Files.writeString(TO.resolve("years-behind.md"), table + "\n");
    }
}
