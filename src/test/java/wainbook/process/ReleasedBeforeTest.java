package wainbook.process;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import wainbook.process.ProcessSaying.Released;
import wainbook.process.ProcessSaying.ReleasedBefore;
import wainbook.process.sheet.Ask;
import wainbook.process.sheet.CheckItem;
import wainbook.process.sheet.CheckItem.Dependence;
import wainbook.process.sheet.CheckItem.PartUse;
import wainbook.process.sheet.CheckSheet;
import wainbook.process.sheet.Condition;
import wainbook.process.sheet.SheetBefore;

class ReleasedBeforeTest {

    @Test
    void a_sheet_released_before_is_read_as_one_whose_items_say_nothing_about_concessions() {
        var item = new SheetBefore.Item(
                "brake-report",
                "File the brake test report",
                new Ask.Photograph(),
                Condition.DEAD,
                Optional.of("BRAKE-TEST"),
                Optional.of("Hot discs"),
                20,
                Optional.of("front axle"),
                List.of(new PartUse("DISC", 2)),
                List.of("labels"),
                List.of(new Dependence(Dependence.Sort.PART, "DISC")),
                Optional.of("tail_lift"),
                2);
        var before = new ReleasedBefore(new SheetBefore("COMM", "Commissioning", List.of(item), "commissioning"), 4);

        var newer = new CheckItem(
                "brake-report",
                "File the brake test report",
                new Ask.Photograph(),
                Condition.DEAD,
                Optional.of("BRAKE-TEST"),
                Optional.of("Hot discs"),
                20,
                Optional.of("front axle"),
                List.of(new PartUse("DISC", 2)),
                List.of("labels"),
                List.of(new Dependence(Dependence.Sort.PART, "DISC")),
                Optional.of("tail_lift"),
                2,
                Optional.empty());
        assertThat(before.newer())
                .isEqualTo(new Released(new CheckSheet("COMM", "Commissioning", List.of(newer), "commissioning"), 4));
    }
}
