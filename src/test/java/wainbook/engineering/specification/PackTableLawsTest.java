package wainbook.engineering.specification;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import wainbook.engineering.energy.Duties;
import wainbook.engineering.energy.store.NeedOdds;
import wainbook.engineering.weights.AxleLimits;
import wainbook.engineering.weights.Binding;
import wainbook.engineering.weights.TwoAxles;

/** What holds between the rows of every table of packs against payload. */
class PackTableLawsTest {

    private static final int CASES = 200;

    @Test
    void more_packs_go_further_and_carry_less_until_a_limit_rules_them_out() {
        var random = new SplittableRandom(1);
        for (int i = 0; i < CASES; i++) {
            PackTable table = table(random);
            List<PackRow> rows = table.rows();
            assertThat(rows).hasSameSizeAs(table.pack().placesM());
            for (int k = 1; k < rows.size(); k++) {
                PackRow fewer = rows.get(k - 1);
                PackRow more = rows.get(k);
                double packKg = table.pack().massKg();

                assertThat(more.rangeNewKm()).isGreaterThan(fewer.rangeNewKm());
                assertThat(more.kwhPerKm()).isGreaterThan(fewer.kwhPerKm());
                assertThat(more.oddsAtEnd()).isGreaterThanOrEqualTo(fewer.oddsAtEnd());
                assertThat(more.payload().kg())
                        .isLessThanOrEqualTo(fewer.payload().kg() + 1e-9);
                if (fewer.payload().binding() == Binding.GROSS && more.payload().binding() == Binding.GROSS) {
                    assertThat(fewer.payload().kg() - more.payload().kg()).isCloseTo(packKg, within(1e-9));
                }
                boolean payloadGone = fewer.ruledOut().stream().anyMatch(RuledOut.Payload.class::isInstance);
                assertThat(payloadGone && more.feasible())
                        .as("a payload that is lost with fewer packs does not come back")
                        .isFalse();
            }
        }
    }

    /** What packs bring to the axles is what they weigh, and turns about the front axle as they lie. */
    @Test
    void masses_and_moments_balance_in_every_row() {
        var random = new SplittableRandom(3);
        for (int i = 0; i < CASES; i++) {
            PackTable table = table(random);
            double bareKg = table.bare().totalKg();
            double bareKgM = table.bare().rearKg() * table.bare().wheelbaseM();
            for (PackRow row : table.rows()) {
                double packsKgM = table.pack().placesM().stream()
                                .limit(row.packs())
                                .mapToDouble(Double::doubleValue)
                                .sum()
                        * table.pack().massKg();
                double carriedKg = row.laden().totalKg() - row.empty().totalKg();

                assertThat(row.empty().totalKg())
                        .isCloseTo(bareKg + row.packs() * table.pack().massKg(), within(1e-8));
                assertThat(row.empty().rearKg() * row.empty().wheelbaseM()).isCloseTo(bareKgM + packsKgM, within(1e-7));
                assertThat(row.laden().rearKg() * row.laden().wheelbaseM())
                        .isCloseTo(bareKgM + packsKgM + carriedKg * table.payloadCentreM(), within(1e-7));
                assertThat(carriedKg).isLessThanOrEqualTo(table.payloadKg() + 1e-9);
            }
        }
    }

    /** Range never stops growing with packs; payload does. So what will do lies between too little energy and too little payload. */
    @Test
    void below_what_will_do_energy_is_short_and_above_it_payload() {
        var random = new SplittableRandom(4);
        int found = 0;
        for (int i = 0; i < CASES; i++) {
            List<PackRow> rows = table(random).rows();
            List<Integer> will =
                    rows.stream().filter(PackRow::feasible).map(PackRow::packs).toList();
            for (PackRow row : rows) {
                if (!will.isEmpty() && row.packs() < will.get(0)) {
                    assertThat(row.ruledOut()).allMatch(RuledOut.Energy.class::isInstance);
                } else if (!will.isEmpty() && row.packs() > will.get(will.size() - 1)) {
                    assertThat(row.ruledOut()).allMatch(RuledOut.Payload.class::isInstance);
                    found++;
                }
            }
            for (int k = 1; k < will.size(); k++) {
                assertThat(will.get(k)).isEqualTo(will.get(k - 1) + 1);
            }
        }
        assertThat(found).as("cases that payload stops").isPositive();
    }

    /** What rules a row out is as large as what would have to be given for it to be feasible. */
    @Test
    void what_is_short_is_just_what_would_make_a_row_feasible() {
        var random = new SplittableRandom(2);
        for (int i = 0; i < CASES; i++) {
            PackTable table = table(random);
            for (PackRow row : table.rows()) {
                assertThat(row.feasible())
                        .isEqualTo(table.payloadKg() <= row.payload().kg() && row.oddsAtEnd() >= table.odds());
                if (row.middayKwh() > 0) {
                    double usable = table.pack().usableAtEndKwh(row.packs()) + row.middayKwh();
                    assertThat(table.need().met(usable, row.worstKwh())).isCloseTo(table.odds(), within(1e-9));
                }
            }
        }
    }

    private static PackTable table(SplittableRandom random) {
        var places = new ArrayList<Double>();
        for (int i = random.nextInt(1, 8); i > 0; i--) {
            places.add(random.nextDouble(1, 4.5));
        }
        var day = new DutyDay(
                Duties.segments(random.nextDouble(20, 80), random.nextDouble(10, 60), random.nextDouble(0, 30)),
                Duties.TRUCK,
                random.nextDouble(0.3, 1),
                random.nextDouble(0, 15),
                random.nextDouble(1, 1.4),
                random.nextDouble(1, 1.3),
                random.nextDouble(0, 20));
        return new PackTable(
                new TwoAxles(5, random.nextDouble(3600, 4400), random.nextDouble(2600, 3400)),
                new AxleLimits(7500, 11_500, 18_000, 0.2),
                new PackType(random.nextDouble(40, 70), random.nextDouble(350, 600), 0.8, 0.8, places),
                random.nextDouble(5000, 10_000),
                random.nextDouble(3.3, 4.2),
                day,
                new NeedOdds(random.nextDouble(0.05, 0.25)),
                0.95);
    }
}
