package wainbook.pack.act;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import wainbook.act.Outcome;
import wainbook.pack.Looked;
import wainbook.pack.PackSaying.Finding;
import wainbook.pack.PackSaying.Insulation;
import wainbook.pack.PackSaying.Outside;
import wainbook.pack.PackSaying.Remark;
import wainbook.pack.PackSaying.Seen;
import wainbook.pack.PackSaying.Verdict;
import wainbook.pack.PackSaying.Way;
import wainbook.pack.Trigger;
import wainbook.works.instruments.Instrument;

/** What a receipt inspection comes to, and what a check in storage finds outside its window. */
class ReceiptRuleTest {

    private static final Optional<String> PAPER = Optional.of("TS-1");

    @Test
    void a_sound_pack_with_its_papers_is_accepted() {
        ReceiptRule rule = rule(Finding.PASS, "650", PAPER, PAPER);
        assertThat(rule.remarks()).isEmpty();
        assertThat(rule.verdict()).isEqualTo(Verdict.ACCEPTED);
        assertThat(rule.trigger()).isEmpty();
    }

    @Test
    void a_paper_that_is_missing_keeps_it_waiting() {
        assertThat(rule(Finding.PASS, "650", Optional.empty(), PAPER).remarks())
                .containsExactly(Remark.TEST_SUMMARY_MISSING);
        assertThat(rule(Finding.PASS, "650", PAPER, Optional.empty()).remarks())
                .containsExactly(Remark.CERTIFICATE_MISSING);
        assertThat(rule(Finding.PASS, "650", Optional.empty(), PAPER).verdict()).isEqualTo(Verdict.SET_ASIDE);
    }

    @Test
    void a_voltage_above_the_plate_keeps_it_waiting() {
        assertThat(rule(Finding.PASS, "756", PAPER, PAPER).verdict()).isEqualTo(Verdict.ACCEPTED);
        assertThat(rule(Finding.PASS, "756.1", PAPER, PAPER).remarks()).containsExactly(Remark.VOLTAGE_ABOVE_PLATE);
    }

    @Test
    void insulation_below_the_limit_is_damage_and_near_it_is_measured_again() {
        assertThat(rule(Finding.FAIL, "650", PAPER, PAPER).trigger()).contains(Trigger.ISOLATION_LOST);
        assertThat(rule(Finding.FAIL, "650", PAPER, PAPER).verdict()).isEqualTo(Verdict.QUARANTINED);
        assertThat(rule(Finding.UNDECIDED, "650", PAPER, PAPER).trigger()).isEmpty();
        assertThat(rule(Finding.UNDECIDED, "650", PAPER, PAPER).verdict()).isEqualTo(Verdict.SET_ASIDE);
    }

    @Test
    void each_thing_out_of_order_keeps_the_pack_from_being_accepted_and_damage_sets_it_aside_at_once() {
        List<Looked> damage = List.of(Looked.NO_DENTS, Looked.DRY, Looked.NO_SMELL, Looked.TILT);
        for (Looked look : Looked.values()) {
            ReceiptRule rule = new ReceiptRule(
                    sound().stream()
                            .map(seen -> new Seen(seen.what(), seen.what() != look))
                            .toList(),
                    insulation(Finding.PASS),
                    new BigDecimal("650"),
                    PAPER,
                    PAPER);
            assertThat(rule.remarks()).as(look.name()).containsExactly(Remark.NOT_SOUND);
            assertThat(rule.verdict())
                    .as(look.name())
                    .isEqualTo(damage.contains(look) ? Verdict.QUARANTINED : Verdict.SET_ASIDE);
        }
    }

    @Test
    void own_insulation_is_judged_by_five_hundred_ohms_a_volt_with_the_testers_uncertainty() {
        assertThat(finding("378000000")).isEqualTo(Finding.PASS);
        assertThat(finding("397895")).as("378 kΩ and 5 % above it: proven").isEqualTo(Finding.PASS);
        assertThat(finding("397000")).as("above 378 kΩ by less than 5 %").isEqualTo(Finding.UNDECIDED);
        assertThat(finding("300000")).isEqualTo(Finding.FAIL);
    }

    @Test
    void a_test_voltage_below_the_plate_judges_nothing() {
        assertThat(read("400000000", "500").judged(TESTER).reasons())
                .singleElement()
                .satisfies(reason -> assertThat(reason.key()).isEqualTo("pack.testVoltageLow"));
    }

    @Test
    void a_tester_at_its_ceiling_proves_that_much_and_never_a_failure() {
        assertThat(atCeiling("2000000000").finding()).isEqualTo(Finding.PASS);
        assertThat(atCeiling("2000000000").openEnded()).isTrue();
        assertThat(atCeiling("300000").finding())
                .as("at least 300 kΩ of 378 kΩ")
                .isEqualTo(Finding.UNDECIDED);
    }

