package wainbook.order.hold;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import wainbook.order.OrderSaying.HoldKind;
import wainbook.order.OrderSaying.Stops;
import wainbook.page.Option;
import wainbook.page.Words;
import wainbook.works.Role;

/** What a hold can be, and what is ticked so far. */
public record HoldChoices(Set<Stops> ticked) {

    public HoldChoices {
        ticked = Set.copyOf(ticked);
    }

    public List<Option> kinds() {
        return Arrays.stream(HoldKind.values())
                .map(kind -> new Option(kind.name(), Words.of("order.holdKindAndWho", word(kind), releasedBy(kind))))
                .toList();
    }

    public List<Option> stops() {
        return Arrays.stream(Stops.values())
                .map(what -> new Option(what.name(), Words.of("order.stops." + what.name())))
                .toList();
    }

    public boolean ticks(String what) {
        return ticked.contains(Stops.valueOf(what));
    }

    public static String word(HoldKind kind) {
        return Words.of("order.holdKind." + kind.name());
    }

    /** What a hold stops, in words. */
    public static String words(List<Stops> stops) {
        return stops.stream()
                .map(what -> Words.of("order.stops." + what.name()))
                .collect(Collectors.joining(", "));
    }

    public static String releasedBy(HoldKind kind) {
        return Holding.mayRelease(kind).stream()
                .map(Role::word)
                .sorted()
                .map(role -> Words.of("works." + role))
                .collect(Collectors.joining(", "));
    }
}
