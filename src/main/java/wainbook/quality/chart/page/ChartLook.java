package wainbook.quality.chart.page;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.ws.rs.NotFoundException;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import wainbook.page.Filled;
import wainbook.page.Form;
import wainbook.page.Option;
import wainbook.page.SignedIn;
import wainbook.process.Releases;
import wainbook.process.Stage;
import wainbook.quality.chart.Charted;
import wainbook.quality.chart.Charts;
import wainbook.quality.chart.ItemChart;
import wainbook.quality.chart.Settling;
import wainbook.quality.chart.Standing;
import wainbook.quality.chart.Titles;
import wainbook.quality.reading.Reading;
import wainbook.works.Role;

/** Brings together what the pages of charts show. */
@ApplicationScoped
class ChartLook {

    private final Charts charts;
    private final Settling settling;
    private final Releases releases;
    private final SignedIn signedIn;

    ChartLook(Charts charts, Settling settling, Releases releases, SignedIn signedIn) {
        this.charts = charts;
        this.settling = settling;
        this.releases = releases;
        this.signedIn = signedIn;
    }

    ChartsView all(Form wanted) {
        Titles titles = charts.titles();
        List<ItemChart> all =
                charts.all().stream().filter(chart -> chart.n() > 0).toList();
        var settled = settling.latest();
        List<ChartsView.Line> lines = all.stream()
                .map(chart -> new ChartsView.Line(chart, titles.of(chart.of()), settling.standing(chart, settled)))
                .filter(line -> line.holds(wanted))
                .sorted(Comparator.comparing(line -> line.standing().isEmpty()))
                .toList();
        return new ChartsView(
                lines,
                all.size(),
                wanted,
                options(all, Reading::vehicleKind),
                releases.stages().stream().map(ChartLook::option).toList());
    }

    private static Option option(Stage stage) {
        return new Option(stage.code(), stage.title());
    }

    private static List<Option> options(List<ItemChart> charts, Function<Reading, String> part) {
        return charts.stream()
                .flatMap(chart -> chart.readings().stream())
                .map(part)
                .distinct()
                .sorted()
                .map(code -> new Option(code, code))
                .toList();
    }

    /** One chart; no page where nothing was ever read for it. */
    ChartView one(Charted charted, String kind, Filled filled) {
        ItemChart whole = charts.named(charted).orElseThrow(NotFoundException::new);
        ItemChart chart = kind.isEmpty() ? whole : charts.named(charted, kind).orElseThrow(NotFoundException::new);
        return new ChartView(
                chart,
                charts.titles().of(charted),
                kind,
                options(List.of(whole), Reading::vehicleKind),
                kind.isEmpty() ? settling.standing(chart) : Optional.empty(),
                Optional.ofNullable(settling.latest().get(charted.key())),
                filled,
                signedIn.is(Role.qualityEngineer));
    }

    Optional<Standing> standing(Charted charted) {
        return charts.named(charted).flatMap(settling::standing);
    }
}
