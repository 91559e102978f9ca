package wainbook.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;
import static wainbook.engineering.Answers.refusal;
import static wainbook.engineering.Answers.results;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wainbook.engineering.electrical.CopperCable;
import wainbook.engineering.electrical.Precharge;
import wainbook.engineering.energy.ChargingTime;
import wainbook.engineering.energy.Gradeability;
import wainbook.engineering.energy.pull.DriveUnit;
import wainbook.engineering.energy.pull.Load;
import wainbook.engineering.energy.pull.PullAway;
import wainbook.engineering.energy.pull.Slope;
import wainbook.engineering.energy.store.Depot;

/**
 * What a drive pulls and how long packs charge. The drive (6200 Nm into an axle of 5.4, 310 kW) is invented; results were computed by a second
 * hand in double precision from equilibrium on a slope and from a power that falls in a straight line.
 */
class DriveAndChargingTest {

    private static final double PPM = 1e-4;
    private static final DriveUnit DRIVE = new DriveUnit(6200, 5.4, 0.95, 0.52, 310_000);

    @ParameterizedTest
    @CsvSource({
        "26000, 0.15, 0.222210395",
        "26000, 0, 0.239594955",
        "18000, 0.15, 0.342133",
        "18000, 0, 0.361304808",
        "12000, 0.15, 0.573444",
        "12000, 0, 0.598544752"
    })
    void slope_to_start_on_and_to_climb(double massKg, double startMps2, double grade) {
        var found = results(
                new Gradeability().of(new Gradeability.Inputs(DRIVE.greatestForceN(), massKg, 1.05, 0.007, startMps2)));

        assertThat(found.grade().orElseThrow()).isCloseTo(grade, within(1e-6));
        assertThat(found.limited()).isTrue();
    }

    /** The same to nine digits, where so many are known. */
    @ParameterizedTest
    @CsvSource({"26000, 0.15, 0.222210395", "26000, 0, 0.239594955", "18000, 0, 0.361304808", "12000, 0, 0.598544752"})
    void slopes_exactly(double massKg, double startMps2, double grade) {
        var inputs = new Gradeability.Inputs(DRIVE.greatestForceN(), massKg, 1.05, 0.007, startMps2);

        assertThat(results(new Gradeability().of(inputs)).grade().orElseThrow())
                .isCloseTo(grade, withinPercentage(PPM));
    }

    @Test
    void force_and_corner_of_the_drive() {
        assertThat(DRIVE.greatestForceN()).isCloseTo(61_165.385, withinPercentage(PPM));
        assertThat(DRIVE.wheelPowerW()).isCloseTo(294_500, within(1e-6));
        assertThat(DRIVE.cornerKmh()).isCloseTo(17.3333, within(1e-4));
    }

    @Test
    void force_and_torque_to_start_on_twelve_percent() {
        double forceN = load(26_000).forceN(0.15, 0.12, 0);

        assertThat(forceN).isCloseTo(36_256.8821, withinPercentage(PPM));
        assertThat(DRIVE.torqueNm(forceN)).isCloseTo(3675.16154, withinPercentage(PPM));
        assertThat(DRIVE.torqueNm(load(26_000).forceN(0, 0.15, 0))).isCloseTo(4014.175, withinPercentage(PPM));
    }

    @ParameterizedTest
    @CsvSource({"0.8, 37.0331", "0.5, 21.9415", "0.2, 8.17566915"})
    void grip_of_a_drive_axle_with_11_5_of_26_tonnes(double friction, double percent) {
        double grade = Slope.byGrip(friction, 11.5 / 26, 0.007).orElseThrow();

        assertThat(100 * grade).isCloseTo(percent, within(5e-5));
    }

    @Test
    void grip_on_ice_exactly() {
        assertThat(Slope.byGrip(0.2, 11.5 / 26, 0.007).orElseThrow()).isCloseTo(0.0817566915, withinPercentage(PPM));
    }

    /** Peak and steady power, each on five slopes. */
    @ParameterizedTest
    @CsvSource({
        "294500, 0.03, 90.6655",
        "294500, 0.06, 58.8634059",
        "294500, 0.08, 46.6669",
        "294500, 0.12, 32.6664",
        "294500, 0.15, 26.6405",
        "194750, 0.03, 65.9587",
        "194750, 0.06, 40.0635",
        "194750, 0.08, 31.3142",
        "194750, 0.12, 21.7116",
        "194750, 0.15, 17.6656"
    })
    void speed_that_power_allows_on_a_slope(double wheelW, double grade, double kmh) {
        assertThat(load(26_000).fastestKmh(wheelW, 0, grade)).isCloseTo(kmh, within(5.1e-5));
    }

