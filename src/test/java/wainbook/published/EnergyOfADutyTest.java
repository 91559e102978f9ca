package wainbook.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;
import static wainbook.engineering.Answers.refusal;
import static wainbook.engineering.Answers.results;

import java.util.Collections;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wainbook.engineering.energy.Duties;
import wainbook.engineering.energy.Duties.Recorded;
import wainbook.engineering.energy.DutyTrace;
import wainbook.engineering.energy.driving.Battery;
import wainbook.engineering.energy.driving.Kinematics;
import wainbook.engineering.energy.driving.Second;
import wainbook.engineering.energy.driving.Vehicle;

/**
 * Energy of a duty, second by second. Speeds and gradients of the two cycles: results of VECTO 3.3.7, the European Commission’s tool for
 * Regulation (EU) 2017/2400, in a public repository of the Paul Scherrer Institut (README and licence beside the files). The vehicles are
 * invented. Distances and stops are the record’s own; energies were computed by a second hand in double precision from the same equations.
 */
class EnergyOfADutyTest {

    private static final double PPM = 1e-4;

    private static final double JOULES_A_KWH = 3.6e6;

    /** By hand; computed. */
    @Test
    void a_way_of_eight_samples() {
        var found = driven(Duties.levelled(Duties.BY_HAND), Duties.TRUCK, Duties.TRUCK_PACKS);

        assertThat(found.energyKwh()).isCloseTo(0.102532915, withinPercentage(1e-5));
        assertThat(found.kineticKwh()).isZero();
        assertThat(found.tractionKwh() - found.brakingKwh() - found.rollingKwh() - found.airKwh())
                .as("what the seconds add up to in kinetic energy")
                .isCloseTo(0, within(1e-12));
        assertThat(found.distanceKm()).isCloseTo(0.033333333, withinPercentage(PPM));
        assertThat(found.rollingKwh()).isCloseTo(0.007630, withinPercentage(1e-3));
        assertThat(found.airKwh()).isCloseTo(0.001292245, withinPercentage(PPM));
        assertThat(found.tractionKwh()).isCloseTo(0.147464641, withinPercentage(PPM));
        assertThat(found.brakingKwh()).isCloseTo(0.138542396, withinPercentage(PPM));
        assertThat(found.drawnKwh()).isCloseTo(0.173902314, withinPercentage(PPM));
        assertThat(found.regeneratedKwh()).isCloseTo(0.083514712, withinPercentage(PPM));
        assertThat(found.consumersKwh()).isCloseTo(0.007777778, withinPercentage(PPM));
        assertThat(found.lossKwh()).isCloseTo(0.004367534, withinPercentage(PPM));
        assertThat(found.highestW()).isCloseTo(346_464.886, withinPercentage(PPM));
        assertThat(found.lowestW()).isCloseTo(-183_726.730, withinPercentage(PPM));
        assertThat(found.rmsA()).isCloseTo(273.627515, withinPercentage(PPM));
        assertThat(found.positiveKineticMps2()).isCloseTo(2.083333, withinPercentage(PPM));
        assertThat(found.effectiveSquaredM2s2()).isCloseTo(41.956019, withinPercentage(PPM));
    }

