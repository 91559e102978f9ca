package wainbook.quality.record;

import wainbook.page.Words;

/** By what a record is unlikely. */
public enum Rule {
    SAME_VALUE(false),
    TARGET_TYPED(false),
    SLIP(false),
    COPIED(false),
    TOO_FAST(false),
    BATCH(false),
    BACK_DATED(false),
    TWO_PLACES(false),
    DIGITS(true),
    LITTLE_SCATTER(true),
    JUST_INSIDE(true);

    private final boolean statistic;

    Rule(boolean statistic) {
        this.statistic = statistic;
    }

    /** Whether it is drawn from many entries of one person: asked only under the works' agreement. */
    public boolean statistic() {
        return statistic;
    }

    public String title() {
        return Words.of("quality.rule." + name());
    }
}