    @Test
    void speed_on_six_percent_exactly() {
        assertThat(load(26_000).fastestKmh(294_500, 0, 0.06)).isCloseTo(58.8634059, withinPercentage(PPM));
    }

    /** On the level and on 6 %. */
    @ParameterizedTest
    @CsvSource({
        "12000, 0, 1105.28281",
        "18000, 0, 1657.924",
        "26000, 0, 2394.77942",
        "12000, 0.06, 1819.806",
        "26000, 0.06, 3942.912"
    })
    void torque_for_a_capped_acceleration(double massKg, double grade, double torqueNm) {
        assertThat(DRIVE.torqueNm(load(massKg).forceN(0.8, grade, 0))).isCloseTo(torqueNm, within(1e-3));
    }

    /** The drive believes in 14 t, the vehicle has 12. */
    @Test
    void a_wrong_mass_accelerates_harder() {
        double forceN = load(14_000).forceN(0.8, 0, 0);

        assertThat(load(12_000).accelerationMps2(forceN)).isCloseTo(0.944233, within(1e-6));
    }

    @ParameterizedTest
    @CsvSource({"12000, 82.8747", "18000, 61.0031", "26000, 43.8912"})
    void speed_at_which_power_ends_the_acceleration(double massKg, double kmh) {
        assertThat(load(massKg).fastestKmh(294_500, 0.8, 0)).isCloseTo(kmh, within(5.1e-5));
    }

    /** Explicit steps of a millisecond, from rest to 50 km/h on the level; infinite: without a limit. */
    @ParameterizedTest
    @CsvSource({"12000, 0.8, 17.362", "26000, 0.8, 17.536", "12000, Infinity, 4.800", "26000, Infinity, 10.732"})
    void time_to_fifty_with_and_without_a_limit_on_acceleration(double massKg, double limitMps2, double seconds) {
        assertThat(new PullAway(DRIVE, load(massKg), limitMps2).secondsTo(50).orElseThrow())
                .isCloseTo(seconds, within(0.0021));
    }

    @Test
    void a_speed_that_the_power_never_reaches_has_no_time() {
        var weak = new DriveUnit(6200, 5.4, 0.95, 0.52, 20_000);

        assertThat(new PullAway(weak, load(26_000), 0.8).secondsTo(90)).isEmpty();
    }

    @Test
    void more_force_than_any_slope_asks_names_no_slope() {
        var found = results(new Gradeability().of(new Gradeability.Inputs(61_165, 6000, 1.05, 0.007, 0)));

        assertThat(found.grade()).isEmpty();
        assertThat(found.limited()).isFalse();
        assertThat(Slope.steepest(1.001 * Math.sqrt(1 + 0.007 * 0.007), 0.007)).isEmpty();
        assertThat(Slope.steepest(0.999 * Math.sqrt(1 + 0.007 * 0.007), 0.007)).isPresent();
        assertThat(refusal(new Gradeability().of(new Gradeability.Inputs(0, 6000, 1.05, 0.007, 12))))
                .isEqualTo("no-start");
    }

    @ParameterizedTest
    @CsvSource({
        "348, 150, 0.95, 0.15, 0.95, 0.80, 0.20, 2.14678803",
        "348, 150, 0.95, 0.15, 0.80, 0.80, 0.20, 1.58736842",
        "232, 150, 0.95, 0.15, 0.95, 0.80, 0.20, 1.431192",
        "348, 43, 0.92, 0.15, 0.95, 1, 1, 7.037412",
        "232, 22, 0.92, 0.15, 0.95, 1, 1, 9.169960"
    })
    void time_to_charge(
            double kwh, double kw, double efficiency, double from, double to, double taper, double end, double hours) {
        var inputs = new ChargingTime.Inputs(kwh, kw, efficiency, from, to, taper, end);

        assertThat(results(new ChargingTime().of(inputs)).hours()).isCloseTo(hours, withinPercentage(PPM));
    }

