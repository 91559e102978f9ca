package wainbook.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static wainbook.engineering.Answers.faultyFields;
import static wainbook.engineering.Answers.refusal;
import static wainbook.engineering.Answers.results;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wainbook.engineering.measurement.Agreement;
import wainbook.engineering.measurement.CalibrationInterval;
import wainbook.engineering.measurement.ConformanceProbability;
import wainbook.engineering.measurement.Containment;
import wainbook.engineering.measurement.CoverageFactor;
import wainbook.engineering.measurement.CoverageFactor.Contribution;
import wainbook.engineering.measurement.DigitPreference;
import wainbook.engineering.measurement.ElementString;
import wainbook.engineering.measurement.ElementString.Element;
import wainbook.engineering.measurement.ErrorPoint;
import wainbook.engineering.measurement.GaugeStudyByRanges;
import wainbook.engineering.measurement.TooLittleScatter;

class InstrumentsAndReadingsTest {

    /** Limits 108 and 132, u 1.2; the formula is JCGM 106:2012 from memory, numbers by hand. */
    @ParameterizedTest
    @CsvSource({"129.6, 0.977250", "130, 0.9522096477271853", "131, 0.797672", "132, 0.5", "120, 1", "400, 0"})
    void probability_of_conforming(double reading, double probability) {
        var inputs = new ConformanceProbability.Inputs(reading, 1.2, Optional.of(108.0), Optional.of(132.0));

        assertThat(results(new ConformanceProbability().of(inputs)).probability())
                .isCloseTo(probability, within(5e-7));
    }

    /**
     * JCGM 106:2012, 7.4: viscosity 13.6 with u 1.8 between 12.5 and 16.3 mm²/s, figures read on a metrologist's page that quotes
     * it; that the guide then says 0.66 is from memory.
     */
    @Test
    void viscosity_of_the_guide() {
        var inputs = new ConformanceProbability.Inputs(13.6, 1.8, Optional.of(12.5), Optional.of(16.3));

        assertThat(results(new ConformanceProbability().of(inputs)).probability())
                .isCloseTo(0.66, within(0.005));
    }

    /**
     * JCGM 106:2012, 9.5.4: resistors of 1500 Ω with a scatter of 0.12 Ω between 1499.8 and 1500.2 Ω. The inputs were read in an
     * open-source program for this example; that about 0.90 of them conform is from memory.
     */
    @Test
    void resistors_of_the_guide() {
        var inputs = new ConformanceProbability.Inputs(1500, 0.12, Optional.of(1499.8), Optional.of(1500.2));

        assertThat(results(new ConformanceProbability().of(inputs)).probability())
                .isCloseTo(0.90, within(0.005));
    }

    @Test
    void probability_of_conforming_to_one_limit() {
        var conformance = new ConformanceProbability();
        var lower = new ConformanceProbability.Inputs(110, 2, Optional.of(108.0), Optional.empty());
        var none = new ConformanceProbability.Inputs(110, 2, Optional.empty(), Optional.empty());
        var upsideDown = new ConformanceProbability.Inputs(110, 2, Optional.of(5.0), Optional.of(5.0));

        assertThat(results(conformance.of(lower)).probability()).isCloseTo(0.841344746068543, within(1e-12));
        assertThat(faultyFields(conformance.of(none))).containsExactly("lower", "upper");
        assertThat(faultyFields(conformance.of(upsideDown))).containsExactly("upper");
    }

    /** JCGM 100:2008, H.1, end gauge: read in open-source tests that reproduce it; ν_eff 16, t95 2.12. */
    @Test
    void effective_degrees_of_freedom_of_an_end_gauge() {
        var found = results(new CoverageFactor()
                .of(new CoverageFactor.Inputs(
                        List.of(
                                with(25, 18),
                                with(5.8, 24),
                                with(3.9, 5),
                                with(6.7, 8),
                                with(2.9, 50),
                                with(16.675, 2)),
                        0.95)));

        assertThat(found.combined()).isCloseTo(32, within(0.35));
        assertThat(found.degreesOfFreedom().orElseThrow()).isCloseTo(16.6449, within(5e-4));
        assertThat(found.coverageFactor()).isCloseTo(2.1199052992, within(1e-4));
        assertThat(found.expandedUncertainty()).isCloseTo(found.combined() * found.coverageFactor(), within(1e-9));
    }

