package wainbook.engineering.flow.forecast;

import wainbook.engineering.flow.simulation.Draws;

/**
 * One replication after another of a line from its state at minute 0 to the last appointment. For the n-th vehicle of stage i, with
 * m stations there and b places and m′ stations ahead: begun = max(arrived, left(i, n − m)), done = begun + work in the stage's
 * working time, signed = done + wait in the signers', left = max(signed, left(i, n − 1), left(i + 1, n′ − b − m′)), where n′ counts
 * those that went ahead to i + 1. Behind the last stage nobody waits for an elder. All minutes are open ones, save those of finish.
 */
final class Run {

    private final Plan plan;
    private final int last;

    private final Queues queues;
    private final Hours hours;
    private final long[] own;
    private final double[] pace;
    private final boolean[] away;
    private final double now;
    private boolean told;

    /** What the last replication did, by visit, if it was told. */
    final double[] begun;

    final double[] firstDone;
    final double[] cured;
    final double[] firstSigned;
    final double[] done;
    final double[] signed;
    final double[] left;

    /** And by vehicle. */
    final double[] heldUntil;

    final double[] outOfBay;
    /** In clock minutes: left the line, or ready for its appointments; and done with them. */
    final double[] through;

    final double[] finish;

    Run(Plan plan) {
        this.plan = plan;
        this.last = plan.stages - 1;
        this.now = plan.opened(0);
        int visits = plan.vehicles * plan.stages;
        queues = new Queues(plan);
        hours = new Hours(plan);
        own = new long[plan.vehicles];
        pace = new double[plan.vehicles];
        away = new boolean[plan.vehicles];
        begun = new double[visits];
        firstDone = new double[visits];
        cured = new double[visits];
        firstSigned = new double[visits];
        done = new double[visits];
        signed = new double[visits];
        left = new double[visits];
        heldUntil = new double[plan.vehicles];
        outOfBay = new double[plan.vehicles];
        through = new double[plan.vehicles];
        finish = new double[plan.vehicles];
    }

    /**
     * @param key of the replication
     * @param telling whether it shall be known, by visit, what happened; it takes longer
     */
    void replicate(long key, boolean telling) {
        told = telling;
        queues.empty();
        for (int vehicle = 0; vehicle < plan.vehicles; vehicle++) {
            draw(vehicle, key);
        }
        for (int vehicle = 0; vehicle < plan.vehicles; vehicle++) {
            Start start = plan.starts[vehicle];
            if (start.kind().inOrder()) {
                send(vehicle, start);
            }
        }
        for (int stage = 0; stage <= last; stage++) {
            if (plan.somebodyComesBack[stage]) {
                letBackIn(stage, Double.POSITIVE_INFINITY);
            }
        }
        for (int vehicle = 0; vehicle < plan.vehicles; vehicle++) {
            finish(vehicle);
        }
    }

    private void draw(int vehicle, long key) {
        Luck luck = plan.luck[vehicle];
        long mine = Draws.key(key, luck.key);
        own[vehicle] = mine;
        pace[vehicle] = luck.pace(mine);
        heldUntil[vehicle] =
                luck.hold.isEmpty() ? Double.NEGATIVE_INFINITY : plan.opened(luck.heldUntil(mine, plan.lineTime));
        Start start = plan.starts[vehicle];
        away[vehicle] = start.comesBack();
        if (start.comesBack() || start.kind() == Start.Kind.ENDS_IN_BAY) {
            outOfBay[vehicle] = luck.outOfBay(mine, plan.lineTime);
        }
    }

    private void send(int vehicle, Start start) {
        switch (start.kind()) {
            case WAITING, BEFORE -> {
                double arrives = plan.opened(start.minute());
                if (plan.somebodyComesBack[0] && start.kind() == Start.Kind.WAITING) {
                    letBackIn(0, Math.max(arrives, queues.free(0)));
                }
                pass(vehicle, start.stage(), entering(start, arrives));
            }
            default -> {
                int stage = start.stage();
                double gate = resumed(vehicle, stage, start);
                pass(
                        vehicle,
                        stage + 1,
                        leave(vehicle, stage, Math.max(gate, plan.stays(vehicle, stage))) + plan.transport[stage]);
            }
        }
    }

