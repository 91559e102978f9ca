package wainbook.engineering.flow.forecast;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import wainbook.engineering.flow.forecast.model.WorkingTime;
import wainbook.engineering.flow.forecast.outcome.Cause;

/**
 * What the vehicles' time goes into, added up over replications. All is counted in the working minutes of the line, so that the parts
 * of a vehicle's time make the whole of it; a replication without an end does not count.
 */
final class Tally {

    private static final Map<Cause, Integer> PLACES = new EnumMap<>(Cause.class);

    static {
        for (Cause cause : Cause.values()) {
            PLACES.put(cause, PLACES.size());
        }
    }

    private static final int CAUSES = PLACES.size();

    private final Plan plan;
    private final WorkingTime time;
    private final double[] atStages;
    private final double[] besides;
    private final int[] counted;

    Tally(Plan plan) {
        this.plan = plan;
        this.time = plan.lineTime;
        this.atStages = new double[plan.vehicles * plan.stages * CAUSES];
        this.besides = new double[plan.vehicles * CAUSES];
        this.counted = new int[plan.vehicles];
    }

    static Tally sum(Plan plan, List<Tally> parts) {
        var sum = new Tally(plan);
        for (Tally part : parts) {
            add(sum.atStages, part.atStages);
            add(sum.besides, part.besides);
            for (int vehicle = 0; vehicle < plan.vehicles; vehicle++) {
                sum.counted[vehicle] += part.counted[vehicle];
            }
        }
        return sum;
    }

    /** The first stage that the vehicle still has to leave; behind the last for one that is through. */
    int first(int vehicle) {
        Start start = plan.starts[vehicle];
        return start.kind().inOrder() || start.comesBack() ? start.stage() : plan.stages;
    }

    void add(Run run) {
        for (int vehicle = 0; vehicle < plan.vehicles; vehicle++) {
            Start start = plan.starts[vehicle];
            if (start.kind() != Start.Kind.FINISHED && Double.isFinite(run.finish[vehicle])) {
                counted[vehicle]++;
                double reached = before(run, vehicle, start);
                for (int stage = first(vehicle); stage < plan.stages; stage++) {
                    reached = at(run, vehicle, stage, reached);
                }
                beside(vehicle, Cause.APPOINTMENT, run.through[vehicle], run.finish[vehicle]);
            }
        }
    }

    Map<Cause, Double> at(int visit) {
        return means(atStages, visit, counted[visit / plan.stages]);
    }

    Map<Cause, Double> besides(int vehicle) {
        return means(besides, vehicle, counted[vehicle]);
    }

    /**
     * Books the time before the first stage.
     *
     * @return the open minute at which the vehicle reaches it
     */
    private double before(Run run, int vehicle, Start start) {
        double reached = switch (start.kind()) {
            case WAITING, BEFORE, BEHIND -> start.minute();
            case COMES_BACK, ENDS_IN_BAY -> run.outOfBay[vehicle];
            default -> 0;
        };
        Cause cause = switch (start.kind()) {
            case WAITING -> Cause.RELEASE;
            case BEFORE -> Cause.TRANSPORT;
            case BEHIND -> Cause.APPOINTMENT;
            default -> Cause.BAY;
        };
        beside(vehicle, cause, 0, reached);
        return plan.opened(reached);
    }

    private double at(Run run, int vehicle, int stage, double reached) {
        int visit = vehicle * plan.stages + stage;
        Start start = plan.starts[vehicle];
        double begun = run.begun[visit];
        book(visit, Cause.PLACE, reached, begun);
        boolean worked =
                !plan.passing[visit] && (stage > start.stage() || start.kind().works());
        if (worked) {
            double parts = Math.min(Math.max(begun, plan.notBefore[visit]), run.firstDone[visit]);
            double held = plan.luck[vehicle].stopsWork ? Math.max(parts, run.heldUntil[vehicle]) : parts;
            double from = Math.min(held, run.firstDone[visit]);
            book(visit, Cause.PARTS, begun, parts);
            book(visit, Cause.HELD, parts, from);
            book(visit, Cause.WORK, from, run.firstDone[visit]);
        }
        book(visit, Cause.CURING, run.firstDone[visit], run.cured[visit]);
        book(visit, Cause.SIGNATURE, run.cured[visit], run.firstSigned[visit]);
        if (run.signed[visit] > run.firstSigned[visit]) {
            book(visit, Cause.REWORK, run.firstSigned[visit], run.done[visit]);
            book(visit, Cause.SIGNATURE, run.done[visit], run.signed[visit]);
        }
        double free = Math.max(run.signed[visit], Math.min(run.heldUntil[vehicle], run.left[visit]));
        book(visit, Cause.HELD, run.signed[visit], free);
        book(visit, Cause.PLACE, free, run.left[visit]);
        if (stage == plan.stages - 1) {
            return run.left[visit];
        }
        double next = run.left[visit] + plan.transport[stage];
        book(visit, Cause.TRANSPORT, run.left[visit], next);
        return next;
    }

    /** @param from and {@code to}: open minutes */
    private void book(int visit, Cause cause, double from, double to) {
        if (to > from) {
            atStages[visit * CAUSES + PLACES.get(cause)] +=
                    time.worked(plan.minute(to)) - time.worked(plan.minute(from));
        }
    }

    private void beside(int vehicle, Cause cause, double from, double to) {
        if (to > from) {
            besides[vehicle * CAUSES + PLACES.get(cause)] += time.worked(to) - time.worked(from);
        }
    }

    private static void add(double[] sum, double[] part) {
        for (int i = 0; i < sum.length; i++) {
            sum[i] += part[i];
        }
    }

    private static Map<Cause, Double> means(double[] sums, int at, int counted) {
        Map<Cause, Double> means = new EnumMap<>(Cause.class);
        for (Cause cause : Cause.values()) {
            double sum = sums[at * CAUSES + PLACES.get(cause)];
            if (sum > 0) {
                means.put(cause, sum / counted);
            }
        }
        return means;
    }
}
