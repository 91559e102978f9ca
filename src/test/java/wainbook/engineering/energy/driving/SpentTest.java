package wainbook.engineering.energy.driving;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wainbook.engineering.energy.Duties;
import wainbook.engineering.specification.DutyPart;

/** Where the energy of a part of a day goes. Computed by a second hand in double precision. */
class SpentTest {

    /** The parts of the 18 t truck’s day with five packs, 14 485 kg: rolling, air, to the brakes, drawn, back, consumers, total. */
    @ParameterizedTest
    @CsvSource({
        "0, 12.788807, 5.559400, 24.239742, 50.223177, 15.785987, 9.818182, 44.255372",
        "1, 12.788807, 15.280650, 7.936271, 42.460886, 5.168449, 4.153846, 41.446283",
        "2, 4.262936, 8.419950, 0.434731, 15.469362, 0.283116, 0.923077, 16.109323"
    })
    void a_described_part_by_what_takes_it(
            int part,
            double rolling,
            double air,
            double braked,
            double drawn,
            double back,
            double consumers,
            double total) {
        Spent spent = Duties.segments(54, 54, 18).get(part).spent(Duties.TRUCK.weighing(14_485));

        assertThat(spent.rollingKwh()).isCloseTo(rolling, within(1e-6));
        assertThat(spent.airKwh()).isCloseTo(air, within(1e-6));
        assertThat(spent.climbKwh()).isZero();
        assertThat(spent.brakedKwh()).isCloseTo(braked, within(1e-6));
        assertThat(spent.drawnKwh()).isCloseTo(drawn, within(1e-6));
        assertThat(spent.backKwh()).isCloseTo(back, within(1e-6));
        assertThat(spent.consumersKwh()).isCloseTo(consumers, within(1e-6));
        assertThat(spent.packLossKwh()).isZero();
        assertThat(spent.totalKwh()).isCloseTo(total, within(1e-6));
        assertThat(spent.tractionKwh()).isCloseTo(rolling + air + braked, within(2e-6));
        assertThat(spent.drivelineKwh()).isCloseTo(drawn - rolling - air - braked, within(3e-6));
    }

    /** 20 t, 60 m lower at the end: 20 000 · 9.81 · 60 J are 3.27 kWh. */
    @Test
    void a_way_that_leads_down_gives_its_height() {
        Segment down = new Segment(20, 48, 0.3, 65, 0.22, 62, 100, 160, 160, 0.05);

        Spent spent = down.spent(Duties.HOOK_LOADER.weighing(20_000));

        assertThat(spent.climbKwh()).isCloseTo(-3.27, within(1e-9));
        assertThat(spent.brakedKwh()).isCloseTo(10.931194, within(1e-6));
        assertThat(spent.drawnKwh()).isCloseTo(25.535417, within(1e-6));
        assertThat(spent.totalKwh()).isCloseTo(20.083209, within(1e-6));
    }

    /** The published cycle of the truck, driven twice a day: the figures of its trace, doubled. */
    @Test
    void a_recorded_part_is_what_its_trace_says() {
        var recorded = new DutyPart.Recorded(Duties.truckCycle().trace(), 2, 0.6, 650, 0.12);

        Spent spent = recorded.spent(Duties.TRUCK, 4);

        assertThat(spent.rollingKwh()).isCloseTo(2 * 6.365623, within(2e-6));
        assertThat(spent.airKwh()).isCloseTo(2 * 5.382079, within(2e-6));
        assertThat(spent.climbKwh()).isCloseTo(2 * 0.124436, within(2e-6));
        assertThat(spent.brakedKwh()).isCloseTo(2 * 12.383062, within(2e-6));
        assertThat(spent.drawnKwh()).isCloseTo(2 * 28.603708, within(2e-6));
        assertThat(spent.backKwh()).isCloseTo(2 * 8.104612, within(2e-6));
        assertThat(spent.consumersKwh()).isCloseTo(2 * 3.644444, within(2e-6));
        assertThat(spent.packLossKwh()).isCloseTo(2 * 0.257730, within(2e-6));
        assertThat(spent.totalKwh()).isCloseTo(2 * 24.401271, within(2e-6));
        assertThat(spent.tractionKwh()).isCloseTo(2 * 24.255201, within(2e-6));
        assertThat(recorded.hours()).isCloseTo(2 * 3280 / 3600.0, within(1e-12));
    }

    /** 30 to 10 km/h in two seconds: what is left of its speed stays out of the brakes only as long as it rolls. */
    @Test
    void kinetic_energy_that_a_way_leaves_is_counted_with_the_brakes() {
        var slowing =
                new DutyPart.Recorded(Duties.levelled(List.of(30.0, 20.0, 10.0)).trace(), 1, 0, 650, 0.12);

        Spent spent = slowing.spent(Duties.TRUCK, 4);

        assertThat(spent.tractionKwh()).isCloseTo(0, within(1e-12));
        assertThat(spent.drivelineKwh()).isCloseTo(0, within(1e-12));
    }

    @Test
    void parts_add_up_to_their_sum() {
        Spent one = Duties.containerRounds().get(0).spent(Duties.HOOK_LOADER);
        Spent other = new DutyPart.Recorded(Duties.truckCycle().trace(), 1, 0, 650, 0.12).spent(Duties.TRUCK, 4);
        Spent both = one.and(other.times(3));

        assertThat(both.totalKwh()).isCloseTo(one.totalKwh() + 3 * other.totalKwh(), within(1e-9));
        assertThat(both.tractionKwh()).isCloseTo(one.tractionKwh() + 3 * other.tractionKwh(), within(1e-9));
        assertThat(both.rollingKwh()).isCloseTo(one.rollingKwh() + 3 * other.rollingKwh(), within(1e-9));
        assertThat(both.airKwh()).isCloseTo(one.airKwh() + 3 * other.airKwh(), within(1e-9));
        assertThat(both.climbKwh()).isCloseTo(one.climbKwh() + 3 * other.climbKwh(), within(1e-9));
        assertThat(both.backKwh()).isCloseTo(one.backKwh() + 3 * other.backKwh(), within(1e-9));
        assertThat(both.consumersKwh()).isCloseTo(one.consumersKwh() + 3 * other.consumersKwh(), within(1e-9));
        assertThat(both.packLossKwh()).isCloseTo(3 * other.packLossKwh(), within(1e-9));
        assertThat(Spent.NOTHING.and(one)).isEqualTo(one);
    }

    /** On ways that end at least as high as they begin; down a hill more mass may give more than it takes. */
    @Test
    void more_mass_never_lowers_the_energy_of_a_described_part() {
        var random = new SplittableRandom(5);
        for (int i = 0; i < 300; i++) {
            double downM = random.nextDouble(0, 300);
            var segment = new Segment(
                    random.nextDouble(1, 80),
                    random.nextDouble(8, 80),
                    random.nextDouble(0, 6),
                    random.nextDouble(20, 85),
                    random.nextDouble(0, 0.4),
                    random.nextDouble(20, 85),
                    downM + random.nextDouble(0, 100),
                    downM,
                    downM,
                    0.05);
            double massKg = random.nextDouble(6000, 30_000);

            assertThat(segment.energyKwh(Duties.TRUCK.weighing(massKg + random.nextDouble(0, 4000))))
                    .isGreaterThanOrEqualTo(segment.energyKwh(Duties.TRUCK.weighing(massKg)) - 1e-12);
        }
    }
}
