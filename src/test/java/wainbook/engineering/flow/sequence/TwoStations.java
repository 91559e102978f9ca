package wainbook.engineering.flow.sequence;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import wainbook.engineering.flow.forecast.model.Line;
import wainbook.engineering.flow.forecast.model.Minutes;
import wainbook.engineering.flow.forecast.model.Stage;
import wainbook.engineering.flow.forecast.model.Vehicle;
import wainbook.engineering.flow.forecast.model.Visit;
import wainbook.engineering.flow.forecast.model.Whereabouts;
import wainbook.engineering.flow.forecast.model.WorkingTime;

/** An empty line of two stations without a place between them, in certain minutes, so that each figure can be found with a pencil. */
final class TwoStations {

    private TwoStations() {}

    /** @param promised the minute it is promised for */
    record Job(int first, int second, int promised) {}

    static InFront front(Job... jobs) {
        return front(List.of(jobs));
    }

    /** All in one group, called 0, 1, 2 … */
    static InFront front(List<Job> jobs) {
        return new InFront(
                line(jobs),
                List.of(IntStream.range(0, jobs.size())
                        .mapToObj(String::valueOf)
                        .toList()));
    }

    static Line line(List<Job> jobs) {
        var always = WorkingTime.always();
        return new Line(
                always,
                List.of(Stage.of("A", always), Stage.of("B", always)),
                IntStream.range(0, jobs.size())
                        .mapToObj(at -> vehicle(String.valueOf(at), jobs.get(at)))
                        .toList(),
                List.of());
    }

    private static Vehicle vehicle(String name, Job job) {
        return Vehicle.of(
                        name,
                        new Whereabouts.Waiting(0),
                        Stream.of(job.first(), job.second())
                                .map(minutes -> Visit.of(new Minutes.Certain(minutes)))
                                .toList())
                .promisedFor(job.promised());
    }

    /**
     * Summed lateness by the recursion of a line that blocks after service, without the model: a vehicle leaves the first station when it
     * is done there and the one ahead has left the second.
     */
    static double late(List<Job> jobs, List<Integer> order) {
        double leftFirst = 0;
        double leftSecond = 0;
        double late = 0;
        for (int at : order) {
            Job job = jobs.get(at);
            leftFirst = Math.max(leftFirst + job.first(), leftSecond);
            leftSecond = leftFirst + job.second();
            late += Math.max(0, leftSecond - job.promised());
        }
        return late;
    }

    /** The least of it over every order there is. */
    static double leastLate(List<Job> jobs) {
        return permutations(
                        new ArrayList<>(IntStream.range(0, jobs.size()).boxed().toList()), 0)
                .mapToDouble(order -> late(jobs, order))
                .min()
                .orElseThrow();
    }

    private static Stream<List<Integer>> permutations(List<Integer> all, int from) {
        if (from == all.size()) {
            return Stream.of(all);
        }
        return IntStream.range(from, all.size()).boxed().flatMap(other -> {
            var next = new ArrayList<>(all);
            Collections.swap(next, from, other);
            return permutations(next, from + 1);
        });
    }

    static List<Integer> numbers(List<String> names) {
        return names.stream().map(Integer::valueOf).toList();
    }

    static List<String> names(int... numbers) {
        return Arrays.stream(numbers).mapToObj(String::valueOf).toList();
    }
}
