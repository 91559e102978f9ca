package wainbook.station.tool;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import wainbook.page.Option;
import wainbook.works.instruments.Instrument;
import wainbook.works.instruments.InstrumentRow;

/** A technician reaches for a wrench that fits, and sees why the others do not. */
class ToolsToHandTest {

    private static final LocalDate TODAY = LocalDate.of(2026, 11, 25);
    private static final ToolNeeded LUG =
            new ToolNeeded("torque-indicating", List.of(new BigDecimal("18"), new BigDecimal("22")));

    private final Map<String, Instrument> register = Map.of(
            "TW-1", wrench("TW-1", "200", "1000", TODAY),
            "TW-2", wrench("TW-2", "5", "50", TODAY.minusDays(1)),
            "TW-3", wrench("TW-3", "5", "50", TODAY));

    @Test
    void wrenches_that_cover_the_joint_and_are_in_calibration_come_first() {
        assertThat(tools().options()).extracting(Option::value).containsExactly("TW-3", "TW-1", "TW-2");
    }

    @Test
    void the_others_say_that_they_are_not_fit() {
        assertThat(tools().options())
                .extracting(option -> option.text().contains("not fit for this"))
                .containsExactly(false, true, true);
    }

    private ToolsToHand tools() {
        List<InstrumentRow> rows = List.of(row("TW-1"), row("TW-2"), row("TW-3"));
        return ToolsToHand.of(LUG, rows, code -> Optional.of(register.get(code)), TODAY, Optional.empty());
    }

    private static InstrumentRow row(String code) {
        var row = new InstrumentRow();
        row.code = code;
        row.kind = "torque-indicating";
        row.title = "Wrench";
        return row;
    }

    private static Instrument wrench(String code, String lower, String upper, LocalDate due) {
        return new Instrument(
                code,
                "torque-indicating",
                "Wrench",
                "N·m",
                new BigDecimal(lower),
                new BigDecimal(upper),
                Optional.empty(),
                Optional.of(due),
                Optional.empty(),
                Optional.empty());
    }
}
