package wainbook.engineering.weights;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static wainbook.engineering.Answers.faultyFields;
import static wainbook.engineering.Answers.refusal;
import static wainbook.engineering.Answers.results;
import static wainbook.engineering.Answers.verdict;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wainbook.engineering.Answer;
import wainbook.engineering.Verdict;

/** What holds for every vehicle on two axles. */
class AxleLawsTest {

    private static final int CASES = 500;

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void masses_and_moments_balance(long seed) {
        var random = new SplittableRandom(seed);
        for (int i = 0; i < CASES; i++) {
            double wheelbaseM = random.nextDouble(3, 7);
            List<Item> items = items(random, wheelbaseM);
            double frontKg = random.nextDouble(4000, 6000);
            double rearKg = random.nextDouble(3000, 7000);
            var found = results(new AxleLoads()
                    .of(new AxleLoads.Inputs(wheelbaseM, frontKg, rearKg, items, 8000, 11_500, 19_000, 0.2)));
            double massKg =
                    frontKg + rearKg + items.stream().mapToDouble(Item::massKg).sum();
            double momentKgM = rearKg * wheelbaseM
                    + items.stream()
                            .mapToDouble(item -> item.massKg() * item.fromFrontM())
                            .sum();

            assertThat(found.frontKg() + found.rearKg()).isCloseTo(massKg, within(1e-6));
            assertThat(found.totalKg()).isCloseTo(massKg, within(1e-6));
            assertThat(found.rearKg() * wheelbaseM).isCloseTo(momentKgM, within(1e-6));
        }
    }

    /** At the limit all are kept and the binding one is reached; a kilogram more breaks it. */
    @ParameterizedTest
    @ValueSource(longs = {4, 5, 6})
    void the_payload_limit_is_the_most_that_passes(long seed) {
        var random = new SplittableRandom(seed);
        for (int i = 0; i < CASES; i++) {
            var bare =
                    new TwoAxles(random.nextDouble(3, 7), random.nextDouble(3000, 6000), random.nextDouble(2500, 6000));
            var limits = new AxleLimits(
                    random.nextDouble(6500, 9000),
                    random.nextDouble(9000, 12_000),
                    random.nextDouble(14_000, 19_000),
                    0.2);
            double placeM = bare.wheelbaseM() * random.nextDouble(0.3, 1.15);
            PayloadLimit limit = limits.payload(bare, placeM);

            if (limit.kg() > 1) {
                assertThat(kept(bare.with(limit.kg() - 1e-3, placeM), limits)).isTrue();
                assertThat(kept(bare.with(limit.kg() + 1, placeM), limits)).isFalse();
            }
        }
    }

    /** The same mass put on where the total binds before and after takes exactly itself from the payload. */
    @Test
    void a_pack_takes_its_own_mass_from_the_payload_where_the_total_binds() {
        var random = new SplittableRandom(7);
        int bound = 0;
        for (int i = 0; i < CASES; i++) {
            var bare = new TwoAxles(5, random.nextDouble(3500, 4600), random.nextDouble(2500, 4500));
            var limits = new AxleLimits(7500, 11_500, 18_000, 0.2);
            double packKg = random.nextDouble(300, 700);
            double placeM = random.nextDouble(3, 4.2);
            PayloadLimit before = limits.payload(bare, placeM);
            PayloadLimit after = limits.payload(bare.with(packKg, random.nextDouble(1.5, 4)), placeM);

            if (before.binding() == Binding.GROSS) {
                assertThat(before.kg() - after.kg()).isGreaterThanOrEqualTo(packKg - 1e-9);
            }
            if (before.binding() == Binding.GROSS && after.binding() == Binding.GROSS) {
                bound++;
                assertThat(before.kg() - after.kg()).isCloseTo(packKg, within(1e-9));
            }
        }
        assertThat(bound).as("cases in which the total binds twice").isGreaterThan(50);
    }

