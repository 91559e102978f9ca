package wainbook.quality.chart.page;

import java.util.Locale;
import java.util.Optional;
import wainbook.engineering.statistics.Capability.Results;
import wainbook.page.Words;
import wainbook.quality.chart.ItemChart;

/** How well values keep to their limits, in a sentence: never an index without its interval and its number of values. */
record CapabilityWords(ItemChart chart) {

    /** Values that an index is commonly held to need; NIST/SEMATECH e-Handbook 6.1.6. */
    private static final int ENOUGH = 50;

    String sentence() {
        return chart.noIndex()
                .map(because -> Words.of(
                        "quality.noIndex." + because.name(),
                        chart.n(),
                        chart.steady().size(),
                        ItemChart.LEAST))
                .orElseGet(() -> {
                    Results found = chart.capability().orElseThrow().results();
                    return Words.of(
                            found.n() < ENOUGH ? "quality.indexOfFew" : "quality.index",
                            two(found.ppk()),
                            two(found.ppkLow()),
                            two(found.ppkHigh()),
                            found.n());
                });
    }

    static String two(Optional<Double> index) {
        return index.map(value -> String.format(Locale.ROOT, "%.2f", value).replace('-', '−'))
                .orElse("–");
    }
}
