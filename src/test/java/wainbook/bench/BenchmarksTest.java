package wainbook.bench;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import java.net.URL;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import wainbook.order.WorkOrder;
import wainbook.order.WorkOrderRow;
import wainbook.rehearsal.PlayedVehicles;

/**
 * Every benchmark runs: here one round of each, by {@code mvn test -Pbench} as many as it takes, in the demo works with a
 * full line. How to read what it prints: {@code docs/decisions/benchmarks.md}.
 */
@QuarkusTest
@Tag("bench")
class BenchmarksTest {

    private static final String REPORT = System.getProperty("bench.report", "");
    private static final Rounds ROUNDS = REPORT.isEmpty() ? Rounds.ONE : Rounds.MANY;

    private static final List<Figures> TAKEN = new ArrayList<>();
    private static OwnRecord vehicle;

    private final PlayedVehicles vehicles = new PlayedVehicles();

    @TestHTTPResource
    URL base;

    @BeforeEach
    void a_vehicle_has_gone_its_whole_way() {
        if (vehicle == null) {
            vehicle = OwnRecord.of(vehicles.handedOver());
        }
    }

    @AfterAll
    static void report() throws Exception {
        if (!REPORT.isEmpty()) {
            var lines = new ArrayList<List<String>>();
            lines.add(Figures.HEAD);
            lines.add(Figures.HEAD.stream().map(column -> "---").toList());
            TAKEN.forEach(figures -> lines.add(figures.row()));
            String table = String.join(
                    "\n",
                    lines.stream()
                            .map(cells -> "| " + String.join(" | ", cells) + " |")
                            .toList());
            System.out.println(table);
            Files.createDirectories(Path.of(REPORT).toAbsolutePath().getParent());
            Files.writeString(Path.of(REPORT), table + "\n");
        }
    }

    @Test
    void writing_a_sentence() throws Exception {
        take(WritingASentence.of(vehicle));
    }

    @Test
    void folding_a_history() throws Exception {
        take(FoldingAHistory.of(vehicle));
    }

    @Test
    void forecasting_the_line() throws Exception {
        take(ForecastingTheLine.comparisons());
    }

    @Test
    void recording_an_entry() throws Exception {
        String sentence = vehicle.texts().get(vehicle.texts().size() - 1);
        try (var rows = new PlainRows();
                var early = RecordingAnEntry.at(vehicles::atSurvey);
                var late = RecordingAnEntry.at(vehicles::atLastStage)) {
            take(List.of(
                    early.comparison("at the survey", rows, sentence),
                    late.comparison("at the last stage", rows, sentence)));
        }
    }

    @Test
    void drawing_a_page() throws Exception {
        var page = new DrawingAPage(base, "fatima");
        long onTheLine = WorkOrderRow.count("phase = ?1 and occupies is not null", WorkOrder.Phase.ON_LINE);
        take(List.of(page.comparison("the line with " + onTheLine + " vehicles", "/line")));
        PlayedVehicles.AtWork last = vehicles.atLastStage();
        take(List.of(
                page.comparison("the station of a vehicle at the last stage", "/station/" + last.number()),
                page.comparison("the page of that vehicle", "/orders/" + last.number()),
                page.comparison("the list of orders", "/orders")));
        last.leaving().run();
    }

    @Test
    void playing_a_vehicle() throws Exception {
        try (var rows = new PlainRows()) {
            take(List.of(PlayingAVehicle.comparison(vehicles, rows, vehicle)));
        }
    }

    @Test
    void proving_the_record() throws Exception {
        take(ProvingTheRecord.comparisons());
    }

    private static void take(List<Comparison> comparisons) throws Exception {
        for (Comparison comparison : comparisons) {
            Figures figures = ROUNDS.of(comparison);
            assertThat(figures.rounds()).as(comparison.what()).hasSizeGreaterThanOrEqualTo(ROUNDS.least());
            TAKEN.add(figures);
        }
    }
}
