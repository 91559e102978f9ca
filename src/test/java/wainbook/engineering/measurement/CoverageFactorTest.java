package wainbook.engineering.measurement;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static wainbook.engineering.Answers.results;

import java.util.Collections;
import java.util.Optional;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wainbook.engineering.measurement.CoverageFactor.Contribution;

/** Equal contributions have as many degrees of freedom together as their sum: u⁴ / Σ(u⁴/(m² ν)) = m ν. */
class CoverageFactorTest {

    /** t for 95 % from the table of JCGM 100:2008, G.2, from memory. */
    @ParameterizedTest
    @CsvSource({"3, 2, 2.45", "2, 5, 2.23", "5, 2, 2.23", "10, 1, 2.23", "7, 1, 2.36", "6, 3, 2.10", "1, 4, 2.78"})
    void no_degree_of_freedom_is_lost_to_the_last_bit_of_a_double(int equal, double degrees, double factor) {
        var one = new Contribution(0.3, Optional.of(degrees));
        var found = results(new CoverageFactor().of(new CoverageFactor.Inputs(Collections.nCopies(equal, one), 0.95)));

        assertThat(found.degreesOfFreedom().orElseThrow()).isCloseTo(equal * degrees, within(1e-9));
        assertThat(found.coverageFactor()).isCloseTo(factor, within(0.005));
    }
}
