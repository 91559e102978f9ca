package wainbook.station.joint;

import java.time.Duration;
import java.time.Instant;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import wainbook.act.Moment;
import wainbook.act.Reason;
import wainbook.ledger.Entry;
import wainbook.ledger.History;
import wainbook.process.sheet.Ask;
import wainbook.process.sheet.CheckItem;
import wainbook.station.StationSaying.HandedOn;
import wainbook.station.StationSaying.Rechecked;
import wainbook.station.StationSaying.Tightened;
import wainbook.station.StationSaying.Verdict;
import wainbook.station.StationSaying.Voided;

/**
 * The second check that a joint is owed once it has settled: wheel nuts after 30 minutes standing, whether moved or not, or
 * after 40 to 80 km (haulage guidance after BS AU 50-2-7a, read on trade pages; the maker's sheet comes first).
 *
 * @param tightened when the joint was last tightened and passed
 */
public record SecondCheck(CheckItem item, Ask.Recheck asks, Instant tightened) {

    public static final String SOURCE =
            "haulage guidance after BS AU 50-2-7a, read on trade pages; the maker’s sheet comes first";

    /** What an item owes on a vehicle; empty where it names no time or its joint is not tightened, was checked or handed on. */
    public static Optional<SecondCheck> owed(CheckItem item, History vehicle) {
        if (!(item.asks() instanceof Ask.Recheck asks)
                || (asks.afterMinutes().isEmpty() && asks.byKm().isEmpty())) {
            return Optional.empty();
        }
        return lastTightened(asks.joint(), vehicle)
                .filter(entry -> !settled(asks.joint(), vehicle, entry))
                .map(entry -> new SecondCheck(item, asks, entry.moment().at()));
    }

    /** From when it counts; at once where only kilometres are asked. */
    public Instant from() {
        return tightened.plus(Duration.ofMinutes(asks.afterMinutes().orElse(0)));
    }

    /** Why it cannot be made yet. */
    public List<Reason> against(Moment moment) {
        return moment.at().isBefore(from())
                ? List.of(Reason.of(
                        "station.secondCheckEarly",
                        SOURCE,
                        asks.joint(),
                        asks.afterMinutes().orElse(0),
                        from()))
                : List.of();
    }

    /** A joint that was never tightened here owes nothing; one whose entry was voided is tightened anew first. */
    private static Optional<Entry> lastTightened(String joint, History vehicle) {
        Set<UUID> voided = new HashSet<>();
        vehicle.saying(Voided.class).forEach(entry -> voided.add(((Voided) entry.saying()).entry()));
        return vehicle.saying(Tightened.class)
                .filter(entry -> !voided.contains(entry.id()))
                .filter(entry -> ((Tightened) entry.saying()).joint().equals(joint)
                        && ((Tightened) entry.saying()).verdict() == Verdict.PASS)
                .reduce((former, latter) -> latter);
    }

    private static boolean settled(String joint, History vehicle, Entry tightened) {
        return vehicle.entries().stream()
                .filter(entry -> entry.number() > tightened.number())
                .anyMatch(entry -> (entry.saying() instanceof Rechecked said
                                && said.joint().equals(joint)
                                && said.verdict() == Verdict.PASS)
                        || (entry.saying() instanceof HandedOn on && on.joint().equals(joint)));
    }
}