    /** Balance at the wheels, at the motor and at the packs of both cycles, with and without their gradients; computed. */
    @ParameterizedTest
    @CsvSource({
        "truck, hilly, 6.365623 5.382079 0.124436 24.255201 12.383062 28.603708 8.104612 3.644444 0.257730 24.401271 0.877234",
        "truck, level, 6.367113 5.382079 0 21.059952 9.310760 24.835611 6.036001 3.644444 0.195668 22.639723 0.813906",
        "bus, hilly, 10.856088 3.148704 0.009175 45.447237 31.433270 53.595084 19.896003 18.068889 0.402819 52.170788 1.319095",
        "bus, level, 10.858326 3.148704 0 42.716229 28.709199 50.374456 18.001251 18.068889 0.364138 50.806232 1.284593"
    })
    void energies_of_a_cycle(String vehicle, String way, String kwh) {
        var found = cycle(vehicle, way);
        double[] expected =
                Stream.of(kwh.split(" ")).mapToDouble(Double::parseDouble).toArray();
        double[] got = {
            found.rollingKwh(),
            found.airKwh(),
            found.gradeKwh(),
            found.tractionKwh(),
            found.brakingKwh(),
            found.drawnKwh(),
            found.regeneratedKwh(),
            found.consumersKwh(),
            found.lossKwh(),
            found.energyKwh(),
            found.kwhPerKm().orElseThrow()
        };

        for (int i = 0; i < expected.length; i++) {
            assertThat(got[i]).as("column %s", i).isCloseTo(expected[i], within(1e-6 * Math.max(0.6, expected[i])));
        }
        assertThat(found.kineticKwh()).isZero();
        assertThat(found.tractionKwh())
                .isCloseTo(
                        found.rollingKwh()
                                + found.airKwh()
                                + found.gradeKwh()
                                + found.kineticKwh()
                                + found.brakingKwh(),
                        withinPercentage(1e-8));
    }

    /** Highest and lowest power at the packs in kW, heating current, ascent; −152 kW is the limit less the consumers. Computed. */
    @ParameterizedTest
    @CsvSource({
        "truck, hilly, 226.691756, -181.819295, 97.103871, 234.300497",
        "truck, level, 215.184534, -116.347702, 84.608532, 0",
        "bus, hilly, 234.339822, -152.000000, 86.204222, 286.797010",
        "bus, level, 220.095437, -126.197611, 81.960896, 0"
    })
    void powers_of_a_cycle(String vehicle, String way, double highestKw, double lowestKw, double rmsA, double ascentM) {
        var found = cycle(vehicle, way);

        assertThat(found.highestW() / 1000).isCloseTo(highestKw, withinPercentage(PPM));
        assertThat(found.lowestW() / 1000).isCloseTo(lowestKw, withinPercentage(PPM));
        assertThat(found.rmsA()).isCloseTo(rmsA, withinPercentage(PPM));
        assertThat(found.ascentM()).isCloseTo(ascentM, within(1e-6));
    }

    /** Distances and lengths as the repository's own record gives them; the rest computed. */
    @ParameterizedTest
    @CsvSource({
        "true, 27.816132972, 3280, 30.529902, 26, 587, 0.206334, 209.402267",
        "false, 39.550439417, 8131, 17.510956, 119, 2547, 0.359245, 98.469220"
    })
    void a_cycle_without_a_vehicle(
            boolean truck, double km, int seconds, double kmh, int stops, int idle, double kinetic, double squared) {
        var found = Kinematics.of((truck ? Duties.truckCycle() : Duties.busCycle()).trace());

        assertThat(found.distanceKm()).isCloseTo(km, withinPercentage(1e-8));
        assertThat(found.seconds()).isEqualTo(seconds);
        assertThat(found.meanKmh()).isCloseTo(kmh, withinPercentage(PPM));
        assertThat(found.stops()).isEqualTo(stops);
        assertThat(found.idleS()).isEqualTo(idle);
        assertThat(found.positiveKineticMps2()).isCloseTo(kinetic, within(1e-6));
        assertThat(found.effectiveSquaredM2s2()).isCloseTo(squared, withinPercentage(PPM));
    }

