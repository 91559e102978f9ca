package wainbook.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;
import static wainbook.engineering.Answers.faultyFields;
import static wainbook.engineering.Answers.results;

import java.util.List;
import java.util.Optional;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wainbook.engineering.statistics.AcceptancePlan;
import wainbook.engineering.statistics.AcceptancePlan.Level;
import wainbook.engineering.statistics.CapabilityNeeded;
import wainbook.engineering.statistics.DefectRate;
import wainbook.engineering.statistics.RateInterval;
import wainbook.engineering.statistics.RolledYield;
import wainbook.engineering.statistics.ToleranceInterval;

class SharesAndLotsTest {

    /**
     * NIST/SEMATECH e-Handbook 7.2.6.3, 43 values, 90 % of all with 99 % confidence: factors and ends read there (a print with
     * another s on that page is wrong).
     */
    @Test
    void tolerance_interval_of_the_handbook() {
        var found = results(new ToleranceInterval().of(new ToleranceInterval.Inputs(43, 97.07, 0.0268, 0.90, 0.99)));

        assertThat(found.k2()).isCloseTo(2.2173158966536293, within(1e-8));
        assertThat(found.k1()).isCloseTo(1.8739536058511987, within(1e-8));
        assertThat(found.lower()).isCloseTo(97.010576, within(1e-6));
        assertThat(found.upper()).isCloseTo(97.129424, within(1e-6));
        assertThat(found.upperOnly()).isCloseTo(97.07 + 1.8739536058511987 * 0.0268, within(1e-8));
        assertThat(found.lowerOnly()).isCloseTo(97.07 - 1.8739536058511987 * 0.0268, within(1e-8));
    }

    /** The page's short formula for one side comes out a thousandth above the exact factor; both read there. */
    @Test
    void short_formula_of_the_handbook_for_one_side() {
        double zp = NormalDistribution.of(0, 1).inverseCumulativeProbability(0.90);
        double zg = NormalDistribution.of(0, 1).inverseCumulativeProbability(0.99);
        double a = 1 - zg * zg / (2 * 42);
        double b = zp * zp - zg * zg / 43;
        double k1 = (zp + Math.sqrt(zp * zp - a * b)) / a;
        var exact = results(new ToleranceInterval().of(new ToleranceInterval.Inputs(43, 97.07, 0.0268, 0.90, 0.99)));

        assertThat(k1).isCloseTo(1.8751895812770254, within(1e-8));
        assertThat(exact.k1() / k1).isBetween(0.999, 1.0);
    }

    /** Factors for 95 and 99 % of all with 95 % confidence, by the formulas of the handbook's page and by hand. */
    @ParameterizedTest
    @CsvSource({
        "10, 3.3819, 4.4446, 2.9110, 3.9811",
        "20, 2.7523, 3.6171, 2.3960, 3.2952",
        "30, 2.5496, 3.3508, 2.2198, 3.0639",
        "50, 2.3788, 3.1262, 2.0650, 2.8624",
        "100, 2.2328, 2.9344, 1.9265, 2.6840"
    })
    void tolerance_factors(int n, double both95, double both99, double one95, double one99) {
        var of95 = results(new ToleranceInterval().of(new ToleranceInterval.Inputs(n, 0, 1, 0.95, 0.95)));
        var of99 = results(new ToleranceInterval().of(new ToleranceInterval.Inputs(n, 0, 1, 0.99, 0.95)));

        assertThat(of95.k2()).isCloseTo(both95, within(6e-5));
        assertThat(of99.k2()).isCloseTo(both99, within(6e-5));
        assertThat(of95.k1()).isCloseTo(one95, within(6e-5));
        assertThat(of99.k1()).isCloseTo(one99, within(6e-5));
    }

    /**
     * To one side from two values up, by the noncentral t of a second implementation, SciPy 1.17.1; 20.581, 6.155 and 2.355 are
     * those of printed tables too (from memory).
     */
    @ParameterizedTest
    @CsvSource({
        "2, 0.9, 0.95, 20.581467624244947",
        "2, 0.99, 0.99, 185.6169586032112",
        "2, 0.5, 0.9, 2.176250899482822",
        "2, 0.95, 0.9999, 13143.161364992835",
        "3, 0.9, 0.95, 6.155281103326256",
        "3, 0.99, 0.9999, 239.68468592090304",
        "5, 0.9, 0.9999, 17.529528503523863",
        "10, 0.9, 0.95, 2.354640131829059",
        "1000, 0.5, 0.6, 0.008013672756264993",
        "1000000, 0.999, 0.95, 3.094189608935206"
    })
    void tolerance_factors_to_one_side(int n, double coverage, double confidence, double factor) {
        var found = results(new ToleranceInterval().of(new ToleranceInterval.Inputs(n, 10, 2, coverage, confidence)));

        assertThat(found.k1()).isCloseTo(factor, withinPercentage(1e-6));
        assertThat(found.lowerOnly()).isCloseTo(10 - 2 * factor, withinPercentage(1e-6));
    }

