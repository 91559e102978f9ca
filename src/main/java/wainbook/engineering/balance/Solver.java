package wainbook.engineering.balance;

import com.google.ortools.Loader;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverSolutionCallback;
import com.google.ortools.sat.CpSolverStatus;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import java.util.stream.IntStream;

/**
 * CP-SAT with one worker and a fixed seed, so that a search that ends within its time gives the same answer each time. Its native
 * code is loaded at the first question, once.
 */
final class Solver {

    /** What a solve came to. */
    enum Ending {
        /** A balance, and none is better. */
        PROVED,
        /** A balance, and the time was up. */
        FOUND,
        /** There is none. */
        NONE,
        /** The time was up. */
        OPEN
    }

    /**
     * @param placed each task's station, from 0
     * @param bound of the objective, where there is one
     */
    record Solved(Ending ending, Optional<int[]> placed, double objective, double bound) {}

    private static final int SEED = 1;

    /** Loaded when it is first asked. */
    private static final class Native {
        private static final boolean THERE = load();

        private static boolean load() {
            try {
                Loader.loadNativeLibraries();
                return true;
            } catch (UnsatisfiedLinkError | RuntimeException absent) {
                return false;
            }
        }
    }

    private final AtomicReference<CpSolver> running = new AtomicReference<>();
    private volatile boolean stopped;

    /** Whether there is native code for this machine; without it only the quick rule and the bounds speak. */
    static boolean there() {
        return Native.THERE;
    }

    void stop() {
        stopped = true;
        Optional.ofNullable(running.get()).ifPresent(CpSolver::stopSearch);
    }

    boolean stopped() {
        return stopped;
    }

    /** What is heard on the way. */
    interface Better {
        void found(double objective, double bound);
    }

    /**
     * The bound is told with each better balance only: the callback for bounds by themselves ends the whole virtual machine with
     * this version.
     */
    Solved solve(Model asked, CpModel model, double seconds, Better heard) {
        if (stopped || seconds <= 0) {
            return new Solved(Ending.OPEN, Optional.empty(), 0, Double.NEGATIVE_INFINITY);
        }
        var solver = new CpSolver();
        solver.getParameters().setNumWorkers(1).setRandomSeed(SEED).setMaxTimeInSeconds(seconds);
        running.set(solver);
        try {
            CpSolverStatus status = solver.solve(model, new CpSolverSolutionCallback() {
                @Override
                public void onSolutionCallback() {
                    heard.found(objectiveValue(), bestObjectiveBound());
                    endIfStopped(solver);
                }
            });
            return read(asked, solver, status);
        } finally {
            running.set(null);
        }
    }

    private void endIfStopped(CpSolver solver) {
        if (stopped) {
            solver.stopSearch();
        }
    }

    private static Solved read(Model asked, CpSolver solver, CpSolverStatus status) {
        return switch (status) {
            case OPTIMAL, FEASIBLE ->
                new Solved(
                        status == CpSolverStatus.OPTIMAL ? Ending.PROVED : Ending.FOUND,
                        Optional.of(IntStream.range(0, asked.size())
                                .map(task -> (int) solver.value(asked.station(task)))
                                .toArray()),
                        solver.objectiveValue(),
                        solver.bestObjectiveBound());
            case INFEASIBLE -> new Solved(Ending.NONE, Optional.empty(), 0, Double.POSITIVE_INFINITY);
            case UNKNOWN, MODEL_INVALID, UNRECOGNIZED ->
                new Solved(Ending.OPEN, Optional.empty(), 0, solver.bestObjectiveBound());
        };
    }
}
