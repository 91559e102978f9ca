package wainbook.quality.containment;

import io.quarkus.arc.Arc;
import java.math.BigDecimal;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import wainbook.act.Actor;
import wainbook.house.Cast;
import wainbook.ledger.Asked;
import wainbook.ledger.Decision;
import wainbook.ledger.Entry;
import wainbook.ledger.Ledger;
import wainbook.ledger.Saying;
import wainbook.ledger.Subject;
import wainbook.process.joint.Joint;
import wainbook.process.joint.JointClass;
import wainbook.process.sheet.Condition;
import wainbook.station.StationSaying.About;
import wainbook.station.StationSaying.Basis;
import wainbook.station.StationSaying.Tightened;
import wainbook.station.StationSaying.Used;
import wainbook.station.StationSaying.Verdict;
import wainbook.works.WorksSaying.Adjustment;
import wainbook.works.WorksSaying.Calibrated;
import wainbook.works.WorksSaying.CalibrationPoint;
import wainbook.works.WorksSaying.InstrumentRegistered;

/** A torque wrench of a test's own, calibrated on a day, and what is said of it and with it. */
record WrenchInDoubt(String code, Instant day0) {

    private static final int FAILED_ON = 35;

    private record Told(UUID id, List<Subject> writes, Class<? extends Saying> says) implements Asked {}

    static final List<CalibrationPoint> GOOD = points("0.8", "1.0", "1.2", "0.5");
    static final List<CalibrationPoint> FOUND = points("2.9", "5.0", "6.1", "0.5");

    /** Good on a day so long ago that the window is over by now. */
    static WrenchInDoubt calibrated() {
        Instant now = clock().instant();
        String code = "TW-" + UUID.randomUUID().toString().substring(0, 8).toUpperCase(Locale.ROOT);
        Instant day0 = LocalDate.ofInstant(now, ZoneOffset.UTC)
                .minusDays(40)
                .atStartOfDay(java.time.ZoneId.of("Europe/London"))
                .toInstant();
        var wrench = new WrenchInDoubt(code, day0);
        wrench.say(
                0,
                new InstrumentRegistered(
                        "torque-indicating",
                        "Indicating torque wrench 40-200 N·m",
                        "N·m",
                        new BigDecimal("40"),
                        new BigDecimal("200"),
                        Optional.of(new BigDecimal("1.6"))));
        wrench.say(0, wrench.calibration(0, GOOD, List.of()));
        return wrench;
    }

    Calibrated calibration(int day, List<CalibrationPoint> found, List<CalibrationPoint> left) {
        LocalDate on = LocalDate.ofInstant(day0.plus(Duration.ofHours(12)), ZoneOffset.UTC)
                .plusDays(day);
        return new Calibrated(
                on,
                Optional.of(on.plusDays(365)),
                "C-" + code,
                Optional.empty(),
                Optional.of(new BigDecimal("4")),
                found,
                left.isEmpty() ? Adjustment.NONE : Adjustment.ADJUSTED,
                left,
                Optional.empty());
    }

    /** Said of the wrench so many days on. */
    Entry say(int day, Saying saying) {
        return say(Subject.instrument(code), day, saying);
    }

    /** Said of a vehicle so many days on; by the works' clock once the containment was opened by it. */
    Entry say(Subject subject, int day, Saying saying) {
        Clock then = Clock.fixed(day0.plus(Duration.ofDays(day)).plusSeconds(1), ZoneOffset.UTC);
        Actor actor = Actor.of(Cast.TECHNICIAN.number(), day > FAILED_ON ? clock() : then);
        return Arc.container()
                .instance(Ledger.class)
                .get()
                .write(
                        new Told(UUID.randomUUID(), List.of(subject), saying.getClass()),
                        actor,
                        reading -> Decision.say(subject, saying))
                .fold(entry -> entry, reasons -> {
                    throw new AssertionError(reasons);
                });
    }

    Tightened tightened(String joint, JointClass jointClass, String lower, String upper, String... read) {
        var low = new BigDecimal(lower);
        var high = new BigDecimal(upper);
        return new Tightened(
                new About("strip", "OWN-SHEET", 1, joint, List.of()),
                new Basis(Condition.NONE, Optional.empty(), Optional.of(new Used(code, LocalDate.of(2030, 1, 1)))),
                joint,
                jointClass,
                new Joint.Torque(low.add(high).divide(new BigDecimal(2)), new Joint.Window(low, high)),
                Optional.empty(),
                Optional.empty(),
                java.util.Arrays.stream(read).map(BigDecimal::new).toList(),
                List.of(),
                List.of(),
                Verdict.PASS);
    }

    private static Clock clock() {
        return Arc.container().instance(Clock.class).get();
    }

    static List<CalibrationPoint> points(String low, String middle, String high, String w) {
        return List.of(point("40", low, w), point("120", middle, w), point("200", high, w));
    }

    private static CalibrationPoint point(String target, String error, String w) {
        return new CalibrationPoint(new BigDecimal(target), List.of(), new BigDecimal(error), new BigDecimal(w));
    }
}
