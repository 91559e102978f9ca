package wainbook.engineering.energy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static wainbook.engineering.Answers.faultyFields;
import static wainbook.engineering.Answers.refusal;
import static wainbook.engineering.Answers.results;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import wainbook.engineering.Answer;
import wainbook.engineering.energy.driving.Battery;
import wainbook.engineering.energy.driving.Segment;
import wainbook.engineering.energy.driving.Vehicle;

/** What a trace may hold, and what is refused. */
class DutyTraceTest {

    private static final List<Double> LEVEL = Collections.nCopies(8, 0.0);

    @Test
    void each_field_out_of_its_range_is_named_at_once() {
        var speeds = new ArrayList<>(Duties.BY_HAND);
        speeds.set(3, -1.0);
        var gradients = new ArrayList<>(LEVEL);
        gradients.set(2, 6.0);

        assertThat(faultyFields(asked(speeds, gradients, Duties.TRUCK.weighing(0), new Battery(0, 0.03))))
                .containsExactly("speedKmh[3]", "gradient[2]", "vehicle.massKg", "battery.openV");
    }

    @Test
    void a_trace_has_as_many_gradients_as_speeds() {
        assertThat(faultyFields(asked(Duties.BY_HAND, LEVEL.subList(0, 7), Duties.TRUCK, Duties.TRUCK_PACKS)))
                .containsExactly("gradient");
    }

    @Test
    void one_sample_is_no_trace() {
        assertThat(faultyFields(asked(List.of(0.0), List.of(0.0), Duties.TRUCK, Duties.TRUCK_PACKS)))
                .containsExactly("speedKmh", "gradient");
    }

    @Test
    void regeneration_cannot_be_whole_before_it_begins() {
        assertThat(faultyFields(asked(Duties.BY_HAND, LEVEL, fading(15, 5), Duties.TRUCK_PACKS)))
                .containsExactly("vehicle.regenerationHighKmh");
    }

    /** Both speeds alike: all of it from there on, and no division by nought. */
    @Test
    void regeneration_may_begin_whole() {
        double sudden = energyKwh(fading(10, 10));

        assertThat(sudden).isBetween(energyKwh(fading(0, 10)), energyKwh(fading(10, 20)));
    }

    @Test
    void faults_of_fields_come_before_what_packs_cannot_deliver() {
        var weak = new Battery(650, 1);

        assertThat(faultyFields(asked(Duties.BY_HAND, LEVEL, fading(15, 5), weak)))
                .isNotEmpty();
        assertThat(refusal(asked(Duties.BY_HAND, LEVEL, Duties.TRUCK, weak))).isEqualTo("pack-cannot-deliver");
    }

    @Test
    void a_vehicle_that_stands_takes_its_consumers_only_and_has_no_consumption_by_distance() {
        var found = results(asked(
                Collections.nCopies(3601, 0.0), Collections.nCopies(3601, 0.0), Duties.TRUCK, new Battery(650, 0)));

        assertThat(found.energyKwh()).isCloseTo(4, within(1e-9));
        assertThat(found.kwhPerKm()).isEmpty();
        assertThat(found.idleS()).isEqualTo(3600);
        assertThat(found.stops()).isZero();
    }

    @Test
    void a_day_at_one_sample_a_second_fits_and_a_second_more_does_not() {
        List<Double> day = Collections.nCopies(86_401, 36.0);
        List<Double> level = Collections.nCopies(86_401, 0.0);

        assertThat(results(asked(day, level, Duties.TRUCK, Duties.TRUCK_PACKS)).distanceKm())
                .isCloseTo(864, within(1e-6));
        assertThat(faultyFields(asked(
                        Collections.nCopies(86_402, 36.0),
                        Collections.nCopies(86_402, 0.0),
                        Duties.TRUCK,
                        Duties.TRUCK_PACKS)))
                .containsExactly("speedKmh", "gradient");
    }

    @Test
    void figures_of_an_absurd_size_are_refused_and_give_no_number() {
        assertThat(refusal(asked(Duties.BY_HAND, LEVEL, Duties.TRUCK.weighing(1e308), Duties.TRUCK_PACKS)))
                .isEqualTo("beyond-reckoning");
    }

    /** ½ · 14 000 · 1.05 · (36 km/h)² is 735 kJ, by hand. */
    @Test
    void a_way_that_ends_at_speed_has_gained_kinetic_energy() {
        var found = results(
                asked(List.of(0.0, 12.0, 24.0, 36.0), Collections.nCopies(4, 0.0), Duties.TRUCK, Duties.TRUCK_PACKS));

        assertThat(found.kineticKwh()).isCloseTo(735_000 / 3.6e6, within(1e-12));
        assertThat(found.tractionKwh())
                .isCloseTo(found.rollingKwh() + found.airKwh() + found.kineticKwh(), within(1e-12));
    }

    /** What comes back on the way down is less than what the climb took; going down only costs less than the level. */
    @Test
    void a_hill_by_segments_costs_more_than_the_level_even_when_it_leads_down_again() {
        var level = new Segment(10, 40, 0.5, 45, 0.2, 42);
        var hill = new Segment(10, 40, 0.5, 45, 0.2, 42, 200, 200, 200, 0.05);
        var up = new Segment(10, 40, 0.5, 45, 0.2, 42, 200, 0, 0, 0);
        var down = new Segment(10, 40, 0.5, 45, 0.2, 42, 0, 200, 200, 0.05);

        assertThat(hill.energyKwh(Duties.TRUCK)).isGreaterThan(level.energyKwh(Duties.TRUCK));
        assertThat(down.energyKwh(Duties.TRUCK)).isLessThan(level.energyKwh(Duties.TRUCK));
        assertThat(up.energyKwh(Duties.TRUCK) - level.energyKwh(Duties.TRUCK))
                .as("200 m of climb through the drive")
                .isCloseTo(14_000 * 9.81 * 200 / 3.6e6 / Duties.TRUCK.tractionEfficiency(), within(1e-9));
    }

    private static double energyKwh(Vehicle vehicle) {
        return results(asked(Duties.BY_HAND, LEVEL, vehicle, Duties.TRUCK_PACKS))
                .energyKwh();
    }

    private static Vehicle fading(double lowKmh, double highKmh) {
        Vehicle t = Duties.TRUCK;
        return new Vehicle(
                t.massKg(),
                t.rotatingFactor(),
                t.rolling(),
                t.cdA(),
                t.airDensity(),
                t.tractionEfficiency(),
                t.regenerationShare(),
                t.regenerationEfficiency(),
                lowKmh,
                highKmh,
                t.regenerationLimitW(),
                t.auxiliaryW(),
                0,
                0);
    }

    private static Answer<DutyTrace.Results> asked(
            List<Double> speedKmh, List<Double> gradient, Vehicle vehicle, Battery battery) {
        return new DutyTrace().of(new DutyTrace.Inputs(speedKmh, gradient, vehicle, battery));
    }
}
