package wainbook.published;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wainbook.handover.requirement.Requirement;
import wainbook.handover.requirement.Requirement.Answer;
import wainbook.handover.requirement.Requirements;
import wainbook.handover.requirement.RuleSet;

/**
 * Worked cases by hand from the instruments that each rule of the set names: SI 2002/2742 reg 16, SI 1988/1478 reg 30 and 33,
 * SI 1986/1078 reg 66, the Public Passenger Vehicles Act 1981 s.20(2) and s.6, SI 1998/3111 as amended by SI 2023/760, the
 * Lifting Operations and Lifting Equipment Regulations 1998 reg 9, SI 2005/894, SI 2011/988 reg 35 and the others. Rules that
 * the set marks as from memory are worked from the recalled text.
 */
class DocumentsGreatBritainTest {

    private static final LocalDate DAY = LocalDate.of(2026, 11, 25);
    private static final Requirements GREAT_BRITAIN =
            new Requirements(RuleSet.named("GB").orElseThrow());

    private static Map<String, Object> plainVehicle() {
        var facts = new HashMap<String, Object>();
        for (String no : List.of(
                "axle_plates_changed",
                "other_engine_on_board",
                "chassis_cut_or_drilled",
                "crane_or_hook_loader",
                "lift_removed_and_refitted",
                "lift_fitted_new",
                "cold_unit",
                "pressure_vessel_other",
                "wheelchair_place",
                "packs_shipped",
                "packs_first_placed_by_works",
                "tail_lift")) {
            facts.put(no, false);
        }
        for (String yes : List.of(
                "kept_identity",
                "propulsion_changed",
                "brakes_changed",
                "steering_changed",
                "limiter_required",
                "charge_dc")) {
            facts.put(yes, true);
        }
        facts.put("first_registered", "2016-05-01");
        facts.put("waste_streams", List.of("13 02 05*", "16 01 17"));
        facts.put("refrigerant", "R-134a");
        return facts;
    }

    /** A two-axle goods vehicle uprated from 18 t to 20 t, tail lift left in place. */
    private static Map<String, Object> uprated() {
        Map<String, Object> facts = plainVehicle();
        facts.putAll(Map.of(
                "category",
                "N3",
                "axles",
                2,
                "keeper",
                "operator",
                "gross_design",
                20_000,
                "gross_plated_old",
                18_000,
                "gross_plated_new",
                20_000,
                "tail_lift",
                true,
                "engine_fate",
                "destroyed",
                "emission_claim",
                true));
        facts.putAll(Map.of("tacho_fitted", true, "final_ratio_or_sensor_changed", true, "charge_ac", true));
        facts.put("packs", List.of(pack("E60", "1"), pack("E60", "2"), pack("E60", "3"), pack("E60", "4")));
        return facts;
    }

    private static Map<String, String> pack(String type, String serial) {
        return Map.of("type", type, "serial", serial);
    }

    /** A two-axle bus in public service, weights unchanged, packs of two types on the roof. */
    private static Map<String, Object> bus() {
        Map<String, Object> facts = plainVehicle();
        facts.putAll(Map.of(
                "category",
                "M3",
                "axles",
                2,
                "gross_plated_old",
                18_000,
                "gross_plated_new",
                18_000,
                "tacho_fitted",
                false,
                "charge_ac",
                false,
                "wheelchair_place",
                true,
                "engine_fate",
                "sold for re-use",
                "emission_claim",
                false,
                "packs",
                List.of(pack("E60", "1"), pack("E90", "2"))));
        return facts;
    }

    /** Three axles, 26 t to 28 t, a cold unit with its own diesel engine; not known: international use, chassis cut. */
    private static Map<String, Object> refrigerated() {
        Map<String, Object> facts = uprated();
        facts.putAll(Map.of(
                "axles",
                3,
                "gross_design",
                28_000,
                "gross_plated_old",
                26_000,
                "gross_plated_new",
                28_000,
                "cold_unit",
                true,
                "other_engine_on_board",
                true,
                "tail_lift",
                false,
                "emission_claim",
                false));
        facts.remove("chassis_cut_or_drilled");
        return facts;
    }

    /** SI 2008/1597: whoever places a lift declares it; one that came with the donor and goes back on is examined, not declared. */
    @Test
    void a_lift_is_declared_when_it_is_new_and_not_when_it_was_refitted() {
        Map<String, Object> facts = uprated();
        facts.put("lift_removed_and_refitted", true);
        assertThat(rule("GB-23", facts).answer()).isEqualTo(Answer.NOT_NEEDED);
        facts.put("lift_fitted_new", true);
        assertThat(rule("GB-23", facts).answer()).isNotEqualTo(Answer.NOT_NEEDED);
    }

