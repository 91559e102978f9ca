package wainbook.rehearsal;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wainbook.process.VehicleFacts;
import wainbook.process.sheet.Ask;
import wainbook.process.sheet.CheckItem;
import wainbook.process.sheet.CheckSheet;
import wainbook.setup.files.WorksFiles;
import wainbook.setup.files.WorksFolder;

/** In the demonstration no pack and no motor comes aboard before its load was read on gear that is in date. */
class LiftsOfTheDemonstrationTest {

    private static final WorksFiles WORKS = WorksFolder.read(Path.of("demo-fleet"), VehicleFacts.PREDICATES)
            .fold(files -> files, faults -> {
                throw new IllegalStateException(faults.toString());
            });

    @ParameterizedTest
    @CsvSource({
        "PACKS-BUS12, packs-land", "PACKS-CURT18, packs-land", "PACKS-HOOK26, packs-land", "PACKS-REEF75, packs-land",
        "DRIVE-BUS12, motor-fit", "DRIVE-CURT18, motor-fit", "DRIVE-HOOK26, motor-fit", "DRIVE-REEF75, motor-fit"
    })
    void what_is_lifted_in_waits_for_a_load_read_on_lifting_gear(String sheetCode, String landing) {
        CheckSheet sheet = WORKS.sheets().stream()
                .filter(known -> known.code().equals(sheetCode))
                .findFirst()
                .orElseThrow();
        List<String> before = sheet.item(landing).orElseThrow().after();
        assertThat(before)
                .map(key -> sheet.item(key).orElseThrow())
                .extracting(CheckItem::asks)
                .anyMatch(asks -> asks instanceof Ask.Measure measure
                        && measure.instrumentKind().equals(Optional.of("lifting-gear")));
    }
}