    @Test
    void contributions_that_are_certain_go_with_the_normal_law() {
        var certain = new Contribution(3, Optional.empty());
        var found = results(new CoverageFactor()
                .of(new CoverageFactor.Inputs(List.of(certain, new Contribution(4, Optional.empty())), 0.95)));

        assertThat(found.combined()).isEqualTo(5);
        assertThat(found.degreesOfFreedom()).isEmpty();
        assertThat(found.coverageFactor()).isCloseTo(1.959963984540054, within(1e-9));
        assertThat(refusal(new CoverageFactor().of(new CoverageFactor.Inputs(List.of(with(0, 1)), 0.95))))
                .isEqualTo("nothing-uncertain");
    }

    /** A reading of 125.0 with a known error of +1.2 and −1.2 %; by hand. */
    @ParameterizedTest
    @CsvSource({"1.2, 123.51778656126483", "-1.2, 126.51821862348179"})
    void reading_put_right_by_a_known_error(double errorPercent, double trueNm) {
        var known = List.of(new ErrorPoint(100, errorPercent));
        var inputs =
                new Containment.Inputs(known, known, 1, 0, List.of(new Containment.Reading("n", 0, 125, 100, 150)));

        assertThat(results(new Containment().of(inputs)).readings().get(0).best())
                .isCloseTo(trueNm, within(1e-9));
    }

    /** 12 months with 90 % found good, 95 % wanted: NCSL RP-1 from memory; by hand. */
    @Test
    void interval_by_reliability() {
        var found = results(new CalibrationInterval().of(new CalibrationInterval.Inputs(12, 0.90, 0.95)));

        assertThat(found.newIntervalMonths()).isCloseTo(5.842032271838881, within(1e-9));
    }

    /** Counts of AIAG's example from memory, and another; by hand. */
    @ParameterizedTest
    @CsvSource({"44, 6, 3, 97, 0.94, 0.562222, 0.8629441624365481", "20, 5, 10, 15, 0.70, 0.50, 0.4"})
    void kappa(int both, int first, int second, int none, double observed, double chance, double kappa) {
        var found = results(new Agreement().of(new Agreement.Inputs(both, first, second, none)));

        assertThat(found.observed()).isCloseTo(observed, within(1e-12));
        assertThat(found.byChance()).isCloseTo(chance, within(5e-7));
        assertThat(found.kappa()).isCloseTo(kappa, within(1e-12));
    }

    @Test
    void kappa_needs_pieces_of_both_kinds() {
        assertThat(refusal(new Agreement().of(new Agreement.Inputs(0, 0, 0, 0))))
                .isEqualTo("nothing-to-tell-apart");
        assertThat(refusal(new Agreement().of(new Agreement.Inputs(9, 0, 0, 0))))
                .isEqualTo("nothing-to-tell-apart");
    }

    /**
     * The AIAG example by averages and ranges; by hand with the printed K factors 0.5908, 0.5231 and 0.3146, which ours differ
     * from in the fourth digit.
     */
    @Test
    void gauge_study_by_ranges() {
        var found = results(new GaugeStudyByRanges().of(new GaugeStudyByRanges.Inputs(GaugeStudyTest.EXAMPLE)));

        assertThat(found.repeatability()).isCloseTo(0.2018566667, within(1e-4));
        assertThat(found.reproducibility()).isCloseTo(0.2296670291, within(1e-4));
        assertThat(found.gauge()).isCloseTo(0.3057663457, within(1e-4));
        assertThat(found.part()).isCloseTo(1.1045955556, within(3e-4));
        assertThat(found.total()).isCloseTo(1.1461345469, within(3e-4));
        assertThat(found.percentGauge()).isCloseTo(26.6780, within(0.01));
        assertThat(found.categories()).isCloseTo(5.0937, within(2e-3));
    }

    @Test
    void a_study_by_ranges_does_not_believe_a_gauge_without_spread_either() {
        var same =
                List.of(List.of(List.of(1.0, 1.0), List.of(1.0, 1.0)), List.of(List.of(2.0, 2.0), List.of(2.0, 2.0)));

        assertThat(refusal(new GaugeStudyByRanges().of(new GaugeStudyByRanges.Inputs(same))))
                .isEqualTo("no-gauge-spread");
    }

