package wainbook.engineering.flow.forecast;

import java.util.Arrays;

/** When vehicles left each stage, in the order in which they did: whoever comes after them asks. */
final class Queues {

    private final Plan plan;
    private final int[] count;

    /** Of each stage in the order of its vehicles: stage · vehicles + number. */
    private final double[] leavings;

    Queues(Plan plan) {
        this.plan = plan;
        this.count = new int[plan.stages];
        this.leavings = new double[plan.vehicles * plan.stages];
    }

    void empty() {
        Arrays.fill(count, 0);
    }

    void leaves(int stage, double minute) {
        leavings[stage * plan.vehicles + count[stage]++] = minute;
    }

    /** Behind whoever left before it, whatever its place in the line. */
    void leavesInAnyOrder(int stage, double minute) {
        int first = stage * plan.vehicles;
        int place = first + count[stage]++;
        for (; place > first && leavings[place - 1] > minute; place--) {
            leavings[place] = leavings[place - 1];
        }
        leavings[place] = minute;
    }

    /** When the one before left; negative infinity for the first. */
    double newest(int stage) {
        return count[stage] == 0 ? Double.NEGATIVE_INFINITY : leavings[stage * plan.vehicles + count[stage] - 1];
    }

    /** When there is room for one more at the stage or on a place in front of it. */
    double room(int stage) {
        int before = count[stage] - plan.room[stage];
        return before < 0 || stage == 0 ? Double.NEGATIVE_INFINITY : leavings[stage * plan.vehicles + before];
    }

    /** When a station of the stage is free. */
    double free(int stage) {
        int before = count[stage] - plan.stations[stage];
        return before < 0 ? Double.NEGATIVE_INFINITY : leavings[stage * plan.vehicles + before];
    }
}
