package wainbook.engineering.energy.consumers;

import java.util.List;

/**
 * Work at a shaft that turns evenly, from torques read once a second. The two rules differ by half of the first and last reading:
 * say which was used.
 */
public record ShaftWork(double turnsPerMinute, List<Double> torqueNm) {

    private static final double JOULES_A_WH = 3600;

    public ShaftWork {
        torqueNm = List.copyOf(torqueNm);
    }

    /** Each reading holds for a second. */
    public double byRectanglesWh() {
        return wh(sum());
    }

    /** Straight lines from reading to reading, so that it lasts a second less. */
    public double byTrapezoidWh() {
        return torqueNm.isEmpty() ? 0 : wh(sum() - (torqueNm.get(0) + torqueNm.get(torqueNm.size() - 1)) / 2);
    }

    private double sum() {
        return torqueNm.stream().mapToDouble(Double::doubleValue).sum();
    }

    private double wh(double newtonMetreSeconds) {
        return newtonMetreSeconds * turnsPerMinute * 2 * Math.PI / 60 / JOULES_A_WH;
    }
}
