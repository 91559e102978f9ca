package wainbook.setup.files;

import java.math.BigDecimal;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.format.DateTimeParseException;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import wainbook.isolation.fact.Register;
import wainbook.process.joint.Joint;
import wainbook.process.joint.JointClass;
import wainbook.process.sheet.Ask;
import wainbook.process.sheet.BeyondConcession;
import wainbook.process.sheet.CheckItem;
import wainbook.process.sheet.Condition;
import wainbook.works.shift.Break;
import wainbook.works.shift.Shift;

/** What one row or one element of each file holds, before it becomes what the rooms know. */
public final class Lines {

    private Lines() {}

    /** The works and who runs the vehicles. */
    public record Works(
            String code,
            String title,
            String zone,
            Boolean isolatorMayIssue,
            List<ShiftLine> shifts,
            List<BreakLine> breaks,
            List<String> holidays,
            Optional<Integer> taktMinutes,
            List<Operator> operators) {
        public Works {
            if (taktMinutes.filter(minutes -> minutes < 1 || minutes > 10_000).isPresent()) {
                throw new IllegalArgumentException("a takt is 1 to 10000 minutes, not " + taktMinutes.get());
            }
        }
    }

    /** A shift with local times such as 06:00; without places it is one of the whole works. */
    public record ShiftLine(String title, String from, String to, List<DayOfWeek> weekdays, List<String> places) {

        public Shift shift() {
            return new Shift(title, minute(from), minute(to), weekdays, places);
        }

        public static ShiftLine of(Shift shift) {
            return new ShiftLine(
                    shift.title(), time(shift.fromMinute()), time(shift.toMinute()), shift.weekdays(), shift.places());
        }

        private static String time(int minute) {
            return LocalTime.ofSecondOfDay(minute * 60L).toString();
        }

        private static int minute(String time) {
            try {
                return LocalTime.parse(time).toSecondOfDay() / 60;
            } catch (DateTimeParseException unreadable) {
                throw new IllegalArgumentException("a time is written as 06:00, not " + time);
            }
        }
    }

    /** A day as it is written, such as 2026-12-25. */
    public static LocalDate day(String written) {
        try {
            return LocalDate.parse(written);
        } catch (DateTimeParseException unreadable) {
            throw new IllegalArgumentException("a day is written as 2026-12-25, not " + written);
        }
    }

    /** A break with local times such as 09:30. */
    public record BreakLine(String from, String to) {

        public Break pause() {
            return new Break(ShiftLine.minute(from), ShiftLine.minute(to));
        }

        public static BreakLine of(Break pause) {
            return new BreakLine(ShiftLine.time(pause.fromMinute()), ShiftLine.time(pause.toMinute()));
        }
    }

    /** A numbered lock, lock box, tag or vehicle key; a personal lock has an owner. */
    public record LockItem(String number, Register.Sort sort, Optional<String> owner) {}

    /** A customer. */
    public record Operator(String code, String title) {}

    /** A person with the words of their roles. */
    public record Person(String number, String user, String name, List<String> roles) {}

    /** A competence; days count from the first start of the works, both included. */
    public record Competence(
            String person, String competence, Integer level, Integer fromDay, Integer toDay, String evidence) {}

    /** A kind of instrument, and whether instruments of it are calibrated. */
    public record InstrumentKind(String code, String title, String unit, Boolean calibrated) {}

    /** An instrument; days count from the first start of the works, and are absent if it was never calibrated. */
    public record Instrument(
            String code,
            String kind,
            String title,
            String unit,
            BigDecimal lower,
            BigDecimal upper,
            Optional<BigDecimal> accuracyPercent,
            Optional<Integer> calibratedDay,
            Optional<Integer> dueDay,
            Optional<String> certificate,
            Optional<String> withdrawn) {

        public Instrument withdrawnBecause(String why) {
            return new Instrument(
                    code,
                    kind,
                    title,
                    unit,
                    lower,
                    upper,
                    accuracyPercent,
                    calibratedDay,
                    dueDay,
                    certificate,
                    Optional.of(why));
        }
    }

