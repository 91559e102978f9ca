package wainbook.waste.act;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import wainbook.act.Moment;
import wainbook.act.Reason;
import wainbook.waste.Labels;
import wainbook.waste.WasteSaying.Collected;
import wainbook.waste.WasteSaying.Measure;
import wainbook.waste.act.Collecting.ToCollect;
import wainbook.waste.act.Returning.ToReturn;
import wainbook.waste.note.Note;

/** What a container leaves under, and what comes back of it. */
class CollectRuleTest {

    private static final LocalDate TODAY = LocalDate.of(2026, 3, 10);

    private final Filling works = new Filling();

    @BeforeEach
    void a_drum_of_filters_and_a_skip() {
        works.open("FILTERS", "16 01 07*", "60", Measure.KG);
        works.open("STEEL", "16 01 17", "1000", Measure.KG);
        works.put("FILTERS", "V1", works.thing("V1", "n1", "16 01 07*", "6.5", Optional.empty()));
        works.put("FILTERS", "V2", works.thing("V2", "n1", "16 01 07*", "5.5", Optional.empty()));
        works.put("STEEL", "V1", works.thing("V1", "n2", "16 01 17", "45", Optional.empty()));
    }

    @Test
    void hazardous_waste_leaves_under_a_consignment_note_that_says_everything() {
        assertThat(keys("FILTERS", "WAINWO/A0001", "HP 14", TODAY, TODAY)).isEmpty();
        Collected said = said("FILTERS", Optional.empty());
        assertThat(said.note().sort()).isEqualTo(Note.Sort.CONSIGNMENT);
        assertThat(said.note().massKg()).isEqualByComparingTo("12");
        assertThat(said.note().carrier().by()).isEqualTo("7011");
        assertThat(keys("FILTERS", "NOTE 1", "", TODAY, TODAY))
                .containsExactlyInAnyOrder("waste.noteCodeForm", "waste.missing");
    }

    @Test
    void other_waste_leaves_under_a_transfer_note_with_a_number_of_its_own() {
        assertThat(keys("STEEL", "T-1", "", TODAY, TODAY)).isEmpty();
        assertThat(said("STEEL", Optional.empty()).note().sort()).isEqualTo(Note.Sort.TRANSFER);
        assertThat(keys("STEEL", "", "", TODAY, TODAY)).containsExactly("waste.noteCodeMissing");
    }

    @Test
    void a_registration_looked_up_yesterday_or_tomorrow_is_refused() {
        assertThat(keys("STEEL", "T-1", "", TODAY.minusDays(1), TODAY)).containsExactly("waste.seenNotToday");
        assertThat(keys("STEEL", "T-1", "", TODAY, TODAY.plusDays(1))).containsExactly("waste.seenNotToday");
    }

    @Test
    void a_weighbridge_mass_is_kept_beside_the_count_and_scales_the_shares() {
        Collected said = said("FILTERS", Optional.of(new BigDecimal("13")));
        assertThat(said.putInKg()).isEqualByComparingTo("12");
        assertThat(said.note().massKg()).isEqualByComparingTo("13");
        assertThat(said.shares().get(0).shareKg()).isEqualByComparingTo("7.042");
        assertThat(said.shares().get(1).shareKg()).isEqualByComparingTo("5.958");
        assertThat(said.shares().get(0).putInKg()).isEqualByComparingTo("6.5");
    }

    @Test
    void an_empty_container_and_one_that_left_take_no_note() {
        works.open("EMPTY", "16 01 17", "10", Measure.KG);
        assertThat(standing("EMPTY")).containsExactly("waste.empty");
        works.say(Labels.subject("STEEL"), said("STEEL", Optional.empty()));
        assertThat(standing("STEEL")).containsExactly("waste.gone");
        assertThat(standing("FILTERS")).isEmpty();
    }

    @Test
    void a_return_makes_up_the_note_and_comes_after_it() {
        assertThat(back("12", "0", "0", TODAY)).containsExactly("waste.notGone");
        works.say(Labels.subject("FILTERS"), said("FILTERS", Optional.empty()));
        assertThat(back("6", "5", "1", TODAY)).isEmpty();
        assertThat(back("6", "5", "2", TODAY)).containsExactly("waste.returnSum");
        assertThat(back("13", "-1", "0", TODAY)).containsExactly("waste.returnMass");
        assertThat(back("12", "0", "0", TODAY.minusDays(1))).containsExactly("waste.returnDay");
    }

    private List<String> back(String recycled, String energy, String disposed, LocalDate on) {
        var asked = new ToReturn(
                UUID.randomUUID(),
                "FILTERS",
                on,
                "R-1",
                new BigDecimal(recycled),
                new BigDecimal(energy),
                new BigDecimal(disposed));
        return Returning.against(Optional.of(works.container("FILTERS")), asked, TODAY).stream()
                .map(Reason::key)
                .toList();
    }

    private List<String> standing(String label) {
        return CollectRule.standing(Optional.of(works.container(label)), label).stream()
                .map(Reason::key)
                .toList();
    }

    private List<String> keys(String label, String code, String hazards, LocalDate registration, LocalDate permit) {
        return CollectRule.against(
                        works.container(label),
                        asked(label, code, hazards, registration, permit, Optional.empty()),
                        TODAY)
                .stream()
                .map(Reason::key)
                .toList();
    }

    private Collected said(String label, Optional<BigDecimal> weighbridge) {
        return Collecting.said(
                works.container(label),
                asked(label, "WAINWO/A0001", "HP 14", TODAY, TODAY, weighbridge),
                Moment.of("7011", Filling.NINE),
                TODAY);
    }

    private static ToCollect asked(
            String label,
            String code,
            String hazards,
            LocalDate registration,
            LocalDate permit,
            Optional<BigDecimal> weighbridge) {
        return new ToCollect(
                UUID.randomUUID(),
                label,
                Optional.empty(),
                code,
                "The works",
                "29.20",
                "Dismantling",
                "oil, steel",
                hazards,
                "1 drum",
                "",
                weighbridge,
                weighbridge.map(kg -> "W-1"),
                "A carrier",
                "R-1",
                registration,
                "ZZ1",
                "A site",
                "P-1",
                permit);
    }
}
