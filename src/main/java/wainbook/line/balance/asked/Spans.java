package wainbook.line.balance.asked;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import wainbook.engineering.balance.Rule;
import wainbook.line.balance.content.Content;

/**
 * Where each item may be, narrowed by the order on the sheets and by rules, until nothing changes. It finds contradictions that can
 * be named; that there is none proves no balance, which the search does.
 */
final class Spans {

    /** The one is at least so many stations before the other. */
    private record Link(String first, String then, int stations) {}

    private final Map<String, Span> spans = new HashMap<>();
    private final List<Link> links = new ArrayList<>();
    private final List<Rule.Apart> aparts = new ArrayList<>();
    /** One for all items that are at one station. */
    private final Map<String, String> groups = new HashMap<>();

    private Spans() {}

    /** By what may move and by the order on the sheets. */
    static Spans of(Asked asked) {
        Content content = asked.content();
        var spans = new Spans();
        content.items().forEach(item -> {
            spans.spans.put(item.id(), asked.span(item));
            spans.groups.put(item.id(), item.id());
        });
        content.items()
                .forEach(item -> item.after().stream()
                        .filter(spans.spans::containsKey)
                        .forEach(before -> spans.links.add(new Link(before, item.id(), 0))));
        spans.narrow();
        return spans;
    }

    private Spans copy() {
        var copy = new Spans();
        copy.spans.putAll(spans);
        copy.links.addAll(links);
        copy.aparts.addAll(aparts);
        copy.groups.putAll(groups);
        return copy;
    }

    Span of(String id) {
        return spans.get(id);
    }

    /** These with a rule more; it may come to a contradiction. */
    Spans with(Rule rule) {
        Spans next = copy();
        if (rule instanceof Rule.Together together) {
            next.links.addAll(both(together));
            String from = groups.get(together.one());
            String to = groups.get(together.other());
            next.groups.replaceAll((id, group) -> group.equals(from) ? to : group);
        } else if (rule instanceof Rule.Apart apart) {
            next.aparts.add(apart);
        } else if (rule instanceof Rule.Distance distance) {
            next.links.add(new Link(distance.first(), distance.then(), distance.stations()));
        }
        next.narrow();
        return next;
    }

    Spans with(List<Rule> rules) {
        Spans all = this;
        for (Rule rule : rules) {
            all = all.with(rule);
        }
        return all;
    }

    private static List<Link> both(Rule.Together together) {
        return Stream.of(new Link(together.one(), together.other(), 0), new Link(together.other(), together.one(), 0))
                .toList();
    }

    /** Each round narrows a span or is the last; an empty one ends it. */
    private void narrow() {
        boolean narrower = true;
        while (narrower && !empty()) {
            narrower = false;
            for (Link link : links) {
                Span first = spans.get(link.first());
                Span then = spans.get(link.then());
                narrower |= put(link.first(), first.until(then.last() - link.stations()));
                narrower |= put(link.then(), then.from(first.first() + link.stations()));
            }
        }
    }

    private boolean put(String id, Span span) {
        return !span.equals(spans.put(id, span));
    }

    private boolean empty() {
        return spans.values().stream().anyMatch(Span::none);
    }

    boolean contradicted() {
        return empty() || aparts.stream().anyMatch(this::together);
    }

    private boolean together(Rule.Apart apart) {
        Span one = spans.get(apart.one());
        return groups.get(apart.one()).equals(groups.get(apart.other()))
                || (one.one() && one.equals(spans.get(apart.other())));
    }
}
