package wainbook.order.specification.page;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.stream.DoubleStream;
import wainbook.engineering.energy.driving.Spent;
import wainbook.page.chart.Stacks;

/** A part of the day with where its energy goes, in kWh. */
public record EnergyLine(String name, double kilometres, double hoursTaken, Spent spent) {

    private static final int COLUMNS = 14;

    static EnergyLine of(String name, double km, double hours, Spent spent) {
        return new EnergyLine(name, km, hours, spent);
    }

    public String km() {
        return RowView.one(kilometres);
    }

    public String hours() {
        return two(hoursTaken);
    }

    public String rolling() {
        return two(spent.rollingKwh());
    }

    public String air() {
        return two(spent.airKwh());
    }

    public String climb() {
        return two(spent.climbKwh());
    }

    public String braked() {
        return two(spent.brakedKwh());
    }

    public String traction() {
        return two(spent.tractionKwh());
    }

    public String driveline() {
        return two(spent.drivelineKwh());
    }

    public String back() {
        return two(-spent.backKwh());
    }

    public String consumers() {
        return two(spent.consumersKwh());
    }

    public String packLoss() {
        return two(spent.packLossKwh());
    }

    public String total() {
        return two(spent.totalKwh());
    }

    public String kwhPerKm() {
        return two(spent.totalKwh() / kilometres);
    }

    /** Pieces of the bar: what is drawn, and a line at what is left of it after what comes back. */
    static Stacks.Stack stack(String name, Spent spent, double bodyKwh, double heatKwh) {
        double left = spent.totalKwh() + bodyKwh + heatKwh;
        return new Stacks.Stack(
                name,
                List.of(
                        spent.rollingKwh(),
                        spent.airKwh(),
                        Math.max(0, spent.climbKwh()),
                        spent.brakedKwh(),
                        spent.drivelineKwh() + spent.packLossKwh(),
                        spent.consumersKwh(),
                        bodyKwh,
                        heatKwh),
                left,
                RowView.one(left) + " kWh");
    }

    List<String> cells() {
        var cells = new ArrayList<>(List.of(name));
        DoubleStream.of(
                        kilometres,
                        hoursTaken,
                        spent.rollingKwh(),
                        spent.airKwh(),
                        spent.climbKwh(),
                        spent.brakedKwh(),
                        spent.tractionKwh(),
                        spent.drivelineKwh(),
                        spent.backKwh(),
                        spent.consumersKwh(),
                        spent.packLossKwh(),
                        spent.totalKwh(),
                        spent.totalKwh() / kilometres)
                .mapToObj(value -> String.format(Locale.ROOT, "%.4f", value))
                .forEach(cells::add);
        return cells;
    }

    /** A row of the file that has a total alone. */
    static List<String> total(String name, double kwh) {
        var cells = new ArrayList<>(Collections.nCopies(COLUMNS, ""));
        cells.set(0, name);
        cells.set(COLUMNS - 2, String.format(Locale.ROOT, "%.4f", kwh));
        return cells;
    }

    static String two(double value) {
        return String.format(Locale.ROOT, "%.2f", value).replace('-', '−');
    }
}
