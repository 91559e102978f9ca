package wainbook.published;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wainbook.order.limit.AxleRule.Group;
import wainbook.order.limit.Body;
import wainbook.order.limit.Legal;
import wainbook.order.limit.Legal.Ask;
import wainbook.order.limit.Weighed;
import wainbook.order.limit.WeightRules;

/**
 * Limits of weight by hand from the instruments that each rule names: SI 1998/3111 as amended by SI 2023/760, the twin of its axle table in
 * Northern Ireland (SR 1999/258, Schedule 3), StVZO § 34 as of March 2022, Directive 96/53/EC in summaries.
 */
class LimitsOfWeightTest {

    private static final LocalDate DAY = LocalDate.of(2026, 11, 26);

    @ParameterizedTest
    @CsvSource({
        "GB, 2, GOODS, , 20000", "GB, 2, BUS, , 19500", "GB, 4, GOODS, , 32000", "GB, 3, GOODS, true, 28000",
        "GB, 3, GOODS, false, 27000", "GB, 3, ARTICULATED_BUS, , 30000", "DE, 2, BUS, , 19500", "EU, 4, GOODS, , 32000"
    })
    void gross_of_a_vehicle_without_emissions(String set, int axles, Body body, Boolean twinAir, int kg) {
        Legal legal = gross(set, axles, body, Optional.ofNullable(twinAir), Optional.of(0));

        assertThat(legal.kg()).contains(kg);
        assertThat(legal.sure()).isTrue();
    }

    @ParameterizedTest
    @CsvSource({"DE, 1250, 27250", "DE, 2600, 28000", "EU, 1250, 27250", "GB, 0, 28000"})
    void the_union_asks_what_the_technology_weighs_and_britain_does_not(String set, int extraKg, int kg) {
        assertThat(gross(set, 3, Body.GOODS, Optional.of(true), Optional.of(extraKg))
                        .kg())
                .contains(kg);
    }

    @Test
    void a_cold_unit_with_its_own_engine_asks_and_the_ordinary_limit_counts() {
        Legal legal = WeightRules.named("GB")
                .orElseThrow()
                .gross(new Weighed(
                        DAY, 2, Body.GOODS, Optional.empty(), Optional.of(true), Optional.of(0), Optional.empty()));

        assertThat(legal.asks()).containsExactly(Ask.OTHER_ENGINE);
        assertThat(legal.kg()).contains(18_000);
    }

    @Test
    void what_is_not_known_is_asked() {
        Legal legal = WeightRules.named("DE")
                .orElseThrow()
                .gross(new Weighed(
                        DAY, 3, Body.GOODS, Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty()));

        assertThat(legal.asks()).containsExactly(Ask.TWIN_AIR, Ask.OTHER_ENGINE, Ask.EXTRA_MASS);
        assertThat(legal.kg()).contains(25_000);
    }

    /** 6.35 m times 5 t, as the German text has it, read. */
    @Test
    void four_axles_may_weigh_five_tonnes_a_metre() {
        assertThat(spaced("DE", 4, 6.35).kg()).contains(31_750);
        assertThat(spaced("DE", 4, 6.35).sure()).isTrue();
        assertThat(spaced("DE", 4, 6.40).kg()).contains(32_000);
    }

    /** 6.123 m times 5000 kg is 30 615, rounded up to 10; the British factor is recalled, so it asks. */
    @Test
    void the_british_distance_is_rounded_up_to_ten() {
        assertThat(spaced("GB", 4, 6.123).kg()).contains(30_620);
        assertThat(spaced("GB", 4, 6.123).asks()).containsExactly(Ask.SPACING);
        assertThat(spaced("GB", 3, 4.0).kg()).contains(22_000);
        assertThat(spaced("GB", 3, 4.0).asks()).containsExactly(Ask.SPACING);
    }

    @ParameterizedTest
    @CsvSource({
        "TANDEM, true, 0.99, 11500",
        "TANDEM, true, 1.29, 16000",
        "TANDEM, true, 1.30, 19000",
        "TRIAXLE, false, 1.30, 21000",
        "TRIAXLE, false, 1.31, 24000",
        "SINGLE, true, 0, 11500",
        "SINGLE, false, 0, 10000",
        "TANDEM, false, 1.8, 20000"
    })
    void axles_and_groups_by_their_distance(Group group, boolean driven, double spacingM, int kg) {
        for (String set : WeightRules.SETS) {
            assertThat(WeightRules.named(set)
                            .orElseThrow()
                            .axle(DAY, group, driven, spacingM, Optional.of(true))
                            .kg())
                    .as(set)
                    .contains(kg);
        }
    }

    @Test
    void a_tandem_of_unknown_suspension_asks() {
        Legal legal = WeightRules.named("GB").orElseThrow().axle(DAY, Group.TANDEM, true, 1.35, Optional.empty());

        assertThat(legal.kg()).contains(18_000);
        assertThat(legal.asks()).containsExactly(Ask.TWIN_AIR);
    }

    private static Legal gross(String set, int axles, Body body, Optional<Boolean> twinAir, Optional<Integer> extraKg) {
        return WeightRules.named(set)
                .orElseThrow()
                .gross(new Weighed(DAY, axles, body, twinAir, Optional.of(false), extraKg, Optional.empty()));
    }

    private static Legal spaced(String set, int axles, double metres) {
        return WeightRules.named(set)
                .orElseThrow()
                .gross(new Weighed(
                        DAY,
                        axles,
                        Body.GOODS,
                        Optional.of(false),
                        Optional.of(false),
                        Optional.of(0),
                        Optional.of(metres)));
    }
}
