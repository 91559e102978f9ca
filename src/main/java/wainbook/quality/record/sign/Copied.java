package wainbook.quality.record.sign;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wainbook.quality.reading.Reading;
import wainbook.quality.record.Question;
import wainbook.quality.record.Rule;
import wainbook.quality.record.made.Chance;
import wainbook.quality.record.made.Made;
import wainbook.quality.record.made.Usual;

/** All readings of an entry are, in the same order, those of one of the last vehicles. */
public final class Copied {

    private static final int LEAST = 4;

    /** Vehicles back that a person could still have had before them. */
    private static final int RECENT = 10;

    private final Map<String, Deque<Made>> recent = new HashMap<>();

    /** Looks at an entry, and keeps it for those that follow. */
    public Optional<Question> in(Made made, Usual usual, double rarely) {
        if (made.size() < LEAST) {
            return Optional.empty();
        }
        Deque<Made> before = recent.computeIfAbsent(made.what(), none -> new ArrayDeque<>());
        Optional<Made> same = before.stream()
                .filter(one -> !one.order().equals(made.order()) && one.values().equals(made.values()))
                .findFirst();
        before.addFirst(made);
        if (before.size() > RECENT) {
            before.removeLast();
        }
        return same.flatMap(original -> question(made, original, usual, rarely));
    }

    private static Optional<Question> question(Made made, Made original, Usual usual, double rarely) {
        double chance = RECENT;
        for (Reading reading : made.readings()) {
            chance *=
                    usual.of(reading).map(spread -> Chance.allEqual(spread, 2)).orElse(1.0);
        }
        if (chance >= rarely) {
            return Optional.empty();
        }
        return Optional.of(new Question(
                Rule.COPIED,
                made.person(),
                List.of(original.readings().get(0), made.readings().get(0)),
                made.at(),
                List.of(String.valueOf(made.size()), original.order()),
                chance));
    }
}
