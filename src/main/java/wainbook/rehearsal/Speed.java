package wainbook.rehearsal;

import java.time.Duration;

/** How long a whole shift takes to be watched. */
public enum Speed {
    ONE_MINUTE(1),
    FIVE_MINUTES(5),
    A_QUARTER(15);

    private final int minutes;

    Speed(int minutes) {
        this.minutes = minutes;
    }

    public int minutes() {
        return minutes;
    }

    /** How many times faster than by day a shift of this length goes. */
    double times(Duration shift) {
        return shift.toMillis() / (double) Duration.ofMinutes(minutes).toMillis();
    }
}
