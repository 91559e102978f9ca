package wainbook.handover.requirement;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import wainbook.handover.requirement.Requirement.Answer;
import wainbook.predicate.Predicate;
import wainbook.process.VehicleFacts;

/** Laws that every set keeps, tried with all vehicles that its conditions can tell apart. */
class EverySetTest {

    private static final List<Object> MASSES_KG =
            List.of(3_500, 3_501, 18_000, 18_001, 19_501, 25_001, 26_001, 28_001, 32_001);

    static Stream<RuleSet> sets() {
        return RuleSet.there().stream().map(set -> RuleSet.named(set).orElseThrow());
    }

    /** Each version of each rule by itself, so that one answer is its answer. */
    static Stream<Rule> rules() {
        return sets().flatMap(set -> set.rules().stream()).distinct();
    }

    @ParameterizedTest
    @MethodSource("rules")
    void a_rule_with_a_condition_can_be_needed_not_needed_and_a_question(Rule rule) {
        Requirements only = only(rule);
        LocalDate day = dayInForce(rule);
        Set<Answer> answers = vehicles(rule).stream()
                .map(facts -> answer(only, day, facts))
                .collect(Collectors.toCollection(TreeSet::new));
        if (rule.when().isEmpty()) {
            assertThat(answers).containsExactly(Answer.NEEDED);
            assertThat(answer(only, day, Map.of())).isEqualTo(Answer.NEEDED);
        } else {
            assertThat(answers).contains(Answer.NEEDED);
            // Whether the chassis was cut decides nothing of this one; not to know it does.
            if (!rule.id().equals("GB-03")) {
                assertThat(answers).contains(Answer.NOT_NEEDED);
            }
            assertThat(answer(only, day, Map.of())).isEqualTo(Answer.ASK);
        }
    }

    @ParameterizedTest
    @MethodSource("rules")
    void a_fact_not_known_gives_an_answer_only_where_it_could_not_change_it(Rule rule) {
        Requirements only = only(rule);
        LocalDate day = dayInForce(rule);
        Set<String> names = names(rule);
        for (String unknown : names) {
            Map<Map<String, Object>, Set<Answer>> byTheOthers = vehicles(rule).stream()
                    .collect(Collectors.groupingBy(
                            facts -> without(facts, unknown),
                            Collectors.mapping(
                                    facts -> answer(only, day, facts), Collectors.toCollection(TreeSet::new))));
            byTheOthers.forEach((known, possible) -> {
                Answer said = answer(only, day, known);
                if (said != Answer.ASK) {
                    assertThat(possible)
                            .as(rule.id() + " without " + unknown + " by " + known)
                            .containsExactly(said);
                }
            });
        }
    }

    @ParameterizedTest
    @MethodSource("sets")
    void the_dates_of_rules_part_time_without_gap_or_overlap(RuleSet set) {
        List<String> ids = set.rules().stream().map(Rule::id).distinct().toList();
        for (LocalDate day : daysAroundEveryDate(set)) {
            assertThat(set.on(day)).extracting(Rule::id).containsExactlyElementsOf(ids);
            for (String id : ids) {
                List<Rule> versions = set.rules().stream()
                        .filter(rule -> rule.id().equals(id))
                        .toList();
                long inForce =
                        versions.stream().filter(rule -> rule.inForceOn(day)).count();
                assertThat(inForce).as(id + " on " + day).isBetween(versions.size() > 1 ? 1L : 0L, 1L);
                Rule chosen = set.on(day).get(ids.indexOf(id));
                assertThat(chosen.inForceOn(day)).isEqualTo(inForce == 1);
            }
        }
    }

    private static List<LocalDate> daysAroundEveryDate(RuleSet set) {
        var days = new TreeSet<LocalDate>(Set.of(LocalDate.of(1970, 1, 1), LocalDate.of(2099, 12, 31)));
        set.rules().stream()
                .flatMap(rule -> Stream.concat(rule.from().stream(), rule.to().stream()))
                .forEach(date -> days.addAll(List.of(date.minusDays(1), date, date.plusDays(1))));
        return List.copyOf(days);
    }

    private static Requirements only(Rule rule) {
        return new Requirements(new RuleSet("XX", 1, List.of(rule)));
    }

    private static Answer answer(Requirements only, LocalDate day, Map<String, Object> facts) {
        return only.on(day, facts).get(0).answer();
    }

    /** Past every doubt about its first day. */
    private static LocalDate dayInForce(Rule rule) {
        return rule.to()
                .orElseGet(() -> rule.from()
                        .map(first -> first.plusDays(rule.doubtDays().orElse(0) + 1L))
                        .orElse(LocalDate.of(2026, 11, 25)));
    }

    private static Set<String> names(Rule rule) {
        return Stream.concat(rule.when().stream(), rule.askWhen().stream())
                .flatMap(text -> predicate(text).names().stream())
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static Predicate predicate(String text) {
        return VehicleFacts.PREDICATES.compile(text).sound().orElseThrow();
    }

    /** Every vehicle that differs in a fact the rule speaks of. */
    private static List<Map<String, Object>> vehicles(Rule rule) {
        List<Map<String, Object>> vehicles = List.of(Map.of());
        for (String name : names(rule)) {
            var more = new ArrayList<Map<String, Object>>();
            for (Map<String, Object> facts : vehicles) {
                for (Object value : values(name)) {
                    var with = new HashMap<>(facts);
                    with.put(name, value);
                    more.add(with);
                }
            }
            vehicles = more;
        }
        return vehicles;
    }

    private static List<Object> values(String name) {
        return switch (VehicleFacts.VOCABULARY.types().get(name)) {
            case TRUTH -> List.of(true, false);
            case TEXT ->
                switch (name) {
                    case "category" -> List.of("N1", "N2", "N3", "M2", "M3");
                    case "refrigerant" -> List.of("R-134a", "none");
                    case "engine_fate" -> List.of("destroyed", "undecided");
                    default -> throw new AssertionError("give values for " + name);
                };
            case WHOLE -> name.equals("axles") ? List.of(2, 3, 4) : List.of(0, 4);
            case NUMBER -> MASSES_KG;
            case DATE -> List.of("2015-02-28", "2015-03-01", "2027-02-17", "2027-02-18");
            case TEXTS -> List.of(List.of("13 02 05*"), List.of("16 01 17"), List.of());
        };
    }

    private static Map<String, Object> without(Map<String, Object> facts, String name) {
        var known = new HashMap<>(facts);
        known.remove(name);
        return known;
    }
}
