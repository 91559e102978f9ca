package wainbook.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wainbook.handover.carbon.CarbonSets;
import wainbook.handover.carbon.CarbonStatements;
import wainbook.handover.carbon.CarbonWorking;
import wainbook.handover.carbon.CarbonWorking.Case;

/**
 * What a truck saves by the factors of a year, from the file the page reads. Factors: UK government conversion factors for
 * greenhouse gas reporting of 2024 and 2025, diesel as public tables quote them, electricity and upstream from memory; 2026
 * electricity derived from the fall that its page names, 26 % and 30 %. Truck, duty and results are invented and were computed
 * by a second hand in double precision.
 */
class CarbonByYearTest {

    @ParameterizedTest
    @CsvSource({"2025, 43.9837", "2024, 39.3672", "2026, 49.7137"})
    void the_same_truck_saves_more_or_less_by_the_year_of_the_factors(int year, double tonnes) {
        assertThat(by(year).yearlyKg() / 1000).isCloseTo(tonnes, within(1e-3));
    }

    @Test
    void over_eight_years_it_saves_between_the_least_and_the_most_favourable() {
        CarbonWorking truck = by(2025);
        assertThat(truck.savedKg(Case.LOW) / 1000).isCloseTo(237, within(0.5));
        assertThat(truck.savedKg(Case.HIGH) / 1000).isCloseTo(408, within(0.5));
        assertThat(truck.packKg(Case.MID)).isEqualTo(21_000);
        assertThat(truck.packKg(Case.MID) / truck.yearlyKg()).isCloseTo(0.48, within(0.005));
    }

    @Test
    void at_the_vehicle_and_from_the_well_are_two_figures() {
        CarbonWorking truck = by(2025);
        assertThat(22_400 * truck.dieselAtTheVehicleKgPerLitre()).isCloseTo(57_586, within(1.0));
        assertThat(22_400 * truck.dieselKgPerLitre()).isCloseTo(71_250, within(1.0));
        assertThat(80_000 * truck.fromTheGrid(Case.MID)).isCloseTo(111_111, within(0.5));
        assertThat(80_000 * truck.fromTheGrid(Case.MID) * truck.gridKgPerKwh()).isCloseTo(27_267, within(1.0));
    }

    private static CarbonWorking by(int year) {
        return new CarbonWorking(CarbonStatements.truck(), CarbonSets.loaded().borrowed(year));
    }
}
