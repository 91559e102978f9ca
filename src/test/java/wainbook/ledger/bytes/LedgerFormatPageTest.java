package wainbook.ledger.bytes;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import wainbook.ledger.Kinds;
import wainbook.ledger.Subject;
import wainbook.works.WorksSaying;

/** What docs/formats/ledger.md shows is what the program does. */
class LedgerFormatPageTest {

    private static final Pattern COMMAND =
            Pattern.compile("^printf '%s' '(\\{.*})' \\| sha256sum\n([0-9a-f]{64})  -$", Pattern.MULTILINE);

    private final String page = page();

    @Test
    void the_example_has_the_hashes_that_the_page_says() {
        List<MatchResult> commands = COMMAND.matcher(page).results().toList();
        assertThat(commands).hasSize(2);
        for (MatchResult command : commands) {
            assertThat(Said.hash(command.group(1))).isEqualTo(command.group(2));
            assertThat(Said.parse(command.group(1)).text()).isEqualTo(command.group(1));
        }
    }

    @Test
    void the_example_is_a_stream_of_two_entries_that_the_program_reads() {
        List<MatchResult> commands = COMMAND.matcher(page).results().toList();
        Said first = Said.parse(commands.get(0).group(1));
        Said second = Said.parse(commands.get(1).group(1));
        assertThat(first.previous()).isEqualTo(Said.NOTHING);
        assertThat(second.previous()).isEqualTo(commands.get(0).group(2));
        assertThat(List.of(first.number(), second.number())).containsExactly(1L, 2L);
        var kinds = Kinds.of(List.of(WorksSaying.class));
        assertThat(first.entry("", kinds).saying()).isInstanceOf(WorksSaying.InstrumentRegistered.class);
        assertThat(second.entry("", kinds).saying()).isInstanceOf(WorksSaying.Calibrated.class);
        assertThat(Subject.parse(first.subject()).stream()).isEqualTo(first.stream());
    }

    @Test
    void the_page_names_every_field_that_is_hashed_and_every_sort_of_stream() {
        for (var component : Said.class.getRecordComponents()) {
            assertThat(page).contains("\n| `" + component.getName() + "` |");
        }
        for (Subject.Sort sort : Subject.Sort.values()) {
            assertThat(page).contains("`" + sort.word() + "`");
        }
        assertThat(page).contains(Said.FORMAT, Said.NOTHING.substring(0, 64));
    }

    @Test
    void the_page_lists_the_columns_of_the_tables() throws IOException {
        String migration = Files.readString(Path.of("db-migrations/V001__ledger.sql"));
        var columns = Pattern.compile("^    ([a-z0-9_]+) (uuid|varchar|bigint|text|bytea|timestamp)", Pattern.MULTILINE)
                .matcher(migration)
                .results()
                .map(found -> Map.entry(found.group(1), found.group(2)))
                .toList();
        assertThat(columns).hasSizeGreaterThan(12);
        columns.forEach(column -> assertThat(page).contains("`" + column.getKey() + "`"));
    }

    private static String page() {
        try {
            return Files.readString(Path.of("docs/formats/ledger.md"));
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
