package wainbook.station.judgement;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import wainbook.act.Reason;
import wainbook.process.determination.Given;
import wainbook.process.determination.Method;
import wainbook.process.sheet.Ask;
import wainbook.process.sheet.CheckItem;
import wainbook.process.sheet.Condition;
import wainbook.process.sheet.Limits;
import wainbook.station.ItemState;
import wainbook.station.Reply;
import wainbook.station.SheetLine;
import wainbook.station.StationSaying.About;
import wainbook.station.StationSaying.Basis;
import wainbook.station.StationSaying.By;
import wainbook.station.StationSaying.Determined;
import wainbook.station.StationSaying.Finding;
import wainbook.station.StationSaying.Verdict;
import wainbook.station.determination.DeterminedInWords;
import wainbook.station.determination.GivenInputs;
import wainbook.station.determination.Unlikely;

/** Quantities determined from readings. The figures are derived by Kirchhoff's laws from resistances chosen beforehand. */
class DetermineJudgeTest {

    private static final Ask.Determine VOLTMETER = ask(
            Method.ISOLATION_VOLTMETER,
            null,
            "nominalV 600",
            "workingV 750",
            "limitOhmPerVolt 500",
            "insertedOhm 350000",
            "insertedTolerancePercent 0.1",
            "readingFloorV 0.2");

    @Test
    void the_tool_says_on_which_rail_the_resistor_goes_and_records_nothing_before() {
        assertThat(refused(
                        VOLTMETER,
                        "0.5",
                        "busV 700.0",
                        "negativeToChassisV 437.5",
                        "positiveToChassisV 218.8",
                        "meterMOhm 10"))
                .satisfies(reason -> {
                    assertThat(reason.key()).isEqualTo("station.nextResistor");
                    assertThat(reason.arguments()).containsExactly("negative", "350 kΩ");
                });
        assertThat(refused(
                                VOLTMETER,
                                "0.5",
                                "busV 650",
                                "negativeToChassisV 174.3",
                                "positiveToChassisV 456.5",
                                "meterMOhm 10")
                        .arguments())
                .startsWith("positive");
    }

    @Test
    void two_leaks_behind_a_ten_megohm_meter_come_out_as_they_are() {
        Determined said = said(
                VOLTMETER,
                "0.5",
                "busV 700.0",
                "negativeToChassisV 437.5",
                "positiveToChassisV 218.8",
                "meterMOhm 10",
                "withResistorV 157.1");
        assertThat(said.value().orElseThrow().doubleValue()).isCloseTo(999_516.23, Percentage.withPercentage(1e-4));
        assertThat(said.uncertainty().orElseThrow().doubleValue()).isCloseTo(13_364.4, Percentage.withPercentage(1e-2));
        assertThat(said.result("insertedRail")).contains("negative");
        assertThat(Double.parseDouble(said.result("parallelOhm").orElseThrow()))
                .isCloseTo(666_666, Percentage.withPercentage(0.2));
        assertThat(said.verdict()).isEqualTo(Verdict.PASS);
        assertThat(DeterminedInWords.calculation(said).orElseThrow())
                .startsWith("/calculations/isolation-voltmeter?busV=700")
                .contains("insertedRail=negative");
    }

    @Test
    void a_value_whose_uncertainty_reaches_over_the_limit_is_undecided_and_passes_nothing() {
        Ask.Determine ask = ask(
                Method.ISOLATION_VOLTMETER,
                null,
                "nominalV 600",
                "workingV 750",
                "limitOhmPerVolt 500",
                "insertedOhm 375000",
                "insertedTolerancePercent 0.1",
                "readingFloorV 0.2");
        Determined said = said(
                ask,
                "0.5",
                "busV 750",
                "negativeToChassisV 563.8",
                "positiveToChassisV 150.0",
                "meterMOhm 10",
                "withResistorV 320.0");
        assertThat(said.value().orElseThrow().doubleValue()).isCloseTo(380_059.14, Percentage.withPercentage(1e-4));
        assertThat(said.finding()).isEqualTo(Finding.UNDECIDED);
        assertThat(said.verdict()).isEqualTo(Verdict.FAIL);
        assertThat(NonconformityRules.noConcession(state(ask).item(), said)).isPresent();
        assertThat(NonconformityRules.cause(state(ask), said))
                .as("measured again by a better method first")
                .isEmpty();
        assertThat(DeterminedInWords.findings(said)).hasSize(1).allMatch(text -> text.contains("375 kΩ"));
    }

