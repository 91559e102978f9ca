package wainbook.quality.yields;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import wainbook.act.Moment;
import wainbook.gate.GateSaying.SignedOff;
import wainbook.gate.passage.Passage;
import wainbook.gate.passage.Slip;
import wainbook.gate.passage.Yield;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.ledger.Saying;
import wainbook.ledger.Subject;
import wainbook.matter.MatterSaying.Cause;
import wainbook.matter.MatterSaying.Disposed;
import wainbook.matter.MatterSaying.Disposition;
import wainbook.matter.MatterSaying.NonconformityOpened;
import wainbook.order.OrderSaying.Ordered;
import wainbook.process.sheet.Condition;
import wainbook.quality.yields.Pareto.By;
import wainbook.station.StationSaying.About;
import wainbook.station.StationSaying.Basis;
import wainbook.station.StationSaying.Chosen;
import wainbook.station.StationSaying.Confirmed;
import wainbook.station.StationSaying.Verdict;
import wainbook.station.StationSaying.Voided;

/** What counts as right the first time, and what does not. */
class YieldTest {

    private static final Instant FIRST = Instant.parse("2026-03-02T07:00:00Z");

    private final List<Entry> entries = new ArrayList<>();

    @Test
    void a_stage_where_every_item_passed_once_is_first_pass() {
        ordered();
        say(confirmed("a"));
        say(confirmed("b"));
        signed();

        assertThat(passage().firstPass()).isTrue();
        assertThat(passage().items()).isEqualTo(2);
    }

    @Test
    void a_stage_that_is_not_signed_off_is_not_counted() {
        ordered();
        say(confirmed("a"));

        assertThat(passages()).isEmpty();
    }

    @Test
    void a_failure_put_right_takes_the_vehicle_out_and_costs_the_minutes_until_the_pass() {
        ordered();
        say(chosen("a", Verdict.FAIL));
        say(confirmed("b"));
        say(chosen("a", Verdict.PASS));
        signed();

        assertThat(passage().firstPass()).isFalse();
        assertThat(passage().slips()).singleElement().satisfies(slip -> {
            assertThat(slip.sort()).isEqualTo(Slip.Sort.FAILED);
            assertThat(slip.lostMinutes()).contains(20L);
        });
    }

    @Test
    void a_voided_entry_takes_the_vehicle_out_and_is_no_defect() {
        ordered();
        Entry wrong = say(confirmed("a"));
        say(new Voided(wrong.id(), "SHEET/a", "typed at the wrong vehicle"));
        say(confirmed("a"));
        signed();

        assertThat(passage().slips()).extracting(Slip::sort).containsExactly(Slip.Sort.VOIDED);
        assertThat(passage().slips()).noneMatch(Slip::defect);
    }

    @Test
    void an_item_done_again_after_its_pass_takes_the_vehicle_out() {
        ordered();
        say(confirmed("a"));
        say(confirmed("a"));
        signed();

        assertThat(passage().slips()).extracting(Slip::sort).containsExactly(Slip.Sort.DONE_AGAIN);
    }

    @Test
    void a_nonconformity_that_a_failure_opened_is_counted_by_the_failure_alone() {
        ordered();
        say(chosen("a", Verdict.FAIL));
        say(opened(1, Cause.TRIES_USED_UP));
        say(opened(2, Cause.REPORTED));
        say(new Disposed(2, Disposition.REWORK, "cleaned"));
        signed();

        assertThat(passage().slips()).extracting(Slip::sort).containsExactly(Slip.Sort.FAILED, Slip.Sort.REPORTED);
        assertThat(passage().slips().get(0).lostMinutes()).isEmpty();
        assertThat(passage().slips().get(1).lostMinutes()).contains(10L);
    }

