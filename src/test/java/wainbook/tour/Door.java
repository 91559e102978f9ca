package wainbook.tour;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;

/**
 * One address that answers a GET and is not the API's, from the table that RolesAtEveryEndpointTest holds complete.
 *
 * @param path with its parameters in braces
 * @param roles whom it lets in, as the table's columns name them
 */
record Door(String path, List<String> roles) {

    private static final Path TABLE = Path.of("src/test/resources/house/roles-at-every-endpoint.txt");
    private static final String COLUMNS = "# columns: ";

    static List<Door> all() {
        List<String> lines = lines();
        List<String> columns = lines.stream()
                .filter(line -> line.startsWith(COLUMNS))
                .map(line -> List.of(line.substring(COLUMNS.length()).split(" ")))
                .findFirst()
                .orElseThrow();
        return lines.stream()
                .filter(line -> line.startsWith("GET ") && !line.contains(" /api/"))
                .map(line -> List.of(line.split("\\s+")))
                .map(words -> new Door(
                        words.get(1),
                        IntStream.range(0, columns.size())
                                .filter(i -> words.get(i + 2).equals("y"))
                                .mapToObj(columns::get)
                                .toList()))
                .toList();
    }

    boolean hasParameters() {
        return path.contains("{");
    }

    private static List<String> lines() {
        try {
            return Files.readAllLines(TABLE);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
