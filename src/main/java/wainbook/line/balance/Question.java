package wainbook.line.balance;

import java.util.List;
import java.util.Optional;

/**
 * What a better balance is wanted for.
 *
 * @param taktMinutes the takt to be kept with the fewest stations; absent: the shortest takt for the stations there are
 * @param overrunPercent by how much a station may be over for one kind of vehicle; absent where only the average counts
 * @param reach how many stages away from today's an item may go
 * @param leastChange of equals the one that moves the fewest items, instead of the smoothest
 */
public record Question(
        Optional<Integer> taktMinutes,
        Optional<Integer> overrunPercent,
        int reach,
        List<String> stagesThatStay,
        List<String> itemsThatStay,
        boolean leastChange,
        int seconds) {

    public static final int LONGEST_S = 600;

    public Question {
        stagesThatStay = List.copyOf(stagesThatStay);
        itemsThatStay = List.copyOf(itemsThatStay);
    }
}
