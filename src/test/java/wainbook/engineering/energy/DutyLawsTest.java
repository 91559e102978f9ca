package wainbook.engineering.energy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static wainbook.engineering.Answers.results;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.DoubleFunction;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wainbook.engineering.energy.Duties.Recorded;
import wainbook.engineering.energy.driving.Battery;
import wainbook.engineering.energy.driving.Vehicle;
import wainbook.engineering.energy.store.NeedErrors;
import wainbook.engineering.energy.store.NeedOdds;

/** What holds for every duty, on traces drawn at random from rest to rest. */
class DutyLawsTest {

    private static final int CASES = 60;
    private static final Battery STRONG = new Battery(650, 0.01);

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void what_traction_puts_in_resistances_and_brakes_take_out(long seed) {
        var random = new SplittableRandom(seed);
        for (int i = 0; i < CASES; i++) {
            var found = driven(way(random), vehicle(random), STRONG);
            double out =
                    found.rollingKwh() + found.airKwh() + found.gradeKwh() + found.kineticKwh() + found.brakingKwh();

            assertThat(found.tractionKwh()).isCloseTo(out, within(1e-10 * Math.max(1, found.tractionKwh())));
            assertThat(found.kineticKwh()).isZero();
            assertThat(found.energyKwh())
                    .isCloseTo(
                            found.drawnKwh() - found.regeneratedKwh() + found.consumersKwh() + found.lossKwh(),
                            within(1e-10));
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {4, 5, 6})
    void energy_rises_with_what_resists_and_what_consumes(long seed) {
        var random = new SplittableRandom(seed);
        for (int i = 0; i < CASES; i++) {
            Recorded way = way(random);
            Vehicle base = vehicle(random);

            rises(way, random, 6000, 26_000, mass -> base.weighing(mass));
            rises(way, random, 0.004, 0.012, rolling -> made(base, rolling, base.cdA(), base.auxiliaryW()));
            rises(way, random, 3, 9, cdA -> made(base, base.rolling(), cdA, base.auxiliaryW()));
            rises(way, random, 0, 12_000, watts -> made(base, base.rolling(), base.cdA(), watts));
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {7, 8, 9})
    void energy_falls_with_efficiency_and_with_what_comes_back(long seed) {
        var random = new SplittableRandom(seed);
        for (int i = 0; i < CASES; i++) {
            Recorded way = way(random);
            Vehicle base = vehicle(random);

            rises(way, random, 0.05, 0.4, lost -> driving(base, 1 - lost, base.regenerationShare(), 2e5));
            rises(way, random, 0, 1, lost -> driving(base, base.tractionEfficiency(), 1 - lost, 2e5));
            rises(way, random, 0, 2e5, lost -> driving(base, base.tractionEfficiency(), 0.8, 2e5 - lost));
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {10, 11})
    void the_same_way_twice_takes_twice_as_much_and_has_the_same_means(long seed) {
        var random = new SplittableRandom(seed);
        for (int i = 0; i < CASES; i++) {
            Recorded once = way(random);
            Recorded twice = new Recorded(again(once.speedKmh()), again(once.gradient()));
            Vehicle vehicle = vehicle(random);
            var one = driven(once, vehicle, STRONG);
            var two = driven(twice, vehicle, STRONG);

            for (ToDoubleFunction<DutyTrace.Results> amount : List.<ToDoubleFunction<DutyTrace.Results>>of(
                    DutyTrace.Results::distanceKm,
                    DutyTrace.Results::energyKwh,
                    DutyTrace.Results::tractionKwh,
                    DutyTrace.Results::regeneratedKwh,
                    DutyTrace.Results::lossKwh,
                    DutyTrace.Results::stops,
                    DutyTrace.Results::ascentM)) {
                assertThat(amount.applyAsDouble(two)).isCloseTo(2 * amount.applyAsDouble(one), within(1e-9));
            }
            for (ToDoubleFunction<DutyTrace.Results> mean : List.<ToDoubleFunction<DutyTrace.Results>>of(
                    DutyTrace.Results::meanKmh,
                    DutyTrace.Results::rmsA,
                    DutyTrace.Results::highestW,
                    found -> found.kwhPerKm().orElseThrow())) {
                assertThat(mean.applyAsDouble(two)).isCloseTo(mean.applyAsDouble(one), within(1e-6));
            }
        }
    }

    @Test
    void who_charges_to_more_or_with_less_power_charges_longer() {
        var random = new SplittableRandom(12);
        for (int i = 0; i < CASES; i++) {
            double taper = random.nextDouble(0.3, 1);
            double end = random.nextDouble(0.05, 1);
            double from = random.nextDouble(0, 0.5);

            assertThat(climbing(random, from, 1).map(to -> hours(150, from, to, taper, end)))
                    .isSorted();
            assertThat(climbing(random, 0, 100).map(less -> hours(150 - less, from, 1, taper, end)))
                    .isSorted();
        }
    }

    /** One charge after the other takes as long as both at once. */
    @Test
    void charging_in_two_parts_takes_as_long_as_in_one() {
        var random = new SplittableRandom(13);
        for (int i = 0; i < CASES; i++) {
            double taper = random.nextDouble(0.3, 1);
            double end = random.nextDouble(0.05, 1);
            double stop = random.nextDouble(0.1, 1);

            assertThat(hours(150, 0.1, stop, taper, end) + hours(150, stop, 1, taper, end))
                    .isCloseTo(hours(150, 0.1, 1, taper, end), within(1e-9));
        }
    }

    @Test
    void trying_and_closed_form_agree_for_any_errors() {
        var random = new SplittableRandom(14);
        for (int i = 0; i < 5; i++) {
            var errors = new NeedErrors(
                    random.nextDouble(0.01, 0.2),
                    random.nextDouble(0.01, 0.2),
                    random.nextDouble(0.01, 0.2),
                    random.nextDouble(0.01, 0.2),
                    random.nextDouble(0.01, 0.2));
            double usable = random.nextDouble(80, 130);

            assertThat(errors.drawnOdds(usable, 100, 100_000, i))
                    .isCloseTo(new NeedOdds(errors.sigma()).met(usable, 100), within(0.006));
        }
    }

    private static double hours(double kw, double from, double to, double taper, double end) {
        return results(new ChargingTime().of(new ChargingTime.Inputs(300, kw, 0.95, from, to, taper, end)))
                .hours();
    }

    private static void rises(
            Recorded way, SplittableRandom random, double from, double to, DoubleFunction<Vehicle> vehicle) {
        List<Double> energies = climbing(random, from, to)
                .map(value -> driven(way, vehicle.apply(value), STRONG).energyKwh())
                .toList();
        for (int i = 1; i < energies.size(); i++) {
            assertThat(energies.get(i)).isGreaterThanOrEqualTo(energies.get(i - 1) - 1e-12);
        }
    }

    private static Stream<Double> climbing(SplittableRandom random, double from, double to) {
        return random.doubles(6, from, to).sorted().boxed();
    }

    private static DutyTrace.Results driven(Recorded way, Vehicle vehicle, Battery battery) {
        return results(new DutyTrace().of(new DutyTrace.Inputs(way.speedKmh(), way.gradient(), vehicle, battery)));
    }

    /** From rest to rest, on the level or up and down, level at both ends. */
    private static Recorded way(SplittableRandom random) {
        var speeds = new ArrayList<>(List.of(0.0));
        for (int hop = random.nextInt(1, 4); hop > 0; hop--) {
            double top = random.nextDouble(10, 80);
            int steps = random.nextInt(8, 25);
            IntStream.rangeClosed(1, steps).forEach(i -> speeds.add(top * i / steps));
            IntStream.range(0, random.nextInt(1, 30)).forEach(i -> speeds.add(top));
            IntStream.rangeClosed(1, steps).forEach(i -> speeds.add(top * (steps - i) / steps));
            speeds.add(0.0);
        }
        double slope = random.nextBoolean() ? random.nextDouble(0, 0.04) : 0;
        double length = speeds.size() - 1.0;
        List<Double> gradient = IntStream.range(0, speeds.size())
                .mapToObj(k -> slope * Math.sin(2 * Math.PI * k / length))
                .toList();
        return new Recorded(speeds, gradient);
    }

    /** Ends and begins at rest, so that the joint is a second of standing. */
    private static List<Double> again(List<Double> once) {
        var twice = new ArrayList<>(once);
        twice.addAll(once.subList(1, once.size()));
        return Collections.unmodifiableList(twice);
    }

    private static Vehicle vehicle(SplittableRandom random) {
        return driving(
                Duties.TRUCK.weighing(random.nextDouble(7000, 26_000)),
                random.nextDouble(0.7, 0.95),
                random.nextDouble(0, 1),
                random.nextDouble(5e4, 3e5));
    }

    private static Vehicle made(Vehicle v, double rolling, double cdA, double auxiliaryW) {
        return new Vehicle(
                v.massKg(),
                v.rotatingFactor(),
                rolling,
                cdA,
                v.airDensity(),
                v.tractionEfficiency(),
                v.regenerationShare(),
                v.regenerationEfficiency(),
                v.regenerationLowKmh(),
                v.regenerationHighKmh(),
                v.regenerationLimitW(),
                auxiliaryW,
                v.heatingW(),
                v.ptoW());
    }

    private static Vehicle driving(Vehicle v, double efficiency, double share, double limitW) {
        return new Vehicle(
                v.massKg(),
                v.rotatingFactor(),
                v.rolling(),
                v.cdA(),
                v.airDensity(),
                efficiency,
                share,
                v.regenerationEfficiency(),
                v.regenerationLowKmh(),
                v.regenerationHighKmh(),
                limitW,
                v.auxiliaryW(),
                v.heatingW(),
                v.ptoW());
    }
}
