package wainbook.line.forecast.state;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import wainbook.engineering.flow.forecast.model.Appointment;
import wainbook.engineering.flow.forecast.model.Interval;
import wainbook.engineering.flow.forecast.model.WorkingTime;
import wainbook.ledger.History;
import wainbook.line.LineSaying.AppointmentAttended;
import wainbook.line.appointment.Appointments;
import wainbook.order.WorkOrder;
import wainbook.order.WorkOrder.Phase;
import wainbook.works.appointment.AppointmentKind;

/**
 * What every vehicle passes after the line, and how far each has come.
 *
 * @param standing by the number of the order
 * @param failure chance that each kind is not passed, by its code
 */
public record After(List<AppointmentKind> kinds, Map<String, Appointments> standing, Map<String, Double> failure) {

    /** Nothing is dated after the line. */
    public static final After NOTHING = new After(List.of(), Map.of(), Map.of());

    /** What the works expects counts as much as so many that were attended. Our choice, no published rule. */
    public static final int EXPECTED_COUNTS = 20;

    private static final int HUNDRED = 100;
    private static final double DAY_MINUTES = Duration.ofDays(1).toMinutes();

    public After {
        kinds = List.copyOf(kinds);
        standing = Map.copyOf(standing);
        failure = Map.copyOf(failure);
    }

    static After of(List<AppointmentKind> kinds, List<History> records) {
        if (kinds.isEmpty()) {
            return NOTHING;
        }
        Map<String, Appointments> standing = new HashMap<>();
        records.forEach(record -> standing.put(record.subject().code(), Appointments.of(record, kinds)));
        Map<String, Double> failure = new HashMap<>();
        kinds.forEach(kind -> failure.put(kind.code(), failure(kind, records)));
        return new After(kinds, standing, failure);
    }

    private static double failure(AppointmentKind kind, List<History> records) {
        List<AppointmentAttended> attended = records.stream()
                .flatMap(record -> record.saying(AppointmentAttended.class))
                .map(entry -> (AppointmentAttended) entry.saying())
                .filter(said -> said.appointment().equals(kind.code()))
                .toList();
        long failed = attended.stream().filter(said -> !said.passed()).count();
        double expected = EXPECTED_COUNTS * kind.failsInHundred() / (double) HUNDRED;
        return (failed + expected) / (attended.size() + EXPECTED_COUNTS);
    }

    /** Whether it has left the line and still has something to pass. */
    boolean waitsFor(WorkOrder order) {
        return order.phase() == Phase.FINISHED && !kinds.isEmpty() && next(order.number()) < kinds.size();
    }

    /** The first that it has not passed, counted from 0. */
    int next(String order) {
        return standing.containsKey(order) ? standing.get(order).next() : 0;
    }

    /** Those agreed for a time still to come. */
    Map<Integer, Double> booked(String order, Calendar calendar) {
        Map<Integer, Double> booked = new HashMap<>();
        if (standing.containsKey(order)) {
            for (int i = 0; i < kinds.size(); i++) {
                int at = i;
                standing.get(order)
                        .all()
                        .get(i)
                        .booked()
                        .map(calendar::minute)
                        .filter(minute -> minute >= 0)
                        .ifPresent(minute -> booked.put(at, minute));
            }
        }
        return booked;
    }

    List<Appointment> appointments(Calendar calendar) {
        return kinds.stream()
                .map(kind -> new Appointment(
                        kind.code(),
                        openings(kind, calendar),
                        kind.lengthMinutes(),
                        kind.noticeDays() * DAY_MINUTES,
                        failure.get(kind.code()),
                        kind.rebookingDays() * DAY_MINUTES))
                .toList();
    }

    /** Its hours on each of its weekdays that is no holiday. */
    private static WorkingTime openings(AppointmentKind kind, Calendar calendar) {
        var hours = new ArrayList<Interval>();
        LocalDate last = calendar.day(calendar.end());
        for (LocalDate day = calendar.day(calendar.now()); !day.isAfter(last); day = day.plusDays(1)) {
            double from = Math.max(0, calendar.minute(time(day, kind.fromMinute(), calendar)));
            double to = calendar.minute(time(day, kind.toMinute(), calendar));
            boolean open = kind.weekdays().contains(day.getDayOfWeek())
                    && !calendar.shifts().holidays().contains(day);
            if (open && from < to) {
                hours.add(new Interval(from, to));
            }
        }
        return WorkingTime.of(hours);
    }

    private static Instant time(LocalDate day, int minute, Calendar calendar) {
        return day.atStartOfDay()
                .plusMinutes(minute)
                .atZone(calendar.shifts().zone())
                .toInstant();
    }
}
