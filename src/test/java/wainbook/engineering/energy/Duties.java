package wainbook.engineering.energy;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.stream.DoubleStream;
import wainbook.engineering.energy.driving.Battery;
import wainbook.engineering.energy.driving.Segment;
import wainbook.engineering.energy.driving.Trace;
import wainbook.engineering.energy.driving.Vehicle;

/** Invented vehicles and duties that several tests share, and the two published traces. */
public final class Duties {

    /** Driveline, motor, inverter. */
    private static final double EFFICIENCY = 0.94 * 0.93 * 0.97;

    /** A rigid truck of 18 t, partly laden. */
    public static final Vehicle TRUCK =
            new Vehicle(14_000, 1.05, 0.0060, 5.6, 1.188, EFFICIENCY, 0.80, EFFICIENCY, 5, 15, 200_000, 4_000, 0, 0);

    public static final Battery TRUCK_PACKS = new Battery(650, 0.12 / 4);

    /** A city bus of 12 m. */
    public static final Vehicle BUS =
            new Vehicle(15_500, 1.05, 0.0065, 4.9, 1.188, EFFICIENCY, 0.80, EFFICIENCY, 5, 15, 160_000, 8_000, 0, 0);

    public static final Battery BUS_PACKS = new Battery(650, 0.12 / 5);

    /** A container vehicle of 26 t with its hydraulics. */
    public static final Vehicle HOOK_LOADER =
            new Vehicle(19_000, 1.05, 0.007, 6.5, 1.188, EFFICIENCY, 0.80, EFFICIENCY, 5, 15, 200_000, 4_000, 0, 0);

    /** Up to 30 km/h and to rest again, on the level. */
    public static final List<Double> BY_HAND = List.of(0.0, 10.0, 20.0, 30.0, 30.0, 20.0, 10.0, 0.0);

    private static final Path FOLDER = Path.of("src/test/resources/published/cycles");

    private Duties() {}

    /** As recorded: speeds first, gradients second. */
    public record Recorded(List<Double> speedKmh, List<Double> gradient) {

        public Trace trace() {
            return new Trace(speedKmh, gradient);
        }

        public Recorded level() {
            return new Recorded(speedKmh, Collections.nCopies(speedKmh.size(), 0.0));
        }
    }

    public static Recorded truckCycle() {
        return read("urban-delivery-18t-1hz.csv");
    }

    public static Recorded busCycle() {
        return read("city-bus-urban-12m-1hz.csv");
    }

    public static Recorded levelled(List<Double> speedKmh) {
        return new Recorded(speedKmh, List.of()).level();
    }

    public static List<Segment> segments(double urbanKm, double ruralKm, double motorwayKm) {
        return List.of(
                new Segment(urbanKm, 22, 1.6, 45, 0.15, 38),
                new Segment(ruralKm, 52, 0.25, 68, 0.22, 63),
                new Segment(motorwayKm, 78, 0.03, 84, 0.30, 81));
    }

    public static List<Segment> containerRounds() {
        return List.of(
                new Segment(14, 12, 5, 28, 0.08, 22),
                new Segment(36, 24, 1.8, 45, 0.15, 38),
                new Segment(26, 50, 0.3, 65, 0.22, 62));
    }

    private static Recorded read(String file) {
        try {
            List<double[]> rows = Files.readAllLines(FOLDER.resolve(file), StandardCharsets.UTF_8).stream()
                    .skip(1)
                    .map(line -> Arrays.stream(line.split(","))
                            .mapToDouble(Double::parseDouble)
                            .toArray())
                    .toList();
            return new Recorded(
                    column(rows.stream().mapToDouble(row -> row[1])),
                    column(rows.stream().mapToDouble(row -> row[2])));
        } catch (IOException missing) {
            throw new UncheckedIOException(missing);
        }
    }

    private static List<Double> column(DoubleStream values) {
        return values.boxed().toList();
    }
}
