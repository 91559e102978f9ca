package wainbook.line.balance;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import wainbook.engineering.balance.Aim;
import wainbook.engineering.balance.Kind;
import wainbook.engineering.balance.Rule;
import wainbook.engineering.balance.Task;
import wainbook.engineering.balance.Work;

/**
 * The work content of the line as its released sheets plan it.
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
     * @param minutes planned, by kind
     * @param after ids of items that come first
     * @param bound whether it stays at its stage whatever is asked: its electrical condition needs the place
     */
    public record Item(
            String id,
            String stage,
            String key,
            String title,
            Map<String, Integer> minutes,
            List<String> after,
            boolean bound) {
        public Item {
            minutes = Map.copyOf(minutes);
            after = List.copyOf(after);
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

    /** Of one kind at a stage, for each of the stations side by side. */
    public double load(String stage, String kind) {
        return items.stream()
                        .filter(item -> item.stage().equals(stage))
                        .mapToInt(item -> item.minutes().getOrDefault(kind, 0))
                        .sum()
                / (double) place(stage).stations();
    }

    /** Weighted by the kinds' shares. */
    public double load(String stage) {
        long all = kinds.stream().mapToLong(KindShare::vehicles).sum();
        return kinds.stream()
                        .mapToDouble(share -> (double) share.vehicles() * load(stage, share.kind()))
                        .sum()
                / all;
    }

    private Place place(String stage) {
        return stages.stream()
                .filter(place -> place.stage().equals(stage))
                .findFirst()
                .orElseThrow();
    }

    /** The same as a work to be shared out, under what was asked. */
    Work work(Question question) {
        return new Work(
                kinds.stream()
                        .map(share -> new Kind(share.kind(), (double) share.vehicles()))
                        .toList(),
                items.stream().map(this::task).toList(),
                items.stream().map(item -> rule(item, question)).toList(),
                List.of(),
                stages.stream().map(Place::stations).toList(),
                question.overrunPercent().map(percent -> percent / 100.0),
                Optional.empty());
    }

    private Task task(Item item) {
        return new Task(
                item.id(),
                kinds.stream()
                        .map(share -> (double) item.minutes().getOrDefault(share.kind(), 0))
                        .toList(),
                0,
                item.after(),
                1);
    }

    private Rule rule(Item item, Question question) {
        int today = placed().get(item.stage());
        boolean stays = item.bound()
                || question.stagesThatStay().contains(item.stage())
                || question.itemsThatStay().contains(item.key());
        int reach = stays ? 0 : question.reach();
        Set<Integer> where = IntStream.rangeClosed(Math.max(1, today - reach), Math.min(stages.size(), today + reach))
                .boxed()
                .collect(Collectors.toSet());
        return new Rule.Only(Set.of(item.id()), where);
    }

    Aim aim(Question question) {
        Map<String, Integer> placed = placed();
        Map<String, Integer> today =
                items.stream().collect(Collectors.toMap(Item::id, item -> placed.get(item.stage())));
        return new Aim(
                question.taktMinutes().map(Integer::doubleValue),
                stages.size(),
                question.seconds(),
                question.leastChange() ? Aim.Then.LEAST_CHANGE : Aim.Then.SMOOTHEST,
                today);
    }

    /** Items that the search may move. */
    public long free() {
        return items.stream().filter(item -> !item.bound()).count();
    }
}
