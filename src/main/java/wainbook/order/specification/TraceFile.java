package wainbook.order.specification;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import wainbook.engineering.energy.driving.Trace;

/**
 * A recorded way as a file: one line a second, {@code speed_kmh} and, where it is known, {@code gradient} (rise over run) and
 * {@code time_s}, commas or semicolons between. Up to a day.
 *
 * @param trace empty where there are faults
 */
public record TraceFile(Optional<Trace> trace, List<Fault> faults) {

    /** What is wrong in a line, as the key of its text. */
    public record Fault(int line, String key, List<String> arguments) {}

    private static final int LONGEST = 86_401;
    private static final int MOST_FAULTS = 20;
    private static final double FASTEST_KMH = 130;
    private static final double STEEPEST = 0.4;

    public TraceFile {
        faults = List.copyOf(faults);
    }

    public static TraceFile read(String text) {
        return new Reader().read(text.startsWith("\uFEFF") ? text.substring(1) : text);
    }

    private static final class Reader {
        private final List<Fault> faults = new ArrayList<>();
        private final List<Double> speeds = new ArrayList<>();
        private final List<Double> gradients = new ArrayList<>();
        private int speedAt = -1;
        private int gradientAt = -1;
        private int timeAt = -1;
        private int columns;
        private String parting = ",";
        private Optional<Double> before = Optional.empty();

        TraceFile read(String text) {
            List<String> lines = text.lines().toList();
            int first = 0;
            while (first < lines.size()
                    && (lines.get(first).isBlank() || lines.get(first).startsWith("#"))) {
                first++;
            }
            if (first == lines.size()) {
                fault(1, "traceEmpty");
                return new TraceFile(Optional.empty(), faults);
            }
            if (header(lines.get(first), first + 1)) {
                for (int i = first + 1; i < lines.size() && faults.size() < MOST_FAULTS; i++) {
                    if (!lines.get(i).isBlank()) {
                        line(lines.get(i), i + 1);
                    }
                }
                if (faults.isEmpty()) {
                    length(lines.size());
                }
            }
            return new TraceFile(
                    faults.isEmpty() ? Optional.of(new Trace(speeds, gradients)) : Optional.empty(), faults);
        }

        private boolean header(String line, int number) {
            parting = line.contains(";") ? ";" : ",";
            List<String> names = cells(line).stream()
                    .map(name -> name.toLowerCase(Locale.ROOT))
                    .toList();
            columns = names.size();
            speedAt = names.indexOf("speed_kmh");
            gradientAt = names.indexOf("gradient");
            timeAt = names.indexOf("time_s");
            names.stream()
                    .filter(name -> !List.of("speed_kmh", "gradient", "time_s").contains(name))
                    .forEach(name -> fault(number, "traceColumn", name));
            if (speedAt < 0) {
                fault(number, "traceNoSpeed");
            }
            return faults.isEmpty();
        }

        private void line(String line, int number) {
            List<String> cells = cells(line);
            if (cells.size() != columns) {
                fault(number, "traceCells", cells.size(), columns);
                return;
            }
            Optional<Double> speed = figure(cells.get(speedAt), number, 0, FASTEST_KMH);
            Optional<Double> gradient =
                    gradientAt < 0 ? Optional.of(0.0) : figure(cells.get(gradientAt), number, -STEEPEST, STEEPEST);
            if (timeAt >= 0) {
                second(cells.get(timeAt), number);
            }
            if (speed.isPresent() && gradient.isPresent()) {
                speeds.add(speed.get());
                gradients.add(gradient.get());
            }
        }

        /** A gap would make a jump of speed, which asks for power that nobody drew. */
        private void second(String cell, int number) {
            Optional<Double> now = figure(cell, number, 0, 1e10);
            if (now.isPresent() && before.isPresent() && Math.abs(now.get() - before.get() - 1) > 1e-6) {
                fault(number, "traceGap", plain(now.get() - before.get()));
            }
            before = now;
        }

        private void length(int lines) {
            if (speeds.size() < 2) {
                fault(lines, "traceShort");
            } else if (speeds.size() > LONGEST) {
                fault(LONGEST + 2, "traceLong", LONGEST);
            } else if (speeds.stream().noneMatch(speed -> speed > 0)) {
                fault(lines, "traceStands");
            }
        }

        private Optional<Double> figure(String cell, int number, double from, double to) {
            if (!cell.matches("-?[0-9]+(\\.[0-9]+)?([eE]-?[0-9]+)?")) {
                fault(number, "traceFigure", cell);
                return Optional.empty();
            }
            double value = Double.parseDouble(cell);
            if (value < from || value > to) {
                fault(number, "traceOutside", cell, plain(from), plain(to));
                return Optional.empty();
            }
            return Optional.of(value);
        }

        private List<String> cells(String line) {
            return Arrays.stream(line.split(parting, -1)).map(String::strip).toList();
        }

        private static String plain(double value) {
            return String.format(Locale.ROOT, value == Math.rint(value) ? "%.0f" : "%.2f", value);
        }

        private void fault(int line, String key, Object... arguments) {
            faults.add(new Fault(
                    line, key, Arrays.stream(arguments).map(String::valueOf).toList()));
        }
    }
}
