package wainbook.quality.chart.page;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import wainbook.page.Form;
import wainbook.page.Option;
import wainbook.page.Words;
import wainbook.quality.chart.Charted;
import wainbook.quality.chart.ItemChart;
import wainbook.quality.chart.Signal;
import wainbook.quality.chart.Standing;
import wainbook.quality.reading.Reading;

/**
 * The list of charts.
 *
 * @param lines as asked for
 * @param all how many there are without a filter
 */
public record ChartsView(List<Line> lines, int all, Form form, List<Option> kinds, List<Option> stages) {

    static final List<String> FIELDS = List.of("search", "sort", "kind", "stage");

    /** One chart. */
    public record Line(ItemChart chart, String title, Optional<Standing> standing) {

        public int n() {
            return chart.n();
        }

        public Reading last() {
            return chart.readings().get(chart.n() - 1);
        }

        public Optional<Signal> lastSignal() {
            return chart.signals().stream().reduce((former, latter) -> latter);
        }

        public String signalWords() {
            return lastSignal().map(signal -> signal.sign().words()).orElse("");
        }

        public Reading signalled() {
            return chart.readings().get(lastSignal().orElseThrow().point());
        }

        public String capability() {
            return new CapabilityWords(chart).sentence();
        }

        boolean holds(Form wanted) {
            String text = wanted.value("search").toLowerCase(Words.LOCALE);
            return (title + " " + chart.of().code()).toLowerCase(Words.LOCALE).contains(text)
                    && fits(wanted.value("sort"), Stream.of(chart.of().sort().word()))
                    && fits(wanted.value("kind"), chart.readings().stream().map(Reading::vehicleKind))
                    && fits(wanted.value("stage"), chart.readings().stream().map(Reading::stage));
        }

        private static boolean fits(String wanted, Stream<String> has) {
            return wanted.isEmpty() || has.anyMatch(wanted::equals);
        }

        List<String> cells() {
            return List.of(
                    chart.of().key(),
                    title,
                    String.valueOf(n()),
                    String.valueOf(chart.voided()),
                    lastSignal().map(signal -> signal.sign().name()).orElse(""),
                    lastSignal().map(signal -> signalled().at().toString()).orElse(""),
                    standing.map(one -> one.sign().name()).orElse(""),
                    capability());
        }
    }

    public List<Option> sorts() {
        return Arrays.stream(Charted.Sort.values())
                .map(sort -> new Option(sort.word(), Words.of("quality.chartSort." + sort.name())))
                .toList();
    }

    public boolean filtered() {
        return FIELDS.stream().anyMatch(field -> !form.value(field).isEmpty());
    }

    public String csv() {
        return "/quality/charts.csv?" + Query.of(form, FIELDS);
    }
}
