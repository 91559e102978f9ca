package wainbook.line.balance;

import static org.assertj.core.api.Assertions.assertThat;
import static wainbook.process.Sheets.item;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import wainbook.line.balance.Proposal.Moved;
import wainbook.process.Route;
import wainbook.process.sheet.CheckItem;
import wainbook.process.sheet.CheckSheet;

class ResheetingTest {

    private static final Route ROUTE = new Route(
            "BUS", "Bus", List.of(new Route.Leg("strip", "STRIP"), new Route.Leg("fit", "FIT")), "bus", "INTAKE");

    private final Resheeting resheeting = new Resheeting(
            List.of(ROUTE),
            Resheeting.byCode(Stream.of(
                    sheet("STRIP", "strip", item("a"), item("b", "a"), item("c", "b")),
                    sheet("FIT", "fit", item("d"), item("e", "d")))),
            Map.of("strip", 1, "fit", 2));

    @Test
    void what_comes_from_earlier_stands_first_in_its_old_order() {
        List<CheckSheet> changed = resheeting
                .changed(List.of(move("b", "strip", "fit"), move("c", "strip", "fit")))
                .orElseThrow();

        assertThat(keys(changed, "STRIP")).containsExactly("a");
        assertThat(keys(changed, "FIT")).containsExactly("b", "c", "d", "e");
    }

    @Test
    void what_comes_from_later_stands_last() {
        List<CheckSheet> changed =
                resheeting.changed(List.of(move("d", "fit", "strip"))).orElseThrow();

        assertThat(keys(changed, "STRIP")).containsExactly("a", "b", "c", "d");
        assertThat(keys(changed, "FIT")).containsExactly("e");
    }

    @Test
    void what_came_before_on_another_sheet_is_named_no_longer() {
        List<CheckSheet> changed =
                resheeting.changed(List.of(move("c", "strip", "fit"))).orElseThrow();

        assertThat(sheet(changed, "FIT").item("c").orElseThrow().after()).isEmpty();
        assertThat(sheet(changed, "STRIP").item("b").orElseThrow().after()).containsExactly("a");
    }

    @Test
    void a_sheet_that_has_changed_since_bars_it() {
        assertThat(resheeting.changed(List.of(move("gone", "strip", "fit")))).isEmpty();
    }

    @Test
    void no_sheet_loses_its_last_item() {
        assertThat(resheeting.changed(List.of(move("d", "fit", "strip"), move("e", "fit", "strip"))))
                .isEmpty();
    }

    private static List<String> keys(List<CheckSheet> sheets, String code) {
        return sheet(sheets, code).items().stream().map(CheckItem::key).toList();
    }

    private static CheckSheet sheet(List<CheckSheet> sheets, String code) {
        return sheets.stream()
                .filter(sheet -> sheet.code().equals(code))
                .findFirst()
                .orElseThrow();
    }

    private static CheckSheet sheet(String code, String stage, CheckItem... items) {
        return new CheckSheet(code, "Sheet " + code, Arrays.asList(items), stage);
    }

    private static Moved move(String key, String from, String to) {
        return new Moved(key, "Do " + key, from, to, Map.of("bus", 10.0));
    }
}
