package wainbook.engineering.flow.sequence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wainbook.engineering.flow.sequence.Found.Ending;
import wainbook.engineering.flow.sequence.Found.Verdict;
import wainbook.engineering.flow.sequence.TwoStations.Job;

/** Orders of entry on a line of two stations in certain minutes: nothing is drawn, so that two draws are enough. */
class SequenceSearchTest {

    private static final Budget CERTAIN = new Budget(1, 2, 2, 2, 3000);

    private static final Job SLOW = new Job(100, 100, 1000);
    private static final Job TIGHT = new Job(10, 10, 30);

    /** Behind the slow one the tight one is blocked at the first station until 200 and finishes at 210, 180 too late; first, at 20. */
    @Test
    void one_with_a_tight_promise_comes_forward() {
        Found found = find(TwoStations.front(SLOW, TIGHT));

        assertThat(found.verdict()).isEqualTo(Verdict.BETTER);
        assertThat(found.order()).isEqualTo(TwoStations.names(1, 0));
        assertThat(found.comparison().lateBefore()).isEqualTo(180);
        assertThat(found.comparison().lateAfter()).isZero();
        assertThat(found.comparison().saved().mean()).isEqualTo(180);
        assertThat(found.comparison().saved().halfWidth()).isZero();
    }

    @Test
    void whose_day_is_likelier_kept_is_told_by_vehicle_and_together() {
        Comparison compared =
                find(TwoStations.front(new Job(100, 100, 205), TIGHT)).comparison();

        // The slow one then finishes at 210 for 205, five minutes late where it was none.
        assertThat(compared.lateAfter()).isEqualTo(5);
        assertThat(compared.keptBefore()).isEqualTo(1);
        assertThat(compared.moreKept().mean()).isZero();
        assertThat(compared.vehicles().get(0).loses()).isTrue();
        assertThat(compared.vehicles().get(0).laterMinutes()).hasValue(10);
        assertThat(compared.vehicles().get(1).gains()).isTrue();
        assertThat(compared.vehicles().get(1).laterMinutes()).hasValue(-190);
        assertThat(compared.vehicles().get(1).medianAfter()).isEqualTo(20);
    }

    @Test
    void of_orders_as_good_the_one_nearest_todays_is_taken() {
        Job loose = new Job(20, 20, 5000);

        Found found = find(TwoStations.front(loose, loose, loose, TIGHT));

        assertThat(found.order()).isEqualTo(TwoStations.names(3, 0, 1, 2));
    }

    @Test
    void where_nobody_is_late_nothing_is_sought() {
        Job loose = new Job(20, 40, 5000);

        Found found = find(TwoStations.front(loose, new Job(40, 20, 5000), loose));

        assertThat(found.verdict()).isEqualTo(Verdict.NOBODY_LATE);
        assertThat(found.order()).isEqualTo(found.today());
        assertThat(found.tried()).isEqualTo(1);
        assertThat(found.comparison().saved().mean()).isZero();
    }

    @Test
    void where_no_order_is_less_late_todays_stands() {
        Found found = find(TwoStations.front(TIGHT, new Job(100, 100, 100), new Job(300, 300, 300)));

        assertThat(found.verdict()).isEqualTo(Verdict.NONE_BETTER);
        assertThat(found.order()).isEqualTo(found.today());
        assertThat(found.comparison().lateBefore()).isPositive();
    }

    /** The reference is the recursion of the line, over every order there is; not Johnson's rule, which knows no promises. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
    void up_to_six_all_are_tried_and_none_is_better(long seed) {
        List<Job> jobs = jobs(new SplittableRandom(seed), 6);

        Found found = find(TwoStations.front(jobs));

        assertThat(found.ending()).isEqualTo(Ending.ALL_TRIED);
        assertThat(found.tried()).isEqualTo(720);
        assertThat(found.comparison().lateBefore())
                .isCloseTo(TwoStations.late(jobs, TwoStations.numbers(found.today())), within(1e-6));
        assertThat(found.comparison().lateAfter())
                .isCloseTo(TwoStations.late(jobs, TwoStations.numbers(found.order())), within(1e-6))
                .isCloseTo(TwoStations.leastLate(jobs), within(1e-6));
    }

    /** Eight vehicles have 40,320 orders. The moves find the least late one nearly always, though nothing says that they must. */
    @Test
    void the_moves_find_what_trying_every_order_finds_in_nearly_all_cases() {
        int reached = 0;
        for (int seed = 0; seed < 20; seed++) {
            List<Job> jobs = jobs(new SplittableRandom(seed), 8);
            Found found = find(TwoStations.front(jobs));
            double least = TwoStations.leastLate(jobs);
            assertThat(found.ending()).isEqualTo(Ending.NO_MOVE_BETTERS);
            assertThat(found.tried()).isLessThan(2000);
            assertThat(found.comparison().lateAfter()).isGreaterThanOrEqualTo(least - 1e-6);
            reached += found.comparison().lateAfter() <= least + 1e-6 ? 1 : 0;
        }
        assertThat(reached).isGreaterThanOrEqualTo(19);
    }

    @Test
    void a_spent_budget_ends_it_and_says_so() {
        List<Job> jobs = jobs(new SplittableRandom(3), 12);

        Found found = new SequenceSearch(TwoStations.front(jobs), new Budget(1, 2, 2, 2, 60)).find(progress -> {});

        assertThat(found.ending()).isEqualTo(Ending.BUDGET);
        assertThat(found.tried()).isLessThanOrEqualTo(60);
        assertThat(found.lateWhenSearched()).isLessThanOrEqualTo(found.lateTodayWhenSearched());
    }

    @Test
    void stopped_it_tells_what_was_found_until_then() {
        var search = new SequenceSearch(TwoStations.front(jobs(new SplittableRandom(3), 6)), CERTAIN);

        Found found = search.find(progress -> {
            if (progress.orders() == 100) {
                search.stop();
            }
        });

        assertThat(found.ending()).isEqualTo(Ending.STOPPED);
        assertThat(found.tried()).isEqualTo(100);
        assertThat(found.verdict()).isEqualTo(Verdict.BETTER);
    }

    private static Found find(InFront front) {
        return new SequenceSearch(front, CERTAIN).find(progress -> {});
    }

    /** Promised so that some are late in any order. */
    private static List<Job> jobs(SplittableRandom random, int count) {
        return IntStream.range(0, count)
                .mapToObj(at ->
                        new Job(random.nextInt(20, 120), random.nextInt(20, 120), random.nextInt(60, count * 100)))
                .toList();
    }
}
