package wainbook.quality.chart;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wainbook.ledger.Entry;
import wainbook.matter.Matters;
import wainbook.matter.OpenMatter;
import wainbook.matter.OpenMatter.Due;
import wainbook.matter.OpenMatter.Owner;
import wainbook.matter.OpenMatter.Sort;
import wainbook.page.Words;
import wainbook.works.Role;

/** What charts say that nobody has settled. Follows from the record: nothing is written to raise it, so nothing raises it twice. */
@ApplicationScoped
class DriftMatters implements Matters {

    private final Charts charts;
    private final Settling settling;

    DriftMatters(Charts charts, Settling settling) {
        this.charts = charts;
        this.settling = settling;
    }

    @Override
    public List<OpenMatter> open(Instant now) {
        Map<String, Entry> settled = settling.latest();
        List<Standing> standing = charts.all().stream()
                .flatMap(chart -> settling.standing(chart, settled).stream())
                .toList();
        if (standing.isEmpty()) {
            return List.of();
        }
        Titles titles = charts.titles();
        return standing.stream().map(one -> matter(one, titles)).toList();
    }

    private static OpenMatter matter(Standing standing, Titles titles) {
        return new OpenMatter(
                Sort.DRIFT,
                standing.at().order(),
                titles.of(standing.chart().of()),
                Optional.of(standing.chart().of().code()),
                what(standing),
                standing.at().at(),
                List.of(Owner.of(Role.QUALITY_ENGINEER)),
                Due.open(),
                "",
                standing.chart().of().path());
    }

    private static String what(Standing standing) {
        return standing.forecast()
                .map(forecast -> Words.of("quality.forecastSays", forecast.vehicles()))
                .orElseGet(() -> standing.sign().words());
    }
}