    /** Onto a paced line that is empty at its beginning a vehicle comes with the next pulse. */
    private double entering(Start start, double arrives) {
        return plan.paced && start.kind() == Start.Kind.WAITING && queues.free(0) == Double.NEGATIVE_INFINITY
                ? plan.pulses.after(arrives, 1)
                : arrives;
    }

    /** Through the rest of the line, from this stage on. */
    private void pass(int vehicle, int first, double arrived) {
        double here = arrived;
        long mine = own[vehicle];
        double slow = pace[vehicle];
        boolean unhindered = plan.luck[vehicle].hold.isEmpty() && !told;
        for (int stage = first; stage <= last; stage++) {
            int visit = vehicle * plan.stages + stage;
            // Whoever set off to a stage without places has waited for its station already.
            double begins = stage == first || plan.places[stage] ? Math.max(here, queues.free(stage)) : here;
            double gate;
            if (unhindered && plan.plain[visit]) {
                double work = slow * plan.work.at(visit, hours.uniform(mine, stage, Luck.WORK));
                double ends = hours.worked(stage, begins, work);
                double signed = hours.signature(mine, stage, Luck.SIGNATURE, ends);
                double u = hours.refusal(mine, stage);
                gate = u == 0 ? signed : presented(vehicle, stage, ends, signed, u);
            } else {
                gate = visited(vehicle, stage, begins);
            }
            double goes = plan.paced ? Math.max(gate, plan.stays(visit, stage, begins)) : gate;
            here = leave(vehicle, stage, goes) + plan.transport[stage];
        }
    }

    /** The same at a visit with something to heed, or to tell. */
    private double visited(int vehicle, int stage, double begins) {
        int visit = vehicle * plan.stages + stage;
        begun[visit] = begins;
        if (plan.passing[visit]) {
            return all(visit, begins);
        }
        double work = pace[vehicle] * plan.work.at(visit, hours.uniform(own[vehicle], stage, Luck.WORK));
        cure(visit, hours.worked(stage, ready(vehicle, visit, begins), work));
        return presented(
                vehicle, stage, firstDone[visit], hours.signature(own[vehicle], stage, Luck.SIGNATURE, cured[visit]));
    }

    /** The stage in which the vehicle stands at minute 0. */
    private double resumed(int vehicle, int stage, Start start) {
        int visit = vehicle * plan.stages + stage;
        begun[visit] = now;
        if (plan.passing[visit]) {
            return all(visit, now);
        }
        return switch (start.kind()) {
            case AT_WORK -> {
                double slow = pace[vehicle];
                double rest =
                        plan.work.of(visit).left(start.elapsed() / slow, hours.uniform(own[vehicle], stage, Luck.WORK));
                cure(visit, hours.worked(stage, ready(vehicle, visit, now), slow * rest));
                yield presented(
                        vehicle,
                        stage,
                        firstDone[visit],
                        hours.signature(own[vehicle], stage, Luck.SIGNATURE, cured[visit]));
            }
            case UNSIGNED -> {
                firstDone[visit] = now;
                cured[visit] = Math.max(now, Math.max(plan.notBefore[visit], plan.curedAt[visit]));
                double u = hours.uniform(own[vehicle], stage, Luck.SIGNATURE);
                double wait = plan.signature.of(stage).left(start.elapsed(), u);
                yield presented(vehicle, stage, now, plan.signing[stage].add(cured[visit], wait));
            }
            default -> all(visit, now);
        };
    }

    private double ready(int vehicle, int visit, double from) {
        double ready = Math.max(from, plan.notBefore[visit]);
        return plan.luck[vehicle].stopsWork ? Math.max(ready, heldUntil[vehicle]) : ready;
    }

