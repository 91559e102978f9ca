package wainbook.order.specification;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static wainbook.order.specification.DemoWorkings.asked;
import static wainbook.order.specification.DemoWorkings.working;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import wainbook.engineering.specification.PackLife;
import wainbook.engineering.specification.RuledOut;
import wainbook.engineering.specification.SpecificationTable;
import wainbook.order.duty.ChassisBefore;
import wainbook.order.duty.ChassisFigures;
import wainbook.order.duty.Duty;
import wainbook.order.duty.DutyBefore;

/** Packs in the cold, over the years, and where the energy goes, for the demonstration’s vehicles. Figures by a second hand. */
class ColdAndYearsTest {

    /** By a second hand: the hook-loader’s usual and worst day with four packs, eight hours of half a kilowatt counted. */
    @Test
    void where_the_energy_goes_adds_up_to_the_table() {
        for (String kind : List.of("bus-12m", "curtainside-18t", "hookloader-26t")) {
            Working working = working(kind);
            working.table().rows().forEach(row -> {
                DayEnergy day = DayEnergy.of(working, row.packs().packs());
                assertThat(day.driving().totalKwh()).isCloseTo(row.packs().drivingKwh(), within(1e-9));
                assertThat(day.usualKwh()).isCloseTo(row.packs().usualKwh(), within(1e-9));
                assertThat(day.worstKwh()).isCloseTo(row.packs().worstKwh(), within(1e-9));
                assertThat(day.parts().stream().mapToDouble(DayEnergy.Part::km).sum())
                        .isCloseTo(working.table().packs().day().km(), within(1e-9));
            });
        }
        DayEnergy hook = DayEnergy.of(working("hookloader-26t"), 4);
        assertThat(hook.usualKwh()).isCloseTo(83.325, within(5e-4));
        assertThat(hook.worstKwh()).isCloseTo(112.642, within(5e-4));
        assertThat(hook.hours()).isCloseTo(10 / 12.0 + 26 / 24.0 + 20 / 48.0, within(1e-12));
        assertThat(hook.parts().get(0).massKg()).isCloseTo(14_220 + 75 + 0.6 * 12_000, within(1e-6));
    }

    /** 1 − 0.005 · 28 = 0.86 at −8 °C; by a second hand 0.8546 at the end of life, against 0.9645 of packs kept warm. */
    @Test
    void the_hook_loader_with_packs_as_cold_as_the_air_does_not_do_its_worst_day() {
        Duty duty = asked("hookloader-26t").duty();

        SpecificationTable.Row warmed = worked(duty, Optional.of(Duty.PacksInTheCold.WARMED));
        SpecificationTable.Row cold = worked(duty, Optional.of(Duty.PacksInTheCold.AS_THE_AIR));

        assertThat(warmed.packs().oddsAtEnd()).isCloseTo(0.9645, within(5e-5));
        assertThat(warmed.feasible()).isTrue();
        assertThat(warmed.packs().rangeColdAtEndKm()).isCloseTo(82.6, within(0.05));
        assertThat(cold.packs().oddsAtEnd()).isCloseTo(0.8546, within(5e-5));
        assertThat(cold.packs().rangeColdAtEndKm()).isCloseTo(74.0, within(0.05));
        assertThat(cold.packs().rangeAtEndKm()).isEqualTo(warmed.packs().rangeAtEndKm());
        assertThat(cold.ruledOut()).singleElement().isInstanceOf(RuledOut.Energy.class);
    }

    /** An entry of the older kind says nothing of packs in the cold, years, ageing and tyres: by a second hand 0.9794, as before. */
    @Test
    void what_was_stated_before_means_what_it_meant() {
        Duty now = asked("hookloader-26t").duty();
        ChassisFigures vehicle = asked("hookloader-26t").vehicle();
        Duty then = new DutyBefore(
                        now.words(),
                        now.legs(),
                        now.recorded(),
                        now.payloadKg(),
                        now.people(),
                        now.auxiliaryKw(),
                        now.bodyKwh(),
                        now.hydraulics(),
                        now.heating(),
                        now.worst(),
                        now.startOnPercent(),
                        now.charging())
                .newer();
        ChassisFigures was = new ChassisBefore(
                        vehicle.body(),
                        vehicle.market(),
                        vehicle.wheelbaseM(),
                        vehicle.secondFrontM(),
                        vehicle.secondRear(),
                        vehicle.twinAir(),
                        vehicle.otherEngine(),
                        vehicle.extraMassKg(),
                        vehicle.received(),
                        vehicle.plates(),
                        vehicle.steeringPercent(),
                        vehicle.places(),
                        vehicle.drive(),
                        vehicle.road(),
                        vehicle.store())
                .newer();
        Working working = working("hookloader-26t", then, was);
        SpecificationTable.Row row = working.table().rows().get(3);

        assertThat(row.packs().oddsAtEnd()).isCloseTo(0.9794, within(5e-5));
        assertThat(row.packs().worstKwh()).isCloseTo(108.642, within(5e-4));
        assertThat(working.table().packs().day().coldest().packShare()).isEqualTo(1);
        assertThat(working.life()).isEmpty();
        assertThat(working.limits().axlesKg())
                .allSatisfy(limit -> assertThat(limit.tyres()).isEmpty());
    }

    /** 83.325 kWh · 250 / 232 kWh; 0.05 · 0.0898 + 0.012: met 13.31 years, the end of life after 12.13. */
    @Test
    void the_hook_loader_lasts_the_years_that_are_asked() {
        Working working = working("hookloader-26t");

        PackLife.Life life =
                working.life().orElseThrow().of(working.table().rows().get(3).packs());

        assertThat(life.cyclesAYear()).isCloseTo(89.8, within(0.05));
        assertThat(life.lastMet()).hasValue(13);
        assertThat(life.endsIn()).hasValue(13);
        assertThat(life.lasts(8)).isTrue();
    }

    private static SpecificationTable.Row worked(Duty duty, Optional<Duty.PacksInTheCold> cold) {
        Duty asked = new Duty(
                duty.words(),
                duty.legs(),
                duty.recorded(),
                duty.payloadKg(),
                duty.people(),
                duty.auxiliaryKw(),
                duty.bodyKwh(),
                duty.hydraulics(),
                duty.heating(),
                duty.worst(),
                duty.startOnPercent(),
                duty.charging(),
                cold,
                duty.use());
        return working("hookloader-26t", asked, asked("hookloader-26t").vehicle())
                .table()
                .rows()
                .get(3);
    }
}