    @Test
    void readings_that_cannot_be_true_together_are_refused_and_not_judged() {
        assertThat(refused(
                                VOLTMETER,
                                "0.5",
                                "busV 700",
                                "negativeToChassisV 437.5",
                                "positiveToChassisV 218.8",
                                "meterMOhm 10",
                                "withResistorV 440")
                        .key())
                .isEqualTo("station.determineImpossible");
        assertThat(refused(
                                VOLTMETER,
                                "0.5",
                                "busV 700",
                                "negativeToChassisV 470",
                                "positiveToChassisV 245",
                                "meterMOhm 10")
                        .key())
                .isEqualTo("station.determineRailsExceed");
        assertThat(refused(
                                VOLTMETER,
                                "0.5",
                                "busV 700",
                                "negativeToChassisV 437.5",
                                "positiveToChassisV 100",
                                "meterMOhm 10",
                                "withResistorV 157.1")
                        .key())
                .as("an open lead")
                .isEqualTo("station.determineDisagree");
        assertThat(refused(VOLTMETER, "0.5", "busV 700", "negativeToChassisV 437.5", "meterMOhm 10")
                        .key())
                .isEqualTo("station.determineMissing");
    }

    @Test
    void a_low_bus_or_a_meter_that_loads_the_insulation_counts_for_nothing() {
        assertThat(refused(
                                VOLTMETER,
                                "0.5",
                                "busV 590",
                                "negativeToChassisV 300",
                                "positiveToChassisV 280",
                                "meterMOhm 10")
                        .key())
                .isEqualTo("station.determineBusOutside");
        assertThat(refused(
                                VOLTMETER,
                                "0.5",
                                "busV 700",
                                "negativeToChassisV 437.5",
                                "positiveToChassisV 218.8",
                                "meterMOhm 1")
                        .key())
                .isEqualTo("station.determineMeterLow");
    }

    @Test
    void a_dead_earth_fails_at_once_and_says_to_stop() {
        Determined said =
                said(VOLTMETER, "0.5", "busV 700", "negativeToChassisV 699", "positiveToChassisV 0.4", "meterMOhm 10");
        assertThat(said.verdict()).isEqualTo(Verdict.FAIL);
        assertThat(said.value()).isEmpty();
        assertThat(DeterminedInWords.findings(said))
                .singleElement()
                .asString()
                .contains("positive", "Stop live testing");
    }

    @Test
    void a_tester_says_its_unit_each_time_and_its_ceiling_is_at_least_that_much() {
        Ask.Determine ask = ask(
                Method.ISOLATION_DIRECT,
                Limits.atLeast(new BigDecimal("1000000")),
                "workingV 700",
                "limitOhmPerVolt 500");
        Determined open = said(ask, "5", "measured 550", "prefix MΩ", "shown ceiling", "testV 1000");
        assertThat(open.openEnded()).isTrue();
        assertThat(DeterminedInWords.figures(open)).startsWith("at least 550 MΩ");
        assertThat(open.verdict()).isEqualTo(Verdict.PASS);
        Determined works = said(ask, "5", "measured 900", "prefix kΩ", "shown value", "testV 1000");
        assertThat(works.judgements())
                .extracting(judgement -> judgement.by() + " " + judgement.finding())
                .containsExactly(By.LAW + " PASS", By.WORKS + " FAIL");
        assertThat(refused(ask, "5", "measured 900", "shown value", "testV 1000")
                        .key())
                .isEqualTo("station.determineMissing");
        assertThat(refused(ask, "5", "measured 900", "prefix kΩ", "shown value", "testV 500")
                        .key())
                .isEqualTo("station.determineImpossible");
        assertThat(refused(ask, "5", "measured 900", "prefix Ω", "shown value", "testV 500")
                        .key())
                .isEqualTo("station.readingNotOne");
    }

