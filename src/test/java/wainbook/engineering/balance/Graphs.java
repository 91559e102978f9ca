package wainbook.engineering.balance;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** The published precedence graphs with their optima; see the README beside them. */
public final class Graphs {

    private static final Path FOLDER = Path.of("src/test/resources/published/salbp");

    /** One row of the list of optima. */
    public record Optimum(int type, String file, int given, int best) {

        public Aim aim(int tasks, double limitS) {
            return type == 1 ? Aim.takt(given, tasks, limitS) : Aim.stations(given, limitS);
        }

        @Override
        public String toString() {
            return file.replace(".IN2", "") + (type == 1 ? ", cycle " : ", stations ") + given;
        }
    }

    private Graphs() {}

    public static List<Task> read(String file) {
        List<String> lines = lines(file);
        int size = Integer.parseInt(lines.get(0));
        List<List<String>> after = IntStream.range(0, size)
                .mapToObj(task -> (List<String>) new ArrayList<String>())
                .toList();
        lines.stream().skip(size + 1L).takeWhile(line -> !line.startsWith("-1")).forEach(line -> {
            int comma = line.indexOf(',');
            after.get(Integer.parseInt(line.substring(comma + 1).strip()) - 1)
                    .add(line.substring(0, comma).strip());
        });
        return IntStream.range(0, size)
                .mapToObj(task ->
                        Task.of(String.valueOf(task + 1), Integer.parseInt(lines.get(task + 1)), after.get(task)))
                .toList();
    }

    public static List<Optimum> optima() {
        return lines("optima.csv").stream()
                .skip(1)
                .map(line -> List.of(line.split(",")))
                .map(cells -> new Optimum(
                        Integer.parseInt(cells.get(0)),
                        cells.get(1),
                        Integer.parseInt(cells.get(2)),
                        Integer.parseInt(cells.get(3))))
                .toList();
    }

    private static List<String> lines(String file) {
        try {
            return Files.readAllLines(FOLDER.resolve(file), StandardCharsets.ISO_8859_1).stream()
                    .map(String::strip)
                    .filter(line -> !line.isEmpty())
                    .toList();
        } catch (IOException unread) {
            throw new UncheckedIOException(unread);
        }
    }
}
