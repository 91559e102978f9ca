package wainbook.process.page.form;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import wainbook.process.draft.JointsDraft;
import wainbook.process.draft.Part.Group;
import wainbook.process.draft.Surroundings;
import wainbook.process.joint.Joint;
import wainbook.process.joint.JointClass;

/** The form of one joint. */
final class JointForm {

    static final PartForm<JointsDraft, Joint> JOINT = new PartForm<>(
            Group.JOINT,
            JointsDraft::joints,
            (draft, joints) -> new JointsDraft(joints),
            Joint::code,
            JointForm::typed,
            JointForm::joint,
            JointForm::inputs,
            PartForm.Keep.LOOSE);

    private JointForm() {}

    private static Map<String, String> typed(Joint joint) {
        var typed = new LinkedHashMap<String, String>();
        typed.put("key", joint.code());
        typed.put("title", joint.title());
        typed.put("jointClass", joint.jointClass().name());
        typed.put("bolts", "" + joint.bolts());
        typed.put("order", joint.order().name());
        typed.put("target", joint.torque().targetNm().toPlainString());
        typed.put("torqueLower", joint.torque().limitsNm().lower().toPlainString());
        typed.put("torqueUpper", joint.torque().limitsNm().upper().toPlainString());
        joint.angle().ifPresent(angle -> {
            typed.put("angleLower", angle.degrees().lower().toPlainString());
            typed.put("angleUpper", angle.degrees().upper().toPlainString());
        });
        typed.put("toolKind", joint.toolKind());
        typed.put("tries", "" + joint.tries());
        typed.put("thread", joint.thread().orElse(""));
        typed.put("highVoltage", joint.highVoltage() ? "yes" : "");
        typed.put("place", joint.place().orElse(""));
        typed.put("source", joint.source().orElse(""));
        typed.put("rows", joint.rows().map(String::valueOf).orElse(""));
        typed.put("passes", joint.passes().map(JointForm::text).orElse(""));
        joint.residualNm().ifPresent(window -> {
            typed.put("residualLower", window.lower().toPlainString());
            typed.put("residualUpper", window.upper().toPlainString());
        });
        return typed;
    }

    private static String text(Joint.Passes passes) {
        return passes.percent().stream().map(String::valueOf).collect(Collectors.joining(" "));
    }

    private static Joint joint(Optional<Joint> former, Typed typed) {
        int bolts = typed.whole("bolts", 1, 200);
        Joint.Order order = typed.one("order", Joint.Order.class);
        Optional<Integer> rows = rows(bolts, order, typed);
        return new Joint(
                typed.code("key"),
                typed.text("title"),
                typed.one("jointClass", JointClass.class),
                bolts,
                rows.isPresent() || !order.liesInRows() ? order : Joint.Order.LIST,
                torque(typed),
                angle(typed),
                typed.chosen("toolKind"),
                typed.whole("tries", 1, 20),
                typed.maybe("thread"),
                typed.tick("highVoltage"),
                typed.maybe("place"),
                typed.maybe("source"),
                rows,
                passes(typed),
                residual(typed));
    }

    private static Optional<Integer> rows(int bolts, Joint.Order order, Typed typed) {
        if (!order.liesInRows()) {
            return Optional.empty();
        }
        int rows = typed.whole("rows", 1, 100);
        if (!order.fits(bolts, rows)) {
            typed.wrong("rows", "process.fieldRows", bolts, rows);
            return Optional.empty();
        }
        return Optional.of(rows);
    }

    private static Optional<Joint.Passes> passes(Typed typed) {
        return typed.maybe("passes").flatMap(text -> {
            try {
                return Optional.of(new Joint.Passes(Arrays.stream(text.split("[ ,;/%]+"))
                        .map(Integer::valueOf)
                        .toList()));
            } catch (IllegalArgumentException noPasses) {
                typed.wrong("passes", "process.fieldPasses");
                return Optional.empty();
            }
        });
    }

    private static Optional<Joint.Window> residual(Typed typed) {
        Optional<BigDecimal> lower = typed.maybeDecimal("residualLower");
        Optional<BigDecimal> upper = typed.maybeDecimal("residualUpper");
        if (lower.isEmpty() && upper.isEmpty()) {
            return Optional.empty();
        }
        if (lower.isEmpty() || upper.isEmpty() || crossed(lower.get(), upper.get())) {
            typed.wrong("residualLower", "process.fieldResidual");
            return Optional.empty();
        }
        return Optional.of(new Joint.Window(lower.get(), upper.get()));
    }

    private static Joint.Torque torque(Typed typed) {
        BigDecimal target = typed.decimal("target");
        BigDecimal lower = typed.decimal("torqueLower");
        BigDecimal upper = typed.decimal("torqueUpper");
        boolean fits = !crossed(lower, upper) && lower.compareTo(target) <= 0 && target.compareTo(upper) <= 0;
        if (!fits) {
            String field = crossed(lower, upper) ? "torqueUpper" : "target";
            if (typed.filled().form().fault(field).isEmpty()) {
                typed.wrong(field, "process.fieldTorque");
            }
            return new Joint.Torque(BigDecimal.ONE, new Joint.Window(BigDecimal.ONE, BigDecimal.TEN));
        }
        return new Joint.Torque(target, new Joint.Window(lower, upper));
    }

    private static boolean crossed(BigDecimal lower, BigDecimal upper) {
        return lower.signum() <= 0 || lower.compareTo(upper) >= 0;
    }

    private static Optional<Joint.Angle> angle(Typed typed) {
        Optional<BigDecimal> lower = typed.maybeDecimal("angleLower");
        Optional<BigDecimal> upper = typed.maybeDecimal("angleUpper");
        if (lower.isEmpty() && upper.isEmpty()) {
            return Optional.empty();
        }
        boolean fits = lower.isPresent()
                && upper.isPresent()
                && lower.get().signum() >= 0
                && lower.get().compareTo(upper.get()) < 0;
        if (!fits) {
            typed.wrong("angleLower", "process.fieldAngle");
            return Optional.empty();
        }
        return Optional.of(new Joint.Angle(new Joint.Window(lower.get(), upper.get())));
    }

    private static List<Input> inputs(JointsDraft draft, Surroundings surroundings, Map<String, String> typed) {
        return List.of(
                Input.line("key"),
                Input.line("title"),
                Input.choice("jointClass", Input.words(JointClass.class, "process.jointClass.")),
                Input.whole("bolts"),
                Input.choice("order", Input.words(Joint.Order.class, "process.order.")),
                Input.whole("rows").as("jointRows"),
                Input.line("passes"),
                Input.decimal("target").in("N·m"),
                Input.decimal("torqueLower").in("N·m"),
                Input.decimal("torqueUpper").in("N·m"),
                Input.decimal("angleLower").in("°"),
                Input.decimal("angleUpper").in("°"),
                Input.decimal("residualLower").in("N·m"),
                Input.decimal("residualUpper").in("N·m"),
                Input.choice(
                        "toolKind",
                        Input.codes(surroundings.known().instrumentKinds().stream()
                                .sorted()
                                .toList())),
                Input.whole("tries"),
                Input.line("thread"),
                Input.tick("highVoltage"),
                Input.line("place"),
                Input.line("source"));
    }
}
