package wainbook.published;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
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
import wainbook.handover.requirement.Rule;
import wainbook.handover.requirement.RuleSet;
import wainbook.handover.requirement.RuleSource;

/**
 * The sets of the European Union and of Germany. Read: StVZO § 19(2), 21, 57c, 57d and NachwV § 17, 24, 25 as of March 2022,
 * Reg. (EU) 165/2014 art 22 with 2016/799 Annex IC, 96/53/EC art 10b by Reg. (EU) 2019/1242 art 20, the official summary of
 * 2014/45/EU. From second-hand accounts: Reg. (EU) 2023/1542 art 77, Directive (EU) 2024/2853. The others from memory. The
 * cases are worked here by hand from the rules, no published verdict.
 */
class DocumentsEuropeAndGermanyTest {

    private static final LocalDate DAY = LocalDate.of(2026, 11, 25);
    private static final Requirements EUROPE =
            new Requirements(RuleSet.named("EU").orElseThrow());
    private static final Requirements GERMANY =
            new Requirements(RuleSet.named("DE").orElseThrow());

    /** Two axles, 18 t to 20 t, tail lift left in place, four new packs of one type placed on the market by their maker. */
    private static Map<String, Object> uprated() {
        var facts = new HashMap<String, Object>();
        facts.putAll(Map.of("category", "N3", "axles", 2, "gross_design", 20_000));
        facts.putAll(Map.of("gross_plated_old", 18_000, "gross_plated_new", 20_000));
        facts.putAll(Map.of("propulsion_changed", true, "new_base_vehicle", false, "other_engine_on_board", false));
        facts.putAll(Map.of("tail_lift", true, "crane_or_hook_loader", false, "lift_fitted_new", false));
        facts.putAll(Map.of("tacho_fitted", true, "warning_sound_asked", false, "refrigerant", "R-134a"));
        facts.putAll(Map.of("packs", List.of(pack("E60"), pack("E60"), pack("E60"), pack("E60"))));
        facts.putAll(Map.of("packs_new", true, "packs_reused_or_rebuilt", false, "packs_first_placed_in_state", false));
        facts.putAll(Map.of("charge_ac", true, "charge_dc", true, "engine_fate", "destroyed", "emission_claim", true));
        facts.put("waste_streams", List.of("13 02 05*", "16 01 17"));
        facts.put("steering_changed", true);
        return facts;
    }

    /** A two-axle bus at its old weight, packs of two types that served before, no tachograph, a warning sound asked for. */
    private static Map<String, Object> bus() {
        Map<String, Object> facts = uprated();
        facts.putAll(Map.of("category", "M3", "gross_plated_new", 18_000, "tail_lift", false));
        facts.putAll(Map.of("tacho_fitted", false, "warning_sound_asked", true, "charge_ac", false));
        facts.putAll(Map.of("packs", List.of(pack("E60"), pack("E90")), "emission_claim", false));
        facts.putAll(Map.of("packs_new", false, "packs_reused_or_rebuilt", true));
        facts.put("packs_first_in_service", "2025-06-01");
        return facts;
    }

    /** Three axles, 26 t to 28 t, a second engine for the body, not known whether the lift is new; the works imports the packs. */
    private static Map<String, Object> withSecondEngine() {
        Map<String, Object> facts = uprated();
        facts.putAll(
                Map.of("axles", 3, "gross_plated_old", 26_000, "gross_plated_new", 28_000, "gross_design", 28_000));
        facts.putAll(Map.of("other_engine_on_board", true, "packs_first_placed_in_state", true));
        facts.put("packs_first_in_service", "2027-02-18");
        facts.remove("lift_fitted_new");
        return facts;
    }

    private static Map<String, String> pack(String type) {
        return Map.of("type", type);
    }

    private static String ids(Requirements set, LocalDate day, Map<String, Object> facts, Answer answer) {
        return set.on(day, facts).stream()
                .filter(requirement -> requirement.answer() == answer)
                .map(requirement -> requirement.rule().id())
                .filter(id -> !id.startsWith("GB"))
                .map(id -> id.replace("EU-", ""))
                .collect(Collectors.joining(" "));
    }

