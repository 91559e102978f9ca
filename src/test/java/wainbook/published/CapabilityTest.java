package wainbook.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static wainbook.engineering.Answers.faultyFields;
import static wainbook.engineering.Answers.refusal;
import static wainbook.engineering.Answers.results;
import static wainbook.engineering.Answers.working;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wainbook.engineering.statistics.Capability;
import wainbook.engineering.statistics.Capability.Law;
import wainbook.engineering.statistics.Capability.Results;

class CapabilityTest {

    /** NIST StRD, univariate, Michelso: certified mean and standard deviation; where the values come from stands beside them. */
    @Test
    void speed_of_light() throws IOException {
        List<Double> values;
        try (Stream<String> lines = Files.lines(Path.of("src/test/resources/published/michelso.txt"))) {
            values = lines.filter(line -> !line.startsWith("#"))
                    .flatMap(line -> Stream.of(line.split(" ")))
                    .map(Double::valueOf)
                    .toList();
        }
        Results found = of(values, Optional.empty(), Optional.empty());

        assertThat(found.n()).isEqualTo(100);
        assertThat(found.mean()).isCloseTo(299.8524, within(1e-12));
        assertThat(found.s()).isCloseTo(0.0790105478190518, within(1e-12));
    }

    /** NIST StRD, univariate, NumAcc1: three values, mean 10000002 and s 1; the set from memory, the mean seen in open tests. */
    @Test
    void three_large_values_that_differ_little() {
        Results found = of(List.of(10000001.0, 10000003.0, 10000002.0), Optional.empty(), Optional.empty());

        assertThat(found.mean()).isEqualTo(10000002);
        assertThat(found.s()).isEqualTo(1);
        assertThat(found.ppk()).isEmpty();
    }

    /** NIST StRD, univariate, NumAcc4: 1001 values, mean 10000000.2 and s 0.1; from memory. */
    @Test
    void a_thousand_large_values_that_differ_little() {
        List<Double> values = Stream.concat(
                        Stream.of(10000000.2),
                        IntStream.range(0, 500).boxed().flatMap(one -> Stream.of(10000000.1, 10000000.3)))
                .toList();
        Results found = of(values, Optional.empty(), Optional.empty());

        assertThat(found.mean()).isCloseTo(10000000.2, within(1e-8));
        assertThat(found.s()).isCloseTo(0.1, within(1e-8));
    }

    /**
     * Indices with their 95 % intervals from mean and standard deviation: the second is NIST/SEMATECH e-Handbook 6.1.6 (values
     * from memory), the third a published exercise, the last a wrench by hand; intervals by hand from the formulas cited.
     */
    @ParameterizedTest
    @CsvSource({
        "16, 2, 50, 8, 20, 1, 0.8024823281501012, 1.1971259252675315, 0.666667, 0.5055513132382631, 0.8277820200950702",
        "97, 1.6, 30, 90, 100, 1.041667, 0.774868, 1.307958, 0.625, 0.4247513564116804, 0.8252486435883196",
        "100.6, 1.1, 50, 94, 106, 1.818182, 1.459059, 2.176593, 1.636364, 1.299469, 1.973258"
    })
    void indices_with_their_intervals(
            double mean,
            double s,
            int n,
            double lower,
            double upper,
            double pp,
            double ppLow,
            double ppHigh,
            double ppk,
            double ppkLow,
            double ppkHigh) {
        Results found = of(values(mean, s, n), Optional.of(lower), Optional.of(upper));
        Offset<Double> near = within(1e-6);

        assertThat(found.pp().orElseThrow()).isCloseTo(pp, near);
        assertThat(found.ppLow().orElseThrow()).isCloseTo(ppLow, near);
        assertThat(found.ppHigh().orElseThrow()).isCloseTo(ppHigh, near);
        assertThat(found.ppk().orElseThrow()).isCloseTo(ppk, near);
        assertThat(found.ppkLow().orElseThrow()).isCloseTo(ppkLow, near);
        assertThat(found.ppkHigh().orElseThrow()).isCloseTo(ppkHigh, near);
    }

    /** All 125 piston rings (D. C. Montgomery, as open-source software carries them); indices by hand. */
    @Test
    void piston_rings_over_all_values() {
        Results found = of(PistonRings.values(), Optional.of(73.95), Optional.of(74.05));

        assertThat(found.s()).isCloseTo(0.010069968, within(1e-9));
        assertThat(found.pp().orElseThrow()).isCloseTo(1.6550863376768896, within(1e-9));
        assertThat(found.ppk().orElseThrow()).isCloseTo(1.6161587070141332, within(1e-9));
    }

