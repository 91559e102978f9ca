package wainbook.line.balance.asked;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * What a better balance is wanted for.
 *
 * @param taktMinutes the takt to be kept with the fewest stations; absent: the shortest takt for the stations there are
 * @param overrunPercent by how much a station may be over for one kind of vehicle; absent where only the average counts
 * @param reach how many stages away from today's an item may go
 * @param rules on items, in the order given; older questions have none
 * @param persons who work at a station of a stage, one where it is not named
 * @param times which minutes count
 * @param leastChange of equals the one that moves the fewest items, instead of the smoothest
 */
public record Question(
        Optional<Integer> taktMinutes,
        Optional<Integer> overrunPercent,
        int reach,
        List<String> stagesThatStay,
        List<String> itemsThatStay,
        boolean leastChange,
        int seconds,
        List<PairRule> rules,
        Map<String, Integer> persons,
        Times times) {

    /** Which minutes count. */
    public enum Times {
        /** Those of the released sheets. */
        PLANNED,
        /** Those of the sheets, made longer or shorter by what the record says of their stage. */
        RECORDED
    }

    public static final int LONGEST_TAKT_MIN = 10_000;
    public static final int MOST_PERCENT = 200;
    public static final int FARTHEST = 1_000;
    public static final int LONGEST_S = 600;
    public static final int MOST_RULES = 50;
    public static final int MOST_PERSONS = 9;

    /** @throws IllegalArgumentException where a figure is out of its range */
    public Question {
        taktMinutes.ifPresent(minutes -> within("taktMinutes", minutes, 1, LONGEST_TAKT_MIN));
        overrunPercent.ifPresent(percent -> within("overrunPercent", percent, 0, MOST_PERCENT));
        within("reach", reach, 0, FARTHEST);
        within("seconds", seconds, 1, LONGEST_S);
        stagesThatStay = List.copyOf(stagesThatStay);
        itemsThatStay = List.copyOf(itemsThatStay);
        rules = List.copyOf(Objects.requireNonNullElse(rules, List.of()));
        within("number of rules", rules.size(), 0, MOST_RULES);
        persons = Map.copyOf(Objects.requireNonNullElse(persons, Map.of()));
        persons.values().forEach(some -> within("persons", some, 1, MOST_PERSONS));
        times = Objects.requireNonNullElse(times, Times.PLANNED);
    }

    public int persons(String stage) {
        return persons.getOrDefault(stage, 1);
    }

    public boolean asRecorded() {
        return times == Times.RECORDED;
    }

    private static void within(String what, int value, int least, int most) {
        if (value < least || value > most) {
            throw new IllegalArgumentException(what + " is " + least + " to " + most + ", not " + value);
        }
    }
}
