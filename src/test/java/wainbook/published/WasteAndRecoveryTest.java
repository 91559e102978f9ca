package wainbook.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import wainbook.engineering.weights.RecoveryRate;
import wainbook.process.stream.ListOfWaste;
import wainbook.process.stream.ListOfWaste.Kind;
import wainbook.process.stream.ListOfWaste.Row;
import wainbook.process.stream.WasteCode;
import wainbook.waste.note.Note;
import wainbook.waste.note.NoteCode;
import wainbook.waste.rate.Recovery;
import wainbook.waste.rate.Recovery.Part;

/** Codes, notes and recovery rates against what is published of them. */
class WasteAndRecoveryTest {

    /** Entries as the German ordinance on the List of Waste restates Decision 2000/532/EC (read in the federal collection of law). */
    @ParameterizedTest
    @ValueSource(strings = {"16 01 07*", "160107", "16 01 07", " 16 0107 * ", "160107*"})
    void oil_filters_are_hazardous_however_their_code_is_written(String written) {
        Row row = ListOfWaste.ours().find(written).orElseThrow();
        assertThat(row.code()).isEqualTo("16 01 07*");
        assertThat(row.hazardous()).isTrue();
        assertThat(row.waste()).hasToString("16 01 07*");
        assertThat(row.kind()).isEqualTo(Kind.HAZARDOUS);
    }

    @ParameterizedTest
    @ValueSource(strings = {"16 01 05", "16 01 17*", "16 01", "", "oil", "16 01 07**", "1601077"})
    void what_is_no_entry_is_unknown_and_never_guessed(String written) {
        assertThat(ListOfWaste.ours().find(written)).isEmpty();
    }

    /** Guidance on vehicle and oily wastes, England, and the same ordinance. */
    @ParameterizedTest
    @CsvSource({
        "16 01 14*, 16 01 15",
        "16 10 01*, 16 10 02",
        "16 05 08*, 16 05 09",
        "15 02 02*, 15 02 03",
        "16 01 11*, 16 01 12",
        "17 04 10*, 17 04 11"
    })
    void a_mirror_pair_is_one_hazardous_entry_and_its_twin(String hazardous, String other) {
        Row one = ListOfWaste.ours().find(hazardous).orElseThrow();
        Row two = ListOfWaste.ours().find(other).orElseThrow();
        assertThat(List.of(one.kind(), two.kind())).containsOnly(Kind.MIRROR);
        assertThat(one.twin()).contains(other);
        assertThat(two.twin()).contains(hazardous);
        assertThat(one.hazardous()).isTrue();
        assertThat(two.hazardous()).isFalse();
    }

    @Test
    void each_entry_is_found_by_its_own_code_and_says_its_source() {
        assertThat(ListOfWaste.ours().source()).contains("2000/532/EC");
        for (Row row : ListOfWaste.ours().entries()) {
            assertThat(ListOfWaste.ours().find(row.code())).contains(row);
            assertThat(ListOfWaste.ours().find(row.waste().digits())).contains(row);
            assertThat(WasteCode.looksLikeOne(row.code())).isTrue();
        }
    }

    /** The England form since 1 April 2016, as trade notices of that year restate it. */
    @ParameterizedTest
    @CsvSource({
        "WAINWO/A0001, true",
        "WAINWO/A0001B, true",
        "WAIN/1, false",
        "WAINW-/00001, false",
        "wainwo/A0001, false",
        "WAINWO/A0001BC, false"
    })
    void a_consignment_note_has_a_code_of_the_england_form(String code, boolean fits) {
        assertThat(NoteCode.fits(code)).isEqualTo(fits);
    }

    /** SI 2011/988 reg 35 (two years, second-hand account for 2011) and SI 2005/894 (three years, second-hand account). */
    @Test
    void a_transfer_note_is_kept_for_two_years_and_a_consignment_note_for_three() {
        LocalDate on = LocalDate.of(2026, 11, 25);
        assertThat(Note.Sort.TRANSFER.keptUntil(on)).isEqualTo("2028-11-25");
        assertThat(Note.Sort.CONSIGNMENT.keptUntil(on)).isEqualTo("2029-11-25");
        assertThat(Note.Sort.of(true)).isEqualTo(Note.Sort.CONSIGNMENT);
        assertThat(Note.Sort.of(false)).isEqualTo(Note.Sort.TRANSFER);
    }

    /** The form of ISO 22628 as a training page restates it; the list and its result are this team's own computation. */
    @Test
    void a_strip_list_recovers_by_the_form_of_iso_22628_what_was_worked_out_by_hand() {
        var list = new Recovery(List.of(
                part("880", "0", "0", "850", "0", "0"),
                part("290", "0", "285", "0", "0", "0"),
                part("185", "0", "185", "0", "0", "0"),
                part("45", "0", "45", "0", "0", "0"),
                part("12", "0", "0", "0", "10", "2"),
                part("70", "0", "0", "66", "0", "2"),
                part("110", "110", "0", "0", "0", "0"),
                part("45", "0", "0", "12", "8", "20"),
                part("164", "164", "0", "0", "0", "0")));
        assertThat(list.massKg()).isEqualByComparingTo("1801");
        assertThat(list.preTreatmentKg()).isEqualByComparingTo("274");
        assertThat(list.dismantledKg()).isEqualByComparingTo("515");
        assertThat(list.metalsKg()).isEqualByComparingTo("928");
        assertThat(list.restKg()).isEqualByComparingTo("18");
        assertThat(list.energyKg()).isEqualByComparingTo("24");
        RecoveryRate.Results rates = results(list);
        assertThat(rates.recyclingPercent()).isEqualTo(96.3354, within(1e-4));
        assertThat(rates.recoveryPercent()).isEqualTo(97.6680, within(1e-4));
    }

    /** The same list by what happened: batteries 88 of 110, oils 40, filters half, reagent and diesel used again, coolant disposed of. */
    @Test
    void by_notes_the_same_list_recovers_less() {
        var list = new Recovery(List.of(
                part("880", "0", "0", "850", "0", "0"),
                part("290", "0", "285", "0", "0", "0"),
                part("230", "0", "230", "0", "0", "0"),
                part("12", "0", "0", "0", "10", "2"),
                part("70", "0", "0", "66", "0", "2"),
                part("110", "0", "0", "88", "0", "0"),
                part("45", "0", "0", "12", "8", "20"),
                part("40", "0", "0", "40", "0", "0"),
                part("6", "0", "0", "3", "0", "3"),
                part("38", "0", "0", "0", "0", "0"),
                part("80", "0", "80", "0", "0", "0")));
        RecoveryRate.Results rates = results(list);
        assertThat(list.massKg()).isEqualByComparingTo("1801");
        assertThat(rates.recyclingPercent()).isEqualTo(92.8373, within(1e-4));
        assertThat(rates.recoveryPercent()).isEqualTo(94.3365, within(1e-4));
        assertThat(1801 * (1 - rates.recoveryPercent() / 100)).isEqualTo(102, within(1e-9));
    }

    private static RecoveryRate.Results results(Recovery list) {
        return list.worked().<RecoveryRate.Results>fold(working -> working.results(), faults -> null, refusal -> null);
    }

    private static Part part(String... kg) {
        List<BigDecimal> masses = Arrays.stream(kg).map(BigDecimal::new).toList();
        return new Part(masses.get(0), masses.get(1), masses.get(2), masses.get(3), masses.get(4), masses.get(5));
    }
}
