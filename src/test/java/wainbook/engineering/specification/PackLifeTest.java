package wainbook.engineering.specification;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wainbook.engineering.energy.Duties;
import wainbook.engineering.energy.store.Ageing;
import wainbook.engineering.energy.store.NeedErrors;
import wainbook.engineering.energy.store.NeedOdds;
import wainbook.engineering.weights.AxleLimits;
import wainbook.engineering.weights.TwoAxles;

/**
 * The 18 t truck of the published table, in the cold and over the years. All computed by a second hand: 7100 kg bare, packs of 58 kWh and 505 kg,
 * 8100 kg of payload of which 60 % on average, a window of 0.80, a worst day of 1.232 times the driving and 14.35 kWh of heating, σ = 0.152970585.
 */
class PackLifeTest {

    private static final ColdDay AS_BEFORE = ColdDay.heating(14.35);
    private static final ColdDay AS_THE_AIR = new ColdDay(14.35, 0, 0.85);
    private static final ColdDay KEPT_WARM = new ColdDay(14.35, 4, 1);
    private static final Ageing SHEET = new Ageing(0.05, 0.012);

    /** At −10 °C 0.85 of 37.12 kWh a pack: 31.552. Four packs: 126.208 kWh against 137.530005. */
    @ParameterizedTest
    @CsvSource({
        "4, 137.530005, 0.287189, 0.815172, 50.669311, 173.8573, 139.0858",
        "5, 139.781125, 0.785523, 0.987767, 22.012475, 213.9032, 171.1225",
        "6, 142.032244, 0.969838, 0.999577, 0, 252.7087, 202.1670"
    })
    void packs_as_cold_as_the_air_give_less_on_the_worst_day(
            int packs, double worst, double atEnd, double whenNew, double shortKwh, double newKm, double endKm) {
        holds(row(AS_THE_AIR, packs), worst, atEnd, whenNew, shortKwh, newKm, endKm);
    }

    /** Eight hours of half a kilowatt: 4 kWh more, and all that the packs hold. */
    @ParameterizedTest
    @CsvSource({
        "4, 141.530005, 0.623006, 0.961813, 33.541710, 197.6241, 158.0992",
        "5, 143.781125, 0.952437, 0.999119, 0, 243.2737, 194.6189",
        "6, 146.032244, 0.997104, 0.999988, 0, 287.5557, 230.0446"
    })
    void packs_that_left_warm_give_all_and_take_what_keeps_them_so(
            int packs, double worst, double atEnd, double whenNew, double shortKwh, double newKm, double endKm) {
        holds(row(KEPT_WARM, packs), worst, atEnd, whenNew, shortKwh, newKm, endKm);
    }

    private static void holds(
            PackRow row, double worst, double atEnd, double whenNew, double shortKwh, double newKm, double endKm) {
        assertThat(row.worstKwh()).isCloseTo(worst, within(1e-6));
        assertThat(row.oddsAtEnd()).isCloseTo(atEnd, within(1e-6));
        assertThat(row.oddsNew()).isCloseTo(whenNew, within(1e-6));
        assertThat(row.middayKwh()).isCloseTo(shortKwh, within(1e-5));
        assertThat(row.ruledOut().isEmpty()).isEqualTo(shortKwh == 0 && row.packs() < 6);
        assertThat(row.rangeColdNewKm()).isCloseTo(newKm, within(1e-4));
        assertThat(row.rangeColdAtEndKm()).isCloseTo(endKm, within(1e-4));
    }

    /** The mild day knows nothing of the cold: 287.12 and 229.70 km with five packs, as published. */
    @Test
    void a_mild_day_is_the_same_whatever_the_packs_are_in_the_cold() {
        for (ColdDay cold : List.of(AS_BEFORE, AS_THE_AIR, KEPT_WARM)) {
            assertThat(row(cold, 5).rangeNewKm()).isCloseTo(287.12, within(0.005));
            assertThat(row(cold, 5).rangeAtEndKm()).isCloseTo(229.70, within(0.005));
        }
    }

    /** 101.810978 kWh · 250 days / 290 kWh; 0.05 · 87.768 / 1000 + 0.012 a year; needed 1.28610 · 139.781125 / 232. */
    @Test
    void five_packs_over_the_years() {
        PackLife.Life life = life(5, SHEET);

        assertThat(life.packs()).isEqualTo(5);
        assertThat(life.cyclesAYear()).isCloseTo(87.768084, within(1e-5));
        assertThat(life.lostAYear()).isCloseTo(0.01638840, within(1e-8));
        assertThat(life.neededHealth()).isCloseTo(0.774881, within(1e-6));
        assertThat(life.lastMet()).hasValue(13);
        assertThat(life.endsIn()).hasValue(13);
        assertThat(life.years()).hasSize(15);
        PackLife.Year ten = life.years().get(10);
        assertThat(ten.year()).isEqualTo(10);
        assertThat(ten.stateOfHealth()).isCloseTo(0.836116, within(1e-6));
        assertThat(ten.usableKwh()).isCloseTo(0.836116 * 232, within(1e-3));
        assertThat(ten.odds()).isCloseTo(0.983906, within(1e-6));
        assertThat(life.years()).filteredOn(PackLife.Year::met).hasSize(14);
        assertThat(life.years().get(13).met()).isTrue();
        assertThat(life.years().get(14).met()).isFalse();
    }

