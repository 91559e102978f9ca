package wainbook.line.forecast.state;

import java.time.DayOfWeek;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import wainbook.line.awaited.AwaitedPart;
import wainbook.line.forecast.past.PastTimes;
import wainbook.line.forecast.past.Stop;
import wainbook.line.forecast.state.OnHand.Doing;
import wainbook.works.shift.Shift;
import wainbook.works.shift.Shifts;

/** A works of two stations without a record, on a Monday at eight; it works from six to two on working days. */
public final class SmallLine {

    public static final Instant NOW = Instant.parse("2026-03-02T08:00:00Z");
    public static final LocalDate TODAY = LocalDate.of(2026, 3, 2);
    private static final Shifts SHIFTS = new Shifts(
            List.of(Shift.everywhere(
                    "Day",
                    6 * 60,
                    14 * 60,
                    Arrays.stream(DayOfWeek.values()).limit(5).toList())),
            ZoneId.of("UTC"));

    private SmallLine() {}

    /** One vehicle at each station and three in front, all promised for today. */
    public static TheLineNow full() {
        return line(
                MoveTimes.ANY,
                vehicle("1", Doing.WORK, "fit"),
                vehicle("2", Doing.SIGNED, "strip"),
                vehicle("3", Doing.ACCEPTED, null),
                vehicle("4", Doing.ACCEPTED, null),
                vehicle("5", Doing.ORDERED, null));
    }

    /** It moves at nine, eleven and one. */
    public static TheLineNow paced() {
        return line(new MoveTimes(List.of(9 * 60, 11 * 60, 13 * 60)), vehicle("1", Doing.WORK, "strip"));
    }

    public static TheLineNow held() {
        return line(
                MoveTimes.ANY,
                vehicle("held", Doing.WORK, "fit", new Stop.Open(Stop.HOLD, 1, true, 60)),
                vehicle("behind", Doing.SIGNED, "strip"));
    }

    public static TheLineNow waiting(String... orders) {
        return line(
                MoveTimes.ANY,
                Stream.of(orders)
                        .map(order -> vehicle(order, Doing.ACCEPTED, null))
                        .toArray(OnHand[]::new));
    }

    /** All promised for today; moved on whenever there is room. */
    public static TheLineNow line(OnHand... vehicles) {
        return line(MoveTimes.ANY, vehicles);
    }

    private static TheLineNow line(MoveTimes moves, OnHand... vehicles) {
        return new TheLineNow(
                new Calendar(SHIFTS, NOW),
                new PastTimes(List.of()),
                moves,
                EntryRule.of(List.of()),
                List.of(
                        new TheLineNow.Post("strip", "Strip", List.of("ST-1")),
                        new TheLineNow.Post("fit", "Fit", List.of("ST-2"))),
                List.of(vehicles),
                After.NOTHING);
    }

    /** Part 1 is missing at a stage and expected so many days from today. */
    public static Needs missing(String stage, int days) {
        return new Needs(
                List.of(new AwaitedPart(
                        1,
                        stage,
                        "Brake valve",
                        Optional.empty(),
                        TODAY.plusDays(days),
                        NOW.minus(Duration.ofDays(1)),
                        Optional.empty(),
                        "")),
                Map.of());
    }

    public static OnHand vehicle(String order, Doing doing, String stage, Stop.Open... stops) {
        return new OnHand(
                order,
                "BUS",
                doing,
                Optional.ofNullable(stage),
                Optional.of("ST"),
                NOW,
                30,
                Map.of("strip", 100, "fit", 100),
                List.of(stops),
                TODAY);
    }
}
