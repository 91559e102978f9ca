package wainbook.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wainbook.engineering.weights.AxleLimits;
import wainbook.engineering.weights.Binding;
import wainbook.engineering.weights.PayloadLimit;
import wainbook.engineering.weights.TwoAxles;
import wainbook.engineering.weights.axle.Axle;
import wainbook.engineering.weights.axle.AxleGroup;
import wainbook.engineering.weights.axle.Chassis;
import wainbook.engineering.weights.axle.PassengerClass;

/**
 * Loads of two and three axles by moments, all computed by a second hand for invented vehicles: statics, any textbook. Mass of a passenger:
 * Directive 97/27/EC, Annex I 7.4.3.3.1, read second-hand.
 */
class AxlesAndGroupsTest {

    private static final TwoAxles DONOR = new TwoAxles(5.1, 5150, 3350);
    private static final AxleGroup STEERED = new AxleGroup(List.of(Axle.single(0, false)));

    /** Diesel drive out, electric drive and four packs in. */
    private static final double[][] CONVERSION = {
        {-980, -0.10},
        {-310, 1.05},
        {-185, 1.60},
        {-330, 2.30},
        {-60, 1.70},
        {-95, -0.75},
        {420, 2.90},
        {560, 1.55},
        {560, 1.55},
        {560, 2.75},
        {560, 2.75},
        {310, -0.10},
        {240, 1.60}
    };

    private static final double[][] THREE_AXLES = {
        {-1050, -0.10},
        {-360, 1.10},
        {-220, 1.70},
        {-420, 2.40},
        {-75, 1.90},
        {520, 3.30},
        {590, 1.60},
        {590, 1.60},
        {590, 2.80},
        {590, 2.80},
        {590, 2.80},
        {340, -0.10},
        {280, 1.80}
    };

    private static final double[][] REAR_ENGINE = {
        {-1150, 7.6},
        {-330, 6.9},
        {-260, 7.9},
        {-290, 1.2},
        {-90, 7.2},
        {480, 6.9},
        {900, 7.5},
        {780, 1.4},
        {780, 2.6},
        {300, 7.8},
        {180, 4.0}
    };

    @Test
    void a_conversion_moves_the_loads_of_two_axles() {
        TwoAxles converted = changed(DONOR, CONVERSION);

        assertThat(converted.frontKg()).isCloseTo(5405.147, within(0.01));
        assertThat(converted.rearKg()).isCloseTo(4344.853, within(0.01));
        assertThat(converted.totalKg()).isCloseTo(9750, within(1e-9));
    }

    /** Sits before the front axle, and so takes a little from the rear one. */
    @Test
    void a_driver_before_the_front_axle() {
        TwoAxles driver = new TwoAxles(5.1, 0, 0).with(PassengerClass.DRIVER_KG, -0.35);

        assertThat(driver.frontKg()).isCloseTo(80.147, within(0.001));
        assertThat(driver.rearKg()).isCloseTo(-5.147, within(0.001));
    }

    @ParameterizedTest
    @CsvSource({"3.05, 6455.488, FRONT", "3.55, 8537.90, FRONT", "4.10, 8900.30, REAR"})
    void where_a_load_lies_decides_which_axle_binds(double placeM, double payloadKg, Binding binding) {
        PayloadLimit limit = new AxleLimits(8000, 11_500, 20_000, 0.2).payload(changed(DONOR, CONVERSION), placeM);

        assertThat(limit.kg()).isCloseTo(payloadKg, within(0.01));
        assertThat(limit.binding()).isEqualTo(binding);
    }

    /** Plates of 8000 and 11 500 kg never let 20 000 be used: both bind at one place. */
    @Test
    void both_axles_bind_at_one_place() {
        var limits = new AxleLimits(8000, 11_500, 20_000, 0.2);
        TwoAxles tare = changed(DONOR, CONVERSION);
        double placeM = 5.1 * (11_500 - tare.rearKg()) / 9750;

        assertThat(placeM).isCloseTo(3.74269, within(1e-4));
        assertThat(limits.payload(tare, placeM).kg()).isCloseTo(9750, within(0.01));
    }

