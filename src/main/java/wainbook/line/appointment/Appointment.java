package wainbook.line.appointment;

import java.time.Instant;
import java.util.Optional;
import wainbook.page.Words;
import wainbook.works.appointment.AppointmentKind;

/**
 * How one appointment of a vehicle stands.
 *
 * @param booked for when; empty after it was attended
 * @param failed how often it was not passed
 * @param lastFailed when, the last time
 * @param remark of the last time it was attended
 * @param passed when
 */
public record Appointment(
        AppointmentKind kind,
        Optional<Instant> booked,
        int failed,
        Optional<Instant> lastFailed,
        Optional<String> remark,
        Optional<Instant> passed) {

    static Appointment open(AppointmentKind kind) {
        return new Appointment(kind, Optional.empty(), 0, Optional.empty(), Optional.empty(), Optional.empty());
    }

    public boolean isPassed() {
        return passed.isPresent();
    }

    Appointment bookedFor(Instant on) {
        return new Appointment(kind, Optional.of(on), failed, lastFailed, remark, passed);
    }

    Appointment attended(boolean well, String said, Instant at) {
        Optional<String> remarked = Optional.of(said).filter(words -> !words.isBlank());
        return well
                ? new Appointment(kind, Optional.empty(), failed, lastFailed, remarked, Optional.of(at))
                : new Appointment(kind, Optional.empty(), failed + 1, Optional.of(at), remarked, Optional.empty());
    }

    public String word() {
        return Words.of(
                isPassed()
                        ? "line.appointmentPassed"
                        : booked.isPresent()
                                ? "line.appointmentBooked"
                                : failed > 0 ? "line.appointmentFailed" : "line.appointmentToBook");
    }

    public String sign() {
        return isPassed() ? "done" : failed > 0 && booked.isEmpty() ? "fail" : "clock";
    }

    public String meaning() {
        return isPassed() ? "safe" : failed > 0 && booked.isEmpty() ? "danger" : "must";
    }
}
