package wainbook.line.balance.asked;

import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import wainbook.engineering.balance.Rule;
import wainbook.line.balance.content.Content;
import wainbook.line.balance.content.Content.Item;

/**
 * A rule on check items, which are named by their keys. It holds for every item with such a key, at whichever stage and for
 * whichever kind of vehicle: what must not share a station must not share it on two vehicles either.
 *
 * @param one keys
 * @param other keys, none of them in {@code one}
 * @param stations how many further on along the line at least, for {@link Sort#DISTANCE}; 1 is the next station
 */
public record PairRule(Sort sort, List<String> one, List<String> other, int stations) {

    /** On one side. */
    public static final int MOST_KEYS = 20;

    /** What is asked of the items. */
    public enum Sort {
        /** All are done at one station. */
        TOGETHER,
        /** None of the one is done at the station of one of the other: cutting and fuel. */
        APART,
        /** Each of the other is done so many stations after each of the one: curing. */
        DISTANCE
    }

    public PairRule {
        Objects.requireNonNull(sort, "sort");
        one = List.copyOf(one);
        other = List.copyOf(other);
    }

    /** The same for the solver, a rule for each pair. */
    List<Rule> on(Content content) {
        return sort == Sort.TOGETHER ? together(content) : pairs(content).toList();
    }

    private List<Rule> together(Content content) {
        List<String> ids = Stream.concat(ids(one, content), ids(other, content)).toList();
        return ids.stream()
                .skip(1)
                .<Rule>map(id -> new Rule.Together(ids.get(0), id))
                .toList();
    }

    private Stream<Rule> pairs(Content content) {
        return ids(one, content).flatMap(first -> ids(other, content).map(then -> pair(first, then)));
    }

    private Rule pair(String first, String then) {
        return sort == Sort.APART ? new Rule.Apart(first, then) : new Rule.Distance(first, then, stations);
    }

    private static Stream<String> ids(List<String> keys, Content content) {
        return keys.stream()
                .distinct()
                .flatMap(key -> content.called(key).stream().map(Item::id));
    }
}
