package wainbook.book.page;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import wainbook.book.telling.Names;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.page.Words;
import wainbook.page.chart.Chart;
import wainbook.station.StationSaying.About;
import wainbook.station.StationSaying.Determined;
import wainbook.station.StationSaying.Measured;
import wainbook.station.StationSaying.Voided;

/**
 * Insulation resistances of one vehicle over the stages, methods kept apart: one is the lesser rail, another both rails
 * together, and neither may be read as a change of the other.
 *
 * @param values in the order of the record, in megohms
 */
public record InsulationTrend(String method, List<Value> values) {

    private static final BigDecimal OHM_PER_MOHM = new BigDecimal("1000000");
    private static final Map<String, BigDecimal> MOHM =
            Map.of("kΩ", new BigDecimal("0.001"), "MΩ", BigDecimal.ONE, "GΩ", new BigDecimal("1000"));

    /** One of them. */
    public record Value(Entry entry, String stage, String item, BigDecimal megohm, boolean atLeast, boolean passes) {}

    /** By method and circuit, each with its values; what was voided is left out. */
    static List<InsulationTrend> of(History history, Names names) {
        List<UUID> voided = history.entries().stream()
                .map(Entry::saying)
                .filter(Voided.class::isInstance)
                .map(said -> ((Voided) said).entry())
                .toList();
        Map<String, List<Value>> byMethod = new LinkedHashMap<>();
        history.entries().stream().filter(entry -> !voided.contains(entry.id())).forEach(entry -> {
            if (entry.saying() instanceof Determined said && said.method().insulation()) {
                said.value()
                        .ifPresent(ohm -> byMethod.computeIfAbsent(
                                        Words.of("station.method." + said.method()), none -> new ArrayList<>())
                                .add(value(
                                        entry,
                                        said.about(),
                                        names,
                                        ohm.divide(OHM_PER_MOHM),
                                        said.openEnded(),
                                        said.verdict() == wainbook.station.StationSaying.Verdict.PASS)));
            } else if (entry.saying() instanceof Measured said
                    && said.about().item().startsWith("insulation")
                    && MOHM.containsKey(said.unit())) {
                byMethod.computeIfAbsent(
                                Words.of("book.insulationRead", said.about().item()), none -> new ArrayList<>())
                        .add(value(
                                entry,
                                said.about(),
                                names,
                                said.reading().multiply(MOHM.get(said.unit())),
                                false,
                                said.verdict() == wainbook.station.StationSaying.Verdict.PASS));
            }
        });
        return byMethod.entrySet().stream()
                .map(series -> new InsulationTrend(series.getKey(), series.getValue()))
                .toList();
    }

    private static Value value(
            Entry entry, About about, Names names, BigDecimal megohm, boolean atLeast, boolean passes) {
        return new Value(entry, names.stage(about.stage()), about.item(), megohm.stripTrailingZeros(), atLeast, passes);
    }

    public String title() {
        return Words.of("book.insulationTitle", method);
    }

    /** A single value is no trend. */
    public Optional<Chart> chart() {
        return values.size() < 2
                ? Optional.empty()
                : Optional.of(new Chart(
                        title(),
                        values.stream()
                                .map(value ->
                                        value.stage() + " " + value.megohm().toPlainString() + " MΩ")
                                .collect(Collectors.joining(", ")),
                        "MΩ",
                        IntStream.range(0, values.size())
                                .mapToObj(at -> new Chart.Mark(
                                        at,
                                        values.get(at).item(),
                                        values.get(at).megohm().doubleValue(),
                                        !values.get(at).passes()))
                                .toList(),
                        List.of(),
                        List.of()));
    }
}
