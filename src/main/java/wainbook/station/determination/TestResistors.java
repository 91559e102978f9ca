package wainbook.station.determination;

import static wainbook.station.determination.Figures.figure;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import wainbook.engineering.Refusal;
import wainbook.engineering.electrical.MonitorTestResistor;
import wainbook.engineering.electrical.MonitorTestResistor.Inputs;
import wainbook.engineering.electrical.MonitorTestResistor.Results;
import wainbook.station.StationSaying.Figure;

/**
 * The resistors for a monitor's test, as they can be bought: the next value of the series E24 (IEC 60063, from memory) on the
 * sure side, downward where the monitor must warn and upward where it must not.
 */
public record TestResistors(Inputs given, Results exact, double alarmOhm, Optional<Double> clearOhm) {

    private static final double[] E24 = {
        1.0, 1.1, 1.2, 1.3, 1.5, 1.6, 1.8, 2.0, 2.2, 2.4, 2.7, 3.0, 3.3, 3.6, 3.9, 4.3, 4.7, 5.1, 5.6, 6.2, 6.8, 7.5,
        8.2, 9.1
    };
    private static final double POWER_MARGIN = 2;
    private static final double VOLTAGE_RATING_V = 1000;
    private static final double ROUNDING = 1e-9;

    /** The resistors, or why there are none. */
    public static final class Choice {
        private final Optional<TestResistors> chosen;
        private final Optional<Refusal> refusal;

        private Choice(Optional<TestResistors> chosen, Optional<Refusal> refusal) {
            this.chosen = chosen;
            this.refusal = refusal;
        }

        public <T> T fold(Function<TestResistors, T> found, Function<Refusal, T> none) {
            return chosen.map(found).orElseGet(() -> none.apply(refusal.orElseThrow()));
        }
    }

    public static Choice of(Figures in) {
        Inputs inputs = new Inputs(
                in.number("isolationOhm"),
                in.number("setOhmPerVolt"),
                in.number("workingV"),
                in.number("deviceErrorPercent"),
                in.number("legalOhmPerVolt"));
        return new MonitorTestResistor()
                .of(inputs)
                .fold(
                        working -> new Choice(Optional.of(bought(inputs, working.results())), Optional.empty()),
                        faults -> {
                            throw new IllegalStateException("a sheet's monitor is no monitor: " + faults);
                        },
                        refusal -> new Choice(Optional.empty(), Optional.of(refusal)));
    }

    private static TestResistors bought(Inputs given, Results exact) {
        return new TestResistors(
                given,
                exact,
                downTo(exact.mustAlarmOhm()),
                exact.mustNotAlarmOhm().map(TestResistors::upTo));
    }

    /** Both rails against the chassis with the resistor in place. */
    public double together(double resistorOhm) {
        return 1 / (1 / resistorOhm + 1 / given.isolationOhm());
    }

    /** Low enough for a sure alarm, and not below what the law asks. */
    public boolean mustAlarmWith(double resistorOhm) {
        double ohm = together(resistorOhm);
        double sureOhm = given.setOhmPerVolt() * given.workingV() / (1 + given.deviceErrorPercent() / 100);
        return ohm <= sureOhm * (1 + ROUNDING) && ohm >= given.legalOhmPerVolt() * given.workingV();
    }

    /** What each must stand: twice the power at the working voltage. */
    public String powerW(double resistorOhm) {
        double watt = POWER_MARGIN * given.workingV() * given.workingV() / resistorOhm;
        return watt <= 2 ? "2" : String.valueOf((int) Math.ceil(watt));
    }

    public String ratingV() {
        return String.valueOf((int) Math.max(VOLTAGE_RATING_V, Math.ceil(given.workingV() / 100) * 100));
    }

    public List<Figure> inputs() {
        return List.of(
                figure("isolationOhm", given.isolationOhm()),
                figure("setOhmPerVolt", given.setOhmPerVolt()),
                figure("workingV", given.workingV()),
                figure("deviceErrorPercent", given.deviceErrorPercent()),
                figure("legalOhmPerVolt", given.legalOhmPerVolt()));
    }

    static double downTo(double ohm) {
        double decade = Math.pow(10, Math.floor(Math.log10(ohm) + ROUNDING));
        double best = E24[E24.length - 1] * decade / 10;
        for (double step : E24) {
            best = step * decade <= ohm * (1 + ROUNDING) ? step * decade : best;
        }
        return Figures.kept(best).doubleValue();
    }

    static double upTo(double ohm) {
        double decade = Math.pow(10, Math.floor(Math.log10(ohm) + ROUNDING));
        for (double step : E24) {
            if (step * decade >= ohm * (1 - ROUNDING)) {
                return Figures.kept(step * decade).doubleValue();
            }
        }
        return Figures.kept(10 * decade).doubleValue();
    }
}
