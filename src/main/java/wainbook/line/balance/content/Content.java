package wainbook.line.balance.content;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * The work content of the line.
 *
 * @param stages on the line, in their order
 * @param kinds with the vehicles of each in the works; where there are none, one of each route
 * @param taktMinutes absent where the works has set none
 */
public record Content(List<Place> stages, List<KindShare> kinds, List<Item> items, Optional<Integer> taktMinutes) {

    /** A stage with the stations that do it side by side. */
    public record Place(String stage, int number, String title, int stations) {}

    /** A kind of vehicle and how many of it count. */
    public record KindShare(String kind, long vehicles) {}

    /**
     * A check item, one for all kinds that have it at the same stage.
     *
     * @param minutes by kind, as planned or as recorded
     * @param after ids of items that come first
     * @param bound whether it stays at its stage whatever is asked: its electrical condition needs the place
     */
    public record Item(
            String id,
            String stage,
            String key,
            String title,
            Map<String, Double> minutes,
            List<String> after,
            boolean bound) {
        public Item {
            minutes = Map.copyOf(minutes);
            after = List.copyOf(after);
        }

        Item timed(Map<String, Double> others) {
            return new Item(id, stage, key, title, others, after, bound);
        }
    }

    public Content {
        stages = List.copyOf(stages);
        kinds = List.copyOf(kinds);
        items = List.copyOf(items);
    }

    /** The stages' places along the line, from 1. */
    public Map<String, Integer> placed() {
        return IntStream.range(0, stages.size())
                .boxed()
                .collect(Collectors.toMap(place -> stages.get(place).stage(), place -> place + 1));
    }

    public List<Item> at(String stage) {
        return items.stream().filter(item -> item.stage().equals(stage)).toList();
    }

    /** All with that key, whatever the kind of vehicle; more than one where it stands at several stages. */
    public List<Item> called(String key) {
        return items.stream().filter(item -> item.key().equals(key)).toList();
    }

    /** Of one kind at a stage, for each of the stations side by side, done by one person. */
    public double load(String stage, String kind) {
        return load(place(stage), at(stage), item -> item.minutes().getOrDefault(kind, 0.0));
    }

    /** Weighted by the kinds' shares. */
    public double load(String stage) {
        return load(place(stage), at(stage));
    }

    /** What these items would be there. */
    public double load(Place place, List<Item> some) {
        return load(place, some, this::average);
    }

    private static double load(Place place, List<Item> some, ToDoubleFunction<Item> minutes) {
        return some.stream().mapToDouble(minutes).sum() / place.stations();
    }

    private double average(Item item) {
        long all = kinds.stream().mapToLong(KindShare::vehicles).sum();
        return kinds.stream()
                        .mapToDouble(share -> share.vehicles() * item.minutes().getOrDefault(share.kind(), 0.0))
                        .sum()
                / all;
    }

    private Place place(String stage) {
        return stages.stream()
                .filter(place -> place.stage().equals(stage))
                .findFirst()
                .orElseThrow();
    }

    /** The same with the times that the record speaks for; an item keeps the pace of the stage where it stands today. */
    public Content timed(Recorded recorded) {
        return new Content(
                stages,
                kinds,
                items.stream()
                        .map(item -> item.timed(item.minutes().entrySet().stream()
                                .collect(Collectors.toMap(
                                        Map.Entry::getKey,
                                        one -> recorded.pace(item.stage(), one.getKey())
                                                .minutes(one.getValue())))))
                        .toList(),
                taktMinutes);
    }

    /** How fast each kind goes at each stage, in the order of the line. */
    public List<Pace> paces(Recorded recorded) {
        return stages.stream()
                .flatMap(place -> kinds.stream()
                        .filter(share -> load(place.stage(), share.kind()) > 0)
                        .map(share -> recorded.pace(place.stage(), share.kind())))
                .toList();
    }
}