    @Test
    void a_tandem_acts_where_its_shares_put_it() {
        assertThat(tandem(0.5).centreM()).isCloseTo(5.275, within(1e-12));
        assertThat(tandem(7.5 / 19).centreM()).isCloseTo(5.13289, within(1e-5));
    }

    @Test
    void a_conversion_moves_the_loads_of_three_axles() {
        Chassis chassis = new Chassis(STEERED, tandem(0.5));
        TwoAxles converted = changed(chassis.carrying(5400, 5200), THREE_AXLES);

        assertThat(converted.frontKg()).isCloseTo(5997.318, within(0.01));
        assertThat(converted.rearKg()).isCloseTo(6567.682, within(0.01));
        assertThat(chassis.loadsKg(converted).get(2)).isCloseTo(3283.84, within(0.01));
    }

    @Test
    void a_tandem_that_shares_unevenly() {
        Chassis chassis = new Chassis(STEERED, tandem(7.5 / 19));
        TwoAxles converted = changed(chassis.carrying(5400, 5200), THREE_AXLES);

        assertThat(converted.frontKg()).isCloseTo(5959.46, within(0.01));
        assertThat(chassis.loadsKg(converted).get(1)).isCloseTo(3998.09, within(0.01));
        assertThat(chassis.loadsKg(converted).get(2)).isCloseTo(2607.45, within(0.01));
    }

    @Test
    void lifting_the_tag_axle_loads_the_driven_one_and_lightens_the_front() {
        Chassis chassis = new Chassis(STEERED, tandem(0.5));
        TwoAxles lifted = chassis.lifted(changed(chassis.carrying(5400, 5200), THREE_AXLES));

        assertThat(lifted.rearKg()).isCloseTo(7531.41, within(0.01));
        assertThat(lifted.frontKg()).isCloseTo(5033.59, within(0.01));
        assertThat(lifted.steeringShare()).isCloseTo(0.4006, within(5e-5));
    }

    @ParameterizedTest
    @CsvSource({"3.75, 10459.57, false", "4.00, 9728.05, true", "4.10, 9435.45, true"})
    void laden_to_28_tonnes_the_front_axle_holds_or_not(double placeM, double frontKg, boolean holds) {
        Chassis chassis = new Chassis(STEERED, tandem(0.5));
        TwoAxles tare = changed(chassis.carrying(5400, 5200), THREE_AXLES);
        TwoAxles laden = tare.with(15_435, placeM);

        assertThat(laden.frontKg()).isCloseTo(frontKg, within(0.01));
        assertThat(new AxleLimits(10_000, 19_000, 28_000, 0.2)
                                .payload(tare, placeM)
                                .kg()
                        >= 15_435)
                .isEqualTo(holds);
    }

    @Test
    void a_bus_empty_and_full() {
        TwoAxles empty = changed(new TwoAxles(6, 3900, 7600), REAR_ENGINE);
        double person = PassengerClass.I.personKg();
        TwoAxles full = empty.with(PassengerClass.DRIVER_KG, -0.6)
                .with(38 * person, 4.1)
                .with(30 * person, 3.2);

        assertThat(empty.frontKg()).isCloseTo(4837.50, within(0.01));
        assertThat(empty.rearKg()).isCloseTo(7962.50, within(0.01));
        assertThat(full.frontKg()).isCloseTo(6690.27, within(0.01));
        assertThat(full.rearKg()).isCloseTo(10_808.73, within(0.01));
        assertThat(full.totalKg()).isCloseTo(17_499, within(1e-9));
    }

    private static AxleGroup tandem(double secondShare) {
        return new AxleGroup(
                List.of(new Axle(4.6, 1 - secondShare, true, false), new Axle(4.6 + 1.35, secondShare, false, true)));
    }

    private static TwoAxles changed(TwoAxles before, double[][] changes) {
        TwoAxles axles = before;
        for (double[] change : changes) {
            axles = axles.with(change[0], change[1]);
        }
        return axles;
    }
}
