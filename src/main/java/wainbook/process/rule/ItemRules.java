package wainbook.process.rule;

import com.google.re2j.Pattern;
import com.google.re2j.PatternSyntaxException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wainbook.act.Reason;
import wainbook.predicate.Compiled;
import wainbook.process.determination.Given;
import wainbook.process.determination.Method;
import wainbook.process.joint.Joint;
import wainbook.process.joint.JointClass;
import wainbook.process.sheet.Ask;
import wainbook.process.sheet.CheckItem;
import wainbook.process.sheet.Condition;
import wainbook.process.sheet.Limits;
import wainbook.process.sheet.VehicleRows;
import wainbook.process.stream.ListOfWaste;
import wainbook.process.stream.MaterialStream;

/** What a single item must keep to before its sheet is released. */
record ItemRules(CheckItem item, Known known) {

    private static final String WITHSTAND_TESTER = "withstand-tester";

    List<Reason> faults() {
        var faults = new ArrayList<Reason>();
        item.joint()
                .ifPresent(code -> known.joint(code)
                        .ifPresentOrElse(
                                joint -> faults.addAll(jointFaults(joint)),
                                () -> faults.add(fault("process.unknownJoint", code))));
        item.appliesWhen()
                .ifPresent(text -> known.predicates().compile(text).faults().stream()
                        .map(this::conditionFault)
                        .forEach(faults::add));
        if (item.condition() == Condition.LIVE && item.competence().isEmpty()) {
            faults.add(fault("process.liveCompetenceMissing"));
        }
        faults.addAll(askFaults());
        return faults;
    }

    private List<Reason> jointFaults(Joint joint) {
        var faults = new ArrayList<Reason>();
        if (item.asks() instanceof Ask.Confirm && !joint.jointClass().mayBeTicked()) {
            faults.add(Reason.of(
                    joint.jointClass() == JointClass.A ? "process.classAByTick" : "process.classBByTick",
                    "in the spirit of VDI/VDE 2862, from memory",
                    item.key(),
                    joint.code()));
        }
        if (joint.highVoltage() && !item.condition().handsOnConductors()) {
            faults.add(fault("process.highVoltageCondition", joint.code()));
        }
        return faults;
    }

    private List<Reason> askFaults() {
        var faults = new ArrayList<Reason>();
        if (item.asks() instanceof Ask.Measure measure) {
            faults.addAll(limitFaults(measure.quantity(), measure.works(), measure.legal()));
            measure.instrumentKind()
                    .filter(kind -> !known.instrumentKinds().contains(kind))
                    .ifPresent(kind -> faults.add(fault("process.unknownInstrumentKind", kind)));
        }
        VehicleRows.unfit(item.asks().rowsByFact()).forEach(fact -> faults.add(fault("process.rowsByFact", fact)));
        if (item.asks() instanceof Ask.Determine determine) {
            faults.addAll(determineFaults(determine));
        }
        if (withstand()) {
            faults.add(Reason.of("process.withstandOnVehicle", Reason.PRACTICE, item.key()));
        }
        if (item.asks() instanceof Ask.Table table) {
            table.instrumentKind()
                    .filter(kind -> !known.instrumentKinds().contains(kind))
                    .ifPresent(kind -> faults.add(fault("process.unknownInstrumentKind", kind)));
            table.columns()
                    .forEach(column -> faults.addAll(limitFaults(column.title(), column.works(), column.legal())));
        }
        if (item.asks() instanceof Ask.Recount recount && !item.after().contains(recount.item())) {
            faults.add(fault("process.recountNotAfter", recount.item()));
        }
        if (item.asks() instanceof Ask.Quantity quantity) {
            quantity.stream().ifPresent(stream -> faults.addAll(streamFaults(stream, quantity.unit())));
        }
        if (item.asks() instanceof Ask.Serial serial) {
            serial.pattern().flatMap(this::patternFault).ifPresent(faults::add);
        }
        return faults;
    }

    private List<Reason> streamFaults(MaterialStream stream, String unit) {
        var faults = new ArrayList<Reason>();
        if (ListOfWaste.ours().find(stream.code()).isEmpty()) {
            faults.add(fault("process.streamUnknown", stream.code()));
        }
        if (stream.massKg(BigDecimal.ONE, unit).isEmpty()) {
            faults.add(fault("process.streamNoMass", unit));
        }
        return faults;
    }

    /** A check sheet is worked through on a vehicle, where no withstand test belongs. */
    private boolean withstand() {
        Optional<String> kind = item.asks() instanceof Ask.Measure measure
                ? measure.instrumentKind()
                : item.asks() instanceof Ask.Determine determine ? determine.instrumentKind() : Optional.empty();
        String quantity = item.asks() instanceof Ask.Measure measure ? measure.quantity() : "";
        return kind.filter(WITHSTAND_TESTER::equals).isPresent()
                || quantity.toLowerCase(java.util.Locale.ROOT).contains("withstand");
    }

    private List<Reason> determineFaults(Ask.Determine ask) {
        var faults = new ArrayList<Reason>(limitFaults(ask.quantity(), ask.works(), Optional.empty()));
        ask.method().missing(ask.given()).forEach(name -> faults.add(fault("process.givenMissing", name)));
        for (Given given : ask.given()) {
            if (!ask.method().takes(given.name())) {
                faults.add(fault("process.givenUnknown", given.name()));
            }
            given.item()
                    .filter(former -> !item.after().contains(former))
                    .ifPresent(former -> faults.add(fault("process.givenNotAfter", given.name(), former)));
        }
        ask.instrumentKind()
                .filter(kind -> !known.instrumentKinds().contains(kind))
                .ifPresent(kind -> faults.add(fault("process.unknownInstrumentKind", kind)));
        if (ask.method() == Method.ISOLATION_VOLTMETER && item.condition() != Condition.LIVE) {
            faults.add(fault("process.voltmeterIsLive"));
        }
        return faults;
    }

    private List<Reason> limitFaults(String quantity, Optional<Limits> works, Optional<Limits> legal) {
        var faults = new ArrayList<Reason>();
        works.filter(Limits::crossed)
                .ifPresent(limits -> faults.add(fault("process.limitsCrossed", quantity, ends(limits))));
        legal.filter(Limits::crossed)
                .ifPresent(limits -> faults.add(fault("process.limitsCrossed", quantity, ends(limits))));
        if (works.isPresent() && legal.isPresent() && !works.get().within(legal.get())) {
            faults.add(fault("process.worksLimitLaxer", quantity, ends(works.get()), ends(legal.get())));
        }
        return faults;
    }

    private static String ends(Limits limits) {
        return limits.lower().map(lower -> lower.toPlainString()).orElse("…") + " – "
                + limits.upper().map(upper -> upper.toPlainString()).orElse("…");
    }

    private Optional<Reason> patternFault(String pattern) {
        try {
            Pattern.compile(pattern);
            return Optional.empty();
        } catch (PatternSyntaxException wrong) {
            return Optional.of(fault("process.patternFault", pattern, wrong.getMessage()));
        }
    }

    private Reason conditionFault(Compiled.Fault fault) {
        return fault("process.conditionFault", fault.line(), fault.column(), fault.message());
    }

    private Reason fault(String key, Object... more) {
        var arguments = new ArrayList<Object>(List.of(item.key()));
        arguments.addAll(List.of(more));
        return Reason.of(key, Reason.WORKS_RULE, arguments.toArray());
    }
}