    private void cure(int visit, double ends) {
        firstDone[visit] = ends;
        double cures = plan.curing[visit] > 0 ? plan.opened(plan.minute(ends) + plan.curing[visit]) : ends;
        cured[visit] = Math.max(Math.max(ends, cures), plan.curedAt[visit]);
    }

    /** The gate, signed or refused, until it is signed. */
    private double presented(int vehicle, int stage, double ready, double first) {
        return presented(vehicle, stage, ready, first, hours.refusal(own[vehicle], stage));
    }

    private double presented(int vehicle, int stage, double ready, double first, double u) {
        double gate = first;
        double again = ready;
        double chance = plan.refusal[stage];
        int purpose = Luck.AGAIN;
        for (double beyond = chance; 1 - u <= beyond; beyond *= chance) {
            double work = pace[vehicle] * plan.again.at(stage, hours.uniform(own[vehicle], stage, purpose));
            again = hours.worked(stage, gate, work);
            gate = hours.signature(own[vehicle], stage, purpose + 1, again);
            purpose += 2;
        }
        if (told) {
            tell(vehicle * plan.stages + stage, first, again, gate);
        }
        return gate;
    }

    private void tell(int visit, double first, double again, double gate) {
        firstSigned[visit] = first;
        done[visit] = again;
        signed[visit] = gate;
    }

    /** When the vehicle leaves the stage, with whoever comes back from a bay before it gets to the next. */
    private double leave(int vehicle, int stage, double gate) {
        double ready = gate >= heldUntil[vehicle] ? gate : heldUntil[vehicle];
        if (stage == last) {
            queues.leavesInAnyOrder(stage, ready);
        } else {
            // At a single station the elder left before the work began.
            ready = plan.stations[stage] > 1 ? Math.max(ready, queues.newest(stage)) : ready;
            if (plan.somebodyComesBack[stage + 1]) {
                letBackIn(stage + 1, Math.max(ready, queues.room(stage + 1)));
            }
            ready = Math.max(ready, queues.room(stage + 1));
            queues.leaves(stage, ready);
        }
        left[vehicle * plan.stages + stage] = ready;
        return ready;
    }

    /** Those who come back to this stage before a vehicle that would set off to it, or begin at it, at this minute. */
    private void letBackIn(int stage, double leaves) {
        double until = leaves;
        for (int next = nextBack(stage, until); next >= 0; next = nextBack(stage, until)) {
            away[next] = false;
            pass(next, stage, Math.max(plan.opened(outOfBay[next]), queues.room(stage)));
            until = Math.max(until, stage == 0 ? queues.free(0) : queues.room(stage));
        }
    }

    private int nextBack(int stage, double until) {
        int next = -1;
        for (int vehicle = 0; vehicle < plan.vehicles; vehicle++) {
            if (away[vehicle]
                    && plan.starts[vehicle].stage() == stage
                    && plan.opened(outOfBay[vehicle]) <= until
                    && (next < 0 || outOfBay[vehicle] < outOfBay[next])) {
                next = vehicle;
            }
        }
        return next;
    }

    private void finish(int vehicle) {
        Start start = plan.starts[vehicle];
        double minute = switch (start.kind()) {
            case FINISHED, BEHIND -> start.minute();
            case ENDS_IN_BAY -> outOfBay[vehicle];
            default -> plan.minute(left[vehicle * plan.stages + last]);
        };
        through[vehicle] = minute;
        if (start.kind() != Start.Kind.FINISHED) {
            int next = start.kind() == Start.Kind.BEHIND ? start.stage() : 0;
            for (; next < plan.appointmentKey.length; next++) {
                minute = plan.luck[vehicle].kept(
                        next, minute, plan.appointments.get(next), Draws.key(own[vehicle], plan.appointmentKey[next]));
            }
        }
        finish[vehicle] = minute;
    }

    private double all(int visit, double minute) {
        firstDone[visit] = minute;
        cured[visit] = minute;
        tell(visit, minute, minute, minute);
        return minute;
    }
}
