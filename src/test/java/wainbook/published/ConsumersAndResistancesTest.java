package wainbook.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wainbook.engineering.energy.consumers.CabinHeat;
import wainbook.engineering.energy.consumers.HydraulicWork;
import wainbook.engineering.energy.consumers.ShaftWork;
import wainbook.engineering.energy.resistance.Air;
import wainbook.engineering.energy.resistance.RotatingMass;
import wainbook.engineering.energy.resistance.TyreAxle;
import wainbook.engineering.energy.store.Consumption;
import wainbook.engineering.energy.store.Diesel;

/** What else draws on packs, what holds a vehicle back, and what its diesel took before. */
class ConsumersAndResistancesTest {

    private static final double PPM = 1e-4;

    /** Speed and torques as in the declared power take-off duty of municipal vehicles (VECTO declaration data, read); work computed. */
    @Test
    void work_at_a_power_take_off() {
        var torques = Stream.of(
                        Collections.nCopies(5, 65.0), Collections.nCopies(4, 260.0), Collections.nCopies(15, 200.0))
                .flatMap(List::stream)
                .toList();
        var shaft = new ShaftWork(990, torques);

        assertThat(shaft.byRectanglesWh()).isCloseTo(125.702976, withinPercentage(PPM));
        assertThat(shaft.byTrapezoidWh()).isCloseTo(121.88725, withinPercentage(PPM));
    }

    /** A hook-lift: pressures, volumes and cycles invented, work computed. */
    @Test
    void hydraulic_work_of_a_day() {
        var hook = new HydraulicWork(210, 28, 0.88 * 0.92 * 0.70, 25, 45, 0.88 * 0.92);

        assertThat(hook.cycleWh()).isCloseTo(288.208169, withinPercentage(PPM));
        assertThat(hook.idleW()).isCloseTo(2315.96, withinPercentage(1e-3));
        assertThat(hook.dayKwh(40, 0.5)).isCloseTo(12.6863060, withinPercentage(PPM));
    }

    /** A cab at −10 °C and a bus at −5 °C: invented, heat computed. */
    @Test
    void heating() {
        var cab = new CabinHeat(35, 80, 20, -10, 150);
        var bus = new CabinHeat(350, 900, 18, -5, 20 * 80);

        assertThat(cab.heatW()).isCloseTo(1704, withinPercentage(PPM));
        assertThat(cab.electricW(0.95)).isCloseTo(1793.68, withinPercentage(1e-3));
        assertThat(bus.heatW()).isCloseTo(13_384.5, withinPercentage(PPM));
        assertThat(bus.electricW(2.3)).isCloseTo(5819.348, withinPercentage(PPM));
        assertThat(new CabinHeat(35, 80, 20, 25, 150).heatW()).isZero();
    }

    /** Gas equation; computed. */
    @ParameterizedTest
    @CsvSource({"20, 1.20411832", "-10, 1.34139192"})
    void density_of_air(double celsius, double kgM3) {
        assertThat(Air.densityKgM3(celsius, Air.STANDARD_PA)).isCloseTo(kgM3, withinPercentage(PPM));
    }

    /** 5 t on two and 9 t on four tyres of 0.0060; the law with β = 0.9 from memory, computed. */
    @Test
    void rolling_axle_by_axle() {
        var axles = List.of(new TyreAxle(5.0 / 14, 0.0060, 2, 20_850), new TyreAxle(9.0 / 14, 0.0060, 4, 20_850));

        assertThat(axles.get(0).coefficient(14_000)).isCloseTo(0.00590338, within(1e-8));
        assertThat(axles.get(1).coefficient(14_000)).isCloseTo(0.00596591, within(1e-8));
        assertThat(TyreAxle.together(axles, 14_000)).isCloseTo(0.005943579, withinPercentage(PPM));
    }

    /** Ten wheels of 17.6 kg m² and 1075.5 mm (VECTO wheel table, read; rolling factor 3.05 from memory); the motor invented. Computed. */
    @Test
    void turning_masses() {
        double radiusM = 1.0755 * 3.05 / (2 * Math.PI);
        var turning = new RotatingMass(10 * 17.6, 0.6, 20, radiusM);

        assertThat(new RotatingMass(176, 0, 20, radiusM).equivalentKg()).isCloseTo(645.731, within(1e-3));
        assertThat(turning.factor(26_000)).isCloseTo(1.05870, within(1e-5));
        assertThat(turning.factor(14_000)).isCloseTo(1.10902, within(1e-5));
    }

    /** Density, heating value and carbon dioxide of diesel: VECTO fuel table, read. A litre computed. */
    @Test
    void a_litre_of_diesel() {
        assertThat(Diesel.kwhPerLitre()).isCloseTo(9.91588889, withinPercentage(PPM));
        assertThat(Diesel.co2KgPerLitre()).isCloseTo(2.61668, withinPercentage(PPM));
    }

    /** Fuel by kilometre, work at the crank of it (0.38 from memory), carbon dioxide at the vehicle; computed. */
    @ParameterizedTest
    @CsvSource({"22, 2.181496, 0.828968, 575.670", "28, 2.776449, 1.055051, 732.670", "38, 3.768038, 1.431854, 994.338"
    })
    void fuel_against_work(double litres, double fuelKwh, double crankKwh, double grams) {
        assertThat(Diesel.fuelKwhPerKm(litres)).isCloseTo(fuelKwh, within(1e-6));
        assertThat(0.38 * Diesel.fuelKwhPerKm(litres)).isCloseTo(crankKwh, within(1e-6));
        assertThat(Diesel.co2GramsPerKm(litres)).isCloseTo(grams, within(1e-3));
    }

    /**
     * A trade report of a British trial writes "1.08 kWh per km giving 270 km" from 250 kWh (read). Its own figures show which it is: 270 km
     * only if it means kilometres a kilowatt-hour.
     */
    @Test
    void a_consumption_both_ways_round() {
        var written = new Consumption(1.08);

        assertThat(written.rangeIfKwhPerKm(250)).isCloseTo(231.481481, withinPercentage(PPM));
        assertThat(written.rangeIfKmPerKwh(250)).isCloseTo(270, withinPercentage(PPM));
    }
}
