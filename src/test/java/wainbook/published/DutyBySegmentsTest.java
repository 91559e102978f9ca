package wainbook.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wainbook.engineering.energy.Duties;
import wainbook.engineering.energy.driving.Kinematics;
import wainbook.engineering.energy.driving.Segment;
import wainbook.engineering.energy.driving.Trapeze;
import wainbook.engineering.energy.driving.Vehicle;

/**
 * Energy of a duty as an operator describes it, and of standardised tests in closed form. Vehicles and duties are invented; energies were
 * computed by a second hand in double precision.
 */
class DutyBySegmentsTest {

    private static final double PPM = 1e-4;

    private static final double JOULES_A_KWH = 3.6e6;

    /**
     * SORT 1 to 3 of the public-transport association: trapezes from memory, whose mean speeds come out as the published 12.1, 18.0 and
     * 25.3 km/h (from memory). Energies with the bus: computed.
     */
    @ParameterizedTest
    @CsvSource({
        "1, 154.4937, 12.116999, 0.142763, 0.0239521, 0.462097, 0.628812, 0.771389, 1.483440",
        "2, 183.9379, 18.006077, 0.252580, 0.0861869, 0.711794, 1.050561, 1.164792, 1.266078",
        "3, 206.2160, 25.313265, 0.398088, 0.172304, 1.098109, 1.668502, 1.680956, 1.159280"
    })
    void standardised_on_road_tests_of_buses(
            int sort,
            double seconds,
            double kmh,
            double roll,
            double air,
            double braked,
            double traction,
            double kwh,
            double kwhPerKm) {
        List<Trapeze> trapezes = sort(sort);
        double standingS = sort == 3 ? 40 : 60;
        double km = trapezes.stream().mapToDouble(Trapeze::lengthM).sum() / 1000;

        double lasts = Trapeze.seconds(trapezes, standingS);
        assertThat(lasts).isCloseTo(seconds, withinPercentage(PPM));
        assertThat(km / lasts * 3600).isCloseTo(kmh, withinPercentage(PPM));
        assertThat(sum(trapezes.stream().map(one -> one.rollingJ(Duties.BUS)))).isCloseTo(roll, within(1e-6));
        assertThat(sum(trapezes.stream().map(one -> one.airJ(Duties.BUS)))).isCloseTo(air, within(1e-6));
        assertThat(sum(trapezes.stream().map(one -> one.brakedJ(Duties.BUS)))).isCloseTo(braked, within(1e-6));
        assertThat(sum(trapezes.stream().map(one -> one.tractionJ(Duties.BUS)))).isCloseTo(traction, within(1e-6));
        double energyKwh = Trapeze.energyKwh(trapezes, standingS, Duties.BUS);
        assertThat(energyKwh).isCloseTo(kwh, within(1e-6));
        assertThat(energyKwh / km).isCloseTo(kwhPerKm, withinPercentage(PPM));
    }

    /** To more digits, since it is the shortest; computed. */
    @Test
    void the_first_of_them_exactly() {
        double kwh = Trapeze.energyKwh(sort(1), 60, Duties.BUS);

        assertThat(kwh).isCloseTo(0.77138856, withinPercentage(PPM));
        assertThat(kwh / 0.52).isCloseTo(1.4834395, withinPercentage(PPM));
    }

    /** A duty of 140 km as an operator describes it; computed. */
    @Test
    void a_duty_by_segments() {
        List<Segment> day = Duties.segments(60, 60, 20);

        assertThat(day.get(0).energyKwh(Duties.TRUCK)).isCloseTo(48.135368, withinPercentage(PPM));
        assertThat(day.get(1).energyKwh(Duties.TRUCK)).isCloseTo(45.334436, withinPercentage(PPM));
        assertThat(day.get(2).energyKwh(Duties.TRUCK)).isCloseTo(17.703679, withinPercentage(PPM));
        assertThat(day.stream().mapToDouble(one -> one.energyKwh(Duties.TRUCK)).sum())
                .isCloseTo(111.173483, withinPercentage(PPM));
        assertThat(day.stream().mapToDouble(Segment::hours).sum()).isCloseTo(4.137529, withinPercentage(PPM));
    }

    /** kWh/km at 10, 14 and 18 t; computed. */
    @ParameterizedTest
    @CsvSource({"10000, 0.679232", "14000, 0.794096", "18000, 0.908961"})
    void the_same_duty_at_other_masses(double massKg, double kwhPerKm) {
        Vehicle vehicle = Duties.TRUCK.weighing(massKg);

        assertThat(Duties.segments(60, 60, 20).stream()
                                .mapToDouble(one -> one.energyKwh(vehicle))
                                .sum()
                        / 140)
                .isCloseTo(kwhPerKm, within(1e-6));
    }

    /** Segments made of the kinematics of both cycles read 0.84 and 1.9 % below the seconds; computed. */
    @ParameterizedTest
    @CsvSource({"true, 0.20, 22.4501", "false, 0.10, 49.8501"})
    void segments_against_seconds(boolean truck, double lostShare, double kwh) {
        Kinematics way = Kinematics.of(
                (truck ? Duties.truckCycle() : Duties.busCycle()).level().trace());
        double stopKmh = 3.6 * Math.sqrt(way.positiveKineticMps2() * 1000);
        var segment = new Segment(
                way.distanceKm(), way.meanKmh(), 1, stopKmh, lostShare, 3.6 * Math.sqrt(way.effectiveSquaredM2s2()));

        assertThat(segment.energyKwh(truck ? Duties.TRUCK : Duties.BUS)).isCloseTo(kwh, within(5e-5));
    }

    private static double sum(Stream<Double> joules) {
        return joules.mapToDouble(Double::doubleValue).sum() / JOULES_A_KWH;
    }

    private static List<Trapeze> sort(int number) {
        return switch (number) {
            case 1 -> List.of(trapeze(20, 1.03, 100), trapeze(30, 0.77, 200), trapeze(40, 0.62, 220));
            case 2 -> List.of(trapeze(20, 1.03, 100), trapeze(40, 0.62, 220), trapeze(50, 0.57, 600));
            default -> List.of(trapeze(30, 0.77, 200), trapeze(50, 0.57, 600), trapeze(60, 0.46, 650));
        };
    }

    private static Trapeze trapeze(double kmh, double accelerationMps2, double lengthM) {
        return new Trapeze(kmh, accelerationMps2, 0.8, lengthM);
    }
}
