package wainbook.order.specification;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static wainbook.order.specification.DemoWorkings.asked;
import static wainbook.order.specification.DemoWorkings.working;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import wainbook.act.Reason;
import wainbook.engineering.specification.RuledOut;
import wainbook.engineering.specification.SpecificationTable;
import wainbook.engineering.weights.Binding;
import wainbook.order.duty.ChassisFigures;
import wainbook.order.duty.ChassisFigures.AxlePlace;
import wainbook.order.duty.ChassisFigures.Tyres;
import wainbook.order.specification.LimitsThatCount.By;

/** An axle carries no more than its tyres. All invented; loads by a second hand. */
class TyresTest {

    private static final String HOOK = "hookloader-26t";

    /** 2 · 3550 = 7100 kg, below the plate of 7500; 4 · 3150 = 12 600, above the law’s 11 500. */
    @Test
    void the_least_of_law_plate_and_tyres_counts() {
        List<LimitsThatCount.Limit> axles = working("bus-12m").limits().axlesKg();

        assertThat(axles.get(0).kg()).isEqualTo(7100);
        assertThat(axles.get(0).by()).isEqualTo(By.TYRES);
        assertThat(axles.get(1).kg()).isEqualTo(11_500);
        assertThat(axles.get(1).by()).isEqualTo(By.LAW);
        assertThat(axles.get(1).tyres().orElseThrow().axleKg()).isEqualTo(12_600);
    }

    /** 2 · 4500 are just the plate of 9000: the plate is named. */
    @Test
    void tyres_that_carry_just_what_the_plate_says_bind_nothing() {
        assertThat(working(HOOK).limits().axlesKg().get(0).by()).isEqualTo(By.PLATE);
    }

    /** Six packs: 5524.717 kg in front, 7208.850 with 64 people of 68 kg; 7100 leave 4070.719 of 4352 kg. */
    @Test
    void a_front_axle_over_its_tyres_names_them_and_by_how_much() {
        Working bus = working("bus-12m");
        SpecificationTable.Row six = bus.table().rows().get(5);

        assertThat(six.packs().payload().binding()).isEqualTo(Binding.FRONT);
        assertThat(six.packs().payload().kg()).isCloseTo(4070.719, within(1e-3));
        assertThat(reasons(bus, six, RuledOut.Payload.class)).singleElement().satisfies(reason -> {
            assertThat(reason.key()).isEqualTo("order.outTyres");
            assertThat(reason.arguments()).containsExactly("281", "1", "109", "2", "3550", "100");
        });
    }

    /** 2 · 3000 kg on the tag axle, which takes 0.39473684 of its group: 15 200 kg, 8036.430 of payload; 7295.450 kg with all of it. */
    @Test
    void weak_tyres_of_the_tag_axle_hold_the_whole_group() {
        Working weak = with(new Tyres(AxlePlace.SECOND_REAR, 2, kg(3000), kg(110)));
        SpecificationTable.Row four = weak.table().rows().get(3);

        assertThat(four.packs().payload().kg()).isCloseTo(8036.430, within(1e-3));
        assertThat(reasons(weak, four, RuledOut.Payload.class)).singleElement().satisfies(reason -> {
            assertThat(reason.key()).isEqualTo("order.outTyres");
            assertThat(reason.arguments()).containsExactly("3964", "3", "1295", "2", "3000", "110");
        });
    }

    /** The rear tyres are not at their limit where the front holds: 2 · 3950 kg in front, 7813.193 laden, 8686.410 at worst. */
    @Test
    void part_of_the_load_on_weak_front_tyres_names_them() {
        Working weak = with(new Tyres(AxlePlace.FRONT, 2, kg(3950), kg(110)));
        SpecificationTable.Row four = weak.table().rows().get(3);

        assertThat(four.worstFrontKg()).isCloseTo(8686.410, within(1e-2));
        assertThat(reasons(weak, four, RuledOut.PartLoad.class)).singleElement().satisfies(reason -> {
            assertThat(reason.key()).isEqualTo("order.outPartLoadTyres");
            assertThat(reason.arguments()).containsExactly("1", "786", "2", "3950");
        });
    }

