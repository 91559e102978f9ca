package wainbook.book.chapter;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import wainbook.book.EntryLine;
import wainbook.book.VehicleRecord;
import wainbook.book.VehicleRecord.Fold;
import wainbook.book.print.Line;
import wainbook.book.print.Row;
import wainbook.book.telling.Grounds;
import wainbook.page.Formats;

/** What was voided is struck through and said to be void in words. */
class RecordRowsTest {

    private static final Instant AT = Instant.parse("2026-11-26T09:14:27Z");
    private static final Formats LONDON = new Formats(ZoneId.of("Europe/London"));

    private static EntryLine line(long number, String what, String value, List<EntryLine> corrections) {
        return new EntryLine(
                number,
                AT,
                "W-1019",
                "W-1019",
                "station",
                what,
                value,
                Optional.empty(),
                new Grounds(Optional.empty(), List.of("joint J-1, class A, 20 to 24 Nm")),
                String.format(Locale.ROOT, "%064d", number),
                corrections);
    }

    private static List<Row> rows(EntryLine line) {
        var record = new VehicleRecord(List.of(new Fold("Stage", List.of(line))), List.of(), "", 2, "");
        return new RecordRows(record, LONDON).of(line, true);
    }

    private static List<String> looks(Row row, String text) {
        return row.cells().stream()
                .flatMap(cell -> cell.lines().stream())
                .filter(line -> line.text().contains(text))
                .map(Line::look)
                .toList();
    }

    @Test
    void an_entry_stands_with_its_value_its_grounds_and_its_fingerprint() {
        List<Row> rows = rows(line(1, "Tighten the lugs", "22.4 Nm", List.of()));
        assertThat(rows).hasSize(1);
        assertThat(rows.get(0).id()).isEqualTo("entry-1");
        assertThat(looks(rows.get(0), "Tighten the lugs · 22.4 Nm")).containsExactly("");
        assertThat(looks(rows.get(0), "class A, 20 to 24 Nm")).containsExactly("quiet small");
        assertThat(looks(rows.get(0), "1 · 00000000")).containsExactly("fixed");
        assertThat(looks(rows.get(0), "26 Nov 2026 09:14")).hasSize(1);
    }

    @Test
    void a_voided_entry_is_struck_and_said_to_be_void_and_what_voided_it_stands_below() {
        EntryLine later = line(2, "Voided: typed wrong", "", List.of());
        List<Row> rows = rows(line(1, "Tighten the lugs", "22.4 Nm", List.of(later)));
        assertThat(rows).hasSize(2);
        assertThat(looks(rows.get(0), "22.4 Nm")).allMatch(look -> look.contains("struck"));
        assertThat(looks(rows.get(0), "void: does not count"))
                .hasSize(1)
                .allMatch(look -> look.contains("danger") && !look.contains("struck"));
        assertThat(looks(rows.get(1), "Voided: typed wrong")).containsExactly("");
    }
}
