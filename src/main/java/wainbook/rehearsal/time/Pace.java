package wainbook.rehearsal.time;

import wainbook.process.plan.Plan;
import wainbook.process.sheet.CheckItem;
import wainbook.process.sheet.CheckSheet;
import wainbook.process.sheet.Condition;

/** How quickly a crew works so that a stage is done within its slots, isolations and waits included. */
public final class Pace {

    private static final double GATE_AND_MOVE_MIN = 26;
    private static final double RESTORING_MIN = 9;
    private static final double LIVE_WORK_MIN = 3;
    private static final double STEP_MIN = 0.4;
    private static final double QUICKEST = 0.12;
    private static final double SLOWEST = 0.85;

    private Pace() {}

    /** Clock minutes for a planned minute of the people's time. */
    public static double of(CheckSheet sheet, Plan plan, int slots) {
        double available = slots * Timetable.TAKT.toMinutes() - GATE_AND_MOVE_MIN - besideWork(sheet, plan);
        return Math.max(QUICKEST, Math.min(SLOWEST, available / Math.max(1, sheet.plannedMinutes())));
    }

    private static double besideWork(CheckSheet sheet, Plan plan) {
        double minutes = 0;
        boolean isolated = false;
        for (CheckItem item : sheet.items()) {
            boolean dead = item.condition() == Condition.DEAD || item.condition() == Condition.TEST_UNDER_ISOLATION;
            if (dead && !isolated) {
                isolated = true;
                minutes += proof(plan) + RESTORING_MIN;
            }
            minutes += item.parts().stream()
                            .filter(part -> plan.foresees(part.part()))
                            .count()
                    * proof(plan);
            minutes += item.condition() == Condition.LIVE ? LIVE_WORK_MIN : 0;
            minutes += item.asks() instanceof wainbook.process.sheet.Ask.Wait wait ? wait.minutes() : 0;
        }
        return minutes;
    }

    private static double proof(Plan plan) {
        return plan.waitMinutes() + (plan.points().size() * 2 + 8) * STEP_MIN;
    }
}