    @Test
    void a_power_that_falls_to_nothing_never_fills_a_pack() {
        assertThat(refusal(new ChargingTime().of(new ChargingTime.Inputs(348, 150, 0.95, 0.15, 1, 0.8, 0))))
                .isEqualTo("charge-never-ends");
        assertThat(results(new ChargingTime().of(new ChargingTime.Inputs(348, 150, 0.95, 0.15, 0.99, 0.8, 0)))
                        .hours())
                .isFinite();
    }

    /** Ten vehicles of 220 kWh in nine hours. */
    @Test
    void charging_of_a_depot() {
        var depot = new Depot(10, 220, 0.92, 9);

        assertThat(depot.takenKwh()).isCloseTo(2391.304, within(1e-3));
        assertThat(depot.meanKw()).isCloseTo(265.700483, withinPercentage(PPM));
    }

    /** The highest power at a usual and at the lowest voltage; by hand. */
    @ParameterizedTest
    @CsvSource({"650, 476.923077", "560, 553.571429"})
    void current_to_size_for(double voltageV, double currentA) {
        assertThat(CopperCable.currentA(310_000, voltageV)).isCloseTo(currentA, withinPercentage(PPM));
    }

    /** 95 mm² of annealed copper, constants from memory; computed. */
    @ParameterizedTest
    @CsvSource({"20, 181.473684", "90, 231.397095"})
    void resistance_of_a_metre_of_cable(double celsius, double microOhm) {
        assertThat(1e6 * new CopperCable(95).ohmPerMetre(celsius)).isCloseTo(microOhm, withinPercentage(PPM));
    }

    @Test
    void heat_in_a_metre_of_cable() {
        assertThat(new CopperCable(95).lossWPerMetre(200, 90)).isCloseTo(9.25588, within(1e-5));
    }

    /** t = −R C ln(1 − k), ½ C U²; by hand. */
    @Test
    void precharging_of_a_bus_of_two_millifarads() {
        var found = results(new Precharge().of(new Precharge.Inputs(0.002, 100, 650, 0.95)));

        assertThat(found.timeS()).isCloseTo(0.599146, withinPercentage(PPM));
        assertThat(found.energyJ()).isCloseTo(422.5, within(1e-9));
    }

    /**
     * Common practice, no source: 343 kW and 6800 Nm on a vehicle of 26 t. At the wheels (radius 0.52 m, invented) that is 13.1 kN: it would
     * hold 4.4 % and never start on 12 %, and the full power would not be reached below 89 km/h. Into an axle of 5.4 (invented) it is 67 kN:
     * it climbs 26 %, and power takes over at 17.5 km/h, as such drives do. At the shaft of a motor with a ratio of 20 it would be 248 kN, near
     * three times what 11.5 t on the drive axle grip. So the torque must mean the shaft into the axle; ask all the same.
     */
    @Test
    void the_torque_told_in_the_trade_must_be_that_into_the_axle() {
        var atTheWheels = new DriveUnit(6800, 1, 0.95, 0.52, 343_000);
        var intoTheAxle = new DriveUnit(6800, 5.4, 0.95, 0.52, 343_000);
        var atTheMotor = new DriveUnit(6800, 20, 0.95, 0.52, 343_000);
        double toStartOn12PercentN = load(26_000).forceN(0.15, 0.12, 0);
        double gripN = 0.8 * 11_500 * 9.81;

        assertThat(steepest(6800 / 0.52)).isCloseTo(0.0443, within(5e-4));
        assertThat(atTheWheels.greatestForceN()).isLessThan(toStartOn12PercentN);
        assertThat(atTheWheels.cornerKmh()).isGreaterThan(89);
        assertThat(intoTheAxle.greatestForceN()).isBetween(toStartOn12PercentN, gripN);
        assertThat(steepest(intoTheAxle.greatestForceN())).isCloseTo(0.265, within(5e-3));
        assertThat(intoTheAxle.cornerKmh()).isCloseTo(17.5, within(0.05));
        assertThat(atTheMotor.greatestForceN()).isGreaterThan(2.5 * gripN);
    }

    private static double steepest(double forceN) {
        return results(new Gradeability().of(new Gradeability.Inputs(forceN, 26_000, 1.05, 0.007, 0)))
                .grade()
                .orElseThrow();
    }

    private static Load load(double massKg) {
        return new Load(massKg, 1.05, 0.007, 6.0, 1.188);
    }
}