    /** Shares 0.98 0.95 0.99 0.97 0.96 of a hundred vehicles each; the product by hand. */
    @Test
    void the_rolled_yield_is_the_product_of_the_stages_and_lies_in_its_interval() {
        List<Passage> passages = new ArrayList<>();
        int[] good = {98, 95, 99, 97, 96};
        for (int stage = 0; stage < good.length; stage++) {
            for (int vehicle = 0; vehicle < 100; vehicle++) {
                passages.add(passage("S" + stage, vehicle, vehicle >= good[stage]));
            }
        }
        Yield yield = Yield.of(passages, List.of("S0", "S1", "S2", "S3", "S4"));

        assertThat(yield.rolled().orElseThrow().results().rolledShare()).isCloseTo(0.858277728, within(1e-12));
        assertThat(yield.rolledLow()).isLessThan(0.858277728);
        assertThat(yield.rolledHigh()).isGreaterThan(0.858277728);
        assertThat(yield.defects()).isEqualTo(15);
        assertThat(yield.defectRate().orElseThrow().results().perUnit()).isCloseTo(0.15, within(1e-12));
        assertThat(yield.opportunities()).isEqualTo(50);
    }

    @Test
    void the_commonest_comes_first_and_shares_add_up() {
        Pareto pareto = Pareto.of(List.of(slip("a"), slip("b"), slip("b"), slip("c"), slip("b")), By.ITEM);

        assertThat(pareto.rows()).extracting(Pareto.Row::code).containsExactly("b", "a", "c");
        assertThat(pareto.rows()).extracting(Pareto.Row::upTo).containsExactly(60.0, 80.0, 100.0);
        assertThat(pareto.rows().get(0).lostMinutes()).isEqualTo(15);
    }

    @Test
    void a_slip_counts_to_the_part_that_the_item_fits() {
        ordered();
        say(new Chosen(fitting("a", "PUMP"), basis(), "seen", Verdict.FAIL));
        say(new NonconformityOpened(1, "packs", Optional.of("SHEET/a"), Cause.REPORTED, "scratched", Optional.empty()));
        say(new Chosen(fitting("b", "PUMP", "HOSE"), basis(), "seen", Verdict.FAIL));
        say(chosen("c", Verdict.FAIL));
        signed();

        assertThat(Pareto.of(passage().slips(), By.PART).rows())
                .extracting(Pareto.Row::code, Pareto.Row::count)
                .containsExactly(tuple("PUMP", 2), tuple("", 1), tuple("PUMP + HOSE", 1));
    }

    private static About fitting(String item, String... parts) {
        return new About("packs", "SHEET", 1, item, List.of(parts));
    }

    private static Passage passage(String stage, int vehicle, boolean failed) {
        return new Passage("WB-" + vehicle, "BUS", stage, FIRST, 10, failed ? List.of(slip("a")) : List.of());
    }

    private static Slip slip(String item) {
        return new Slip(Slip.Sort.FAILED, "OUTSIDE_LIMITS", "WB-1", "BUS", "S0", item, "", FIRST, 1, Optional.of(5L));
    }

    private Passage passage() {
        return passages().get(0);
    }

    private List<Passage> passages() {
        return Passage.of(
                new History(Subject.workOrder("WB-1"), entries),
                (from, to) -> Duration.between(from, to).toMinutes());
    }

    private void ordered() {
        say(new Ordered("operator", "BUS", "bus", "R", List.of("packs"), LocalDate.of(2026, 4, 1)));
    }

    private void signed() {
        say(new SignedOff("packs", "SHEET", 1, "f".repeat(64), Optional.empty()));
    }

    private static NonconformityOpened opened(int number, Cause cause) {
        return new NonconformityOpened(number, "packs", Optional.of("a"), cause, "scratched", Optional.empty());
    }

    private static Confirmed confirmed(String item) {
        return new Confirmed(about(item), basis());
    }

    private static Chosen chosen(String item, Verdict verdict) {
        return new Chosen(about(item), basis(), "seen", verdict);
    }

    private static About about(String item) {
        return new About("packs", "SHEET", 1, item, List.of());
    }

    private static Basis basis() {
        return new Basis(Condition.NONE, Optional.empty(), Optional.empty());
    }

    /** Ten minutes after the one before. */
    private Entry say(Saying saying) {
        long number = entries.size() + 1L;
        Entry entry = new Entry(
                UUID.nameUUIDFromBytes(("entry " + number).getBytes(StandardCharsets.UTF_8)),
                Subject.workOrder("WB-1"),
                number,
                Moment.of("W-1", FIRST.plus(Duration.ofMinutes(10 * number))),
                "0".repeat(64),
                saying);
        entries.add(entry);
        return entry;
    }
}
