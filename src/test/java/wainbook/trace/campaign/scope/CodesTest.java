package wainbook.trace.campaign.scope;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import wainbook.act.Reason;
import wainbook.trace.Mention;
import wainbook.trace.Mention.Sort;
import wainbook.trace.campaign.CampaignSaying.Because;
import wainbook.trace.campaign.CampaignSaying.Match;
import wainbook.trace.campaign.CampaignSaying.Query;
import wainbook.trace.campaign.CampaignSaying.Term;

/** Which codes a term of a query means, and how terms come together. */
class CodesTest {

    private static final LocalDate DAY = LocalDate.of(2026, 5, 4);

    @Test
    void a_code_means_itself_in_capitals_or_not_and_nothing_longer() {
        assertThat(Codes.fits(term("l-0456"), "L-0456")).isTrue();
        assertThat(Codes.fits(term("L-0456"), "L-04561")).isFalse();
        assertThat(Codes.fits(term("W-1001"), "W-10011")).isFalse();
        assertThat(Codes.fits(term("bms 7.0.3"), "BMS7.0.3")).isTrue();
    }

    @Test
    void a_star_means_whatever_begins_so() {
        assertThat(Codes.fits(term("2.3.*"), "2.3.1")).isTrue();
        assertThat(Codes.fits(term("2.3.*"), "2.31")).isFalse();
        assertThat(Codes.fits(term("2.3.*"), "2.3.")).isTrue();
        assertThat(Codes.beginning(term("2.3.*"))).isEqualTo("2.3.");
    }

    @Test
    void a_range_counts_numbers_as_numbers() {
        Term range = range("L-9", "L-12");
        assertThat(List.of("L-9", "L-10", "L-12")).allMatch(code -> Codes.fits(range, code));
        assertThat(List.of("L-8", "L-13", "L-100", "M-10")).noneMatch(code -> Codes.fits(range, code));
        assertThat(Codes.fits(range("L-0450", "L-0470"), "L-0455")).isTrue();
        assertThat(Codes.fits(range("L-2610-00", "L-2611-99"), "L-2611-07")).isTrue();
        assertThat(Codes.fits(range("L-2610-00", "L-2611-99"), "L-2612-00")).isFalse();
    }

    @Test
    void whatever_fits_begins_with_what_is_looked_for_in_the_table() {
        var random = new Random(7);
        for (int i = 0; i < 20_000; i++) {
            int first = random.nextInt(200);
            Term term = random.nextBoolean()
                    ? range("L-" + first, "L-" + (first + random.nextInt(60)))
                    : term("L-" + first + (random.nextBoolean() ? "*" : ""));
            String code = "L-" + random.nextInt(300);
            if (Codes.fits(term, code)) {
                assertThat(code).startsWith(Codes.beginning(term));
            }
        }
    }

    @Test
    void the_order_of_codes_is_one_order() {
        var random = new Random(11);
        for (int i = 0; i < 20_000; i++) {
            String one = code(random);
            String other = code(random);
            String third = code(random);
            assertThat(Integer.signum(Codes.compare(one, other))).isEqualTo(-Integer.signum(Codes.compare(other, one)));
            if (Codes.compare(one, other) <= 0 && Codes.compare(other, third) <= 0) {
                assertThat(Codes.compare(one, third)).isLessThanOrEqualTo(0);
            }
        }
    }

    private static String code(Random random) {
        String[] pieces = {"A", "B", "-", ".", "1", "2", "10", "02"};
        var code = new StringBuilder();
        for (int i = random.nextInt(5); i >= 0; i--) {
            code.append(pieces[random.nextInt(pieces.length)]);
        }
        return code.toString();
    }

    @Test
    void any_takes_every_vehicle_that_a_term_found_and_all_only_those_that_each_found() {
        Because lot = new Because(Sort.LOT, "L-1", "work-order/WB-1", 3);
        Because software = new Because(Sort.SOFTWARE, "BMS 7", "work-order/WB-1", 9);
        List<Map<String, List<Because>>> found =
                List.of(Map.of("WB-1", List.of(lot), "WB-2", List.of(lot)), Map.of("WB-1", List.of(software)));
        assertThat(Combined.of(Match.ANY, found).keySet()).containsExactly("WB-1", "WB-2");
        assertThat(Combined.of(Match.ALL, found)).containsExactly(Map.entry("WB-1", List.of(lot, software)));
        assertThat(Combined.of(Match.ALL, List.of())).isEmpty();
    }

    @Test
    void a_query_that_would_find_too_much_or_nothing_is_refused_at_its_field() {
        assertThat(lifts(new Query(Match.ANY, List.of()))).containsExactly("#code1");
        assertThat(lifts(query(term("L*")))).containsExactly("#code1");
        assertThat(lifts(query(term("L-0456"), range("L-9", "L-8")))).containsExactly("#to2");
        assertThat(lifts(query(range("L-*", "L-8")))).containsExactly("#to1");
        assertThat(lifts(query(
                        new Term(Sort.LOT, "L-1", Optional.empty(), Optional.of(DAY), Optional.of(DAY.minusDays(1))))))
                .containsExactly("#until1");
        assertThat(lifts(query(term("L-0456"), range("L-9", "L-12")))).isEmpty();
    }

    private static List<String> lifts(Query query) {
        return QueryRule.against(query).stream()
                .map(Reason::lift)
                .map(Optional::orElseThrow)
                .toList();
    }

    private static Query query(Term... terms) {
        return new Query(Match.ANY, List.of(terms));
    }

    private static Term term(String code) {
        return new Term(Mention.Sort.LOT, code, Optional.empty(), Optional.empty(), Optional.empty());
    }

    private static Term range(String from, String to) {
        return new Term(Mention.Sort.LOT, from, Optional.of(to), Optional.empty(), Optional.empty());
    }
}
