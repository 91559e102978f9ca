package wainbook.handover.carbon;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static wainbook.handover.carbon.CarbonStatements.range;

import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;
import wainbook.act.Reason;
import wainbook.handover.carbon.CarbonSaying.Basis;
import wainbook.handover.carbon.CarbonWorking.Case;

/** What a carbon statement may rest on. */
class CarbonRulesTest {

    private static final CarbonSets SETS = CarbonSets.loaded();
    private static final Basis TRUCK = CarbonStatements.truck();

    @Test
    void a_set_that_was_not_read_as_a_whole_states_nothing() {
        assertThat(SETS.of(2026).orElseThrow().missing())
                .containsExactly(
                        Factor.DIESEL_VEHICLE,
                        Factor.DIESEL_UPSTREAM,
                        Factor.GRID_UPSTREAM,
                        Factor.GRID_LOSSES_UPSTREAM);
        assertThat(keys(TRUCK, 2026)).containsExactly("handover.carbonSetPartial");
        assertThat(keys(TRUCK, 2027)).containsExactly("handover.carbonNoSet");
        assertThat(keys(TRUCK, 2025)).isEmpty();
        assertThat(SETS.newestWhole().orElseThrow().year()).isEqualTo(2025);
    }

    @Test
    void what_is_borrowed_names_its_own_year() {
        assertThat(SETS.borrowed(2026))
                .extracting(CarbonSaying.Used::year)
                .containsExactly(2025, 2025, 2026, 2026, 2025, 2025);
        assertThat(SETS.borrowed(2023)).isEmpty();
    }

    @Test
    void every_factor_says_where_it_is_from() {
        assertThat(SETS.sets()).flatExtracting(set -> set.factors().values()).allSatisfy(value -> {
            assertThat(value.source()).isNotBlank();
            assertThat(value.unit()).startsWith("kg/");
            assertThat(value.standing()).isNotEqualTo(CarbonSet.Standing.SEEN);
        });
    }

    @Test
    void a_range_goes_from_the_least_to_the_most() {
        assertThat(keys(with(range("30", "28", "26"), TRUCK.kwhPerKm()), 2025)).containsExactly("handover.carbonRange");
        assertThat(keys(with(List.of(new BigDecimal("28")), TRUCK.kwhPerKm()), 2025))
                .containsExactly("handover.carbonRange");
        assertThat(keys(with(range("28", "28", "28"), range("0.05", "1", "2")), 2025))
                .containsExactly("handover.carbonRange");
        assertThat(keys(with(range("1", "28", "100"), range("0.1", "1", "10")), 2025))
                .isEmpty();
    }

    @Test
    void a_grid_that_falls_saves_more_but_for_the_least_favourable_case() {
        var fixed = new CarbonWorking(TRUCK, SETS.borrowed(2025));
        var falling = new CarbonWorking(falling("5"), SETS.borrowed(2025));
        assertThat(falling.savedKg(Case.LOW)).isEqualTo(fixed.savedKg(Case.LOW));
        assertThat(falling.savedKg(Case.MID)).isGreaterThan(fixed.savedKg(Case.MID));
        double mean = (1 - Math.pow(0.95, 8)) / (8 * 0.05);
        assertThat(falling.gridOverTheYears(Case.MID)).isCloseTo(0.2454 * mean, within(1e-9));
        assertThat(falling.yearlyKg()).as("the first year").isEqualTo(fixed.yearlyKg());
    }

    @Test
    void the_cases_are_in_order() {
        var working = new CarbonWorking(falling("3"), SETS.borrowed(2025));
        assertThat(working.savedKg(Case.LOW))
                .isLessThan(working.savedKg(Case.MID))
                .isLessThan(working.savedKg(Case.HIGH));
        assertThat(working.saved().lowT()).isEqualTo(new BigDecimal("236.90"));
    }

    private static Basis falling(String percent) {
        return new Basis(
                TRUCK.annualKm(),
                TRUCK.years(),
                TRUCK.litresPer100Km(),
                TRUCK.kwhPerKm(),
                TRUCK.chargingPercent(),
                TRUCK.packKwh(),
                TRUCK.packKgPerKwh(),
                new BigDecimal(percent));
    }

    private static Basis with(List<BigDecimal> litres, List<BigDecimal> kwh) {
        return new Basis(
                TRUCK.annualKm(),
                TRUCK.years(),
                litres,
                kwh,
                TRUCK.chargingPercent(),
                TRUCK.packKwh(),
                TRUCK.packKgPerKwh(),
                BigDecimal.ZERO);
    }

    private static List<String> keys(Basis basis, int year) {
        return CarbonRules.against(basis, year, SETS).stream().map(Reason::key).toList();
    }
}
