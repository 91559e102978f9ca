package wainbook.line.forecast.state;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import wainbook.order.OrderSaying.Moved;
import wainbook.works.shift.Shifts;

/**
 * The times of the day at which the line moves, where the record shows such: moves of the last {@link #DAYS} days that follow each
 * other within {@link #APART_MIN} minutes of the day are one time, if it was kept on at least half of the days with any move, and on two. They
 * count where they hold {@value #MOST} of all moves in at most a third of the time between the first and the last of the day; otherwise
 * vehicles are moved when they are ready. These bounds are our choice, no published rule.
 *
 * @param minutes of the local day, rising; none where vehicles are moved when they are ready
 */
public record MoveTimes(List<Integer> minutes) {

    static final MoveTimes ANY = new MoveTimes(List.of());
    static final int DAYS = 28;
    static final int APART_MIN = 4;
    static final double MOST = 0.75;
    private static final int FEWEST_DAYS = 2;
    private static final double WIDEST = 1 / 3.0;
    private static final int SECONDS = 60;

    public MoveTimes {
        minutes = List.copyOf(minutes);
    }

    /** Moves at nearly the same time of the day. */
    private record Cluster(List<LocalDateTime> moves) {

        int from() {
            return minute(moves.get(0));
        }

        int to() {
            return minute(moves.get(moves.size() - 1));
        }

        long days() {
            return moves.stream().map(LocalDateTime::toLocalDate).distinct().count();
        }

        /** Few were before it. */
        int usual() {
            return minute(moves.get(moves.size() / 20));
        }
    }

    /** @param moves onto the line and along it */
    static MoveTimes of(Stream<Instant> moves, ZoneId zone, Instant now) {
        List<LocalDateTime> lately = moves.filter(at -> at.isAfter(now.minus(Duration.ofDays(DAYS))))
                .map(at -> LocalDateTime.ofInstant(at, zone))
                .sorted(Comparator.comparing(LocalDateTime::toLocalTime))
                .toList();
        long days = lately.stream().map(LocalDateTime::toLocalDate).distinct().count();
        if (days < FEWEST_DAYS) {
            return ANY;
        }
        List<Cluster> kept = clusters(lately).stream()
                .filter(cluster -> cluster.days() >= FEWEST_DAYS && 2 * cluster.days() >= days)
                .toList();
        int held = kept.stream().mapToInt(cluster -> cluster.moves().size()).sum();
        int wide =
                kept.stream().mapToInt(cluster -> cluster.to() - cluster.from()).sum();
        int day = minute(lately.get(lately.size() - 1)) - minute(lately.get(0));
        return held >= MOST * lately.size() && wide <= WIDEST * day
                ? new MoveTimes(kept.stream().map(Cluster::usual).toList())
                : ANY;
    }

    private static List<Cluster> clusters(List<LocalDateTime> sorted) {
        var found = new ArrayList<Cluster>();
        for (LocalDateTime move : sorted) {
            int last = found.size() - 1;
            if (last < 0 || minute(move) - found.get(last).to() > APART_MIN) {
                found.add(new Cluster(new ArrayList<>()));
            }
            found.get(found.size() - 1).moves().add(move);
        }
        return found;
    }

    private static int minute(LocalDateTime at) {
        return at.toLocalTime().toSecondOfDay() / SECONDS;
    }

    static boolean isMove(Moved moved) {
        return switch (moved.direction()) {
            case ONTO_LINE, FORWARD -> true;
            case OFF_LINE, BACK_ON, BACK, OUT -> false;
        };
    }

    public boolean none() {
        return minutes.isEmpty();
    }

    /** Those on days on which is worked then, in their order. */
    Stream<Instant> on(Shifts shifts, Instant from, Instant to) {
        return LocalDate.ofInstant(from, shifts.zone())
                .datesUntil(LocalDate.ofInstant(to, shifts.zone()).plusDays(1))
                .flatMap(day -> minutes.stream()
                        .map(minute -> day.atStartOfDay()
                                .plusMinutes(minute)
                                .atZone(shifts.zone())
                                .toInstant()))
                .filter(at -> at.isAfter(from) && !at.isAfter(to) && shifts.working(at));
    }
}
