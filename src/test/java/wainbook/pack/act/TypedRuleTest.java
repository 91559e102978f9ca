package wainbook.pack.act;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import wainbook.act.Reason;
import wainbook.pack.Looked;
import wainbook.pack.PackSaying.Seen;
import wainbook.pack.PackSaying.Way;
import wainbook.pack.act.Receiving.ToReceive;

/** What is typed of a pack: each figure and each word at its bounds, each fault at its own field. */
class TypedRuleTest {

    private static final LocalDate TODAY = LocalDate.of(2026, 3, 10);
    private static final Optional<String> NONE = Optional.empty();

    private String packType = "A";
    private String lot = "LOT-7";
    private String place = "R-1";
    private LocalDate made = TODAY;
    private String chargePercent = "40";
    private String voltageV = "650";
    private String measuredOhm = "100000000";
    private String testV = "1000";
    private String workingV = "756";
    private Optional<String> testSummary = Optional.of("TS-1");
    private Optional<String> certificate = Optional.of("TC-1");
    private Optional<String> words = NONE;
    private List<Seen> looked =
            Arrays.stream(Looked.values()).map(look -> new Seen(look, true)).toList();

    @Test
    void a_receipt_with_everything_in_bounds_stands_and_papers_may_be_missing() {
        assertThat(faults()).isEmpty();
        testSummary = NONE;
        certificate = NONE;
        assertThat(faults()).isEmpty();
    }

    @Test
    void names_are_there_and_no_longer_than_eighty_characters() {
        String longest = "x".repeat(80);
        packType = longest;
        lot = longest;
        place = longest;
        testSummary = Optional.of(longest);
        certificate = Optional.of(longest);
        assertThat(faults()).isEmpty();
        packType = longest + "x";
        lot = " ";
        place = longest + "x";
        testSummary = Optional.of(longest + "x");
        certificate = Optional.of("");
        assertThat(faults())
                .containsExactly(
                        "pack.nameMissing #packType",
                        "pack.nameMissing #lot",
                        "pack.nameMissing #place",
                        "pack.nameMissing #testSummary",
                        "pack.nameMissing #certificate");
    }

    @Test
    void words_are_five_hundred_characters_at_most() {
        words = Optional.of("x".repeat(500));
        assertThat(faults()).isEmpty();
        words = Optional.of("x".repeat(501));
        assertThat(faults()).containsExactly("pack.wordsTooLong #words");
    }

    @Test
    void charge_is_between_empty_and_full() {
        chargePercent = "0";
        assertThat(faults()).isEmpty();
        chargePercent = "100.0";
        assertThat(faults()).isEmpty();
        chargePercent = "-0.1";
        assertThat(faults()).containsExactly("pack.figureOutside #chargePercent");
        chargePercent = "100.1";
        assertThat(faults()).containsExactly("pack.figureOutside #chargePercent");
    }

    @Test
    void each_voltage_is_from_one_to_fifteen_hundred_volts() {
        voltageV = "1";
        testV = "1500";
        workingV = "1";
        assertThat(faults()).isEmpty();
        voltageV = "1500.1";
        workingV = "0.9";
        testV = "0";
        assertThat(faults())
                .containsExactly(
                        "pack.figureOutside #voltageV", "pack.figureOutside #workingV", "pack.figureOutside #testV");
    }

    @Test
    void a_fault_in_a_figure_says_what_was_typed_and_between_what_it_should_be() {
        voltageV = "1500.10";
        assertThat(receipt().get(0).arguments()).containsExactly("1500.10", "1", "1500");
    }

    @Test
    void an_insulation_resistance_of_nothing_is_a_reading_and_one_below_nothing_is_none() {
        measuredOhm = "0";
        assertThat(faults()).isEmpty();
        measuredOhm = "-1";
        assertThat(faults()).containsExactly("pack.insulationFault #measured");
    }

    @Test
    void no_pack_was_made_tomorrow() {
        made = TODAY.plusDays(1);
        assertThat(faults()).containsExactly("pack.madeInFuture #made");
    }

    @Test
    void everything_is_looked_at_and_once() {
        var all = new ArrayList<>(looked);
        looked = all.subList(1, all.size());
        assertThat(faults()).containsExactly("pack.notLookedAt #PACKAGING");
        all.add(new Seen(Looked.TILT, false));
        looked = all;
        assertThat(faults()).containsExactly("pack.notLookedAt #TILT");
        looked = List.of();
        assertThat(faults())
                .containsExactlyElementsOf(Stream.of(Looked.values())
                        .map(look -> "pack.notLookedAt #" + look)
                        .toList());
    }

    @Test
    void temperatures_are_those_that_a_probe_reads() {
        assertThat(celsius("-60")).isEmpty();
        assertThat(celsius("1200")).isEmpty();
        assertThat(celsius("-60.1")).contains("pack.figureOutside #packC");
        assertThat(celsius("1200.1")).contains("pack.figureOutside #packC");
    }

    private static Optional<String> celsius(String degrees) {
        return TypedRule.celsius(new BigDecimal(degrees), "packC").map(TypedRuleTest::atField);
    }

    private List<String> faults() {
        return receipt().stream().map(TypedRuleTest::atField).toList();
    }

    private static String atField(Reason reason) {
        return reason.key() + " " + reason.lift().orElse("");
    }

    private List<Reason> receipt() {
        return TypedRule.receipt(
                new ToReceive(
                        new UUID(0, 1),
                        "PK-1",
                        packType,
                        lot,
                        made,
                        new BigDecimal(chargePercent),
                        new BigDecimal(voltageV),
                        looked,
                        new OwnInsulation(
                                Way.TERMINALS_JOINED,
                                new BigDecimal(measuredOhm),
                                false,
                                new BigDecimal(testV),
                                new BigDecimal(workingV),
                                "IT-1"),
                        testSummary,
                        certificate,
                        place,
                        words),
                TODAY);
    }
}