    @Test
    void a_bond_is_the_mean_of_both_directions() {
        Ask.Determine ask = ask(Method.BONDING, Limits.atMost(new BigDecimal("0.05")));
        Determined said = said(ask, "1", "currentA 0.5", "voltageMV 18.0", "reversedVoltageMV -14.2");
        assertThat(said.value()).contains(new BigDecimal("0.0322"));
        assertThat(said.verdict()).isEqualTo(Verdict.PASS);
        assertThat(refused(ask, "1", "currentA 0.198", "voltageMV 14").key()).isEqualTo("station.determineImpossible");
        assertThat(refused(ask, "1", "currentA 0.2", "voltageMV 4000").key()).isEqualTo("station.determineNoContact");
        assertThat(said(ask, "1", "currentA 1", "voltageMV 100").finding()).isEqualTo(Finding.FAIL);
        assertThat(said(ask, "1", "currentA 1", "voltageMV 49.8").finding()).isEqualTo(Finding.UNDECIDED);
    }

    @Test
    void a_precharge_too_quick_is_as_wrong_as_one_too_slow() {
        Ask.Determine ask = ask(
                Method.PRECHARGE,
                null,
                "capacitanceF 0.0012",
                "resistanceOhm 47",
                "ratio 0.95",
                "tolerancePercent 20",
                "workingV 750");
        assertThat(said(ask, "0.5", "supplyV 700", "measuredS 0.17").verdict()).isEqualTo(Verdict.PASS);
        assertThat(said(ask, "0.5", "supplyV 700", "measuredS 0.05").verdict()).isEqualTo(Verdict.FAIL);
        assertThat(said(ask, "0.5", "supplyV 700", "measuredS 0.25").verdict()).isEqualTo(Verdict.FAIL);
        assertThat(refused(ask, "0.5", "supplyV 7000", "measuredS 0.17").key()).isEqualTo("station.determineTooHigh");
    }

    @Test
    void a_discharge_is_timed_against_its_limit_and_against_its_parts() {
        Ask.Determine ask = ask(
                Method.DISCHARGE,
                null,
                "capacitanceF 0.0012",
                "resistanceOhm 150",
                "limitV 60",
                "limitS 5",
                "tolerancePercent 20",
                "workingV 750");
        assertThat(said(ask, "0.5", "startV 700", "measuredS 0.44").verdict()).isEqualTo(Verdict.PASS);
        assertThat(said(ask, "0.5", "startV 700", "measuredS 6").judgements())
                .extracting(judgement -> judgement.finding())
                .containsExactly(Finding.FAIL, Finding.FAIL);
    }

    @Test
    void the_monitor_is_tried_with_resistors_that_the_tool_chooses_from_the_insulation_before() {
        Ask.Determine ask = monitor();
        Determined said = said(
                ask,
                "0",
                "alarmNegative alarm",
                "alarmNegativeS 4.1",
                "alarmPositive alarm",
                "alarmPositiveS 5.2",
                "clearNegative silent",
                "clearPositive silent");
        assertThat(said.result("alarmResistorOhm")).contains("560000");
        assertThat(said.result("clearResistorOhm")).contains("1200000");
        assertThat(said.value()).contains(new BigDecimal("5.2"));
        assertThat(said.verdict()).isEqualTo(Verdict.PASS);
        assertThat(said(
                                ask,
                                "0",
                                "alarmNegative alarm",
                                "alarmNegativeS 4.1",
                                "alarmPositive silent",
                                "clearNegative silent",
                                "clearPositive silent")
                        .verdict())
                .isEqualTo(Verdict.FAIL);
        assertThat(said(
                                ask,
                                "0",
                                "alarmNegative alarm",
                                "alarmNegativeS 4.1",
                                "alarmPositive alarm",
                                "alarmPositiveS 11",
                                "clearNegative silent",
                                "clearPositive silent")
                        .verdict())
                .isEqualTo(Verdict.FAIL);
        assertThat(said(
                                ask,
                                "0",
                                "alarmNegative alarm",
                                "alarmNegativeS 4.1",
                                "alarmPositive alarm",
                                "alarmPositiveS 4",
                                "clearNegative alarm",
                                "clearPositive silent")
                        .verdict())
                .isEqualTo(Verdict.FAIL);
    }