    /** Median 20 and 0.35 of the logarithms against an upper limit of 60; by hand with the percentile at three sigma. */
    @Test
    void skewed_values() {
        List<Double> values =
                values(Math.log(20), 0.35, 60).stream().map(Math::exp).toList();
        Results found = results(new Capability()
                .of(new Capability.Inputs(values, Optional.empty(), Optional.of(60.0), 0.95, Law.LOGNORMAL)));

        assertThat(found.ppk().orElseThrow()).isCloseTo(1.076628426378174, within(1e-9));
        assertThat(found.cpk()).isEmpty();
        assertThat(found.pp()).isEmpty();
    }

    /** The same values taken as normal look half as good again, which is why the law is to be said; by hand. */
    @Test
    void skewed_values_taken_as_normal() {
        double mean = 20 * Math.exp(0.35 * 0.35 / 2);
        double s = mean * Math.sqrt(Math.exp(0.35 * 0.35) - 1);
        Results found = results(new Capability()
                .of(new Capability.Inputs(values(mean, s, 60), Optional.empty(), Optional.of(60.0), 0.95, Law.NORMAL)));

        assertThat(found.ppk().orElseThrow()).isCloseTo(1.6821581994717265, within(1e-9));
    }

    /** Both limits three sigma of the logarithms away: both indices are 1; by hand. */
    @Test
    void skewed_values_between_two_limits() {
        List<Double> values =
                values(Math.log(20), 0.35, 60).stream().map(Math::exp).toList();
        Results found = results(new Capability()
                .of(new Capability.Inputs(
                        values,
                        Optional.of(20 * Math.exp(-1.05)),
                        Optional.of(20 * Math.exp(1.05)),
                        0.95,
                        Law.LOGNORMAL)));

        assertThat(found.pp().orElseThrow()).isCloseTo(1, within(1e-9));
        assertThat(found.ppk().orElseThrow()).isCloseTo(1, within(1e-9));
        assertThat(found.cp()).isEmpty();
        assertThat(found.cpk()).isEmpty();
    }

    /** Moving ranges of 1 and 3 have a mean of 2; by hand. */
    @Test
    void scatter_within_is_that_from_each_value_to_the_next() {
        Results found = of(List.of(10.0, 11.0, 8.0), Optional.of(4.0), Optional.of(13.0));

        assertThat(found.sWithin()).isCloseTo(2 / 1.128, within(1e-12));
        assertThat(found.cp().orElseThrow()).isCloseTo(9 / (6 * 2 / 1.128), within(1e-12));
        assertThat(found.cpk().orElseThrow()).isCloseTo((13 - 29 / 3.0) / (3 * 2 / 1.128), within(1e-12));
    }

    @Test
    void an_index_without_its_limit_is_absent() {
        Results found = of(List.of(10.0, 11.0, 8.0), Optional.of(4.0), Optional.empty());

        assertThat(found.cp()).isEmpty();
        assertThat(found.ppHigh()).isEmpty();
        assertThat(found.cpk().orElseThrow()).isCloseTo((29 / 3.0 - 4) / (3 * 2 / 1.128), within(1e-12));
        assertThat(found.ppkLow().orElseThrow()).isLessThan(found.ppk().orElseThrow());
    }

    @Test
    void few_values_are_named_as_few() {
        assertThat(heeded(49)).containsExactly("engineering.caution.fewValues", "engineering.caution.indexNeedsChart");
        assertThat(heeded(50)).containsExactly("engineering.caution.indexNeedsChart");
    }

    @Test
    void values_without_spread_and_limits_upside_down_are_not_judged() {
        var same = new Capability.Inputs(List.of(1.0, 1.0), Optional.of(0.0), Optional.of(2.0), 0.95);
        var upsideDown = new Capability.Inputs(List.of(1.0, 1.5), Optional.of(2.0), Optional.of(2.0), 0.95);
        var negative =
                new Capability.Inputs(List.of(1.0, 0.0), Optional.of(0.0), Optional.of(2.0), 0.95, Law.LOGNORMAL);

        assertThat(refusal(new Capability().of(same))).isEqualTo("nothing-varies");
        assertThat(faultyFields(new Capability().of(upsideDown))).containsExactly("upper");
        assertThat(faultyFields(new Capability().of(negative))).containsExactly("values[1]");
    }

    private static List<String> heeded(int n) {
        return working(new Capability()
                        .of(new Capability.Inputs(values(0, 1, n), Optional.empty(), Optional.empty(), 0.95)))
                .cautions()
                .stream()
                .map(sentence -> sentence.key())
                .toList();
    }

    /** As many values as wanted with just this mean and standard deviation. */
    private static List<Double> values(double mean, double s, int n) {
        double[] ladder =
                IntStream.range(0, n).mapToDouble(i -> i - (n - 1) / 2.0).toArray();
        double own = Math.sqrt(DoubleStream.of(ladder).map(one -> one * one).sum() / (n - 1));
        return DoubleStream.of(ladder).mapToObj(one -> mean + s * one / own).toList();
    }

    private static Results of(List<Double> values, Optional<Double> lower, Optional<Double> upper) {
        return results(new Capability().of(new Capability.Inputs(values, lower, upper, 0.95)));
    }
}
