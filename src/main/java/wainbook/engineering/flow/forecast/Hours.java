package wainbook.engineering.flow.forecast;

import wainbook.engineering.flow.simulation.Draws;

/** When work and waiting for a signature end, in open minutes: what is asked lies in the first interval nearly always. */
final class Hours {

    private final Plan plan;

    Hours(Plan plan) {
        this.plan = plan;
    }

    double worked(int stage, double from, double minutes) {
        double ends = from + minutes;
        if (from >= plan.workingFrom[stage] && ends <= plan.workingTo[stage]) {
            return ends;
        }
        return minutes > 0 ? plan.working[stage].add(from, minutes) : plan.working[stage].next(from);
    }

    double signature(long mine, int stage, int purpose, double from) {
        if (plan.signedAtOnce[stage]) {
            return from;
        }
        double wait = plan.signature.at(stage, uniform(mine, stage, purpose));
        double ends = from + wait;
        return from >= plan.signingFrom[stage] && ends <= plan.signingTo[stage]
                ? ends
                : plan.signing[stage].add(from, wait);
    }

    /** The number that says how often the gate is refused; 0 where it is signed the first time. */
    double refusal(long mine, int stage) {
        double chance = plan.refusal[stage];
        double u = chance > 0 ? uniform(mine, stage, Luck.REFUSAL) : 0;
        return 1 - u <= chance ? u : 0;
    }

    double uniform(long mine, int stage, int purpose) {
        return Draws.uniform(Draws.key(mine, plan.stageKey[stage] + purpose));
    }
}
