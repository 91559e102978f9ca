package wainbook.engineering.balance;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import wainbook.engineering.Answer;
import wainbook.engineering.Calculation;
import wainbook.engineering.Checked;
import wainbook.engineering.Domain;
import wainbook.engineering.ExactlyOne;
import wainbook.engineering.Fault;
import wainbook.engineering.Plain;
import wainbook.engineering.Sentence;
import wainbook.engineering.Size;
import wainbook.engineering.Source;
import wainbook.engineering.Step;
import wainbook.engineering.Working;

/**
 * The balance of a simple assembly line: each task at one station, none before what comes first, no load above the cycle. With a
 * takt given, the fewest stations; with stations given, the shortest cycle; then the least sum of squared loads. What is not
 * proved within the time is said to be open, with its bound.
 */
public final class Balance implements Calculation<Balance.Inputs, Balance.Results> {

    private static final double MOST_MINUTES = 1e6;
    private static final int MOST_TASKS = 400;
    /** One search at a time in the calculations, so that a few questions do not take the machine from the line. */
    private static final Semaphore TURN = new Semaphore(1, true);

    /** @param after ids of the tasks that come before it */
    public record Piece(
            String id, @Domain(from = 0, to = MOST_MINUTES) double minutes, List<String> after) {
        public Piece {
            after = List.copyOf(after);
        }
    }

    /** @param limitS seconds for the search */
    @ExactlyOne({"taktMinutes", "stations"})
    public record Inputs(
            @Size(from = 1, to = MOST_TASKS) List<Piece> tasks,
            Optional<@Domain(above = 0, to = MOST_MINUTES) Double> taktMinutes,
            Optional<@Domain(from = 1, to = MOST_TASKS) Integer> stations,
            @Domain(above = 0, to = 300) double limitS)
            implements Checked {
        public Inputs {
            tasks = List.copyOf(tasks);
        }

        @Override
        public List<Fault> faults() {
            var faults = new ArrayList<Fault>();
            Set<String> all = tasks.stream().map(Piece::id).collect(Collectors.toSet());
            var met = new HashSet<String>();
            for (int i = 0; i < tasks.size(); i++) {
                Piece task = tasks.get(i);
                if (task.id().isBlank()) {
                    faults.add(Fault.of("tasks[" + i + "].id", "missing"));
                } else if (!met.add(task.id())) {
                    faults.add(Fault.of("tasks[" + i + "].id", "twice", task.id()));
                }
                for (int j = 0; j < task.after().size(); j++) {
                    if (!all.contains(task.after().get(j))) {
                        faults.add(Fault.of(
                                "tasks[" + i + "].after[" + j + "]",
                                "noSuchTask",
                                task.after().get(j)));
                    }
                }
            }
            return faults;
        }
    }

    /**
     * @param stations ids by station, in an order in which they can be done
     * @param cycleMinutes the greatest load
     * @param lowerBound of stations where a takt was given, of minutes where stations were
     * @param proven whether nothing is better than {@code count} or {@code cycleMinutes}, whichever was sought
     * @param efficiency Σt / (count · cycleMinutes)
     * @param efficiencyAtTakt the same with the takt, where it was given
     * @param gap (found − bound) / found
     * @param smoothness √Σ(greatest load − load)²
     * @param smoothestProven whether no other with as many stations under the same cycle has a smaller sum of squared loads
     */
    public record Results(
            List<List<String>> stations,
            int count,
            double cycleMinutes,
            double lowerBound,
            boolean proven,
            double efficiency,
            Optional<Double> efficiencyAtTakt,
            double gap,
            List<Double> loadMinutes,
            double smoothness,
            boolean smoothestProven) {}

    @Override
    public String name() {
        return "balance";
    }

    @Override
    public List<Source> sources() {
        return List.of(
                Source.seen(
                        "A. Scholl, Data of Assembly Line Balancing Problems, TH Darmstadt, 1993/97",
                        "the two problems and their published optima"),
                Source.memory("A. Scholl, Balancing and Sequencing of Assembly Lines, 1999", "bounds and windows"),
                Source.memory("W. B. Helgeson, D. P. Birnie, 1961", "ranked positional weights, as a start"),
                Source.seen("Lecture notes on assembly line balancing", "efficiency and smoothness"));
    }

    @Override
    public List<Sentence> cautions() {
        return List.of(Sentence.of("engineering.caution.balanceKnowsOnly"));
    }

