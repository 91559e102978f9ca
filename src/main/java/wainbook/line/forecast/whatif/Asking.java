package wainbook.line.forecast.whatif;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.List;
import wainbook.act.Outcome;
import wainbook.act.Reason;
import wainbook.line.forecast.Forecasts;
import wainbook.line.forecast.state.TheLineNow;

/** Asks the forecast what would be. It writes nothing. */
@ApplicationScoped
public class Asking {

    private final Forecasts forecasts;

    Asking(Forecasts forecasts) {
        this.forecasts = forecasts;
    }

    /** The line of which is asked. */
    public TheLineNow line(Instant now) {
        return forecasts.line(now);
    }

    /** Refused at the fields that are out of range, or name what the line does not know. */
    public Outcome<Answer> answer(TheLineNow line, WhatIf asked) {
        List<Reason> against = new Limits(line).against(asked);
        return against.isEmpty() ? Outcome.done(Answer.of(line, asked)) : Outcome.refused(against);
    }
}