    /** Two seconds of the truck's cycle and two of the way by hand, quantity by quantity; computed. */
    @Test
    void single_seconds() {
        var truck = Duties.truckCycle().trace();
        Second pulling = Second.of(truck.motion(8), Duties.TRUCK, false);
        assertThat(pulling.motion().accelerationMps2()).isCloseTo(0.786528, within(1e-6));
        assertThat(pulling.motion().speedMps()).isCloseTo(3.40171, within(1e-5));
        assertThat(pulling.motion().gradient()).isCloseTo(-8e-6, within(1e-12));
        assertThat(pulling.forces().inertiaN()).isCloseTo(11_562, within(0.5));
        assertThat(pulling.forces().gradeN()).isCloseTo(-1.09872, within(1e-5));
        assertThat(pulling.forces().rollingN()).isCloseTo(824.04, within(1e-3));
        assertThat(pulling.forces().airN()).isCloseTo(38.4918, within(1e-4));
        assertThat(pulling.wheelW()).isCloseTo(42_260.8, within(0.05));
        assertThat(pulling.drawnW()).isCloseTo(49_837.3, within(0.05));
        assertThat(pulling.terminalW()).isCloseTo(53_837.3, within(0.05));
        double current = Duties.TRUCK_PACKS.currentA(pulling.terminalW());
        assertThat(current).isCloseTo(83.1457, within(1e-4));
        assertThat(650 * current).isCloseTo(54_044.7, within(0.05));

        Second rising = Second.of(truck.motion(20), Duties.TRUCK, false);
        assertThat(rising.forces().gradeN()).isCloseTo(1012.24, within(0.005));
        assertThat(rising.forces().inertiaN()).isCloseTo(-1016.34, within(0.005));
        assertThat(rising.terminalW()).isCloseTo(18_607.8, within(0.05));

        var byHand = Duties.levelled(Duties.BY_HAND).trace();
        Second third = Second.of(byHand.motion(3), Duties.TRUCK, false);
        assertThat(third.wheelW()).isCloseTo(290_401.319, withinPercentage(PPM));
        assertThat(third.drawnW()).isCloseTo(342_464.886, withinPercentage(PPM));
        assertThat(Duties.TRUCK_PACKS.currentA(third.terminalW())).isCloseTo(546.823645, withinPercentage(PPM));
        assertThat(Second.of(byHand.motion(7), Duties.TRUCK, false).drawnW()).isZero();
    }

    /** What one figure does to the consumption of the truck's cycle; computed. */
    @ParameterizedTest
    @CsvSource({
        "mass 18 t, 1.037125",
        "rolling 0.0075, 0.936171",
        "drag 6.6, 0.913433",
        "auxiliaries 8 kW, 1.008800",
        "no regeneration, 1.167309",
        "no turning masses, 0.867265",
        "cold air, 0.903483"
    })
    void sensitivity(String change, double kwhPerKm) {
        assertThat(driven(Duties.truckCycle(), changed(change), Duties.TRUCK_PACKS)
                        .kwhPerKm()
                        .orElseThrow())
                .isCloseTo(kwhPerKm, within(1e-6));
    }

    /** Computed: the whole cycle without regeneration, and at 18 t. */
    @Test
    void energy_without_regeneration_and_with_four_tonnes_more() {
        assertThat(driven(Duties.truckCycle(), changed("no regeneration"), Duties.TRUCK_PACKS)
                        .energyKwh())
                .isCloseTo(32.470023, withinPercentage(PPM));
        assertThat(driven(Duties.truckCycle(), changed("mass 18 t"), Duties.TRUCK_PACKS)
                        .energyKwh())
                .isCloseTo(28.848808, withinPercentage(PPM));
    }

    /** At the terminals, and per kilometre out of the cells; computed. */
    @ParameterizedTest
    @CsvSource({"50, 28006.676, 0.5612519", "80, 68643.142, 0.8622627"})
    void a_steady_speed_on_the_level(double kmh, double terminalW, double kwhPerKm) {
        var found = driven(Duties.levelled(Collections.nCopies(100, kmh)), Duties.TRUCK, Duties.TRUCK_PACKS);

        assertThat(found.highestW()).isCloseTo(terminalW, withinPercentage(PPM));
        assertThat(found.kwhPerKm().orElseThrow()).isCloseTo(kwhPerKm, withinPercentage(PPM));
    }

    /** U = 650 V, R = 0.03 Ω; computed. */
    @ParameterizedTest
    @CsvSource({"300000, 471.812638, 6678.215", "-150000, -228.362337, 1564.481"})
    void current_and_loss_of_a_pack(double powerW, double currentA, double lossW) {
        double found = Duties.TRUCK_PACKS.currentA(powerW);

        assertThat(found).isCloseTo(currentA, withinPercentage(PPM));
        assertThat(Duties.TRUCK_PACKS.lossW(found)).isCloseTo(lossW, withinPercentage(PPM));
    }

