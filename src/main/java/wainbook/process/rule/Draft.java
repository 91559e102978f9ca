package wainbook.process.rule;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import wainbook.act.Outcome;
import wainbook.act.Reason;
import wainbook.process.ProcessSaying;
import wainbook.process.joint.Joint;
import wainbook.process.sheet.Ask;
import wainbook.process.sheet.CheckItem;
import wainbook.process.sheet.CheckSheet;

/** A check sheet that is not in force yet. It can be released once nothing is wrong with it. */
public record Draft(CheckSheet sheet) {

    /** The next revision in force, or all that stands in its way. */
    public Outcome<ProcessSaying.Released> release(Known known, Optional<ProcessSaying.Released> former) {
        List<Reason> faults = check(known);
        return faults.isEmpty()
                ? Outcome.done(new ProcessSaying.Released(
                        sheet, former.map(last -> last.revision() + 1).orElse(1)))
                : Outcome.refused(faults);
    }

    /** All faults, in the order of the items; the first argument of each is the key of the item it is about. */
    public List<Reason> check(Known known) {
        var faults = new ArrayList<Reason>();
        if (!known.stages().contains(sheet.stage())) {
            faults.add(Reason.of("process.unknownStage", Reason.WORKS_RULE, sheet.code(), sheet.stage()));
        }
        var keys = new HashSet<String>();
        for (CheckItem item : sheet.items()) {
            if (!keys.add(item.key())) {
                faults.add(Reason.of("process.duplicateItem", Reason.WORKS_RULE, item.key()));
            }
            faults.addAll(new ItemRules(item, known).faults());
        }
        sheet.items().stream()
                .filter(item -> halfChecked(item, known))
                .forEach(item -> faults.add(Reason.of(
                        "process.contactNotMeasured",
                        Reason.PRACTICE,
                        item.key(),
                        item.joint().orElseThrow())));
        faults.addAll(new Precedence(sheet.items()).faults());
        return List.copyOf(faults);
    }

    /** A mark that holds says nothing of the contact: its resistance is measured behind the check of an electrical joint. */
    private boolean halfChecked(CheckItem item, Known known) {
        boolean electrical = item.asks() instanceof Ask.Recheck
                && item.joint().flatMap(known::joint).filter(Joint::highVoltage).isPresent();
        return electrical
                && sheet.items().stream()
                        .noneMatch(other -> other.after().contains(item.key())
                                && other.asks() instanceof Ask.Measure measure
                                && measure.unit().endsWith("Ω")
                                && measure.instrumentKind().isPresent());
    }
}
