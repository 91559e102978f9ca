package wainbook.line.balance;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import wainbook.engineering.balance.Found;
import wainbook.line.balance.Content.Item;

/**
 * What a search came to, beside today's balance. Nothing is called the best unless it is proved.
 *
 * @param cycleMinutes the greatest average load afterwards; absent if no balance was found
 * @param proven whether nothing is better; without a balance, whether there is none
 * @param chosen whether it is proved the smoothest, or the one that moves the fewest, among the equals
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
        List<Moved> moves) {

    /** One stage before and after. */
    public record Load(String stage, double beforeMinutes, double afterMinutes) {}

    /** An item that goes elsewhere. */
    public record Moved(String key, String title, String from, String to, Map<String, Integer> minutes) {
        public Moved {
            minutes = Map.copyOf(minutes);
        }
    }

    public Proposal {
        loads = List.copyOf(loads);
        moves = List.copyOf(moves);
    }

    static Proposal of(Content content, Found found) {
        List<List<String>> placed = found.placed().orElse(List.of());
        Map<String, Integer> at = IntStream.range(0, placed.size())
                .boxed()
                .flatMap(place -> placed.get(place).stream().map(id -> Map.entry(id, place)))
                .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue));
        return new Proposal(
                found.placed().map(any -> found.cycleMinutes()),
                found.count(),
                found.best(),
                found.lowerBound(),
                found.placed().map(any -> found.gap()).orElse(0.0),
                found.proven(),
                found.chosen(),
                IntStream.range(0, placed.size())
                        .mapToObj(place -> load(content, found, place))
                        .toList(),
                content.items().stream()
                        .filter(item -> at.containsKey(item.id()))
                        .filter(item -> !stage(content, at.get(item.id())).equals(item.stage()))
                        .map(item -> moved(item, stage(content, at.get(item.id()))))
                        .toList());
    }

    private static Load load(Content content, Found found, int place) {
        String stage = stage(content, place);
        return new Load(stage, content.load(stage), found.loadMinutes().get(place));
    }

    private static Moved moved(Item item, String to) {
        return new Moved(item.key(), item.title(), item.stage(), to, item.minutes());
    }

    private static String stage(Content content, int place) {
        return content.stages().get(place).stage();
    }
}
