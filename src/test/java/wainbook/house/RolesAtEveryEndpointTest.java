package wainbook.house;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import java.io.IOException;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import wainbook.house.Visitor.Answer;
import wainbook.house.Visitor.Who;
import wainbook.works.Role;

/**
 * Who may knock where: {@code house/roles-at-every-endpoint.txt} says it for every endpoint and every role, and the
 * running app is asked cell by cell. The role is looked at before anything else, so empty hands are enough to be turned
 * away.
 */
@QuarkusTest
class RolesAtEveryEndpointTest {

    private static final Path TABLE = Path.of("src/test/resources/house/roles-at-every-endpoint.txt");
    private static final int CELLS_FROM = 2;

    private static final List<Endpoint> DOORS = Endpoint.all();

    @TestHTTPResource("/")
    URI app;

    @BeforeAll
    static void everybodyIsThere() {
        Cast.assemble();
    }

    @Test
    void the_table_has_a_column_for_every_role() {
        assertThat(Arrays.stream(Who.values()).map(Who::word))
                .containsAll(Arrays.stream(Role.values()).map(Role::word).toList());
        assertThat(head())
                .containsExactly(Arrays.stream(Who.values()).map(Who::word).toArray(String[]::new));
    }

    @Test
    void every_endpoint_says_itself_who_may() {
        assertThat(DOORS).hasSizeGreaterThan(50);
        assertThat(DOORS)
                .filteredOn(endpoint -> endpoint.declared().size() != 1)
                .extracting(Endpoint::method)
                .as("methods without exactly one annotation that says who may, on themselves or on their class")
                .isEmpty();
    }

    @Test
    void the_table_has_every_endpoint_and_no_other() {
        Map<String, String> declared = new LinkedHashMap<>();
        DOORS.forEach(endpoint -> declared.put(endpoint.verb() + " " + endpoint.path(), line(endpoint)));
        Map<String, List<String>> written = table();
        Set<String> missing = new LinkedHashSet<>(declared.keySet());
        missing.removeAll(written.keySet());
        Set<String> gone = new LinkedHashSet<>(written.keySet());
        gone.removeAll(declared.keySet());
        assertThat(missing)
                .as(
                        "endpoints without a line in %s. If the annotations are meant, add:%n%s%n",
                        TABLE, missing.stream().map(declared::get).collect(Collectors.joining("\n")))
                .isEmpty();
        assertThat(gone)
                .as("lines of %s without an endpoint: take them out", TABLE)
                .isEmpty();
    }

    @ParameterizedTest
    @EnumSource
    void each_is_let_in_and_turned_away_as_the_table_says(Who who) {
        var visitor = new Visitor(app, who);
        Map<String, List<String>> table = table();
        int column = head().indexOf(who.word());
        List<String> wrong = new ArrayList<>();
        for (Endpoint door : DOORS) {
            List<String> cells = table.get(door.verb() + " " + door.path());
            Answer answer = visitor.at(door);
            boolean may = cells != null && cells.get(column).equals("y");
            if (cells != null && answer != (may ? Answer.LET_IN : Answer.TURNED_AWAY)) {
                wrong.add(door.verb() + " " + door.path() + " " + answer + ", the table says " + (may ? "y" : "-"));
            }
        }
        assertThat(wrong).as(who.word()).isEmpty();
    }

    private static String line(Endpoint endpoint) {
        String cells = Arrays.stream(Who.values())
                .map(who -> endpoint.declared().size() == 1 && endpoint.admits(who.signedIn(), role(who)) ? "y" : "-")
                .collect(Collectors.joining(" "));
        return "%-4s %-64s %s".formatted(endpoint.verb(), endpoint.path(), cells);
    }

    private static Optional<String> role(Who who) {
        return Role.of(who.word()).map(Role::word);
    }

    private static List<String> head() {
        return lines().stream()
                .filter(line -> line.startsWith("# columns: "))
                .flatMap(line ->
                        Arrays.stream(line.substring("# columns: ".length()).split(" ")))
                .toList();
    }

    private static Map<String, List<String>> table() {
        Map<String, List<String>> cells = new LinkedHashMap<>();
        lines().stream()
                .filter(line -> !line.isBlank() && !line.startsWith("#"))
                .map(line -> List.of(line.split("\\s+")))
                .forEach(words -> {
                    List<String> row = words.subList(CELLS_FROM, words.size());
                    assertThat(row)
                            .as(words.toString())
                            .hasSize(Who.values().length)
                            .isSubsetOf("y", "-");
                    List<String> before = cells.put(words.get(0) + " " + words.get(1), row);
                    assertThat(before).as("stands twice: " + words).isNull();
                });
        return cells;
    }

    private static List<String> lines() {
        try {
            return Files.readAllLines(TABLE);
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }
}