    /** Five in 120: intervals of Wilson and of Clopper and Pearson; by hand. */
    @Test
    void share_of_five_in_a_hundred_and_twenty() {
        var found = results(new RateInterval().of(new RateInterval.Inputs(5, 120, 0.95)));

        assertThat(found.scoreLow()).isCloseTo(0.01792671676662358, within(1e-8));
        assertThat(found.scoreHigh()).isCloseTo(0.09384085288517821, within(1e-8));
        assertThat(found.exactLow()).isCloseTo(0.013665384116789567, within(1e-8));
        assertThat(found.exactHigh()).isCloseTo(0.09455879995593716, within(1e-8));
        assertThat(found.mostIfNone()).isEmpty();
    }

    /** None in n pieces, 95 % to one side: 1 − 0.05^(1/n); by hand. */
    @ParameterizedTest
    @CsvSource({"59, 0.049508", "30, 0.095034"})
    void none_at_all(int n, double most) {
        var found = results(new RateInterval().of(new RateInterval.Inputs(0, n, 0.95)));

        assertThat(found.mostIfNone().orElseThrow()).isCloseTo(most, within(1e-6));
        assertThat(found.exactLow()).isZero();
        assertThat(found.scoreLow()).isZero();
    }

    @Test
    void all_of_them_and_more_than_all() {
        assertThat(results(new RateInterval().of(new RateInterval.Inputs(7, 7, 0.95)))
                        .exactHigh())
                .isEqualTo(1);
        assertThat(faultyFields(new RateInterval().of(new RateInterval.Inputs(8, 7, 0.95))))
                .containsExactly("events");
    }

    /** ISO 2859-1, single sampling, normal inspection: two agreeing public tables. */
    @ParameterizedTest
    @CsvSource({
        "800, II, 1.0, J, J, 80, 2, false",
        "100, II, 1.0, F, E, 13, 0, false",
        "200, II, 1.0, G, H, 50, 1, false",
        "8, I, 6.5, A, A, 2, 0, false",
        "9, II, 4.0, B, B, 3, 0, false",
        "3200, III, 0.65, L, L, 200, 3, false",
        "3200, II, 2.5, K, K, 125, 7, false",
        "501, I, 6.5, G, G, 32, 5, false",
        "20, III, 0.65, D, F, 20, 0, true",
        "15, II, 1.0, B, E, 13, 0, false",
        "6, III, 0.65, B, F, 6, 0, true"
    })
    void sampling_plan(
            int lot, Level level, double limit, String letter, String plan, int sample, int accept, boolean every) {
        var found = results(new AcceptancePlan().of(new AcceptancePlan.Inputs(lot, level, limit, Optional.empty())));

        assertThat(found.letter()).isEqualTo(letter);
        assertThat(found.planLetter()).isEqualTo(plan);
        assertThat(found.sample()).isEqualTo(sample);
        assertThat(found.accept()).isEqualTo(accept);
        assertThat(found.reject()).isEqualTo(accept + 1);
        assertThat(found.everyPiece()).isEqualTo(every);
        assertThat(found.acceptProbability()).isEmpty();
    }

    /** Chance of acceptance, binomial: 80 with 2, 50 with 1, 13 with none; by hand. */
    @ParameterizedTest
    @CsvSource({
        "800, 0.01, 0.953447", "800, 0.02, 0.784419", "800, 0.05, 0.230621", "800, 0.10, 0.010684",
        "200, 0.01, 0.910565", "200, 0.05, 0.279432", "100, 0.01, 0.877521", "100, 0.05, 0.513342"
    })
    void chance_of_acceptance(int lot, double share, double chance) {
        var found = results(new AcceptancePlan().of(new AcceptancePlan.Inputs(lot, Level.II, 1.0, Optional.of(share))));

        assertThat(found.acceptProbability().orElseThrow()).isCloseTo(chance, within(1e-6));
    }

