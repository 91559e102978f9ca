package wainbook.line.forecast.kept;

import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import wainbook.gate.GateSaying.SignedOff;
import wainbook.ledger.History;
import wainbook.order.WorkOrder;
import wainbook.works.shift.Shifts;

/** What came of what was forecast. */
public final class Outcomes {

    private Outcomes() {}

    /** When the gate of a vehicle's last stage was signed first: the finish that is foretold. */
    public static Optional<Instant> finished(History record) {
        return WorkOrder.of(record).flatMap(order -> {
            List<String> stages = order.ordered().stages();
            return stages.isEmpty()
                    ? Optional.empty()
                    : record.saying(SignedOff.class)
                            .filter(entry ->
                                    ((SignedOff) entry.saying()).stage().equals(stages.get(stages.size() - 1)))
                            .map(entry -> entry.moment().at())
                            .findFirst();
        });
    }

    /** Whether a shift begins on a day; in a works without shifts, whether it is none of a weekend. */
    public static boolean worked(Shifts shifts, LocalDate day) {
        boolean weekend = day.getDayOfWeek() == DayOfWeek.SATURDAY || day.getDayOfWeek() == DayOfWeek.SUNDAY;
        return shifts.shifts().isEmpty()
                ? !weekend
                : !shifts.holidays().contains(day)
                        && shifts.shifts().stream()
                                .anyMatch(shift -> shift.weekdays().contains(day.getDayOfWeek()));
    }
}