    private static Requirement rule(String id, LocalDate day, Map<String, Object> facts) {
        return GERMANY.on(day, facts).stream()
                .filter(requirement -> requirement.rule().id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void a_goods_vehicle_uprated_to_20_t_for_the_union() {
        assertThat(ids(EUROPE, DAY, uprated(), Answer.NEEDED)).isEqualTo("01 03 04 05 06 11 13 14 21 22 23");
        assertThat(ids(EUROPE, DAY, uprated(), Answer.NOT_NEEDED)).isEqualTo("02 07 09 10 12 15 16");
        assertThat(ids(EUROPE, DAY, uprated(), Answer.ASK)).isEqualTo("08");
    }

    @Test
    void a_bus_with_packs_that_served_before() {
        LocalDate day = LocalDate.of(2027, 3, 1);
        assertThat(ids(EUROPE, day, bus(), Answer.NEEDED)).isEqualTo("01 03 09 11 12 13 14 16 21 22 23");
        assertThat(ids(EUROPE, day, bus(), Answer.NOT_NEEDED)).isEqualTo("02 04 05 06 07 08 10 15");
        assertThat(ids(EUROPE, day, bus(), Answer.ASK)).isEmpty();
    }

    @Test
    void a_vehicle_with_a_second_engine_for_germany_on_the_first_day_of_the_passport() {
        LocalDate day = LocalDate.of(2027, 2, 18);
        Map<String, Object> facts = withSecondEngine();
        assertThat(ids(GERMANY, day, facts, Answer.NEEDED))
                .isEqualTo("DE-17 DE-18 DE-19 DE-20 03 05 06 07 10 11 13 14 16 21 22 23");
        assertThat(ids(GERMANY, day, facts, Answer.NOT_NEEDED)).isEqualTo("02 09 12");
        assertThat(ids(GERMANY, day, facts, Answer.ASK)).isEqualTo("04 08 15");
        assertThat(rule("EU-06", day, facts).documents()).isEqualTo(1);
        assertThat(rule("EU-07", day, facts).documents()).isEqualTo(4);
        assertThat(rule("EU-15", day, facts).missingFacts()).containsExactly("lift_fitted_new");
    }

    @Test
    void good_practice_and_contract_hold_in_every_market() {
        Map<String, Answer> answers = EUROPE.on(DAY, uprated()).stream()
                .filter(requirement -> requirement.rule().id().startsWith("GB"))
                .collect(Collectors.toMap(requirement -> requirement.rule().id(), Requirement::answer));
        assertThat(answers).hasSize(9).containsEntry("GB-08", Answer.NOT_NEEDED);
        answers.remove("GB-08");
        assertThat(answers.values()).containsOnly(Answer.NEEDED);
    }

    /** Reg. (EU) 2023/1542 art 77, from second-hand accounts. */
    @ParameterizedTest
    @CsvSource({
        "2027-02-17, 2027-02-17, NOT_NEEDED",
        "2027-02-18, 2027-02-18, NEEDED",
        "2027-02-19, 2027-02-19, NEEDED",
        "2027-03-01, 2027-02-17, NOT_NEEDED",
        "2027-03-01, 2027-02-18, NEEDED",
        "2027-02-17, , NOT_NEEDED",
        "2027-02-18, , ASK"
    })
    void a_pack_put_in_service_from_18_february_2027_has_a_passport(
            LocalDate handover, String inService, Answer expected) {
        Map<String, Object> facts = uprated();
        facts.put("packs_first_in_service", inService);
        assertThat(rule("EU-07", handover, facts).answer()).isEqualTo(expected);
    }

    /** Directive (EU) 2024/2853, from second-hand accounts; the others from memory. */
    @ParameterizedTest
    @CsvSource({
        "EU-16, 2026-12-08, NOT_NEEDED",
        "EU-16, 2026-12-09, NEEDED",
        "EU-16, 2026-12-10, NEEDED",
        "EU-01, 2020-08-31, NOT_NEEDED",
        "EU-01, 2020-09-01, NEEDED",
        "EU-03, 2018-05-19, NOT_NEEDED",
        "EU-03, 2018-05-20, NEEDED",
        "EU-05, 2016-03-01, NOT_NEEDED",
        "EU-05, 2016-03-02, NEEDED",
        "EU-06, 2024-08-17, NOT_NEEDED",
        "EU-06, 2024-08-18, NEEDED",
        "EU-10, 2025-08-17, NOT_NEEDED",
        "EU-10, 2025-08-18, NEEDED",
        "EU-11, 2024-03-10, NOT_NEEDED",
        "EU-11, 2024-03-11, NEEDED"
    })
    void a_rule_holds_from_its_first_day(String id, LocalDate handover, Answer expected) {
        Map<String, Object> facts = uprated();
        facts.put("packs_first_placed_in_state", true);
        Requirement found = EUROPE.on(handover, facts).stream()
                .filter(requirement -> requirement.rule().id().equals(id))
                .findFirst()
                .orElseThrow();
        assertThat(found.answer()).isEqualTo(expected);
    }

    /** A day that is in doubt divides nothing: around it a person is asked. How far around is this works' own number. */
    @ParameterizedTest
    @CsvSource({
        "EU-08, 2023-08-18, NOT_NEEDED",
        "EU-08, 2023-08-19, ASK",
        "EU-08, 2026-08-17, ASK",
        "EU-08, 2026-08-18, ASK",
        "EU-08, 2026-08-19, ASK",
        "EU-08, 2029-08-17, ASK",
        "EU-08, 2029-08-18, NEEDED",
        "EU-04, 2018-08-13, NOT_NEEDED",
        "EU-04, 2018-08-14, ASK",
        "EU-04, 2020-08-13, ASK",
        "EU-04, 2020-08-14, NEEDED"
    })
    void around_a_day_in_doubt_a_person_is_asked(String id, LocalDate handover, Answer expected) {
        Requirement found = rule(id, handover, uprated());
        assertThat(found.answer()).isEqualTo(expected);
        assertThat(found.missingFacts()).isEmpty();
    }

    @Test
    void nobody_is_asked_about_a_day_in_doubt_where_the_rule_cannot_apply() {
        assertThat(rule("EU-08", DAY, bus()).answer()).isEqualTo(Answer.NOT_NEEDED);
    }

    /** Reg. (EU) 2023/1230 takes the place of Directive 2006/42/EC; the day from memory. */
    @ParameterizedTest
    @CsvSource({"2027-01-19, Directive 2006/42/EC", "2027-01-20, Reg. (EU) 2023/1230", "2027-01-21, Reg. (EU) 2023/1230"
    })
    void the_declaration_of_a_new_lift_follows_the_law_of_the_day(LocalDate handover, String law) {
        Map<String, Object> facts = uprated();
        facts.put("lift_fitted_new", true);
        Requirement found = rule("EU-15", handover, facts);
        assertThat(found.answer()).isEqualTo(Answer.NEEDED);
        assertThat(found.rule().source().document()).isEqualTo(law);
    }

    /** UN R13 and R79 bind new types; that a works proves brakes, steering and tyres after such a change is good practice here. */
    @ParameterizedTest
    @CsvSource({
        "EU-21, , NEEDED",
        "EU-21, false, NEEDED",
        "EU-22, true, NEEDED",
        "EU-22, false, NOT_NEEDED",
        "EU-22, , ASK",
        "EU-23, , NEEDED"
    })
    void nobody_drives_on_brakes_steering_or_tyres_that_nobody_proved(String id, Boolean steering, Answer expected) {
        Map<String, Object> facts = uprated();
        facts.put("steering_changed", steering);
        for (Requirements set : List.of(EUROPE, GERMANY)) {
            Requirement found = set.on(DAY, facts).stream()
                    .filter(requirement -> requirement.rule().id().equals(id))
                    .findFirst()
                    .orElseThrow();
            assertThat(found.answer()).isEqualTo(expected);
            assertThat(found.rule().source().standing()).isEqualTo(RuleSource.Standing.PRACTICE);
        }
    }

    /** StVZO § 57c: all buses, goods vehicles above 3.5 t. */
    @ParameterizedTest
    @CsvSource({
        "N1, 3500, NOT_NEEDED",
        "N1, 3501, NEEDED",
        "N2, , NEEDED",
        "M2, 3500, NEEDED",
        "M3, , NEEDED",
        "N1, , ASK",
        ", 3501, NEEDED",
        ", 3500, ASK"
    })
    void a_limiter_certificate_is_carried_in_buses_and_above_3500_kg(String category, Integer gross, Answer expected) {
        Map<String, Object> facts = uprated();
        facts.put("category", category);
        facts.put("gross_plated_new", gross);
        assertThat(rule("DE-19", DAY, facts).answer()).isEqualTo(expected);
    }

    @Test
    void germany_is_the_union_with_its_own_in_place_of_the_open_national_permit() {
        List<Rule> german = GERMANY.rules().rules();
        assertThat(german).extracting(Rule::id).doesNotContain("EU-01");
        assertThat(german.stream().filter(rule -> !rule.id().startsWith("DE")))
                .containsExactlyElementsOf(EUROPE.rules().rules().stream()
                        .filter(rule -> !rule.id().equals("EU-01"))
                        .toList());
        assertThat(german.stream().filter(rule -> rule.replaces().isPresent()))
                .hasSize(1)
                .allSatisfy(rule -> {
                    assertThat(rule.id()).isEqualTo("DE-17");
                    assertThat(rule.replaces()).contains("EU-01");
                });
    }

    @Test
    void a_rule_from_memory_bars_nothing() {
        assertThat(GERMANY.on(LocalDate.of(2027, 2, 18), withSecondEngine()).stream()
                        .filter(Requirement::bars)
                        .map(requirement -> requirement.rule().id()))
                .contains(
                        "DE-17", "DE-19", "DE-20", "EU-03", "EU-05", "EU-13", "EU-14", "EU-21", "EU-22", "EU-23",
                        "GB-28")
                .doesNotContain("DE-18", "EU-06", "EU-07", "EU-10", "EU-11", "EU-16");
    }
}
