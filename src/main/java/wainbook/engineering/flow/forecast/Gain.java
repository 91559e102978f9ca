package wainbook.engineering.flow.forecast;

import java.util.stream.IntStream;
import wainbook.engineering.flow.forecast.model.Line;
import wainbook.engineering.flow.forecast.outcome.Finish;
import wainbook.engineering.flow.forecast.outcome.Outlook;
import wainbook.engineering.flow.score.PairedDifference;

/**
 * What a change does for a line: two forecasts with the same luck.
 *
 * @param lateMinutes that vanish over all vehicles, in working minutes, with their 95 % interval; negative if they grow
 * @param earlier vehicles that finish earlier, by a minute at least and by more than chance in drawing
 */
public record Gain(PairedDifference lateMinutes, int earlier) {

    private static final double LEAST_MINUTES = 1;

    /** @param after the same line, changed; its vehicles in any order */
    public static Gain of(Line before, Line after, Effort effort) {
        return of(before, Forecast.of(before, effort), after, Forecast.of(after, effort));
    }

    /** @param was and {@code is}: forecasts of the two lines, of one effort with as many replications in any case */
    public static Gain of(Line before, Forecast was, Line after, Forecast is) {
        return new Gain(Lateness.of(before, was).vanishing(Lateness.of(after, is, Lateness.counted(before))), (int)
                IntStream.range(0, before.vehicles().size())
                        .filter(at -> earlier(was.vehicles().get(at), is))
                        .count());
    }

    private static boolean earlier(Outlook before, Forecast is) {
        Finish was = before.finish();
        Finish now = is.of(before.vehicle()).finish();
        if (!Double.isFinite(was.median()) || !Double.isFinite(now.median())) {
            return false;
        }
        PairedDifference later = now.laterThan(was);
        return later.mean() <= -LEAST_MINUTES && later.high() < 0;
    }

    /** It can be told from nothing. */
    public boolean shown() {
        return lateMinutes.low() > 0;
    }
}
