package wainbook.line.balance;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import wainbook.engineering.balance.Found;
import wainbook.line.balance.asked.Asked;
import wainbook.line.balance.content.Content;
import wainbook.line.balance.content.Content.Item;
import wainbook.line.balance.content.Content.Place;
import wainbook.line.balance.content.Pace;
import wainbook.line.balance.content.Recorded;

/**
 * What a search came to, beside today's balance. Nothing is called the best unless it is proved.
 *
 * @param cycleMinutes the greatest load of an average vehicle afterwards; absent if no balance was found
 * @param proven whether nothing is better; without a balance, whether there is none
 * @param chosen whether it is proved the smoothest, or the one that moves the fewest, among the equals
 * @param paces by which planned minutes were made longer or shorter; empty where the plan stands
 * @param withoutRules what the same comes to without the rules on items; absent where there are none or the time was up
 */
public record Proposal(
        Optional<Double> cycleMinutes,
        int stations,
        double best,
        double lowerBound,
        double gap,
        boolean proven,
        boolean chosen,
        List<Load> loads,
        List<Moved> moves,
        List<Pace> paces,
        Optional<Without> withoutRules) {

    /**
     * What a search without the rules on items came to.
     *
     * @param best stations or minutes, whichever was sought; absent if none was found
     * @param proven whether nothing is better
     */
    public record Without(Optional<Double> best, double lowerBound, boolean proven) {
        static Without of(Found found) {
            return new Without(found.placed().map(any -> found.best()), found.lowerBound(), found.proven());
        }
    }

    /** One stage before and after, with as many persons as were asked for. */
    public record Load(String stage, double beforeMinutes, double afterMinutes) {}

    /** An item that goes elsewhere. */
    public record Moved(String key, String title, String from, String to, Map<String, Double> minutes) {
        public Moved {
            minutes = Map.copyOf(minutes);
        }
    }

    public Proposal {
        loads = List.copyOf(loads);
        moves = List.copyOf(moves);
        paces = List.copyOf(Objects.requireNonNullElse(paces, List.of()));
    }

    /** @param without found without the rules on items */
    static Proposal of(Asked asked, Recorded recorded, Found found, Optional<Found> without) {
        Content content = asked.content();
        List<List<String>> placed = found.placed().orElse(List.of());
        Map<String, Integer> at = IntStream.range(0, placed.size())
                .boxed()
                .flatMap(place -> placed.get(place).stream().map(id -> Map.entry(id, place)))
                .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue));
        List<Load> loads = IntStream.range(0, placed.size())
                .mapToObj(place -> load(asked, found, place))
                .toList();
        return new Proposal(
                found.placed().map(any -> greatest(loads)),
                found.count(),
                found.best(),
                found.lowerBound(),
                found.placed().map(any -> found.gap()).orElse(0.0),
                found.proven(),
                found.chosen(),
                loads,
                content.items().stream()
                        .filter(item -> at.containsKey(item.id()))
                        .filter(item -> !stage(content, at.get(item.id())).equals(item.stage()))
                        .map(item -> moved(item, stage(content, at.get(item.id()))))
                        .toList(),
                asked.question().asRecorded() ? content.paces(recorded) : List.of(),
                without.map(Without::of));
    }

    private static double greatest(List<Load> loads) {
        return loads.stream().mapToDouble(Load::afterMinutes).max().orElse(0);
    }

    /** No load is above the cycle that was found for it, also where the shortest order at a station was not found. */
    private static Load load(Asked asked, Found found, int place) {
        Content content = asked.content();
        Place here = content.stages().get(place);
        List<String> ids = found.placed().orElseThrow().get(place);
        List<Item> items =
                content.items().stream().filter(item -> ids.contains(item.id())).toList();
        double cycle = asked.question().taktMinutes().map(Integer::doubleValue).orElse(found.best());
        double before = asked.minutes(here, content.at(here.stage()));
        double after = items.equals(content.at(here.stage())) ? before : asked.minutes(here, items);
        return new Load(here.stage(), before, Math.min(cycle, after));
    }

    private static Moved moved(Item item, String to) {
        return new Moved(item.key(), item.title(), item.stage(), to, item.minutes());
    }

    private static String stage(Content content, int place) {
        return content.stages().get(place).stage();
    }
}