    /** χ² test of the ten digits and binomial tail of the noughts and fives; by hand. */
    @Test
    void last_digits_that_are_preferred() {
        var found =
                results(new DigitPreference().of(new DigitPreference.Inputs(List.of(22, 6, 9, 7, 8, 20, 7, 6, 9, 6))));

        assertThat(found.chiSquare()).isCloseTo(31.6, within(1e-12));
        assertThat(found.pEven()).isCloseTo(0.00023343879633546733, within(1e-10));
        assertThat(found.pRound()).isCloseTo(4.4e-7, within(5e-9));
    }

    /** Twelve noughts and fives in 25; by hand. */
    @Test
    void twelve_round_digits_in_twenty_five() {
        var found =
                results(new DigitPreference().of(new DigitPreference.Inputs(List.of(7, 2, 2, 2, 2, 5, 2, 1, 1, 1))));

        assertThat(found.pRound()).isCloseTo(0.0015400514916665696, within(1e-12));
        assertThat(faultyFields(
                        new DigitPreference().of(new DigitPreference.Inputs(List.of(0, 0, 0, 0, 0, 0, 0, 0, 0, 0)))))
                .containsExactly("counts[0]");
    }

    /** Ten readings within two steps where 1.2 is usual; by hand. */
    @Test
    void readings_that_scatter_too_little() {
        var found = results(new TooLittleScatter()
                .of(new TooLittleScatter.Inputs(
                        List.of(120.1, 120.0, 120.1, 120.2, 120.0, 120.1, 120.1, 120.0, 120.1, 120.2), 1.2, 0.01)));

        assertThat(found.s()).isCloseTo(0.073786, within(1e-6));
        assertThat(found.statistic()).isCloseTo(0.034027777777778254, within(1e-9));
        assertThat(found.threshold()).isCloseTo(2.0879007358707273, within(1e-9));
        assertThat(found.tooLittle()).isTrue();
        assertThat(results(new TooLittleScatter()
                                .of(new TooLittleScatter.Inputs(List.of(118.0, 120.0, 121.0), 1.2, 0.01)))
                        .tooLittle())
                .isFalse();
    }

    /** Identifiers and lengths: GS1 syntax dictionary; GTIN read in a barcode library's documentation, lot and serial invented. */
    @Test
    void label_with_its_separator() {
        var found = results(
                new ElementString().of(new ElementString.Inputs("]d2010952123454321310LOT42A\u001d21SN000117")));

        assertThat(found.wellFormed()).isTrue();
        assertThat(found.elements())
                .containsExactly(
                        new Element("01", "09521234543213"),
                        new Element("10", "LOT42A"),
                        new Element("21", "SN000117"));
        assertThat(found.hints()).isEmpty();
        assertThat(results(new ElementString().of(new ElementString.Inputs("010952123454321310LOT42A␝21SN000117")))
                        .elements())
                .isEqualTo(found.elements());
    }

    /** The same label where the scanner swallowed the separator: legal, and wrong. */
    @Test
    void label_without_its_separator_is_doubted() {
        var found = results(new ElementString().of(new ElementString.Inputs("010952123454321310LOT42A21SN000117")));

        assertThat(found.wellFormed()).isTrue();
        assertThat(found.elements()).contains(new Element("10", "LOT42A21SN000117"));
        assertThat(found.hints())
                .singleElement()
                .satisfies(hint -> assertThat(hint.key()).isEqualTo("engineering.element-string.swallowed"));
    }

    /** A second GTIN, its check digit by hand, and a lot of the greatest length. */
    @ParameterizedTest
    @CsvSource({"0106291041500213", "10ABCDEFGHIJKLMNOPQRST", "1126010120" + "00"})
    void labels_that_are_well_formed(String text) {
        assertThat(results(new ElementString().of(new ElementString.Inputs(text)))
                        .wellFormed())
                .isTrue();
    }

    @ParameterizedTest
    @CsvSource({
        "0109521234543214, engineering.element-string.check",
        "010952123454321, engineering.element-string.length",
        "10ABCDEFGHIJKLMNOPQRSTU, engineering.element-string.length",
        "99X, engineering.element-string.unknown",
        "11260A01, engineering.element-string.length",
        "10, engineering.element-string.unknown"
    })
    void labels_that_are_not_well_formed(String text, String hint) {
        var found = results(new ElementString().of(new ElementString.Inputs(text)));

        assertThat(found.wellFormed()).isFalse();
        assertThat(found.hints().get(0).key()).isEqualTo(hint);
    }

    private static Contribution with(double u, double degrees) {
        return new Contribution(u, Optional.of(degrees));
    }
}
