package wainbook.line.forecast.past;

import java.time.Duration;
import java.time.Instant;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wainbook.process.sheet.Applicability;
import wainbook.process.sheet.Ask;
import wainbook.process.sheet.CheckItem;
import wainbook.process.sheet.CheckSheet;
import wainbook.station.ItemState;
import wainbook.station.ItemState.Status;
import wainbook.station.StageRecord;
import wainbook.station.StationSaying.WaitBegun;

/**
 * What still has to cure at a stage. A wait of an hour or more goes on by the clock and is no work; shorter ones stay within the work.
 * That bound is our choice.
 *
 * @param aheadMinutes of clock time: of those not begun the longest chain in which one comes after another
 * @param runsUntil when what cures already is done, and what comes after it
 */
public record Cures(int aheadMinutes, Optional<Instant> runsUntil) {

    static final int SHORTEST_MINUTES = 60;
    public static final Cures NONE = new Cures(0, Optional.empty());

    /** At a stage still to come. */
    public static Cures of(CheckSheet sheet, Map<String, String> facts) {
        var chain = new Chain(sheet.items(), Map.of());
        sheet.items().stream()
                .filter(item ->
                        minutes(item) > 0 && !Applicability.of(item, facts).isNo())
                .forEach(item -> chain.ahead.put(item.key(), minutes(item)));
        return chain.found();
    }

    /** At the stage where it is. */
    public static Cures of(StageRecord record) {
        var chain = new Chain(record.items().stream().map(ItemState::item).toList(), new HashMap<>());
        record.items().stream()
                .filter(state -> minutes(state.item()) > 0 && !state.status().settled())
                .forEach(state -> begun(state)
                        .ifPresentOrElse(
                                until -> chain.running.put(state.key(), until),
                                () -> chain.ahead.put(state.key(), minutes(state.item()))));
        return chain.found();
    }

    /** Minutes of a cure; 0 for any other item. */
    static int minutes(CheckItem item) {
        return item.asks() instanceof Ask.Wait wait ? minutes(wait.minutes()) : 0;
    }

    static int minutes(int waited) {
        return waited >= SHORTEST_MINUTES ? waited : 0;
    }

    /** Planned minutes of a sheet that are work: where those of a cure hold the cure itself, it is taken out. */
    public static int workMinutes(CheckSheet sheet) {
        int curing = sheet.items().stream()
                .filter(item -> item.plannedMinutes() >= minutes(item))
                .mapToInt(Cures::minutes)
                .sum();
        return curing == 0 ? sheet.plannedMinutes() : Math.max(1, sheet.plannedMinutes() - curing);
    }

    private static Optional<Instant> begun(ItemState state) {
        return state.entries().stream()
                .filter(entry -> state.status() == Status.WAITING && entry.saying() instanceof WaitBegun)
                .reduce((former, latter) -> latter)
                .map(entry -> entry.moment().at().plus(Duration.ofMinutes(((WaitBegun) entry.saying()).minutes())));
    }

    /** The items of a sheet in the order in which one comes after another, which is never a circle. */
    private static final class Chain {

        private final Map<String, CheckItem> items = new HashMap<>();
        private final Map<String, Instant> running;
        private final Map<String, Integer> ahead = new HashMap<>();

        Chain(Collection<CheckItem> all, Map<String, Instant> running) {
            all.forEach(item -> items.put(item.key(), item));
            this.running = running;
        }

        Cures found() {
            return ahead.isEmpty() && running.isEmpty()
                    ? NONE
                    : new Cures(
                            items.keySet().stream().mapToInt(this::length).max().orElse(0),
                            items.keySet().stream()
                                    .flatMap(key -> until(key).stream())
                                    .max(Instant::compareTo));
        }

        /** Of those not begun, from the beginning to the end of this item. */
        private int length(String key) {
            return before(key).stream().mapToInt(this::length).max().orElse(0) + ahead.getOrDefault(key, 0);
        }

        /** When this item is done, as far as it waits for what cures now. */
        private Optional<Instant> until(String key) {
            Optional<Instant> before =
                    before(key).stream().flatMap(one -> until(one).stream()).max(Instant::compareTo);
            return running.containsKey(key)
                    ? Optional.of(running.get(key))
                    : before.map(at -> at.plus(Duration.ofMinutes(ahead.getOrDefault(key, 0))));
        }

        private List<String> before(String key) {
            return items.get(key).after().stream().filter(items::containsKey).toList();
        }
    }
}
