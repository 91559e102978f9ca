package wainbook.line.balance.asked;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import wainbook.engineering.balance.Aim;
import wainbook.engineering.balance.Kind;
import wainbook.engineering.balance.Rule;
import wainbook.engineering.balance.Search;
import wainbook.engineering.balance.Task;
import wainbook.engineering.balance.Work;
import wainbook.line.balance.content.Content;
import wainbook.line.balance.content.Content.Item;
import wainbook.line.balance.content.Content.Place;

/** A work content under a question: the work to be shared out, what it is wanted for, and the time that items take at a stage. */
public record Asked(Content content, Question question) {

    /** For the order of what several persons do at one station, above the seconds of the search. */
    private static final double LAYING_OUT_S = 0.5;

    public Work work() {
        return work(Stream.concat(places(), pairs()).toList());
    }

    /** Without the rules on items. */
    public Work workWithoutRules() {
        return work(places().toList());
    }

    private Work work(List<Rule> rules) {
        return new Work(
                kinds(),
                content.items().stream().map(this::task).toList(),
                rules,
                content.stages().stream()
                        .map(place -> question.persons(place.stage()))
                        .toList(),
                content.stages().stream().map(Place::stations).toList(),
                question.overrunPercent().map(percent -> percent / 100.0),
                Optional.empty());
    }

    private List<Kind> kinds() {
        return content.kinds().stream()
                .map(share -> new Kind(share.kind(), (double) share.vehicles()))
                .toList();
    }

    private Task task(Item item) {
        return new Task(
                item.id(),
                content.kinds().stream()
                        .map(share -> item.minutes().getOrDefault(share.kind(), 0.0))
                        .toList(),
                0,
                item.after(),
                1);
    }

    private Stream<Rule> places() {
        return content.items().stream().map(item -> {
            Span span = span(item);
            return new Rule.Only(
                    Set.of(item.id()),
                    IntStream.rangeClosed(span.first(), span.last()).boxed().collect(Collectors.toSet()));
        });
    }

    private Stream<Rule> pairs() {
        return question.rules().stream().flatMap(rule -> rule.on(content).stream());
    }

    /** Where an item may be before any rule on items. */
    Span span(Item item) {
        int today = content.placed().get(item.stage());
        boolean stays = item.bound()
                || question.stagesThatStay().contains(item.stage())
                || question.itemsThatStay().contains(item.key());
        int reach = stays ? 0 : question.reach();
        return new Span(Math.max(1, today - reach), Math.min(content.stages().size(), today + reach));
    }

    public Aim aim(double seconds) {
        Map<String, Integer> placed = content.placed();
        Map<String, Integer> today =
                content.items().stream().collect(Collectors.toMap(Item::id, item -> placed.get(item.stage())));
        return new Aim(
                question.taktMinutes().map(Integer::doubleValue),
                content.stages().size(),
                seconds,
                question.leastChange() ? Aim.Then.LEAST_CHANGE : Aim.Then.SMOOTHEST,
                today);
    }

    /**
     * For how long the average vehicle is worked on at a stage in each cycle, shared by the stations side by side. Where several
     * persons work, as long as the shortest order of these items takes in which nobody is divided and what comes first ends first.
     */
    public double minutes(Place place, List<Item> items) {
        double alone = content.load(place, items);
        int persons = question.persons(place.stage());
        if (persons == 1 || items.isEmpty()) {
            return alone;
        }
        Work here = new Work(
                kinds(),
                items.stream().map(this::task).toList(),
                List.of(),
                List.of(persons),
                List.of(place.stations()),
                Optional.empty(),
                Optional.empty());
        var alike = new Aim(Optional.empty(), 1, LAYING_OUT_S, Aim.Then.ANY, Map.of());
        return Search.of(here, alike)
                .map(search -> Math.min(alone, search.find(progress -> {}).best()))
                .orElse(alone);
    }
}
