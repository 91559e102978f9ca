package wainbook.setup.taking;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wainbook.act.Reason;
import wainbook.process.ProcessSaying.PlanReleased;
import wainbook.process.calibration.Calibration;
import wainbook.process.joint.Joint;
import wainbook.process.joint.Serving;
import wainbook.setup.files.Change;
import wainbook.setup.files.Differences;
import wainbook.setup.files.Lines;
import wainbook.setup.files.Part;
import wainbook.setup.files.WorksFiles;

/** What stands against taking files that have no fault of their own. */
record TakingRules(OnRecord record, WorksFiles wanted, Differences differences, Asker asker) {

    List<Reason> against() {
        List<Reason> against = new ArrayList<>();
        own(against);
        people(against);
        plans(against);
        joints(against);
        calibrations(against);
        differences
                .written(Part.LOCKS)
                .filter(change -> change.sort() == Change.Sort.CHANGED)
                .forEach(change -> against.add(Reason.of("setup.numberGivenOnce", Reason.WORKS_RULE, change.key())));
        return against;
    }

    /** Nobody gives themselves a role or a competence. */
    private void own(List<Reason> against) {
        boolean ownRoles = differences.written(Part.PEOPLE, asker.who()).isPresent();
        boolean ownCompetence = differences
                .written(Part.COMPETENCES)
                .anyMatch(change -> change.key().startsWith(asker.who() + " "));
        if (ownRoles || ownCompetence) {
            against.add(Reason.of("setup.ownLine", Reason.WORKS_RULE, asker.who()));
        }
    }

    private void people(List<Reason> against) {
        if (!asker.administrator() && differences.written(Part.PEOPLE).findAny().isPresent()) {
            against.add(Reason.of("setup.peopleByAdministrator", Reason.WORKS_RULE));
        }
        differences.written(Part.PEOPLE).map(Change::key).forEach(number -> {
            String user = line(number).map(Lines.Person::user).orElse("");
            record.names().forEach((other, name) -> {
                boolean keeps =
                        line(other).map(line -> line.user().equals(user)).orElse(true);
                if (!other.equals(number) && keeps && name.user().equals(Optional.of(user))) {
                    against.add(Reason.of("setup.userTaken", Reason.WORKS_RULE, user, number, other));
                }
            });
        });
    }

    private Optional<Lines.Person> line(String number) {
        return wanted.people().stream()
                .filter(line -> line.number().equals(number))
                .findFirst();
    }

    /** A joint that is new or changed is refused here as it is in a draft: by the tools that there will be. */
    private void joints(List<Reason> against) {
        var tools = new ToolsThen(record, wanted);
        for (Joint joint : wanted.joints()) {
            if (differences.written(Part.JOINTS, joint.code()).isPresent()) {
                new Serving(joint, tools.fit(joint.toolKind())).refusal().ifPresent(against::add);
            }
        }
    }

    /** Of a released calibration nothing changes but its standing: a vehicle may have it. */
    private void calibrations(List<Reason> against) {
        for (Calibration asked : wanted.calibrations()) {
            record.calibrations().stream()
                    .filter(known -> known.name().equals(asked.name()) && !known.sameValues(asked))
                    .forEach(known -> against.add(Reason.of(
                            "setup.calibrationChanged", Reason.WORKS_RULE, known.name(), known.revision() + 1)));
        }
    }

    /** A plan carries its own revision, and a released revision never changes. */
    private void plans(List<Reason> against) {
        for (Lines.IsolationPlan plan : wanted.isolationPlans()) {
            PlanReleased known = record.plans().get(plan.code());
            if (known != null
                    && differences.written(Part.ISOLATION_PLANS, plan.code()).isPresent()
                    && plan.revision() <= known.plan().revision()) {
                against.add(Reason.of(
                        "setup.planRevision",
                        Reason.WORKS_RULE,
                        plan.code(),
                        known.plan().revision(),
                        known.plan().revision() + 1));
            }
        }
    }
}
