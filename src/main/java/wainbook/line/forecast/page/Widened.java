package wainbook.line.forecast.page;

import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalDouble;
import wainbook.engineering.flow.forecast.outcome.Finish;
import wainbook.engineering.statistics.Share;
import wainbook.line.forecast.kept.Outcomes;
import wainbook.line.forecast.score.Card;
import wainbook.line.forecast.score.Cards;
import wainbook.line.forecast.state.Calendar;
import wainbook.page.Words;

/**
 * Spans made wider where those of forecasts kept before held less than they said, on enough vehicles: by as many working minutes as
 * would have made them right (split conformal prediction). They are never made narrower.
 *
 * @param kept scores of the forecasts that were really kept
 */
public record Widened(Cards kept) {

    private static final double MOST = 0.8;
    private static final double NEARLY_ALL = 0.95;
    private static final double MEDIAN = 0.5;

    /** In working minutes; 0 where nothing is widened. */
    record By(double most, double nearlyAll) {

        double earlier(double minute, Calendar calendar) {
            return most == 0 ? minute : calendar.workedBack(minute, most);
        }

        double later(double minute, Calendar calendar) {
            return most == 0 ? minute : calendar.workedOn(minute, most);
        }

        double latest(double minute, Calendar calendar) {
            return nearlyAll == 0 ? minute : calendar.workedOn(minute, nearlyAll);
        }

        String words() {
            return most + nearlyAll == 0
                    ? ""
                    : Words.of("line.forecastWidened", Math.round(most), Math.round(nearlyAll));
        }
    }

    By of(Calendar calendar, Finish finish) {
        if (!Double.isFinite(finish.quantile(MEDIAN))) {
            return new By(0, 0);
        }
        LocalDate today = calendar.day(calendar.now());
        LocalDate median = calendar.day(calendar.now().plusSeconds(Math.round(60 * finish.quantile(MEDIAN))));
        long days = today.isBefore(median)
                ? today.plusDays(1)
                        .datesUntil(median.plusDays(1))
                        .filter(day -> Outcomes.worked(calendar.shifts(), day))
                        .count()
                : 0;
        return kept.nearest(days).map(Widened::by).orElse(new By(0, 0));
    }

    private static By by(Card card) {
        return new By(wider(card.within80(), MOST, card.widen80()), wider(card.within95(), NEARLY_ALL, card.widen95()));
    }

    private static double wider(Optional<Share> within, double said, OptionalDouble by) {
        return within.filter(share -> Card.off(share, said) && share.rate() < said)
                        .isPresent()
                ? Math.max(0, by.orElse(0))
                : 0;
    }
}
