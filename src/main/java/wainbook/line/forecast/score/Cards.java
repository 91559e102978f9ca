package wainbook.line.forecast.score;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import wainbook.line.forecast.kept.Prediction;
import wainbook.works.shift.Shifts;

/** Forecasts against what came, one card for each horizon. */
public record Cards(List<Card> cards) {

    /** Working days ahead. */
    public static final List<Integer> HORIZONS = List.of(1, 3, 5, 10);

    public Cards {
        cards = List.copyOf(cards);
    }

    /**
     * @param finished when a vehicle finished, by its order; those that have not are not in it
     * @param now until when is known what came
     */
    public static Cards of(
            List<Prediction> said,
            Map<String, Instant> finished,
            Shifts shifts,
            Predicate<LocalDate> worked,
            Instant now) {
        var horizon = new Horizon(shifts, worked);
        return new Cards(HORIZONS.stream()
                .map(days -> Card.of(
                        days,
                        horizon.of(days, said).stream()
                                .map(one -> new Outcome(one, Optional.ofNullable(finished.get(one.order()))))
                                .toList(),
                        now,
                        (from, to) -> shifts.workingMinutes(from, to) - shifts.workingMinutes(to, from)))
                .toList());
    }

    /** The card for a forecast that looks so far ahead: that of the nearest horizon. */
    public Optional<Card> nearest(long days) {
        return cards.stream().min(Comparator.comparing(card -> Math.abs(card.days() - days)));
    }
}
