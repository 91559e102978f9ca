package wainbook.order.limit;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wainbook.order.limit.Legal.Ask;

/** What holds for every set of limits of weight. */
class WeightRulesTest {

    private static final LocalDate FIRST = LocalDate.of(2015, 1, 1);
    private static final int DAYS = 20 * 366;

    @ParameterizedTest
    @ValueSource(strings = {"GB", "EU", "DE"})
    void on_every_day_there_is_one_allowance_at_most_for_a_vehicle(String set) {
        WeightRules rules = WeightRules.named(set).orElseThrow();
        for (int i = 0; i < DAYS; i++) {
            LocalDate day = FIRST.plusDays(i);
            for (Body body : Body.values()) {
                for (int axles = 2; axles <= 4; axles++) {
                    int ofAxles = axles;
                    assertThat(rules.allowances().stream()
                                    .filter(one -> one.fits(ofAxles, body)
                                            && one.force().orElseThrow().on(day)))
                            .as("%s %s %s %s", set, day, body, axles)
                            .hasSizeLessThanOrEqualTo(1);
                }
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"GB", "EU"})
    void allowances_follow_one_another_without_a_gap(String set) {
        WeightRules rules = WeightRules.named(set).orElseThrow();
        for (int i = 0; i < DAYS; i++) {
            LocalDate day = FIRST.plusDays(i);
            assertThat(rules.allowances().stream()
                            .filter(one -> one.fits(3, Body.GOODS)
                                    && one.force().orElseThrow().on(day)))
                    .as("%s %s", set, day)
                    .hasSize(1);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"GB", "EU", "DE"})
    void every_rule_has_a_name_of_its_own_and_a_source(String set) {
        WeightRules rules = WeightRules.named(set).orElseThrow();
        List<String> ids = List.of(
                        rules.gross().stream().map(GrossRule::id),
                        rules.allowances().stream().map(Allowance::id),
                        rules.axles().stream().map(AxleRule::id))
                .stream()
                .flatMap(all -> all)
                .collect(Collectors.toList());

        assertThat(ids).doesNotHaveDuplicates().allMatch(id -> id.startsWith(set + "-"));
        assertThat(rules.axles())
                .allSatisfy(rule -> assertThat(rule.source().document()).isNotBlank());
    }

    /** Somebody has to find out which text held: the lower limit counts meanwhile. */
    @Test
    void a_day_near_a_change_that_is_in_doubt_asks() {
        Legal near = gross(LocalDate.of(2023, 7, 20));
        Legal before = gross(LocalDate.of(2023, 1, 1));
        Legal after = gross(LocalDate.of(2024, 1, 1));

        assertThat(near.asks()).containsExactly(Ask.DAY_IN_DOUBT);
        assertThat(near.kg()).contains(18_000);
        assertThat(before.kg()).contains(18_700);
        assertThat(after.kg()).contains(20_000);
    }

    @Test
    void a_vehicle_that_no_rule_knows_has_no_limit_to_be_shown() {
        Legal five = WeightRules.named("GB")
                .orElseThrow()
                .gross(new Weighed(
                        LocalDate.of(2026, 11, 26),
                        5,
                        Body.GOODS,
                        Optional.empty(),
                        Optional.of(false),
                        Optional.empty(),
                        Optional.empty()));

        assertThat(five.kg()).isEmpty();
        assertThat(five.asks()).containsExactly(Ask.NO_RULE);
    }

    private static Legal gross(LocalDate day) {
        return WeightRules.named("GB")
                .orElseThrow()
                .gross(new Weighed(
                        day, 2, Body.GOODS, Optional.empty(), Optional.of(false), Optional.of(700), Optional.empty()));
    }
}
