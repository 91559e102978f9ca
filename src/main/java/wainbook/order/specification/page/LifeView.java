package wainbook.order.specification.page;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import wainbook.engineering.specification.PackLife;
import wainbook.order.duty.ChassisFigures;
import wainbook.order.duty.Duty;
import wainbook.order.specification.Working;
import wainbook.page.Words;
import wainbook.page.chart.Chart;

/**
 * Until when each number of packs does the worst day.
 *
 * @param asked years that the operator wants
 * @param shown the number of packs whose chart is drawn
 */
public record LifeView(List<Row> rows, Optional<Integer> asked, String stated, PackLife.Life shown, double endOfLife) {

    /**
     * One number of packs.
     *
     * @param lasts whether it meets the years that are asked
     */
    public record Row(int packs, PackLife.Life life, boolean lasts) {
        public String cycles() {
            return RowView.one(life.cyclesAYear());
        }

        public String lostAYear() {
            return String.format(Locale.ROOT, "%.2f", 100 * life.lostAYear());
        }

        public String lastMet() {
            if (life.lastMet().isEmpty()) {
                return Words.of("order.lifeNever");
            }
            int year = life.lastMet().getAsInt();
            if (year == 0) {
                return Words.of("order.lifeNewOnly");
            }
            return year == PackLife.MOST_YEARS ? Words.of("order.lifeMore", year) : Words.of("order.lifeYear", year);
        }

        public String endsIn() {
            return life.endsIn().isPresent()
                    ? Words.of("order.lifeEnds", life.endsIn().getAsInt())
                    : Words.of("order.lifeEndsLater", PackLife.MOST_YEARS);
        }

        public List<YearLine> years() {
            return life.years().stream().map(YearLine::new).toList();
        }
    }

    /** The end of a year. */
    public record YearLine(PackLife.Year year) {
        public String name() {
            return year.year() == 0 ? Words.of("order.lifeNew") : "" + year.year();
        }

        public String health() {
            return RowView.one(100 * year.stateOfHealth());
        }

        public String usable() {
            return RowView.one(year.usableKwh());
        }

        public String odds() {
            return RowView.percent(year.odds());
        }
    }

    static LifeView of(PackLife life, List<RowView> rows, Working working) {
        Duty.Use use = working.duty().use().orElseThrow();
        ChassisFigures.PackAgeing ageing = working.figures().ageing().orElseThrow();
        int shown = RowView.shown(rows);
        return new LifeView(
                rows.stream()
                        .map(row -> new Row(
                                row.packs(),
                                row.life().orElseThrow(),
                                use.years()
                                        .filter(years ->
                                                row.life().orElseThrow().lasts(years))
                                        .isPresent()))
                        .toList(),
                use.years(),
                Words.of(
                        "order.lifeStated",
                        ageing.thousandCyclesPercent().toPlainString(),
                        ageing.yearPercent().toPlainString(),
                        ageing.source(),
                        use.daysPerYear().toPlainString()),
                rows.get(shown - 1).life().orElseThrow(),
                life.table().pack().endOfLife());
    }

    public Chart chart() {
        return new Chart(
                Words.of("order.lifeChart", shown.packs()),
                Words.of("order.lifeChartText"),
                "%",
                shown.years().stream()
                        .map(year -> new Chart.Mark(
                                year.year(),
                                new YearLine(year).name(),
                                Math.round(1000 * year.stateOfHealth()) / 10.0,
                                !year.met()))
                        .toList(),
                List.of(
                        new Chart.Level(
                                Chart.Sort.LIMIT,
                                Words.of("order.lifeNeeded"),
                                Math.round(1000 * shown.neededHealth()) / 10.0),
                        new Chart.Level(Chart.Sort.CENTRE, Words.of("order.lifeEndLevel"), 100 * endOfLife)),
                List.of());
    }
}