    /** U² / 4R = 3 520 833.3 W, by hand. What cannot be given is refused and not clipped. */
    @Test
    void power_that_no_current_gives() {
        assertThat(Duties.TRUCK_PACKS.greatestW()).isCloseTo(3_520_833.333, withinPercentage(PPM));
        assertThat(Duties.TRUCK_PACKS.delivers(3_520_833.3)).isTrue();
        assertThat(Duties.TRUCK_PACKS.delivers(3_520_833.4)).isFalse();
        var weak = new Battery(650, 0.4);
        assertThat(refusal(new DutyTrace()
                        .of(new DutyTrace.Inputs(Duties.BY_HAND, Collections.nCopies(8, 0.0), Duties.TRUCK, weak))))
                .isEqualTo("pack-cannot-deliver");
    }

    /** 14 t down 100 m is 3.815 kWh, by hand: full packs leave all of it to the friction brakes. */
    @Test
    void full_packs_take_nothing_back() {
        assertThat(14_000 * 9.81 * 100 / JOULES_A_KWH).isCloseTo(3.815, within(1e-4));
        var down = new Recorded(Collections.nCopies(301, 30.0), Collections.nCopies(301, -0.05));
        var room = driven(down, Duties.TRUCK, Duties.TRUCK_PACKS);
        var full = driven(down, Duties.TRUCK, new Battery(650, 0.03, Optional.of(0.0)));

        assertThat(room.regeneratedKwh()).isPositive();
        assertThat(room.energyKwh()).isNegative();
        assertThat(full.brakingKwh()).isCloseTo(room.brakingKwh(), within(1e-12));
        double aSecondKwh = Duties.TRUCK.regenerationLimitW() / JOULES_A_KWH;
        assertThat(full.energyKwh()).isGreaterThan(-aSecondKwh);
        assertThat(full.regeneratedKwh())
                .as("no more than the consumers take meanwhile")
                .isLessThan(full.consumersKwh() + aSecondKwh);
    }

    private static DutyTrace.Results cycle(String vehicle, String way) {
        boolean truck = vehicle.equals("truck");
        Recorded driven = truck ? Duties.truckCycle() : Duties.busCycle();
        return driven(
                way.equals("level") ? driven.level() : driven,
                truck ? Duties.TRUCK : Duties.BUS,
                truck ? Duties.TRUCK_PACKS : Duties.BUS_PACKS);
    }

    private static DutyTrace.Results driven(Recorded way, Vehicle vehicle, Battery battery) {
        return results(new DutyTrace().of(new DutyTrace.Inputs(way.speedKmh(), way.gradient(), vehicle, battery)));
    }

    private static Vehicle changed(String what) {
        Vehicle t = Duties.TRUCK;
        return switch (what) {
            case "mass 18 t" -> t.weighing(18_000);
            case "rolling 0.0075" -> with(t, 1.05, 0.0075, 5.6, 1.188, 0.8, 4_000);
            case "drag 6.6" -> with(t, 1.05, 0.0060, 6.6, 1.188, 0.8, 4_000);
            case "auxiliaries 8 kW" -> with(t, 1.05, 0.0060, 5.6, 1.188, 0.8, 8_000);
            case "no regeneration" -> with(t, 1.05, 0.0060, 5.6, 1.188, 0, 4_000);
            case "no turning masses" -> with(t, 1.0, 0.0060, 5.6, 1.188, 0.8, 4_000);
            case "cold air" -> with(t, 1.05, 0.0060, 5.6, 1.342, 0.8, 4_000);
            default -> throw new AssertionError(what);
        };
    }

    private static Vehicle with(
            Vehicle t, double turning, double rolling, double cdA, double density, double share, double auxiliaryW) {
        return new Vehicle(
                t.massKg(),
                turning,
                rolling,
                cdA,
                density,
                t.tractionEfficiency(),
                share,
                t.regenerationEfficiency(),
                5,
                15,
                t.regenerationLimitW(),
                auxiliaryW,
                0,
                0);
    }
}