    @Test
    void another_resistor_than_the_chosen_one_decides_nothing_where_it_lies_in_the_doubt() {
        String[] answers = {
            "alarmNegative alarm",
            "alarmNegativeS 4",
            "alarmPositive alarm",
            "alarmPositiveS 4",
            "clearNegative silent",
            "clearPositive silent",
            "alarmResistorKOhm 620"
        };
        assertThat(refused(monitor(), "0", answers).key()).isEqualTo("station.determineResistorInconclusive");
        answers[6] = "alarmResistorKOhm 560";
        assertThat(said(monitor(), "0", answers).verdict()).isEqualTo(Verdict.PASS);
        answers[6] = "alarmResistorKOhm 50";
        assertThat(refused(monitor(), "0", answers).key())
                .as("below what the law asks")
                .isEqualTo("station.determineResistorInconclusive");
    }

    @Test
    void parts_that_each_look_well_can_be_too_little_together() {
        Ask.Determine ask = new Ask.Determine(
                "insulation resistance",
                Method.ISOLATION_COMBINED,
                given("workingV 700", "limitOhmPerVolt 500"),
                List.of(
                        "pack 1",
                        "pack 2",
                        "pack 3",
                        "drive",
                        "converter",
                        "charger",
                        "heater",
                        "compressor",
                        "pump",
                        "harness"),
                Optional.empty(),
                Optional.empty());
        Determined well = said(
                ask,
                "0",
                "part1 2.4",
                "part2 2.4",
                "part3 2.6",
                "part4 4",
                "part5 10",
                "part6 6",
                "part7 1.5",
                "part8 5",
                "part9 8",
                "part10 50");
        assertThat(well.value().orElseThrow().doubleValue()).isCloseTo(364_128.659, Percentage.withPercentage(1e-4));
        assertThat(well.verdict()).isEqualTo(Verdict.PASS);
        assertThat(Double.parseDouble(well.result("heater").orElseThrow()))
                .isCloseTo(0.2428, Percentage.withPercentage(0.1));
        Determined damp = said(
                ask,
                "0",
                "part1 2.4",
                "part2 2.4",
                "part3 2.6",
                "part4 4",
                "part5 10",
                "part6 6",
                "part7 0.6",
                "part8 5",
                "part9 8",
                "part10 50");
        assertThat(damp.verdict()).isEqualTo(Verdict.FAIL);
    }

    @Test
    void a_part_that_takes_more_than_its_share_is_named_and_fails_nothing() {
        Ask.Determine ask = new Ask.Determine(
                "insulation resistance",
                Method.ISOLATION_COMBINED,
                given("workingV 700", "limitOhmPerVolt 500"),
                List.of("pack", "heater"),
                Optional.empty(),
                Optional.empty());
        Determined said = said(ask, "0", "part1 5", "part2 0.6");
        assertThat(said.verdict()).isEqualTo(Verdict.PASS);
        assertThat(DeterminedInWords.findings(said))
                .containsExactly("to be looked at: heater below the budget of 700 kΩ for one part");
        assertThat(DeterminedInWords.findings(said(ask, "0", "part1 5", "part2 0.7")))
                .isEmpty();
    }

    @Test
    void packs_that_disagree_with_the_meter_or_lie_apart_are_not_joined() {
        Ask.Determine ask = new Ask.Determine(
                "voltage between packs",
                Method.PACK_VOLTAGES,
                given("workingV 756", "windowV 2", "agreementPercent 1"),
                List.of("pack 1", "pack 2"),
                Optional.empty(),
                Optional.of("multimeter"));
        Determined well = said(ask, "0.5", "part1 652.4", "reported1 652", "part2 653.1", "reported2 653");
        assertThat(well.verdict()).isEqualTo(Verdict.PASS);
        assertThat(DeterminedInWords.calculation(well).orElseThrow())
                .contains("measuredV=652.4&measuredV=653.1&reportedV=652&reportedV=653");
        Determined apart = said(ask, "0.5", "part1 640", "reported1 640", "part2 653.1", "reported2 653");
        assertThat(apart.verdict()).isEqualTo(Verdict.FAIL);
        Determined wrong = said(ask, "0.5", "part1 652.4", "reported1 652", "part2 653.1", "reported2 672");
        assertThat(wrong.verdict()).isEqualTo(Verdict.FAIL);
        assertThat(DeterminedInWords.findings(wrong)).singleElement().asString().contains("pack 2 and the meter");
        assertThat(refused(ask, "0.5", "part1 760", "reported1 652", "part2 653.1", "reported2 653")
                        .key())
                .isEqualTo("station.determinePackAbove");
    }