    @Test
    void a_load_far_behind_the_rear_axle_is_bound_by_the_steered_one() {
        var bare = new TwoAxles(5, 4000, 3000);
        var limits = new AxleLimits(7500, 11_500, 18_000, 0.25);
        PayloadLimit limit = limits.payload(bare, 6.5);

        assertThat(limit.binding()).isEqualTo(Binding.STEERING);
        assertThat(bare.with(limit.kg(), 6.5).steeringShare()).isCloseTo(0.25, within(1e-12));
        assertThat(verdict(loads(List.of(new Item("payload", limit.kg() + 1, 6.5)), 0.25)))
                .isEqualTo(Verdict.FAIL);
        assertThat(verdict(loads(List.of(new Item("payload", limit.kg() - 1, 6.5)), 0.25)))
                .isEqualTo(Verdict.PASS);
    }

    @Test
    void a_vehicle_over_a_limit_without_payload_says_by_how_much() {
        var limits = new AxleLimits(7500, 11_500, 18_000, 0.2);

        assertThat(limits.payload(new TwoAxles(5, 7000, 11_400), 2.5)).isEqualTo(new PayloadLimit(-400, Binding.GROSS));
        assertThat(limits.payload(new TwoAxles(5, 8000, 3000), 5.0)).isEqualTo(new PayloadLimit(0, Binding.FRONT));
    }

    @Test
    void without_a_payload_there_is_no_limit_of_one() {
        var found = results(loads(List.of(new Item("engine out", -900, 0.4)), 0.2));

        assertThat(found.payloadLimitKg()).isEmpty();
        assertThat(found.binding()).isEmpty();
        assertThat(found.totalKg()).isCloseTo(6100, within(1e-9));
    }

    @Test
    void only_one_item_may_be_the_payload() {
        var items = List.of(new Item("payload", 100, 3), new Item("payload", 100, 4));

        assertThat(faultyFields(loads(items, 0.2))).containsExactly("items");
    }

    @Test
    void no_axle_carries_less_than_nothing() {
        assertThat(refusal(loads(List.of(new Item("crane", 5000, 9.1)), 0.2))).isEqualTo("axle-lifts");
        assertThat(refusal(loads(List.of(new Item("too much out", -7100, 2)), 0.2)))
                .isEqualTo("axle-lifts");
    }

    /** 0.1 + 0.2 of a tonne are 0.3 though their doubles are not. */
    @Test
    void a_load_at_its_limit_keeps_it() {
        var items = List.of(new Item("a", 0.1, 0), new Item("b", 0.2, 0));
        var answer = new AxleLoads().of(new AxleLoads.Inputs(5, 4000, 3000, items, 4000.3, 3000, 7000.3, 0.2));

        assertThat(verdict(answer)).isEqualTo(Verdict.PASS);
    }

    @Test
    void more_cannot_be_recovered_than_was_taken_out() {
        assertThat(refusal(new RecoveryRate().of(new RecoveryRate.Inputs(100, 50, 40, 10.1))))
                .isEqualTo("more-than-there-was");
        assertThat(results(new RecoveryRate().of(new RecoveryRate.Inputs(0.3, 0.1, 0.2, 0)))
                        .recoveryPercent())
                .isCloseTo(100, within(1e-9));
    }

    private static boolean kept(TwoAxles axles, AxleLimits limits) {
        return axles.frontKg() <= limits.frontKg()
                && axles.rearKg() <= limits.rearKg()
                && axles.totalKg() <= limits.grossKg()
                && axles.steeringShare() >= limits.steeringShareMin();
    }

    private static Answer<AxleLoads.Results> loads(List<Item> items, double steeringShareMin) {
        return new AxleLoads().of(new AxleLoads.Inputs(5, 4000, 3000, items, 7500, 11_500, 18_000, steeringShareMin));
    }

    private static List<Item> items(SplittableRandom random, double wheelbaseM) {
        var items = new ArrayList<Item>();
        for (int i = random.nextInt(0, 8); i > 0; i--) {
            items.add(new Item("part " + i, random.nextDouble(-150, 900), random.nextDouble(0, wheelbaseM)));
        }
        return items;
    }
}