    private static String ids(Map<String, Object> facts, Answer answer) {
        return GREAT_BRITAIN.on(DAY, facts).stream()
                .filter(requirement -> requirement.answer() == answer)
                .map(requirement -> requirement.rule().id().substring(3))
                .collect(Collectors.joining(" "));
    }

    private static Requirement rule(String id, Map<String, Object> facts) {
        return GREAT_BRITAIN.on(DAY, facts).stream()
                .filter(requirement -> requirement.rule().id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void a_goods_vehicle_uprated_to_20_t_needs_28_documents() {
        assertThat(ids(uprated(), Answer.NEEDED))
                .isEqualTo("01 02 03 05 06 07 09 14 15 16 17 18 19 20 21 25 27 28 29 30 31 34 35 36 37 38 39 40");
        assertThat(ids(uprated(), Answer.NOT_NEEDED)).isEqualTo("04 08 10 11 12 13 22 23 24 26 32 33");
        assertThat(ids(uprated(), Answer.ASK)).isEmpty();
        assertThat(rule("GB-27", uprated()).documents()).isEqualTo(1);
    }

    @Test
    void a_bus_at_its_old_weight_needs_the_notices_of_public_service() {
        assertThat(ids(bus(), Answer.NEEDED))
                .isEqualTo("01 02 03 09 10 11 12 15 16 17 19 20 25 27 28 29 30 31 34 35 36 38 39 40");
        assertThat(ids(bus(), Answer.NOT_NEEDED)).isEqualTo("04 05 06 07 08 13 14 18 21 22 23 24 26 32 33 37");
        assertThat(ids(bus(), Answer.ASK)).isEmpty();
        assertThat(rule("GB-27", bus()).documents()).isEqualTo(2);
    }

    @Test
    void a_cold_unit_with_an_engine_and_unknown_facts_are_asked_about() {
        assertThat(ids(refrigerated(), Answer.NEEDED))
                .isEqualTo("01 02 05 06 07 09 15 16 17 18 19 20 25 27 28 29 30 31 34 35 36 38 39 40");
        assertThat(ids(refrigerated(), Answer.NOT_NEEDED)).isEqualTo("08 10 11 12 13 21 22 23 24 32 33 37");
        assertThat(ids(refrigerated(), Answer.ASK)).isEqualTo("03 04 14 26");
        assertThat(rule("GB-26", refrigerated()).missingFacts()).containsExactly("international_use");
    }

    /** SI 1988/1478 Sch. 2 para 10 as amended by SI 2017/849 reg 15(c): first registered before 1 March 2015. */
    @ParameterizedTest
    @CsvSource({"2015-02-28, true", "2015-03-01, false"})
    void the_exemption_of_old_electric_vehicles_never_takes_the_test_away(String registered, boolean shown) {
        Map<String, Object> facts = uprated();
        facts.put("first_registered", registered);

        assertThat(rule("GB-09", facts).answer()).isEqualTo(Answer.NEEDED);
        assertThat(rule("GB-09", facts).note().isPresent()).isEqualTo(shown);
    }

    /** SI 1998/3111 as amended by SI 2023/760: 19 500 kg for a two-axle bus and 32 000 kg for four axles get nothing on top. */
    @ParameterizedTest
    @CsvSource({
        "N3, 2, 18000, NOT_NEEDED",
        "N3, 2, 18001, NEEDED",
        "M3, 2, 19500, NOT_NEEDED",
        "M3, 2, 19501, NEEDED",
        "N3, 3, 25000, NOT_NEEDED",
        "N3, 3, 26000, ASK",
        "N3, 3, 28000, NEEDED",
        "N3, 4, 32000, NOT_NEEDED"
    })
    void a_weight_above_the_ordinary_limit_needs_its_working(String category, int axles, int gross, Answer expected) {
        Map<String, Object> facts = uprated();
        facts.putAll(Map.of("category", category, "axles", axles, "gross_plated_new", gross));

        assertThat(rule("GB-14", facts).answer()).isEqualTo(expected);
    }

    @Test
    void a_rule_from_memory_bars_nothing() {
        var barring = new ArrayList<String>();
        GREAT_BRITAIN.on(DAY, uprated()).stream()
                .filter(Requirement::bars)
                .forEach(requirement -> barring.add(requirement.rule().id()));

        assertThat(barring)
                .contains("GB-01", "GB-05", "GB-28", "GB-34")
                .doesNotContain("GB-02", "GB-09", "GB-16", "GB-40");
    }
}
