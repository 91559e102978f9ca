package wainbook.works.instruments.drift;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import wainbook.ledger.History;
import wainbook.ledger.Ledger;
import wainbook.ledger.Subject;
import wainbook.page.Formats;
import wainbook.page.Words;
import wainbook.works.instruments.Calibrations;
import wainbook.works.instruments.Instrument;

/**
 * The instruments in use, in the order in which to send them away: overdue ones, then those likeliest to be found outside at
 * their next calibration, then by their day. An odds of one in a hundred and more comes before any day.
 */
public record DueList(List<Line> lines, LocalDate today) {

    private static final double WORTH_SAYING = 0.01;

    /**
     * One instrument.
     *
     * @param odds that it is found outside on its due day; empty where too few calibrations have figures
     * @param calibrations those with figures since it was last adjusted
     */
    public record Line(Instrument instrument, LocalDate due, Optional<Double> odds, int calibrations, LocalDate today) {

        public boolean overdue() {
            return today.isAfter(due);
        }

        public boolean likely() {
            return odds.filter(chance -> chance >= WORTH_SAYING).isPresent();
        }

        public String dueDay() {
            return Formats.date(due);
        }

        public String oddsInWords() {
            return odds.map(DueList::words).orElseGet(() -> Words.of("works.oddsUnknown", calibrations));
        }
    }

    static DueList of(Ledger ledger, LocalDate today) {
        return new DueList(
                ledger.subjects(Subject.Sort.INSTRUMENT).stream()
                        .flatMap(subject -> line(ledger.history(subject), today).stream())
                        .sorted(Comparator.comparing((Line line) -> !line.overdue())
                                .thenComparing(
                                        line -> line.likely() ? -line.odds().orElseThrow() : 0)
                                .thenComparing(Line::due)
                                .thenComparing(line -> line.instrument().code()))
                        .toList(),
                today);
    }

    private static Optional<Line> line(History history, LocalDate today) {
        return Instrument.of(history)
                .filter(known ->
                        known.withdrawnBecause().isEmpty() && known.due().isPresent())
                .map(known -> {
                    List<Series> series = Series.of(Calibrations.of(history));
                    LocalDate due = known.due().orElseThrow();
                    int most = series.stream()
                            .mapToInt(one -> one.days().size())
                            .max()
                            .orElse(0);
                    return new Line(known, due, Series.odds(series, due.isBefore(today) ? today : due), most, today);
                });
    }

    /** As people say odds: below one in a thousand nothing finer is claimed. */
    static String words(double odds) {
        if (odds < 0.001) {
            return Words.of("works.oddsSmall");
        }
        return odds >= 0.1
                ? Words.of("works.oddsPercent", Math.round(odds * 100))
                : Words.of("works.oddsOneIn", Math.round(1 / odds));
    }
}