    private static Insulation atCeiling(String ohm) {
        return new OwnInsulation(
                        Way.LOWER_OF_TERMINALS,
                        new BigDecimal(ohm),
                        true,
                        new BigDecimal("1000"),
                        new BigDecimal("756"),
                        TESTER.code())
                .judged(TESTER)
                .fold(kept -> kept, reasons -> {
                    throw new AssertionError(reasons.toString());
                });
    }

    @Test
    void what_was_read_is_kept_with_the_limit_and_the_tester_that_it_was_judged_by() {
        assertThat(read("397895", "1000").judged(TESTER))
                .isEqualTo(Outcome.done(new Insulation(
                        Way.TERMINALS_JOINED,
                        new BigDecimal("397895"),
                        false,
                        new BigDecimal("1000"),
                        new BigDecimal("756"),
                        new BigDecimal("500"),
                        new BigDecimal("5"),
                        "IT-1",
                        LocalDate.of(2026, 12, 1),
                        Finding.PASS)));
        assertThat(read("397895", "1000").measuredMOhm()).isEqualByComparingTo("0.397895");
    }

    @Test
    void a_reading_that_can_be_none_judges_nothing_and_is_shown_at_its_field() {
        assertThat(read("-1", "1000").judged(TESTER).reasons()).singleElement().satisfies(reason -> {
            assertThat(reason.key()).isEqualTo("pack.insulationFault");
            assertThat(reason.lift()).contains("#measured");
        });
    }

    @Test
    void what_is_unsound_and_conducts_too_well_is_set_aside_for_what_was_seen_first() {
        List<Seen> looked = Arrays.stream(Looked.values())
                .map(look -> new Seen(look, look == Looked.PACKAGING || look == Looked.SEALS))
                .toList();
        var rule = new ReceiptRule(looked, insulation(Finding.FAIL), new BigDecimal("650"), PAPER, PAPER);
        assertThat(rule.trigger()).contains(Trigger.DENTED);
        assertThat(rule.remarks()).containsExactly(Remark.NOT_SOUND, Remark.INSULATION_LOW);
        assertThat(rule(Finding.UNDECIDED, "650", PAPER, PAPER).remarks()).containsExactly(Remark.INSULATION_UNDECIDED);
    }

    @Test
    void the_window_of_storage_includes_its_bounds() {
        assertThat(outside("30", "15", true)).isEmpty();
        assertThat(outside("50", "25", true)).isEmpty();
        assertThat(outside("29.9", "20", true)).containsExactly(Outside.CHARGE_LOW);
        assertThat(outside("50.1", "20", true)).containsExactly(Outside.CHARGE_HIGH);
        assertThat(outside("40", "14.9", true)).containsExactly(Outside.COLD);
        assertThat(outside("40", "25.1", false)).containsExactly(Outside.WARM, Outside.DAMP);
    }

    private static List<Outside> outside(String charge, String celsius, boolean dry) {
        return StorageWindow.outside(new BigDecimal(charge), new BigDecimal(celsius), dry);
    }

    private static final Instrument TESTER = new Instrument(
            "IT-1",
            "insulation-tester",
            "Insulation tester",
            "MΩ",
            new BigDecimal("0.01"),
            new BigDecimal("2000"),
            Optional.of(new BigDecimal("5")),
            Optional.of(LocalDate.of(2026, 12, 1)),
            Optional.empty(),
            Optional.empty());

    private static Finding finding(String ohm) {
        return read(ohm, "1000").judged(TESTER).fold(Insulation::finding, reasons -> {
            throw new AssertionError(reasons.toString());
        });
    }

    private static OwnInsulation read(String ohm, String testV) {
        return new OwnInsulation(
                Way.TERMINALS_JOINED,
                new BigDecimal(ohm),
                false,
                new BigDecimal(testV),
                new BigDecimal("756"),
                TESTER.code());
    }

    private static ReceiptRule rule(
            Finding finding, String volts, Optional<String> testSummary, Optional<String> certificate) {
        return new ReceiptRule(sound(), insulation(finding), new BigDecimal(volts), testSummary, certificate);
    }

    private static List<Seen> sound() {
        return Arrays.stream(Looked.values()).map(look -> new Seen(look, true)).toList();
    }

    private static Insulation insulation(Finding finding) {
        return new Insulation(
                Way.TERMINALS_JOINED,
                new BigDecimal("100000000"),
                false,
                new BigDecimal("1000"),
                new BigDecimal("756"),
                new BigDecimal("500"),
                new BigDecimal("5"),
                "IT-1",
                LocalDate.of(2026, 12, 1),
                finding);
    }
}
