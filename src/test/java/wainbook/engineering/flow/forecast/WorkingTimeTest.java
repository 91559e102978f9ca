package wainbook.engineering.flow.forecast;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wainbook.engineering.flow.forecast.model.Interval;
import wainbook.engineering.flow.forecast.model.WorkingTime;

/** Minutes worked, against a plain list of which minutes are worked; and what holds for any of them. */
class WorkingTimeTest {

    private static final int DAY = 1440;
    private static final int CASES = 300;

    /** 07:00 to 15:30 with breaks at 09:30 and 12:00, Monday to Friday, origin Monday 00:00; no work on the second Friday. */
    private static WorkingTime weeks() {
        var shifts = new ArrayList<Interval>();
        for (int day = 0; day < 28; day++) {
            if (day % 7 < 5 && day != 11) {
                shifts.add(new Interval(at(day, 7, 0), at(day, 9, 30)));
                shifts.add(new Interval(at(day, 9, 45), at(day, 12, 0)));
                shifts.add(new Interval(at(day, 12, 30), at(day, 15, 30)));
            }
        }
        return WorkingTime.of(shifts);
    }

    private static double at(int day, int hour, int minute) {
        return (double) day * DAY + hour * 60 + minute;
    }

    /** Thursday 14:40 to Monday 09:40 over a holiday are 50 + 150 minutes; 600 from there end on Tuesday at 08:25. */
    @Test
    void worked_examples_over_a_holiday_and_a_break() {
        WorkingTime time = weeks();

        assertThat(time.worked(at(14, 9, 40)) - time.worked(at(10, 14, 40))).isEqualTo(200);
        assertThat(time.add(at(10, 14, 40), 600)).isEqualTo(at(15, 8, 25));
        assertThat(time.add(at(9, 9, 0), 100)).isEqualTo(at(9, 10, 55));
        assertThat(time.worked(at(7, 8, 0)) - time.worked(at(4, 14, 0))).isEqualTo(150);
    }

    @Test
    void keeps_the_end_of_a_shift_where_work_ends_with_it() {
        WorkingTime time = weeks();

        assertThat(time.add(at(0, 15, 0), 30)).isEqualTo(at(0, 15, 30));
        assertThat(time.add(at(0, 15, 0), 31)).isEqualTo(at(1, 7, 1));
        assertThat(time.next(at(0, 15, 30))).isEqualTo(at(1, 7, 0));
        assertThat(time.add(at(0, 20, 0), 0)).isEqualTo(at(0, 20, 0));
        assertThat(time.reached(465)).isEqualTo(at(0, 15, 30));
        assertThat(time.resumed(465)).isEqualTo(at(1, 7, 0));
    }

    @Test
    void never_ends_what_its_intervals_are_too_short_for() {
        assertThat(weeks().add(0, 1e6)).isEqualTo(Double.POSITIVE_INFINITY);
        assertThat(weeks().next(at(28, 0, 0))).isEqualTo(Double.POSITIVE_INFINITY);
        assertThat(WorkingTime.of(List.of()).add(0, 1)).isEqualTo(Double.POSITIVE_INFINITY);
        assertThat(WorkingTime.always().add(5, 1e6)).isEqualTo(1_000_005);
    }

    @Test
    void fits_what_may_not_be_broken_off_into_one_interval() {
        WorkingTime slots =
                WorkingTime.of(List.of(new Interval(100, 160), new Interval(160, 220), new Interval(500, 560)));

        assertThat(slots.fitting(0, 60)).isEqualTo(100);
        assertThat(slots.fitting(101, 60)).isEqualTo(160);
        assertThat(slots.fitting(161, 60)).isEqualTo(500);
        assertThat(slots.fitting(130, 30)).isEqualTo(130);
        assertThat(slots.fitting(501, 60)).isEqualTo(Double.POSITIVE_INFINITY);
    }

    @Test
    void refuses_intervals_that_overlap_or_hold_nothing() {
        assertThatThrownBy(() -> WorkingTime.of(List.of(new Interval(0, 10), new Interval(9, 20))))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Interval(3, 3)).isInstanceOf(IllegalArgumentException.class);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void agrees_with_a_list_of_minutes(long seed) {
        var random = new SplittableRandom(seed);
        for (int i = 0; i < CASES; i++) {
            boolean[] works = minutes(random);
            WorkingTime time = of(works);
            int from = random.nextInt(works.length);
            int minutes = random.nextInt(1, 60);
            int to = from;
            for (int left = minutes; to < works.length && left > 0; to++) {
                left -= works[to] ? 1 : 0;
                if (left == 0) {
                    break;
                }
            }
            double expected = to == works.length ? Double.POSITIVE_INFINITY : to + 1;

            assertThat(time.add(from, minutes)).isEqualTo(expected);
            assertThat(time.worked(from)).isEqualTo((double)
                    IntStream.range(0, from).filter(one -> works[one]).count());
            assertThat(time.next(from))
                    .isEqualTo(IntStream.range(from, works.length)
                            .filter(one -> works[one])
                            .mapToDouble(one -> one)
                            .findFirst()
                            .orElse(Double.POSITIVE_INFINITY));
        }
    }

    /** Work adds up; and what has been worked is reached no later than it was. */
    @ParameterizedTest
    @ValueSource(longs = {4, 5, 6})
    void work_is_additive_and_adding_takes_it_back(long seed) {
        var random = new SplittableRandom(seed);
        for (int i = 0; i < CASES; i++) {
            WorkingTime time = of(minutes(random));
            double[] at = random.doubles(3, 0, 300).sorted().toArray();
            double worked = time.worked(at[2]) - time.worked(at[0]);

            assertThat(worked)
                    .isCloseTo(
                            time.worked(at[1]) - time.worked(at[0]) + (time.worked(at[2]) - time.worked(at[1])),
                            within(1e-9));
            assertThat(time.add(at[0], worked)).isLessThanOrEqualTo(at[2] + 1e-9);
            assertThat(time.add(at[0], 10)).isLessThanOrEqualTo(time.add(at[1], 10));
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {7, 8})
    void cuts_and_joins_minute_by_minute(long seed) {
        var random = new SplittableRandom(seed);
        for (int i = 0; i < CASES; i++) {
            boolean[] one = minutes(random);
            boolean[] other = minutes(random);
            WorkingTime cut = of(one).without(of(other).intervals());
            WorkingTime both = of(one).and(of(other));
            WorkingTime within = of(one).within(both);
            for (int minute = 0; minute < 300; minute++) {
                assertThat(cut.next(minute) == minute).isEqualTo(one[minute] && !other[minute]);
                assertThat(both.next(minute) == minute).isEqualTo(one[minute] || other[minute]);
                if (one[minute]) {
                    assertThat(within.next(both.worked(minute))).isEqualTo(both.worked(minute));
                }
            }
            assertThat(within.worked(1e9)).isEqualTo(of(one).worked(1e9));
        }
    }

    private static boolean[] minutes(SplittableRandom random) {
        boolean[] works = new boolean[300];
        boolean on = random.nextBoolean();
        for (int minute = 0; minute < works.length; minute++) {
            on ^= random.nextInt(12) == 0;
            works[minute] = on;
        }
        return works;
    }

    private static WorkingTime of(boolean[] works) {
        var intervals = new ArrayList<Interval>();
        int from = -1;
        for (int minute = 0; minute <= works.length; minute++) {
            boolean on = minute < works.length && works[minute];
            if (on && from < 0) {
                from = minute;
            } else if (!on && from >= 0) {
                intervals.add(new Interval(from, minute));
                from = -1;
            }
        }
        return WorkingTime.of(intervals);
    }
}
