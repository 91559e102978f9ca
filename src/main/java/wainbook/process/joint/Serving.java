package wainbook.process.joint;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import wainbook.act.Reason;
import wainbook.page.Words;
import wainbook.works.instruments.Instrument;

/**
 * Whether any tool of the works can serve a joint's tolerance, and what would.
 *
 * @param tools of the joint's kind that may be used today: neither expired nor withdrawn
 */
public record Serving(Joint joint, List<Instrument> tools) {

    private static final String SOURCE = "in the spirit of VDI/VDE 2862, from memory; ratio of a third: works rule";

    public Serving {
        tools = List.copyOf(tools);
    }

    /** Why the joint is not released: nothing serves it, and its class does not let that pass. */
    public Optional<Reason> refusal() {
        return nothingServes().filter(reason -> joint.jointClass() == JointClass.A || setting());
    }

    /** The same for a class that is released nevertheless, since its readings are still judged with their guard band. */
    public Optional<Reason> remark() {
        return refusal().isPresent() ? Optional.empty() : nothingServes().or(this::barelyServes);
    }

    /** Class A is wanted at a fifth, and may be had at a third. */
    private Optional<Reason> barelyServes() {
        return finest().filter(tool ->
                        joint.jointClass() == JointClass.A && !acceptance(tool).ratioAsWanted())
                .map(tool -> Reason.of(
                        "process.ratioAboveWanted",
                        SOURCE,
                        joint.code(),
                        tool.code(),
                        percent(acceptance(tool).ratio() * 100, RoundingMode.UP)));
    }

    /** The finest tool that covers the joint's limits and whose uncertainty is known. */
    public Optional<Instrument> finest() {
        return tools.stream()
                .filter(tool -> tool.covers(joint.torque().limitsNm().lower())
                        && tool.covers(joint.torque().limitsNm().upper()))
                .filter(tool -> tool.accuracyPercent().isPresent())
                .min(Comparator.comparing(tool -> tool.accuracyPercent().orElseThrow()));
    }

    private Optional<Reason> nothingServes() {
        if (joint.jointClass() == JointClass.C) {
            return Optional.empty();
        }
        if (!Acceptance.mayServe(joint)) {
            return Optional.of(Reason.of("process.classAByClick", SOURCE, joint.code(), joint.toolKind(), wanted()));
        }
        if (Acceptance.mostPercent(joint) <= 0) {
            return Optional.of(Reason.of(
                    "process.targetOnLimit",
                    SOURCE,
                    joint.code(),
                    joint.torque().targetNm().toPlainString(),
                    lower(),
                    upper()));
        }
        Optional<Acceptance> best = finest().map(tool -> acceptance(tool));
        if (best.filter(Acceptance::serves).isPresent()) {
            return Optional.empty();
        }
        return Optional.of(best.map(this::tooCoarse)
                .orElseGet(() -> Reason.of(
                        "process.noToolCovers",
                        SOURCE,
                        joint.code(),
                        joint.jointClass(),
                        joint.toolKind(),
                        lower(),
                        upper(),
                        wanted())));
    }

    private Reason tooCoarse(Acceptance best) {
        return Reason.of(
                "process.noToolServes",
                SOURCE,
                joint.code(),
                joint.jointClass(),
                lower(),
                upper(),
                finest().orElseThrow().code(),
                best.toolPercent().toPlainString(),
                percent(best.servesFromPercent(), RoundingMode.UP),
                wanted());
    }

    private Acceptance acceptance(Instrument tool) {
        return new Acceptance(joint, tool.accuracyPercent().orElseThrow());
    }

    /** The instrument that would serve, in words. */
    private String wanted() {
        Joint asked = Acceptance.mayServe(joint) ? joint : joint.tightenedWith("torque-indicating");
        return Words.of(
                ToolSort.of(asked.toolKind()) == ToolSort.SETTING
                        ? "process.settingToolWanted"
                        : "process.indicatingToolWanted",
                percent(Acceptance.mostPercent(asked), RoundingMode.DOWN),
                lower(),
                upper());
    }

    private boolean setting() {
        return ToolSort.of(joint.toolKind()) == ToolSort.SETTING;
    }

    private String lower() {
        return joint.torque().limitsNm().lower().toPlainString();
    }

    private String upper() {
        return joint.torque().limitsNm().upper().toPlainString();
    }

    /** To a tenth, and to a hundredth where a tenth would be nothing. */
    private static String percent(double percent, RoundingMode rounding) {
        BigDecimal exact = BigDecimal.valueOf(wainbook.engineering.Plain.compared(percent));
        return exact.setScale(percent < 1 ? 2 : 1, rounding)
                .stripTrailingZeros()
                .toPlainString();
    }
}