    @Override
    public Answer<Results> work(Inputs in) {
        Optional<Piece> tooLong = in.taktMinutes()
                .flatMap(takt -> in.tasks().stream()
                        .filter(task -> Plain.compared(task.minutes()) > Plain.compared(takt))
                        .findFirst());
        if (tooLong.isPresent()) {
            return Answer.impossible(
                    "task-longer-than-takt",
                    tooLong.get().id(),
                    tooLong.get().minutes(),
                    in.taktMinutes().orElseThrow());
        }
        List<Task> tasks = in.tasks().stream()
                .map(task -> Task.of(task.id(), task.minutes(), task.after()))
                .toList();
        if (Precedence.of(tasks).isEmpty()) {
            return Answer.impossible("precedence-cycle", String.join(" → ", Precedence.circle(tasks)));
        }
        Found found = inTurn(Work.of(tasks), in);
        return found.placed().isEmpty() ? Answer.impossible("beyond-reckoning") : worked(in, found);
    }

    /** Who waits longer than the search may take gets what the quick rule and the bounds say, which is true as well. */
    private static Found inTurn(Work work, Inputs in) {
        int most = in.tasks().size();
        boolean mine = turn(in.limitS());
        try {
            double limitS = mine ? in.limitS() : 0;
            Aim aim = in.taktMinutes()
                    .map(takt -> Aim.takt(takt, most, limitS))
                    .orElseGet(() -> Aim.stations(in.stations().orElseThrow(), limitS));
            return Search.of(work, aim).orElseThrow().find(progress -> {});
        } finally {
            if (mine) {
                TURN.release();
            }
        }
    }

    private static boolean turn(double seconds) {
        try {
            return TURN.tryAcquire((long) (seconds * 1000), TimeUnit.MILLISECONDS);
        } catch (InterruptedException gone) {
            Thread.currentThread().interrupt();
            return false;
        }
    }

    private Answer<Results> worked(Inputs in, Found found) {
        double sum = in.tasks().stream().mapToDouble(Piece::minutes).sum();
        var results = new Results(
                found.placed().orElseThrow(),
                found.count(),
                found.cycleMinutes(),
                found.lowerBound(),
                found.proven(),
                found.evenness().efficiency(),
                in.taktMinutes().map(takt -> sum / (found.count() * takt)),
                found.gap(),
                found.loadMinutes(),
                found.evenness().smoothness(),
                found.chosen());
        String wanted = in.taktMinutes().isPresent() ? "stations" : "cycle";
        return Answer.worked(new Working<>(
                results,
                Optional.empty(),
                Sentence.of(
                        "engineering.balance." + wanted + (found.proven() ? ".proved" : ".open"),
                        found.count(),
                        in.taktMinutes().orElse(found.cycleMinutes()),
                        found.lowerBound()),
                steps(in, found, sum),
                sources(),
                heeded(found)));
    }

    private List<Sentence> heeded(Found found) {
        return Stream.concat(
                        cautions().stream(),
                        found.exact()
                                ? Stream.empty()
                                : Stream.of(Sentence.of("engineering.caution.millionthOfMinute")))
                .toList();
    }

    private static List<Step> steps(Inputs in, Found found, double sum) {
        Stream<Step> bounds = in.taktMinutes().map(takt -> byBounds(in, takt)).orElseGet(Stream::empty);
        Stream<Step> all = Stream.of(
                Step.of("balanceBound", "m ≥ bound, c ≥ bound", found.lowerBound(), "", "%s", found.lowerBound()),
                Step.of(
                        "balanceEfficiency",
                        "Σt / (m · c)",
                        found.evenness().efficiency(),
                        "",
                        "%s / (%s · %s)",
                        sum,
                        found.count(),
                        found.cycleMinutes()),
                Step.of(
                        "balanceSmoothness",
                        "√Σ(L_max − L)²",
                        found.evenness().smoothness(),
                        "min",
                        "L = %s",
                        found.loadMinutes().stream().map(Plain::text).collect(Collectors.joining(", "))));
        return Stream.concat(bounds, all).toList();
    }

    private static Stream<Step> byBounds(Inputs in, double takt) {
        Work work = Work.of(in.tasks().stream()
                .map(task -> Task.of(task.id(), task.minutes(), List.of()))
                .toList());
        Ticks ticks = Ticks.of(work, DoubleStream.of(takt));
        long[] times = ticks.rows()[0];
        long cycle = ticks.under(takt);
        return Stream.of(
                bound("boundByWork", "⌈Σt / c⌉", Bounds.byWork(times, cycle), takt),
                bound("boundByHalves", "⌈#(t > c/2) + #(t = c/2) / 2⌉", Bounds.byHalves(times, cycle), takt),
                bound(
                        "boundByThirds",
                        "⌈#(t > 2c/3) + 2/3 #(t = 2c/3) + 1/2 #(c/3 < t < 2c/3) + 1/3 #(t = c/3)⌉",
                        Bounds.byThirds(times, cycle),
                        takt));
    }

    private static Step bound(String name, String formula, long bound, double takt) {
        return Step.of(name, formula, (double) bound, "", "c = %s", takt);
    }
}
