package wainbook.quality.chart;

import wainbook.page.Words;

/** By what a chart tells. The numbers of the run rules are L. S. Nelson's, Journal of Quality Technology 16(4), 1984. */
public enum Sign {
    BEYOND(1),
    ONE_SIDE(2),
    TREND(3),
    TWO_OF_THREE(5),
    TOO_GOOD(7),
    /** The range from one value to the next is beyond its own limit. */
    RANGE(0),
    /** The line through the newest vehicles reaches a limit soon. */
    FORECAST(0);

    private final int rule;

    Sign(int rule) {
        this.rule = rule;
    }

    static Sign ofRule(int rule) {
        for (Sign sign : values()) {
            if (sign.rule == rule && rule > 0) {
                return sign;
            }
        }
        throw new IllegalArgumentException("no run rule " + rule);
    }

    /** Whether the process has changed; too little scatter speaks of how values were written down. */
    public boolean change() {
        return this != TOO_GOOD;
    }

    public String words() {
        return Words.of("quality.sign." + name());
    }
}