    @Test
    void every_lot_level_and_limit_has_a_plan() {
        for (int lot :
                List.of(2, 8, 9, 15, 16, 25, 26, 50, 51, 90, 91, 150, 151, 280, 281, 500, 501, 1200, 1201, 3200)) {
            for (Level level : Level.values()) {
                for (double limit : List.of(0.65, 1.0, 1.5, 2.5, 4.0, 6.5)) {
                    var found = results(
                            new AcceptancePlan().of(new AcceptancePlan.Inputs(lot, level, limit, Optional.empty())));
                    assertThat(found.sample()).as("%s %s %s", lot, level, limit).isBetween(2, lot);
                    assertThat(found.accept()).isLessThan(found.sample());
                }
            }
        }
    }

    /** Product of five stages; by hand. */
    @Test
    void rolled_yield() {
        var found = results(new RolledYield().of(new RolledYield.Inputs(List.of(0.98, 0.95, 0.99, 0.97, 0.96))));

        assertThat(found.rolledShare()).isCloseTo(0.858277728, within(1e-12));
        assertThat(found.lowestShare()).isEqualTo(0.95);
    }

    /** 23 defects in 40 units with 150 opportunities each; by hand. */
    @Test
    void defects_a_unit_and_in_a_million_opportunities() {
        var found = results(new DefectRate().of(new DefectRate.Inputs(23, 40, 150)));

        assertThat(found.perUnit()).isCloseTo(0.575, within(1e-12));
        assertThat(found.firstPassShare()).isCloseTo(0.5627048688069557, within(1e-12));
        assertThat(found.perMillion()).isCloseTo(3833.3333, within(1e-4));
        assertThat(found.z().orElseThrow()).isCloseTo(2.666407650366081, within(1e-9));
        assertThat(results(new DefectRate().of(new DefectRate.Inputs(0, 40, 150)))
                        .z())
                .isEmpty();
        assertThat(results(new DefectRate().of(new DefectRate.Inputs(10, 5, 2))).z())
                .isEmpty();
        assertThat(faultyFields(new DefectRate().of(new DefectRate.Inputs(11, 5, 2))))
                .containsExactly("defects");
    }

    /** Exact limits of a Poisson count with 95 %: 0 to 3.689 for none, 14.58 to 34.51 for 23 (tables of Garwood, from memory). */
    @Test
    void a_rate_of_defects_has_its_exact_interval() {
        var found = results(new DefectRate().of(new DefectRate.Inputs(23, 40, 150)));
        var none = results(new DefectRate().of(new DefectRate.Inputs(0, 40, 150)));

        assertThat(found.perUnitLow()).isCloseTo(14.58 / 40, within(1e-4));
        assertThat(found.perUnitHigh()).isCloseTo(34.51 / 40, within(1e-4));
        assertThat(none.perUnitLow()).isZero();
        assertThat(none.perUnitHigh()).isCloseTo(3.689 / 40, within(1e-4));
    }

    /** Ppk to be seen for 1.00, 1.33 and 1.67 with 95 % to one side, and the factor for Pp; normal approximation, by hand. */
    @ParameterizedTest
    @CsvSource({
        "25, 1.3355, 1.7626, 2.2048, 0.759617",
        "30, 1.2976, 1.7133, 2.1437, 0.781430",
        "50, 1.2165, 1.6082, 2.0134, 0.832139",
        "100, 1.1446, 1.5154, 1.8986, 0.882182",
        "125, 1.1276, 1.4935, 1.8715, 0.894800",
        "200, 1.0985, 1.4562, 1.8254, 0.917066"
    })
    void index_that_a_sample_has_to_show(int n, double forOne, double forFour, double forFive, double factor) {
        assertThat(needed(n, 1).neededPpk()).isCloseTo(forOne, within(1e-4));
        assertThat(needed(n, 1.33).neededPpk()).isCloseTo(forFour, within(1e-4));
        assertThat(needed(n, 1.67).neededPpk()).isCloseTo(forFive, within(1e-4));
        assertThat(1 / needed(n, 1).neededPp()).isCloseTo(factor, within(1e-6));
    }

    private static CapabilityNeeded.Results needed(int n, double wanted) {
        return results(new CapabilityNeeded().of(new CapabilityNeeded.Inputs(n, wanted, 0.95)));
    }
}