    @Test
    void the_capacitors_of_all_parts_hold_less_than_a_fifth_of_a_joule() {
        Ask.Determine ask = new Ask.Determine(
                "energy",
                Method.Y_CAPACITORS,
                given("voltageV 700"),
                List.of("inverter, plus", "inverter, minus"),
                Optional.empty(),
                Optional.empty());
        assertThat(said(ask, "0", "part1 220", "part2 220").verdict()).isEqualTo(Verdict.PASS);
        assertThat(said(ask, "0", "part1 470", "part2 470").verdict()).isEqualTo(Verdict.FAIL);
    }

    @Test
    void a_copied_value_and_one_a_decade_away_are_asked_about() {
        Ask.Determine ask = ask(Method.ISOLATION_DIRECT, null, "workingV 700", "limitOhmPerVolt 500");
        Determined said = said(ask, "5", "measured 12.5", "prefix MΩ", "shown value", "testV 1000");
        List<BigDecimal> lately = Stream.of("9e6", "11e6", "12e6", "13e6", "15e6")
                .map(BigDecimal::new)
                .toList();
        assertThat(new Unlikely(lately).of(said)).isEmpty();
        assertThat(new Unlikely(List.of(new BigDecimal("12500000.0")))
                        .of(said)
                        .orElseThrow()
                        .key())
                .isEqualTo("station.sameAsLast");
        Determined slip = said(ask, "5", "measured 12.5", "prefix GΩ", "shown value", "testV 1000");
        assertThat(new Unlikely(lately).of(slip).orElseThrow().key()).isEqualTo("station.decadeAway");
        assertThat(new Unlikely(lately.subList(0, 4)).of(slip))
                .as("too few to say")
                .isEmpty();
    }

    private static ItemState state(Ask.Determine ask) {
        var item = new CheckItem(
                "insulation",
                "Determine it",
                ask,
                Condition.LIVE,
                Optional.of("HV"),
                Optional.empty(),
                3,
                Optional.empty(),
                List.of(),
                List.of(),
                List.of(),
                Optional.empty(),
                3,
                Optional.empty());
        return new ItemState(
                new SheetLine("S", 1, item),
                ItemState.Status.OPEN,
                List.of(),
                0,
                Optional.empty(),
                Optional.empty(),
                List.of());
    }

    private static Ask.Determine monitor() {
        return ask(
                Method.MONITOR_TEST,
                null,
                "isolationOhm 666666.666667",
                "setOhmPerVolt 500",
                "workingV 700",
                "deviceErrorPercent 15",
                "legalOhmPerVolt 100",
                "alarmWithinS 10");
    }

    private static Ask.Determine ask(Method method, Limits works, String... given) {
        return new Ask.Determine(
                "quantity", method, given(given), List.of(), Optional.ofNullable(works), Optional.empty());
    }

    private static List<Given> given(String... all) {
        return Stream.of(all)
                .map(one -> one.split(" "))
                .map(pair -> new Given(pair[0], Optional.of(new BigDecimal(pair[1])), Optional.empty()))
                .toList();
    }

    private static Determined said(Ask.Determine ask, String accuracyPercent, String... readings) {
        return judged(ask, accuracyPercent, readings).fold(saying -> (Determined) saying, faults -> {
            throw new AssertionError("refused: " + faults);
        });
    }

    private static Reason refused(Ask.Determine ask, String accuracyPercent, String... readings) {
        return judged(ask, accuracyPercent, readings)
                .fold(
                        saying -> {
                            throw new AssertionError("judged: " + saying);
                        },
                        faults -> faults.get(0));
    }

    private static Judged judged(Ask.Determine ask, String accuracyPercent, String... readings) {
        Reply.Builder reply = Reply.with();
        for (String reading : readings) {
            String[] pair = reading.split(" ");
            reply.reading(pair[0], pair[1]);
        }
        var about = new About("commissioning", "COMM", 1, "item", List.of());
        var basis = new Basis(Condition.LIVE, Optional.empty(), Optional.empty());
        return new DetermineJudge(
                        about, basis, GivenInputs.of(ask, key -> Optional.empty()), new BigDecimal(accuracyPercent))
                .of(ask, reply.build());
    }
}
