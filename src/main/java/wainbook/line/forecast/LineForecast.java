package wainbook.line.forecast;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import wainbook.engineering.flow.forecast.Effort;
import wainbook.engineering.flow.forecast.Forecast;
import wainbook.engineering.flow.forecast.outcome.Outlook;
import wainbook.line.forecast.state.OnHand;
import wainbook.line.forecast.state.TheLineNow;

/** The line as it stood and what comes of it. */
public record LineForecast(TheLineNow line, Forecast forecast) {

    /** Always the same, so that the same state has the same forecast, and that two of them differ by what happened alone. */
    public static final long SEED = 20_260_302;

    private static final double EVEN = 0.5;

    /** One vehicle. */
    public record Of(OnHand vehicle, Outlook outlook) {

        /** Every vehicle is promised for a day. */
        public double odds() {
            return outlook.promise().orElseThrow().share();
        }

        public boolean missesProbably() {
            return odds() < EVEN;
        }
    }

    public static LineForecast of(TheLineNow line) {
        return new LineForecast(line, Forecast.of(line.line(), Effort.usual(SEED)));
    }

    /** In the order of the line. */
    public List<Of> vehicles() {
        return Stream.iterate(0, i -> i + 1)
                .limit(line.vehicles().size())
                .map(i -> new Of(line.vehicles().get(i), forecast.vehicles().get(i)))
                .toList();
    }

    public List<Of> lowestOddsFirst() {
        return vehicles().stream().sorted(Comparator.comparing(Of::odds)).toList();
    }
}
