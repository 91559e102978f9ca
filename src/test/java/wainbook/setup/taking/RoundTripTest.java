package wainbook.setup.taking;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wainbook.process.VehicleFacts;
import wainbook.setup.Folder;
import wainbook.setup.files.WorksFiles;
import wainbook.setup.files.WorksText;
import wainbook.setup.files.WorksZip;

/** Files taken into a works and given out of it again say the same. */
class RoundTripTest {

    private static WorksFiles read(byte[] packed) {
        return WorksZip.read(packed, VehicleFacts.PREDICATES).fold(files -> files, faults -> {
            throw new AssertionError(faults);
        });
    }

    @ParameterizedTest
    @ValueSource(strings = {"demo-fleet", "src/test/resources/small-works"})
    void what_is_given_out_reads_as_what_was_taken(String folder) {
        WorksFiles files = read(Folder.copyOf(Path.of(folder)).packed());
        var book = Book.of(files);
        book.later(40);

        Map<String, String> given = WorksText.of(book.record().givenOut());
        WorksFiles again = read(WorksZip.pack(given));

        assertThat(again.inOrder()).usingRecursiveComparison().isEqualTo(files.inOrder());
        assertThat(WorksText.of(again)).as("byte for byte").isEqualTo(given);
    }

    @ParameterizedTest
    @ValueSource(strings = {"demo-fleet", "src/test/resources/small-works"})
    void taking_them_again_another_day_changes_nothing(String folder) {
        WorksFiles files = read(Folder.copyOf(Path.of(folder)).packed());
        var book = Book.of(files);
        book.later(40);

        assertThat(book.preview(files).differences().changes()).isEmpty();
        assertThat(book.preview(files.inOrder()).differences().changes()).isEmpty();
    }
}
