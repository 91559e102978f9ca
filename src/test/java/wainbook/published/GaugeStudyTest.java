package wainbook.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static wainbook.engineering.Answers.faultyFields;
import static wainbook.engineering.Answers.refusal;
import static wainbook.engineering.Answers.results;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import wainbook.engineering.measurement.GaugeStudy;
import wainbook.engineering.measurement.GaugeStudy.Results;

/**
 * Ten parts, three people, three trials: the example of AIAG Measurement Systems Analysis, 4th edition, with its printed
 * standard deviations, read in public test data that credit it (several agree).
 */
class GaugeStudyTest {

    static final List<List<List<Double>>> EXAMPLE = table(
            ".29 .41 .64|-.56 -.68 -.58|1.34 1.17 1.27|.47 .50 .64|-.80 -.92 -.84|.02 -.11 -.21|.59 .75 .66"
                    + "|-.31 -.20 -.17|2.26 1.99 2.01|-1.36 -1.25 -1.31",
            ".08 .25 .07|-.47 -1.22 -.68|1.19 .94 1.34|.01 1.03 .20|-.56 -1.20 -1.28|-.20 .22 .06|.47 .55 .83"
                    + "|-.63 .08 -.34|1.80 2.12 2.19|-1.68 -1.62 -1.50",
            ".04 -.11 -.15|-1.38 -1.13 -.96|.88 1.09 .67|.14 .20 .11|-1.46 -1.07 -1.45|-.29 -.67 -.49|.02 .01 .21"
                    + "|-.46 -.56 -.49|1.77 1.45 1.87|-1.49 -1.77 -2.16");

    @Test
    void the_example_with_its_interaction_pooled() {
        Results found = study(EXAMPLE);

        assertThat(found.pooled()).isTrue();
        assertThat(found.repeatability()).isCloseTo(0.19993317972, within(1e-9));
        assertThat(found.reproducibility()).isCloseTo(0.22683752150, within(1e-9));
        assertThat(found.gauge()).isCloseTo(0.30237152232, within(1e-9));
        assertThat(found.part()).isCloseTo(1.04232749384, within(1e-9));
        assertThat(found.total()).isCloseTo(1.08529956322, within(1e-9));
        assertThat(found.percentGauge()).isCloseTo(27.8607, within(1e-4));
        assertThat(found.categories()).isCloseTo(4.86051647662, within(1e-9));
        assertThat(found.pInteraction()).isCloseTo(0.9741064043290627, within(1e-9));
    }

    /** Two people who see two parts in opposite order: all of it is interaction; by hand. */
    @Test
    void an_interaction_that_is_there_counts_to_the_gauge() {
        Results found = study(List.of(
                List.of(List.of(9.9, 10.1), List.of(19.9, 20.1)), List.of(List.of(19.9, 20.1), List.of(9.9, 10.1))));

        assertThat(found.pooled()).isFalse();
        assertThat(found.repeatability()).isCloseTo(Math.sqrt(0.02), within(1e-12));
        assertThat(found.reproducibility()).isCloseTo(Math.sqrt((200 - 0.02) / 2), within(1e-9));
        assertThat(found.part()).isZero();
        assertThat(found.percentGauge()).isCloseTo(100, within(1e-9));
        assertThat(found.categories()).isZero();
    }

    @Test
    void a_gauge_that_always_shows_the_same_is_not_believed() {
        assertThat(refusal(new GaugeStudy()
                        .of(new GaugeStudy.Inputs(List.of(
                                List.of(List.of(1.0, 1.0), List.of(1.0, 1.0)),
                                List.of(List.of(2.0, 2.0), List.of(2.0, 2.0)))))))
                .isEqualTo("no-gauge-spread");
    }

    @Test
    void every_part_is_measured_by_everybody_as_often() {
        var ragged = List.of(
                List.of(List.of(1.0, 2.0), List.of(1.0, 2.0)),
                List.of(List.of(1.0, 2.0), List.of(1.0, 2.0, 3.0)),
                List.of(List.of(1.0, 2.0), List.of(1.0, 2.0), List.of(1.0, 2.0)));

        assertThat(faultyFields(new GaugeStudy().of(new GaugeStudy.Inputs(ragged))))
                .containsExactly("measurements[1][1]", "measurements[2]");
    }

    private static Results study(List<List<List<Double>>> measurements) {
        return results(new GaugeStudy().of(new GaugeStudy.Inputs(measurements)));
    }

    private static List<List<List<Double>>> table(String... people) {
        List<List<List<Double>>> byPerson = Arrays.stream(people)
                .map(person -> Arrays.stream(person.split("\\|"))
                        .map(cell -> Arrays.stream(cell.split(" "))
                                .map(Double::valueOf)
                                .toList())
                        .toList())
                .toList();
        return IntStream.range(0, byPerson.get(0).size())
                .mapToObj(part ->
                        byPerson.stream().map(person -> person.get(part)).toList())
                .toList();
    }
}
