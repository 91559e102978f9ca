package wainbook.order.calibration;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import wainbook.act.Reason;
import wainbook.order.calibration.ControllersRead.Read;
import wainbook.process.CalibrationLibrary;
import wainbook.process.calibration.Calibration;

/**
 * What was asked for against what the vehicle has: the released calibration that was read in it, and the values read with it. Nothing
 * that is missing passes. Where nothing is asked, nothing is compared.
 *
 * @param calibration the one that was read, where the works knows it
 */
public record Comparison(String order, Which which, Read read, Optional<Calibration> calibration, List<Line> lines) {

    /** So many digits of a fingerprint tell two files apart by all that happens by accident. */
    public static final int DIGITS = 8;

    /** Which calibration is in the vehicle. */
    public enum Which {
        NOTHING_ASKED,
        NOT_READ,
        NOT_RELEASED,
        OTHER_KIND,
        WITHDRAWN,
        FILE_NOT_READ,
        OTHER_FILE,
        RELEASED;

        public boolean passes() {
            return this == NOTHING_ASKED || this == RELEASED;
        }
    }

    /** How one value came out. */
    public enum Verdict {
        EQUAL,
        NOT_READ,
        NOT_SET,
        RELEASED_DIFFERS,
        READ_DIFFERS
    }

    /**
     * One value.
     *
     * @param released what the released calibration sets
     * @param read what was read in the vehicle
     * @param off what differs, found less asked, in the setting's unit
     */
    public record Line(
            Wish wish,
            Optional<BigDecimal> released,
            Optional<BigDecimal> read,
            Verdict verdict,
            Optional<BigDecimal> off) {

        public boolean passes() {
            return verdict == Verdict.EQUAL;
        }
    }

    public Comparison {
        lines = List.copyOf(lines);
    }

    /** Nothing compared. */
    public static Comparison none(String order) {
        return new Comparison(
                order,
                Which.NOTHING_ASKED,
                new Read(Optional.empty(), Optional.empty(), Map.of()),
                Optional.empty(),
                List.of());
    }

    public static Comparison of(
            String order, String vehicleKind, List<Wish> wishes, Read read, CalibrationLibrary library) {
        Optional<Calibration> known = read.calibration().flatMap(library::named);
        return new Comparison(
                order,
                wishes.isEmpty() ? Which.NOTHING_ASKED : which(vehicleKind, read, known),
                read,
                known,
                wishes.stream().map(wish -> line(wish, read, known)).toList());
    }

    private static Which which(String vehicleKind, Read read, Optional<Calibration> known) {
        if (read.calibration().isEmpty()) {
            return Which.NOT_READ;
        }
        if (known.isEmpty()) {
            return Which.NOT_RELEASED;
        }
        Calibration calibration = known.get();
        if (!calibration.vehicleKind().equals(vehicleKind)) {
            return Which.OTHER_KIND;
        }
        if (!calibration.released()) {
            return Which.WITHDRAWN;
        }
        return read.file().map(digits -> same(digits, calibration)).orElse(Which.FILE_NOT_READ);
    }

    private static Which same(String digits, Calibration calibration) {
        String plain = digits.replace(" ", "").toLowerCase(Locale.ROOT);
        return plain.length() >= DIGITS && calibration.fileSha256().startsWith(plain)
                ? Which.RELEASED
                : Which.OTHER_FILE;
    }

    private static Line line(Wish wish, Read read, Optional<Calibration> known) {
        Optional<BigDecimal> inVehicle = read.value(wish.setting());
        Optional<BigDecimal> released = known.flatMap(one -> one.value(wish.setting()));
        if (known.isPresent() && released.isEmpty()) {
            return new Line(wish, released, inVehicle, Verdict.NOT_SET, Optional.empty());
        }
        Optional<BigDecimal> releasedOff = released.flatMap(wish::off);
        if (releasedOff.isPresent()) {
            return new Line(wish, released, inVehicle, Verdict.RELEASED_DIFFERS, releasedOff);
        }
        if (inVehicle.isEmpty()) {
            return new Line(wish, released, inVehicle, Verdict.NOT_READ, Optional.empty());
        }
        Optional<BigDecimal> readOff = inVehicle.flatMap(wish::off);
        return new Line(wish, released, inVehicle, readOff.isPresent() ? Verdict.READ_DIFFERS : Verdict.EQUAL, readOff);
    }

    public boolean nothingAsked() {
        return which == Which.NOTHING_ASKED;
    }

    public boolean agrees() {
        return which.passes() && lines.stream().allMatch(Line::passes);
    }

    /** Why the vehicle does not leave so; empty where it has what was asked, or nothing was. */
    public List<Reason> against() {
        var against = new ArrayList<Reason>();
        if (!which.passes()) {
            against.add(reason(
                    "order.calibration" + camel(which.name()),
                    read.calibration().orElse("–"),
                    read.file().orElse("–"),
                    calibration
                            .map(one -> one.fileSha256().substring(0, DIGITS))
                            .orElse("–")));
        }
        for (Line line : lines) {
            if (!line.passes()) {
                against.add(reason(
                        "order.calibrationValue" + camel(line.verdict().name()),
                        line.wish().setting().thing(),
                        line.wish().value().toPlainString() + " "
                                + line.wish().setting().unit(),
                        line.wish().tolerance().toPlainString(),
                        line.off().map(Comparison::signed).orElse("–") + " "
                                + line.wish().setting().unit(),
                        read.calibration().orElse("–")));
            }
        }
        return against;
    }

    private Reason reason(String key, Object... arguments) {
        return Reason.of(key, Reason.WORKS_RULE, arguments).liftedAt("/orders/" + order + "/calibration");
    }

    /** With its sign, as differences are written. */
    public static String signed(BigDecimal difference) {
        return (difference.signum() < 0 ? "−" : "+") + difference.abs().toPlainString();
    }

    private static String camel(String name) {
        var words = new StringBuilder();
        for (String word : name.split("_")) {
            words.append(word.charAt(0)).append(word.substring(1).toLowerCase(Locale.ROOT));
        }
        return words.toString();
    }
}