    /** 9535.907 kg on the driven axle with the tag axle up and nothing loaded, 4 · 2300 on its tyres. */
    @Test
    void a_lifted_axle_leaves_its_load_to_the_tyres_that_stay_down() {
        Working weak = with(new Tyres(AxlePlace.REAR, 4, kg(2300), kg(110)));
        SpecificationTable.Row four = weak.table().rows().get(3);

        assertThat(four.liftedKg().get(1)).isCloseTo(9535.907, within(1e-2));
        assertThat(reasons(weak, four, RuledOut.Lifted.class)).singleElement().satisfies(reason -> {
            assertThat(reason.key()).isEqualTo("order.outLiftedTyres");
            assertThat(reason.arguments()).containsExactly("2", "336", "4", "2300");
        });
    }

    @Test
    void where_plate_or_law_binds_no_tyre_is_named() {
        Working hook = working(HOOK);
        SpecificationTable.Row six = hook.table().rows().get(5);

        assertThat(hook.heldByTyres(true)).isEmpty();
        assertThat(hook.heldByTyres(false)).isEmpty();
        assertThat(hook.tyresThatLimit(2)).isEmpty();
        assertThat(reasons(hook, six, RuledOut.Payload.class))
                .extracting(Reason::key)
                .containsExactly("order.outGross");
    }

    /** Before a stop on a country road the bus drives 65 km/h, an engineer’s estimate. */
    @Test
    void what_the_duty_asks_of_the_tyres_in_speed() {
        assertThat(working("bus-12m").inFigures().fastestKmh()).isEqualTo(65);
    }

    @Test
    void tyres_of_an_axle_that_is_not_there_or_stated_twice_are_refused() {
        ChassisFigures bus = asked("bus-12m").vehicle();
        Tyres front = new Tyres(AxlePlace.FRONT, 2, kg(3550), kg(100));

        assertThat(keys(tyred(bus, List.of(front)))).isEmpty();
        assertThat(keys(tyred(bus, List.of(front, front)))).containsOnly("order.tyresTwice");
        assertThat(keys(tyred(bus, List.of(new Tyres(AxlePlace.SECOND_REAR, 2, kg(3550), kg(100))))))
                .containsExactly("order.tyresWithoutAxle");
        assertThat(keys(tyred(bus, List.of(new Tyres(AxlePlace.FRONT, 0, kg(50), kg(10))))))
                .containsExactly("order.figureOutside", "order.figureOutside", "order.figureOutside");
    }

    @Test
    void ageing_without_a_source_is_refused() {
        ChassisFigures bus = asked("bus-12m").vehicle();

        assertThat(keys(aged(bus, " "))).containsExactly("order.ageingUnsourced");
        assertThat(keys(aged(bus, "Data sheet"))).isEmpty();
    }

    private static List<String> keys(ChassisFigures figures) {
        return ChassisRules.against(figures).stream().map(Reason::key).toList();
    }

    private static List<Reason> reasons(Working working, SpecificationTable.Row row, Class<? extends RuledOut> sort) {
        return row.ruledOut().stream()
                .filter(sort::isInstance)
                .map(out -> RuledOutReasons.of(out, row, working))
                .toList();
    }

    private static Working with(Tyres one) {
        return working(HOOK, asked(HOOK).duty(), tyred(asked(HOOK).vehicle(), List.of(one)));
    }

    private static ChassisFigures tyred(ChassisFigures vehicle, List<Tyres> tyres) {
        return made(vehicle, vehicle.ageing().orElseThrow(), tyres);
    }

    private static ChassisFigures aged(ChassisFigures vehicle, String source) {
        return made(vehicle, new ChassisFigures.PackAgeing(kg(5), BigDecimal.ONE, source), vehicle.tyres());
    }

    private static ChassisFigures made(ChassisFigures vehicle, ChassisFigures.PackAgeing ageing, List<Tyres> tyres) {
        return new ChassisFigures(
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
                vehicle.store(),
                Optional.of(ageing),
                tyres);
    }

    private static BigDecimal kg(int value) {
        return BigDecimal.valueOf(value);
    }
}