    /** Four: needed 0.953003, lost 0.017387 a year, 2.70 years; the end of life in the twelfth, 11.50. Six: 21.87 and 12.72. */
    @ParameterizedTest
    @CsvSource({"4, 2, 12", "5, 13, 13", "6, 21, 13"})
    void until_when_the_worst_day_is_met_and_when_the_end_of_life_is_reached(int packs, int lastMet, int endsIn) {
        PackLife.Life life = life(packs, SHEET);

        assertThat(life.lastMet()).hasValue(lastMet);
        assertThat(life.endsIn()).hasValue(endsIn);
        assertThat(life.years()).hasSize(2 + Math.max(lastMet, endsIn));
        assertThat(life.lasts(lastMet)).isTrue();
        assertThat(life.lasts(lastMet + 1)).isFalse();
    }

    /** Three packs would need 1.2499 of their capacity, two 1.8436. */
    @Test
    void packs_that_do_not_meet_the_worst_day_when_new_never_do() {
        assertThat(life(3, SHEET).lastMet()).isEmpty();
        assertThat(life(3, SHEET).lasts(0)).isFalse();
        assertThat(life(2, SHEET).years()).noneMatch(PackLife.Year::met);
        assertThat(life(2, SHEET).years()).hasSize(11);
    }

    /** 2 % a year and nothing with use: 80 % at the end of the tenth year, to the day; half a percent: later than is looked at. */
    @Test
    void the_end_of_life_on_the_last_day_of_a_year_is_in_that_year() {
        assertThat(life(5, new Ageing(0, 0.02)).endsIn()).hasValue(10);
        PackLife.Life slow = life(5, new Ageing(0, 0.005));
        assertThat(slow.endsIn()).isEmpty();
        assertThat(slow.lastMet()).hasValue(PackLife.MOST_YEARS);
        assertThat(slow.years()).hasSize(PackLife.MOST_YEARS + 1);
        assertThat(slow.lasts(40)).isTrue();
    }

    @Test
    void odds_never_rise_when_it_gets_colder_or_the_packs_get_older() {
        var random = new SplittableRandom(3);
        for (int i = 0; i < 100; i++) {
            double heating = random.nextDouble(0, 20);
            double share = random.nextDouble(0.7, 1);
            int packs = random.nextInt(2, 7);
            PackRow mild = row(new ColdDay(heating, 0, share), packs);
            PackRow colder =
                    row(new ColdDay(heating + random.nextDouble(0, 5), 0, share - random.nextDouble(0, 0.2)), packs);

            assertThat(colder.oddsAtEnd()).isLessThanOrEqualTo(mild.oddsAtEnd());
            assertThat(colder.oddsNew()).isLessThanOrEqualTo(mild.oddsNew());
            assertThat(colder.rangeColdAtEndKm()).isLessThan(mild.rangeColdAtEndKm());
            assertThat(mild.rangeColdAtEndKm()).isLessThanOrEqualTo(mild.rangeAtEndKm());
            assertThat(mild.oddsAtEnd()).isLessThanOrEqualTo(mild.oddsNew());

            var ageing = new Ageing(random.nextDouble(0, 0.3), random.nextDouble(0.001, 0.05));
            List<PackLife.Year> years = life(packs, ageing).years();
            for (int year = 1; year < years.size(); year++) {
                assertThat(years.get(year).odds())
                        .isLessThanOrEqualTo(years.get(year - 1).odds());
                assertThat(years.get(year).met() && !years.get(year - 1).met()).isFalse();
                assertThat(years.get(year).met()).isEqualTo(years.get(year).odds() >= 0.95);
            }
        }
    }

    private static PackLife.Life life(int packs, Ageing ageing) {
        return new PackLife(table(AS_BEFORE), ageing, 250).of(row(AS_BEFORE, packs));
    }

    private static PackRow row(ColdDay cold, int packs) {
        return table(cold).rows().get(packs - 1);
    }

    private static PackTable table(ColdDay cold) {
        List<DutyPart> parts = Duties.segments(54, 54, 18).stream()
                .map(segment -> (DutyPart) new DutyPart.Described(segment, 0.6))
                .toList();
        return new PackTable(
                new TwoAxles(5.0, 4100, 3000),
                new AxleLimits(7500, 11_500, 18_000, 0.20),
                new PackType(58, 505, 0.80, 0.80, List.of(1.9, 1.9, 3.1, 3.1, 4.0, 4.0)),
                8100,
                3.75,
                new DutyDay(parts, Duties.TRUCK, 0, 1.1 * 1.12, 1, cold),
                new NeedOdds(NeedErrors.WITHOUT_TELEMATICS.sigma()),
                0.95);
    }
}
