package wainbook.engineering.balance;

import java.util.List;

/**
 * A piece of work that is done whole at one station.
 *
 * @param minutes for each kind of vehicle, in the order of {@link Work#kinds}; 0 where the kind does not have it
 * @param spreadMinutes standard deviation of its time
 * @param after ids of the tasks that come before it
 * @param persons who are at it from beginning to end; a task for one is never divided
 */
public record Task(String id, List<Double> minutes, double spreadMinutes, List<String> after, int persons) {

    public Task {
        minutes = List.copyOf(minutes);
        after = List.copyOf(after);
    }

    public static Task of(String id, double minutes, List<String> after) {
        return new Task(id, List.of(minutes), 0, after, 1);
    }
}
