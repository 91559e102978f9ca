package wainbook.quality.chart;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import wainbook.engineering.measurement.Drift;

/**
 * Where the line through the means of the newest vehicles leads.
 *
 * @param vehicles until it reaches the limit, from the newest on
 * @param chance of so steep a line where nothing moves
 */
public record Forecast(int vehicles, double chance) {

    /** Vehicles that the line goes through, and that it is followed for. */
    public static final int VEHICLES = 12;

    private static final int LEAST = 6;
    private static final double UNLIKELY = 0.01;

    /** Empty where the line is no trend, or reaches no limit within as many vehicles as it goes through. */
    static Optional<Forecast> of(ItemChart chart) {
        if (!chart.held() || (chart.lower().isEmpty() && chart.upper().isEmpty())) {
            return Optional.empty();
        }
        List<Double> means = means(chart);
        if (means.size() < LEAST) {
            return Optional.empty();
        }
        return Stream.of(
                        chart.upper().flatMap(limit -> towards(limit, means, 1)),
                        chart.lower().flatMap(limit -> towards(limit, means, -1)))
                .flatMap(Optional::stream)
                .findFirst();
    }

    private static List<Double> means(ItemChart chart) {
        Map<String, List<Double>> byVehicle = new LinkedHashMap<>();
        for (int i = 0; i < chart.n(); i++) {
            byVehicle
                    .computeIfAbsent(chart.readings().get(i).order(), order -> new ArrayList<>())
                    .add(chart.values().get(i));
        }
        List<Double> means = byVehicle.values().stream()
                .map(values -> values.stream()
                        .mapToDouble(Double::doubleValue)
                        .average()
                        .orElseThrow())
                .toList();
        return means.subList(Math.max(0, means.size() - VEHICLES), means.size());
    }

    /** What is left to the limit, as an error that grows towards what is permitted: far from it on the other side. */
    private static Optional<Forecast> towards(double limit, List<Double> means, int side) {
        double room =
                means.stream().mapToDouble(mean -> Math.abs(limit - mean)).max().orElseThrow();
        double permitted = 10 * room;
        List<Double> errors =
                means.stream().map(mean -> permitted - side * (limit - mean)).toList();
        List<Double> places =
                Stream.iterate(0.0, place -> place + 1).limit(means.size()).toList();
        if (room == 0) {
            return Optional.empty();
        }
        return new Drift()
                .of(new Drift.Inputs(places, errors, permitted, Optional.empty()))
                .fold(
                        working -> soon(working.results(), means.size() - 1),
                        faults -> Optional.empty(),
                        impossible -> Optional.empty());
    }

    private static Optional<Forecast> soon(Drift.Results found, int newest) {
        return found.centralDay()
                .filter(day -> day > newest && day <= newest + VEHICLES)
                .filter(day -> found.pSlope() < UNLIKELY && found.slopePerDay() > 0)
                .map(day -> new Forecast((int) Math.ceil(day - newest), found.pSlope()));
    }
}
