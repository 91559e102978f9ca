package wainbook.engineering.balance;

/** A kind of vehicle with its share of all; shares need not add up to 1. */
public record Kind(String name, double share) {

    public static final Kind ONLY = new Kind("", 1);
}
