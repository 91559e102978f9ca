package wainbook.engineering.specification;

/**
 * What the coldest day that counts takes besides.
 *
 * @param heatingKwh of cab or saloon
 * @param conditioningKwh to keep packs warm that left warm
 * @param packShare of what packs give in the warmth, that they give on this day, above 0 to 1
 */
public record ColdDay(double heatingKwh, double conditioningKwh, double packShare) {

    /** Packs as in the warmth, and nothing to keep them so: what a specification meant before it asked. */
    public static ColdDay heating(double kwh) {
        return new ColdDay(kwh, 0, 1);
    }

    public double kwh() {
        return heatingKwh + conditioningKwh;
    }
}
