package wainbook.engineering.energy.store;

/**
 * Charging of a fleet in one window. The mean is the least that the connection must give: look at the latest return and the earliest
 * departure of each vehicle too.
 */
public record Depot(int vehicles, double eachKwh, double efficiency, double windowHours) {

    public double takenKwh() {
        return vehicles * eachKwh / efficiency;
    }

    public double meanKw() {
        return takenKwh() / windowHours;
    }
}
