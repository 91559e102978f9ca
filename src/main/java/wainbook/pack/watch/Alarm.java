package wainbook.pack.watch;

/** What a reading of a watched pack says that cannot wait. */
public enum Alarm {
    /** Warmer against the air by more than {@link FireRule#MOST_RISE_K} than within the hour before. */
    RISE,
    /** At {@link FireRule#HOT_C} or above. */
    HOT
}
