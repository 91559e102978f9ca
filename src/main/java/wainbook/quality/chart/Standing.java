package wainbook.quality.chart;

import java.time.Instant;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import wainbook.quality.QualitySaying.Place;
import wainbook.quality.reading.Reading;

/**
 * What a chart says now that nobody has settled: a signal completed at one of the newest vehicles, or a line that reaches a
 * limit soon. Charts of tools raise nothing: what they hold stands on the charts of joints too. It stands until it is settled, or until as many vehicles have passed without another.
 *
 * @param at the reading that completed it; for a forecast the newest
 * @param forecast where the sign is one
 */
public record Standing(ItemChart chart, Sign sign, Reading at, Optional<Forecast> forecast) {

    /** Vehicles, counted from the newest back, whose readings are the newest. */
    public static final int NEWEST_VEHICLES = 3;

    /**
     * The run rules that open a matter. A large step alone is seen on the chart: it comes as often by chance as all these
     * together. Too little scatter is a question about writing down, not about the process.
     */
    private static final List<Sign> RAISES = List.of(Sign.BEYOND, Sign.ONE_SIDE, Sign.TREND, Sign.TWO_OF_THREE);

    /** @param settled up to where the chart's signals were settled */
    public static Optional<Standing> of(ItemChart chart, Optional<Place> settled) {
        if (!chart.held() || chart.of().mixed()) {
            return Optional.empty();
        }
        int after = Math.max(settled.map(place -> index(chart, place)).orElse(-1), firstOfNewest(chart) - 1);
        Stream<Standing> run = chart.signals().stream()
                .filter(signal -> signal.point() > after && RAISES.contains(signal.sign()))
                .max(Comparator.comparingInt(Signal::point))
                .map(signal ->
                        new Standing(chart, signal.sign(), chart.readings().get(signal.point()), Optional.empty()))
                .stream();
        Stream<Standing> line = settled.map(place -> vehiclesSince(chart, index(chart, place)) < Forecast.VEHICLES)
                        .orElse(false)
                ? Stream.empty()
                : chart
                        .forecast()
                        .map(forecast -> new Standing(
                                chart, Sign.FORECAST, chart.readings().get(chart.n() - 1), Optional.of(forecast)))
                        .stream();
        return Stream.concat(line, run).findFirst();
    }

    private static int index(ItemChart chart, Place place) {
        return IntStream.range(0, chart.n())
                .filter(i -> chart.readings().get(i).entry().equals(place.entry())
                        && chart.readings().get(i).place() == place.place())
                .findFirst()
                .orElse(-1);
    }

    private static long vehiclesSince(ItemChart chart, int index) {
        return chart.readings().stream()
                .skip(index + 1L)
                .map(Reading::order)
                .distinct()
                .count();
    }

    private static int firstOfNewest(ItemChart chart) {
        List<String> newest = chart.readings().stream()
                .collect(Collectors.toMap(Reading::order, Reading::at, (one, other) -> other, LinkedHashMap::new))
                .entrySet()
                .stream()
                .sorted(Map.Entry.<String, Instant>comparingByValue().reversed())
                .limit(NEWEST_VEHICLES)
                .map(Map.Entry::getKey)
                .toList();
        return IntStream.range(0, chart.n())
                .filter(i -> newest.contains(chart.readings().get(i).order()))
                .findFirst()
                .orElse(chart.n());
    }

    public Place newest() {
        Reading last = chart.readings().get(chart.n() - 1);
        return new Place(last.entry(), last.place());
    }
}
