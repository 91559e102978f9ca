package wainbook.rehearsal.vehicle;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;
import wainbook.order.calibration.Comparison;
import wainbook.process.calibration.Calibration;
import wainbook.process.calibration.Setting;
import wainbook.process.joint.CheckWay;
import wainbook.process.joint.Joint;
import wainbook.process.sheet.Ask;
import wainbook.process.sheet.Limits;
import wainbook.rehearsal.chance.Dice;
import wainbook.station.Reply;

/**
 * What people find, measure and read: within the limits of the item, spread about the middle, or now and then outside.
 *
 * @param vin of the vehicle, for the item that reads it
 * @param typical what is usually counted, by sheet and item
 * @param calibration what the control unit is loaded with; absent where the works has none for the kind
 * @param file keeps a picture or paper of a media type and gives its fingerprint
 */
public record Answers(
        Dice dice,
        String vin,
        Function<String, Optional<BigDecimal>> typical,
        Optional<Calibration> calibration,
        Function<String, String> file) {

    /** How far within their limits bolts come out, as a share of half the window. */
    private static final double SPREAD = 0.35;

    private static final double WEIGHED_KG = 12;

    public Reply good(String item, Ask ask, Optional<Joint> joint) {
        Reply.Builder reply = Reply.with();
        if (ask instanceof Ask.Measure measure) {
            reply.reading(weighed(item).orElseGet(() -> within(measure.works(), measure.legal())));
        } else if (ask instanceof Ask.Table table) {
            reply.cells(cells(item, table));
        } else if (ask instanceof Ask.Tighten) {
            tightened(joint.orElseThrow(), reply);
        } else if (ask instanceof Ask.Recheck) {
            rechecked(joint.orElseThrow(), reply);
        } else if (ask instanceof Ask.Determine determine) {
            new DeterminedReadings(dice, determine).into(reply);
        } else if (ask instanceof Ask.Serial serial) {
            reply.serial(
                    serial.part().equals("VEHICLE")
                            ? vin
                            : SerialForm.of(serial.pattern().orElse("[A-Z]{2}[0-9]{7}"))
                                    .text(dice));
        } else if (ask instanceof Ask.Lot lot) {
            reply.lot(loaded(lot.part()).orElseGet(() -> "L-" + dice.between(2601, 2646) + "-" + dice.digits(2)));
        } else if (ask instanceof Ask.Quantity quantity) {
            reply.quantity(quantity.expected().orElseGet(() -> about(item)));
        } else if (ask instanceof Ask.Choice choice) {
            reply.choice(option(choice, true).orElseThrow());
        } else if (ask instanceof Ask.Attended attended) {
            reply.choice(option(new Ask.Choice(attended.options()), true).orElseThrow());
        } else if (ask instanceof Ask.Text) {
            reply.words("None found");
        } else if (ask instanceof Ask.Software software) {
            reply.version(software.version());
        } else if (ask instanceof Ask.Photograph) {
            reply.file(file.apply("image/png"));
        } else if (ask instanceof Ask.File wanted) {
            reply.file(file.apply(wanted.mediaTypes().get(0)));
        }
        return reply.build();
    }

    /** A result outside the limits; empty for what cannot come out wrong. */
    public Optional<Reply> bad(Ask ask, Optional<Joint> joint) {
        if (ask instanceof Ask.Measure measure) {
            return outside(measure).map(reading -> Reply.with().reading(reading).build());
        }
        if (ask instanceof Ask.Choice choice) {
            return option(choice, false).map(text -> Reply.with().choice(text).build());
        }
        if (ask instanceof Ask.Tighten) {
            return Optional.of(undertightened(joint.orElseThrow()));
        }
        return Optional.empty();
    }

    private BigDecimal about(String item) {
        return typical.apply(item)
                .map(usual ->
                        dice.figure(usual.doubleValue() * 0.85, usual.doubleValue() * 1.15, Math.max(0, usual.scale())))
                .orElseGet(() -> BigDecimal.valueOf(dice.between(1, 4)));
    }

    /** A vehicle of a kind weighs what the kind does, and a little more or less. */
    private Optional<BigDecimal> weighed(String item) {
        return typical.apply(item)
                .map(usual -> dice.figure(usual.doubleValue() - WEIGHED_KG, usual.doubleValue() + WEIGHED_KG, 0));
    }

    private List<BigDecimal> cells(String item, Ask.Table table) {
        var cells = new ArrayList<BigDecimal>();
        for (String row : table.rows()) {
            table.columns()
                    .forEach(column -> cells.add(set(column)
                            .or(() -> weighed(item + "/" + row))
                            .orElseGet(() -> within(column.works(), column.legal()))));
        }
        return cells;
    }

    private Optional<String> loaded(String part) {
        return switch (part) {
            case "CALIBRATION" -> calibration.map(Calibration::name);
            case "CALIBRATION-FILE" -> calibration.map(one -> one.fileSha256().substring(0, Comparison.DIGITS));
            default -> Optional.empty();
        };
    }

    /** A value that the control unit is set to. */
    private Optional<BigDecimal> set(Ask.Table.Column column) {
        return Setting.asked(column.title(), column.unit())
                .flatMap(setting -> calibration.flatMap(one -> one.value(setting)));
    }

    private BigDecimal within(Optional<Limits> works, Optional<Limits> legal) {
        Optional<BigDecimal> lower = works.flatMap(Limits::lower).or(() -> legal.flatMap(Limits::lower));
        Optional<BigDecimal> upper = works.flatMap(Limits::upper).or(() -> legal.flatMap(Limits::upper));
        int decimals = decimals(lower, upper);
        if (lower.isPresent() && upper.isPresent()) {
            double margin = (upper.get().doubleValue() - lower.get().doubleValue()) * 0.08;
            return dice.figure(lower.get().doubleValue() + margin, upper.get().doubleValue() - margin, decimals);
        }
        if (upper.isPresent()) {
            return dice.figure(upper.get().doubleValue() * 0.2, upper.get().doubleValue() * 0.85, decimals);
        }
        double least = lower.orElse(BigDecimal.ONE).doubleValue();
        return dice.figure(least * 1.15, least * 2.4, decimals);
    }

    private static int decimals(Optional<BigDecimal> lower, Optional<BigDecimal> upper) {
        return Math.min(
                3,
                1
                        + Math.max(
                                lower.map(BigDecimal::scale).orElse(0),
                                upper.map(BigDecimal::scale).orElse(0)));
    }

    private Optional<BigDecimal> outside(Ask.Measure measure) {
        Optional<BigDecimal> upper = measure.works().flatMap(Limits::upper);
        Optional<BigDecimal> lower = measure.works().flatMap(Limits::lower);
        int decimals = decimals(lower, upper);
        if (lower.isPresent() && lower.get().signum() > 0) {
            return lower.map(limit ->
                    limit.multiply(BigDecimal.valueOf(dice.between(0.8, 0.97))).setScale(decimals, RoundingMode.DOWN));
        }
        return upper.map(limit ->
                limit.multiply(BigDecimal.valueOf(dice.between(1.05, 1.3))).setScale(decimals, RoundingMode.UP));
    }

    private static Optional<String> option(Ask.Choice choice, boolean passes) {
        return choice.options().stream()
                .filter(option -> option.passes() == passes)
                .map(Ask.Choice.Option::text)
                .findFirst();
    }

    private void tightened(Joint joint, Reply.Builder reply) {
        double half = halfWindowNm(joint);
        double target = joint.torque().targetNm().doubleValue();
        var bolts = new ArrayList<BigDecimal>();
        var angles = new ArrayList<BigDecimal>();
        for (int bolt = 0; bolt < joint.bolts(); bolt++) {
            bolts.add(dice.figure(target - half * SPREAD, target + half * SPREAD, 1));
            joint.angle()
                    .map(angle -> angle.degrees())
                    .ifPresent(window -> angles.add(dice.figure(
                            window.lower().doubleValue() * 0.75 + window.upper().doubleValue() * 0.25,
                            window.lower().doubleValue() * 0.25 + window.upper().doubleValue() * 0.75,
                            0)));
        }
        reply.boltsNm(bolts).anglesDeg(angles);
    }

    /** Everything held, and moved again about where it was left. */
    private void rechecked(Joint joint, Reply.Builder reply) {
        double targetNm = joint.torque().targetNm().doubleValue();
        switch (CheckWay.of(joint)) {
            case BY_MARK ->
                reply.reading(CheckWay.checkNm(joint)).found(Collections.nCopies(joint.bolts(), CheckWay.Found.HELD));
            case RESIDUAL -> {
                Joint.Window window = joint.residualNm().orElseThrow();
                double lower = window.lower().doubleValue();
                double width = window.upper().doubleValue() - lower;
                reply.boltsNm(figures(joint.bolts(), lower + width * 0.25, lower + width * 0.75));
            }
            case FIRST_MOTION -> reply.boltsNm(figures(joint.bolts(), targetNm * 0.92, targetNm * 1.05));
        }
    }

    private List<BigDecimal> figures(int count, double from, double to) {
        return IntStream.range(0, count)
                .mapToObj(bolt -> dice.figure(from, to, 1))
                .toList();
    }

    /** One bolt that had not come up to its torque: too little can be put right, too much stretches the bolt. */
    private Reply undertightened(Joint joint) {
        Reply.Builder builder = Reply.with();
        tightened(joint, builder);
        Reply reply = builder.build();
        var bolts = new ArrayList<>(reply.boltsNm());
        double lower = joint.torque().limitsNm().lower().doubleValue();
        bolts.set(dice.between(0, bolts.size() - 1), dice.figure(lower * 0.9, lower * 0.98, 1));
        return Reply.with().boltsNm(bolts).anglesDeg(reply.anglesDeg()).sure().build();
    }

    private static double halfWindowNm(Joint joint) {
        double target = joint.torque().targetNm().doubleValue();
        return Math.min(
                target - joint.torque().limitsNm().lower().doubleValue(),
                joint.torque().limitsNm().upper().doubleValue() - target);
    }
}
