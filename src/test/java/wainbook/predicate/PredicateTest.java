package wainbook.predicate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.concurrent.Executors;
import java.util.stream.IntStream;
import org.assertj.core.groups.Tuple;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PredicateTest {

    private static final Predicates PREDICATES = new Predicates(vocabulary());

    private static Vocabulary vocabulary() {
        var types = new LinkedHashMap<String, FactType>();
        types.put("category", FactType.TEXT);
        types.put("tail_lift", FactType.TRUTH);
        types.put("axles", FactType.WHOLE);
        types.put("mass_kg", FactType.NUMBER);
        types.put("first_registered", FactType.DATE);
        types.put("streams", FactType.TEXTS);
        types.put("order.country", FactType.TEXT);
        return new Vocabulary(types);
    }

    private static Answer answer(String text, Map<String, ?> facts) {
        return PREDICATES.compile(text).sound().orElseThrow().answer(facts);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "category == 'M3'; yes",
                "category in ['N2', 'N3']; no",
                "tail_lift; no",
                "!tail_lift && axles == 2; yes",
                "mass_kg > 18000; yes",
                "mass_kg > axles; yes",
                "axles == 3; no",
                "first_registered < date('2015-03-01'); yes",
                "first_registered < date('2015-02-28'); no",
                "streams.exists(s, s.endsWith('*')); yes",
                "order.country == 'GB'; yes",
                "category.matches('^M[123]$'); yes",
            })
    void answers_from_facts_of_every_type(String text, String expected) {
        var facts = Map.of(
                "category",
                "M3",
                "tail_lift",
                false,
                "axles",
                2,
                "mass_kg",
                new BigDecimal("18000.5"),
                "first_registered",
                LocalDate.of(2015, 2, 28),
                "streams",
                List.of("13 02 05*", "16 01 03"),
                "order.country",
                "GB");

        assertThat(answer(text, facts)).isEqualTo(Answer.of(expected.equals("yes")));
    }

    @Test
    void asks_for_exactly_the_facts_that_would_decide_it() {
        assertThat(answer("tail_lift || axles > 2", Map.of())).isEqualTo(Answer.missing(List.of("axles", "tail_lift")));
        assertThat(answer("order.country == 'GB' && tail_lift", Map.of("tail_lift", true)))
                .isEqualTo(Answer.missing(List.of("order.country")));
    }

    @Test
    void does_not_ask_when_the_facts_in_hand_decide_it() {
        assertThat(answer("tail_lift || axles > 2", Map.of("axles", 3))).isEqualTo(new Answer.Yes());
        assertThat(answer("axles > 2 || tail_lift", Map.of("axles", 3))).isEqualTo(new Answer.Yes());
        assertThat(answer("tail_lift && axles > 2", Map.of("tail_lift", false))).isEqualTo(new Answer.No());
    }

    @Test
    void takes_a_null_for_unknown() {
        var facts = new HashMap<String, Object>();
        facts.put("tail_lift", null);

        assertThat(answer("tail_lift", facts)).isEqualTo(Answer.missing(List.of("tail_lift")));
    }

    @Test
    void asks_a_person_when_it_cannot_be_worked_out() {
        assertThat(answer("10 / axles == 5", Map.of("axles", 0))
                        .fold(() -> "yes", () -> "no", ask -> ask.trouble().orElse("none")))
                .isEqualTo("evaluation error at <input>:3: / by zero");
    }

    @Test
    void refuses_a_fact_of_another_type() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> answer("axles == 2", Map.of("axles", "two")))
                .withMessage("axles is int, not: two");
    }

    @Test
    void knows_the_facts_it_speaks_of() {
        assertThat(PREDICATES
                        .compile("order.country == 'GB' || tail_lift")
                        .sound()
                        .orElseThrow()
                        .names())
                .containsExactlyInAnyOrder("order.country", "tail_lift");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "axels == 2; 1; 1; undeclared reference",
                "axles == '2'; 1; 7; no matching overload",
                "axles + 1; 1; 7; expected type 'bool'",
                "tail_lift &&; 1; 13; mismatched input the end of the text",
                "first_registered < date('2015-02-30'); 1; 24; no such date: 2015-02-30",
                "category.matches('(?=M)'); 1; 17; ",
            })
    void says_where_a_condition_is_wrong(String text, int line, int column, String message) {
        assertThat(PREDICATES.compile(text).faults()).first().satisfies(fault -> {
            assertThat(fault.line()).isEqualTo(line);
            assertThat(fault.column()).isEqualTo(column);
            assertThat(fault.message()).contains(message == null ? "" : message);
        });
    }

    @Test
    void counts_lines_of_a_long_condition() {
        assertThat(PREDICATES.compile("tail_lift\n  && axels == 2").faults())
                .extracting(Compiled.Fault::line, Compiled.Fault::column)
                .containsExactly(Tuple.tuple(2, 6));
    }

    @Test
    void refuses_a_condition_that_is_too_long_or_too_deep() {
        assertThat(PREDICATES.compile("tail_lift || ".repeat(400) + "tail_lift").faults())
                .isNotEmpty();
        assertThat(PREDICATES
                        .compile("(".repeat(200) + "tail_lift" + ")".repeat(200))
                        .faults())
                .isNotEmpty();
        assertThat(PREDICATES
                        .compile("!tail_lift || ".repeat(250) + "tail_lift")
                        .faults())
                .isNotEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " ", "//", "'", "1", "true ? 1 : 2", "has(order.country)", "order", "\u0000"})
    void never_throws_on_odd_text(String text) {
        assertThat(PREDICATES.compile(text).faults()).isNotEmpty();
    }

    @Test
    void stops_a_condition_that_runs_too_long() {
        String ten = "[1,2,3,4,5,6,7,8,9,10]";
        String text = ten + ".all(a, " + ten + ".all(b, " + ten + ".all(c, " + ten + ".all(d, a+b+c+d+axles > 0))))";

        assertThat(answer(text, Map.of("axles", 2)).isYes()).isFalse();
    }

    @Test
    void answers_the_same_from_many_threads() throws Exception {
        Predicate predicate =
                PREDICATES.compile("axles > 2 && tail_lift").sound().orElseThrow();
        var pool = Executors.newFixedThreadPool(4);
        List<Callable<Boolean>> asked = IntStream.range(0, 4)
                .<Callable<Boolean>>mapToObj(thread -> () -> IntStream.range(0, 2000)
                        .allMatch(i -> predicate
                                        .answer(Map.of("axles", i % 5, "tail_lift", i % 2 == 0))
                                        .isYes()
                                == (i % 5 > 2 && i % 2 == 0)))
                .toList();

        for (var result : pool.invokeAll(asked)) {
            assertThat(result.get()).isTrue();
        }
        pool.shutdown();
    }
}