    /** A joint on one row. */
    public record JointRow(
            String code,
            String title,
            JointClass jointClass,
            Integer bolts,
            Joint.Order order,
            BigDecimal targetNm,
            BigDecimal lowerNm,
            BigDecimal upperNm,
            Optional<BigDecimal> angleLowerDegrees,
            Optional<BigDecimal> angleUpperDegrees,
            String toolKind,
            Integer tries,
            Optional<String> thread,
            Boolean highVoltage,
            Optional<String> place,
            Optional<String> source,
            Optional<Integer> rows,
            Optional<String> passes,
            Optional<BigDecimal> residualLowerNm,
            Optional<BigDecimal> residualUpperNm) {

        static JointRow of(Joint joint) {
            return new JointRow(
                    joint.code(),
                    joint.title(),
                    joint.jointClass(),
                    joint.bolts(),
                    joint.order(),
                    joint.torque().targetNm(),
                    joint.torque().limitsNm().lower(),
                    joint.torque().limitsNm().upper(),
                    joint.angle().map(angle -> angle.degrees().lower()),
                    joint.angle().map(angle -> angle.degrees().upper()),
                    joint.toolKind(),
                    joint.tries(),
                    joint.thread(),
                    joint.highVoltage(),
                    joint.place(),
                    joint.source(),
                    joint.rows(),
                    joint.passes()
                            .map(passes -> passes.percent().stream()
                                    .map(String::valueOf)
                                    .collect(Collectors.joining(" "))),
                    joint.residualNm().map(Joint.Window::lower),
                    joint.residualNm().map(Joint.Window::upper));
        }

        Joint joint() {
            if (angleLowerDegrees.isPresent() != angleUpperDegrees.isPresent()) {
                throw new IllegalArgumentException("an angle window has both ends or none");
            }
            if (residualLowerNm.isPresent() != residualUpperNm.isPresent()) {
                throw new IllegalArgumentException("limits of the residual torque have both ends or none");
            }
            return new Joint(
                    code,
                    title,
                    jointClass,
                    bolts,
                    order,
                    new Joint.Torque(targetNm, new Joint.Window(lowerNm, upperNm)),
                    angleLowerDegrees.map(
                            lower -> new Joint.Angle(new Joint.Window(lower, angleUpperDegrees.orElseThrow()))),
                    toolKind,
                    tries,
                    thread,
                    highVoltage,
                    place,
                    source,
                    rows,
                    passes.map(text -> new Joint.Passes(Arrays.stream(text.split(" +"))
                            .map(Integer::valueOf)
                            .toList())),
                    residualLowerNm.map(lower -> new Joint.Window(lower, residualUpperNm.orElseThrow())));
        }
    }

    /** An item of a check sheet with what is usual left out. */
    public record Item(
            String key,
            String title,
            Ask asks,
            Optional<Condition> condition,
            Optional<String> competence,
            Optional<String> caution,
            Integer plannedMinutes,
            Optional<String> zone,
            List<CheckItem.PartUse> parts,
            List<String> after,
            List<CheckItem.Dependence> dependsOn,
            Optional<String> appliesWhen,
            Optional<Integer> tries,
            Optional<BeyondConcession> noConcession) {

        private static final int USUAL_TRIES = 3;

        static Item of(CheckItem item) {
            return new Item(
                    item.key(),
                    item.title(),
                    item.asks(),
                    Optional.of(item.condition()).filter(condition -> condition != Condition.NONE),
                    item.competence(),
                    item.caution(),
                    item.plannedMinutes(),
                    item.zone(),
                    item.parts(),
                    item.after(),
                    item.dependsOn(),
                    item.appliesWhen(),
                    Optional.of(item.tries()).filter(tries -> tries != USUAL_TRIES),
                    item.noConcession());
        }

        CheckItem item() {
            return new CheckItem(
                    key,
                    title,
                    asks,
                    condition.orElse(Condition.NONE),
                    competence,
                    caution,
                    plannedMinutes,
                    zone,
                    parts,
                    after,
                    dependsOn,
                    appliesWhen,
                    tries.orElse(USUAL_TRIES),
                    noConcession);
        }
    }

    /** How a variant is isolated. */
    public record IsolationPlan(
            String code,
            Integer revision,
            String variant,
            List<Source> sources,
            List<Source> later,
            List<Point> points,
            Integer waitMinutes,
            BigDecimal maximumVolt,
            Boolean mayTravel,
            List<Restoration> restoration) {}

    /** A source of dangerous voltage. */
    public record Source(String code, String name, String howOpened, String lockedAt, String howShown) {}

    /** A point to prove dead, with the pairs to measure in lower case. */
    public record Point(String code, String source, String where, List<String> pairs) {}

    /** A check before the last lock comes off. */
    public record Restoration(String code, String what, Boolean onlyIfOpened) {}
}
