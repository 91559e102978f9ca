package wainbook.engineering.weights.axle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wainbook.engineering.weights.TwoAxles;
import wainbook.engineering.weights.weighing.Change;
import wainbook.engineering.weights.weighing.Prediction;

/** What holds for every vehicle of two, three or four axles. */
class AxleGroupLawsTest {

    private static final int CASES = 300;

    @ParameterizedTest
    @ValueSource(longs = {1, 2})
    void masses_and_moments_balance_at_the_axles_themselves(long seed) {
        var random = new SplittableRandom(seed);
        for (int i = 0; i < CASES; i++) {
            Chassis chassis = chassis(random);
            double frontKg = random.nextDouble(4000, 9000);
            double rearKg = random.nextDouble(4000, 16_000);
            double massKg = random.nextDouble(-800, 9000);
            double placeM = random.nextDouble(-0.5, 7);
            TwoAxles groups = chassis.carrying(frontKg, rearKg).with(massKg, chassis.leverM(placeM));
            List<Double> loads = chassis.loadsKg(groups);
            List<Axle> axles = axles(chassis);
            double moment = 0;
            for (int k = 0; k < axles.size(); k++) {
                moment += loads.get(k) * axles.get(k).fromFrontM();
            }
            double before = frontKg * chassis.front().centreM()
                    + rearKg * chassis.rear().centreM();

            assertThat(loads.stream().mapToDouble(load -> load).sum())
                    .isCloseTo(frontKg + rearKg + massKg, within(1e-6));
            assertThat(moment).isCloseTo(before + massKg * placeM, within(1e-5));
        }
    }

    @Test
    void lifting_an_axle_keeps_mass_and_moment() {
        var random = new SplittableRandom(3);
        for (int i = 0; i < CASES; i++) {
            Chassis chassis = chassis(random);
            TwoAxles down = chassis.carrying(random.nextDouble(4000, 9000), random.nextDouble(4000, 16_000));
            if (chassis.rear().lifts()) {
                TwoAxles up = chassis.lifted(down);

                assertThat(up.totalKg()).isCloseTo(down.totalKg(), within(1e-6));
                assertThat(up.rearKg() * up.wheelbaseM()).isCloseTo(down.rearKg() * down.wheelbaseM(), within(1e-5));
                assertThat(up.frontKg()).isLessThan(down.frontKg());
            }
        }
    }

    /** At the limit of the group every axle keeps to its own; a kilogram more breaks one of them. */
    @Test
    void a_group_carries_what_its_weakest_axle_lets_it() {
        var random = new SplittableRandom(4);
        for (int i = 0; i < CASES; i++) {
            AxleGroup group = chassis(random).rear();
            List<Double> each = group.axles().stream()
                    .map(axle -> random.nextDouble(5000, 11_500))
                    .toList();
            double limit = group.limitKg(18_000, each);

            assertThat(keeps(group, limit - 1e-6, 18_000, each)).isTrue();
            assertThat(keeps(group, limit + 1, 18_000, each)).isFalse();
        }
    }

    @Test
    void with_a_part_of_the_load_the_front_is_never_lighter_than_the_worst_that_is_told() {
        var random = new SplittableRandom(5);
        for (int i = 0; i < CASES; i++) {
            var without = new TwoAxles(random.nextDouble(4, 6), random.nextDouble(4000, 6000), 4000);
            var load = new LoadSpace(random.nextDouble(2.5, 5), random.nextDouble(0, 7));
            double payloadKg = random.nextDouble(0, 12_000);
            double worst = load.worstFrontKg(without, payloadKg);
            for (int k = 0; k <= 50; k++) {
                assertThat(load.with(without, payloadKg, k / 50.0).frontKg()).isLessThanOrEqualTo(worst + 1e-9);
            }
        }
    }

    /** Two parts of 3 and 4 kg at the rear axle of a vehicle that was weighed exactly: 5 kg at the rear, nothing at the front. */
    @Test
    void uncertainties_of_masses_add_up_by_their_squares() {
        var prediction = Prediction.of(
                new TwoAxles(5, 4000, 3000), 0, List.of(new Change("a", 100, 5, 3, 0), new Change("b", 200, 5, 4, 0)));

        assertThat(prediction.rearUKg()).isCloseTo(5, within(1e-12));
        assertThat(prediction.frontUKg()).isZero();
        assertThat(prediction.totalUKg()).isCloseTo(5, within(1e-12));
        assertThat(prediction.loads().rearKg()).isCloseTo(3300, within(1e-9));
    }

    /** 500 kg whose place is known to 0.1 m on a wheelbase of 5 m: 10 kg go from one axle to the other, none from the total. */
    @Test
    void an_uncertain_place_moves_load_and_makes_none() {
        var prediction = Prediction.of(new TwoAxles(5, 4000, 3000), 0, List.of(new Change("pack", 500, 2.5, 0, 0.1)));

        assertThat(prediction.rearUKg()).isCloseTo(10, within(1e-12));
        assertThat(prediction.frontUKg()).isCloseTo(10, within(1e-12));
        assertThat(prediction.totalUKg()).isZero();
    }

    @Test
    void shares_that_do_not_add_up_are_no_group() {
        assertThatThrownBy(() -> new AxleGroup(List.of(new Axle(4, 0.5, true, false), new Axle(5, 0.4, false, false))))
                .hasMessageContaining("0.9");
    }

    private static boolean keeps(AxleGroup group, double kg, double groupKg, List<Double> each) {
        List<Double> loads = group.loadsKg(kg);
        for (int i = 0; i < loads.size(); i++) {
            if (loads.get(i) > each.get(i)) {
                return false;
            }
        }
        return kg <= groupKg;
    }

    private static List<Axle> axles(Chassis chassis) {
        var axles = new ArrayList<>(chassis.front().axles());
        axles.addAll(chassis.rear().axles());
        return axles;
    }

    private static Chassis chassis(SplittableRandom random) {
        return new Chassis(
                group(random, 0, random.nextInt(1, 3), false), group(random, 4.6, random.nextInt(1, 3), true));
    }

    private static AxleGroup group(SplittableRandom random, double foremostM, int axles, boolean rear) {
        if (axles == 1) {
            return new AxleGroup(List.of(Axle.single(foremostM, rear)));
        }
        double share = random.nextDouble(0.3, 0.7);
        return new AxleGroup(
                List.of(new Axle(foremostM, 1 - share, rear, false), new Axle(foremostM + 1.35, share, false, rear)));
    }
}
