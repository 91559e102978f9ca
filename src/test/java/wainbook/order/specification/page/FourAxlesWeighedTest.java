package wainbook.order.specification.page;

import static java.math.BigDecimal.ONE;
import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.List;
import java.util.UUID;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import wainbook.engineering.weights.axle.Axle;
import wainbook.engineering.weights.axle.AxleGroup;
import wainbook.engineering.weights.axle.Chassis;
import wainbook.order.duty.Chosen;
import wainbook.order.specification.Weighings.AxleWeighed;

/**
 * A tipper of four axles, two of them steered, 1.90 m apart, and a driven tandem of 1.35 m; all invented. 8.4 t stand on the front group and
 * 7.2 t on the rear one, each axle of a group with half of it: statics, by hand.
 */
class FourAxlesWeighedTest {

    private static final Chassis TIPPER = new Chassis(
            new AxleGroup(List.of(new Axle(0, 0.5, false, false), new Axle(1.90, 0.5, false, false))),
            new AxleGroup(List.of(new Axle(5.10, 0.5, true, false), new Axle(6.45, 0.5, true, false))));

    private static List<WeighedLine> against(double... weighedKg) {
        List<Double> loads = TIPPER.loadsKg(TIPPER.carrying(8400, 7200));
        List<Chosen.Predicted> predicted = IntStream.range(0, TIPPER.axles())
                .mapToObj(i -> new Chosen.Predicted(i + 1, BigDecimal.valueOf(loads.get(i)), BigDecimal.valueOf(15)))
                .toList();
        List<AxleWeighed> weighed = IntStream.range(0, weighedKg.length)
                .mapToObj(i -> new AxleWeighed(i + 1, BigDecimal.valueOf(weighedKg[i]), "weigh-axle-" + (i + 1)))
                .toList();
        return WeighedLine.of(chosen(predicted), weighed);
    }

    private static Chosen chosen(List<Chosen.Predicted> predicted) {
        var nothingElse = new Chosen.Figures(ONE, ONE, ONE, ONE, ONE, ONE);
        return new Chosen(6, "PK-58", 1, new UUID(0, 1), new UUID(0, 2), List.of(), predicted, nothingElse);
    }

    @Test
    void each_axle_is_held_against_its_own_prediction() {
        List<WeighedLine> lines = against(4210, 4190, 3610, 3590);

        assertThat(lines).extracting(WeighedLine::axle).containsExactly(1, 2, 3, 4);
        assertThat(lines).extracting(line -> line.both().predictedKg()).containsExactly(4200.0, 4200.0, 3600.0, 3600.0);
        assertThat(lines).allMatch(WeighedLine::agrees);
    }

    /** The second steered axle carries 4.2 t, not the 3.6 t of the driven ones behind it. */
    @Test
    void a_part_that_was_forgotten_shows_at_the_axle_that_carries_it() {
        assertThat(against(4210, 4350, 3610, 3590))
                .filteredOn(line -> !line.agrees())
                .singleElement()
                .satisfies(line -> {
                    assertThat(line.axle()).isEqualTo(2);
                    assertThat(line.item()).isEqualTo("weigh-axle-2");
                });
    }

    @Test
    void an_axle_that_was_not_weighed_is_not_judged() {
        assertThat(against(4210, 4190)).extracting(WeighedLine::axle).containsExactly(1, 2);
    }
}
