package wainbook.setup.taking;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import wainbook.isolation.IsolationSaying;
import wainbook.ledger.Decision;
import wainbook.ledger.Saying;
import wainbook.ledger.Subject;
import wainbook.process.ProcessSaying;
import wainbook.process.calibration.Calibration;
import wainbook.process.component.Component;
import wainbook.process.joint.Joint;
import wainbook.process.outline.Outline;
import wainbook.setup.files.Change;
import wainbook.setup.files.Differences;
import wainbook.setup.files.Lines;
import wainbook.setup.files.Part;
import wainbook.setup.files.PlanFile;
import wainbook.setup.files.WorksFiles;
import wainbook.works.Operator;
import wainbook.works.Role;
import wainbook.works.WorksSaying;
import wainbook.works.instruments.InstrumentKind;

/**
 * What the ledger is told so that the record says what the files say: the changes and nothing else.
 *
 * @param nameHash what stands for a person's name
 */
record ToSay(OnRecord record, WorksFiles wanted, Differences differences, Function<Lines.Person, String> nameHash) {

    List<Decision.Line> lines() {
        List<Decision.Line> lines = new ArrayList<>();
        Subject works = Subject.works();
        theWorks().forEach(saying -> lines.add(new Decision.Line(works, saying)));
        people(lines);
        LocalDate first = record.firstDay(wanted.works().zone());
        changed(Part.INSTRUMENTS, wanted.instruments(), Lines.Instrument::code)
                .forEach((line, change) -> new InstrumentLine(line, change, first)
                        .sayings()
                        .forEach(saying -> lines.add(new Decision.Line(Subject.instrument(line.code()), saying))));
        theProcess().forEach(saying -> lines.add(new Decision.Line(works, saying)));
        List<ProcessSaying.Released> released = new SheetReleases(record, wanted, mergedJoints())
                .of(List.copyOf(changed(Part.SHEETS, wanted.sheets(), sheet -> sheet.code())
                        .keySet()));
        released.forEach(said ->
                lines.add(new Decision.Line(Subject.checkSheet(said.sheet().code()), said)));
        changed(Part.LOCKS, wanted.locks(), Lines.LockItem::number)
                .keySet()
                .forEach(item -> lines.add(new Decision.Line(
                        works, new IsolationSaying.ItemRegistered(item.number(), item.sort(), item.owner()))));
        return lines;
    }

    private List<Saying> theWorks() {
        List<Saying> sayings = new ArrayList<>();
        Lines.Works known = record.standing().works();
        Lines.Works asked = wanted.works();
        if (!known.title().equals(asked.title()) || !known.zone().equals(asked.zone())) {
            sayings.add(new WorksSaying.Named(asked.title(), asked.zone()));
        }
        if (!known.code().equals(asked.code())) {
            sayings.add(new WorksSaying.CodeSet(asked.code()));
        }
        var shifts = asked.shifts().stream().map(Lines.ShiftLine::shift).toList();
        if (!known.shifts().stream().map(Lines.ShiftLine::shift).toList().equals(shifts)) {
            sayings.add(new WorksSaying.ShiftsSet(shifts));
        }
        var breaks = asked.breaks().stream().map(Lines.BreakLine::pause).toList();
        if (!known.breaks().stream().map(Lines.BreakLine::pause).toList().equals(breaks)) {
            sayings.add(new WorksSaying.BreaksSet(breaks));
        }
        if (!known.holidays().equals(asked.holidays())) {
            sayings.add(new WorksSaying.HolidaysSet(
                    asked.holidays().stream().map(Lines::day).toList()));
        }
        var appointments =
                asked.appointments().stream().map(Lines.AppointmentLine::kind).toList();
        if (!known.appointments().stream()
                .map(Lines.AppointmentLine::kind)
                .toList()
                .equals(appointments)) {
            sayings.add(new WorksSaying.AppointmentsSet(appointments));
        }
        asked.taktMinutes()
                .filter(minutes -> !known.taktMinutes().equals(Optional.of(minutes)))
                .ifPresent(minutes -> sayings.add(new WorksSaying.TaktSet(minutes)));
        if (differences.written(Part.WORKS).anyMatch(change -> isNew(change, "isolator_may_issue"))) {
            sayings.add(new WorksSaying.IsolatorMayIssueSet(asked.isolatorMayIssue()));
        }
        if (differences.written(Part.OPERATORS).findAny().isPresent()) {
            sayings.add(new WorksSaying.OperatorsListed(
                    merged(asked.operators(), known.operators(), Lines.Operator::code).stream()
                            .map(line -> new Operator(line.code(), line.title()))
                            .toList()));
        }
        if (differences.written(Part.INSTRUMENT_KINDS).findAny().isPresent()) {
            sayings.add(new WorksSaying.InstrumentKindsListed(
                    merged(wanted.instrumentKinds(), record.standing().instrumentKinds(), Lines.InstrumentKind::code)
                            .stream()
                            .map(line -> new InstrumentKind(line.code(), line.title(), line.unit(), line.calibrated()))
                            .toList()));
        }
        return sayings;
    }

    private void people(List<Decision.Line> lines) {
        changed(Part.PEOPLE, wanted.people(), Lines.Person::number).forEach((line, change) -> {
            List<Role> roles = line.roles().stream()
                    .map(word -> Role.of(word).orElseThrow())
                    .toList();
            Subject person = Subject.person(line.number());
            if (isNew(change, "name")) {
                lines.add(new Decision.Line(person, new WorksSaying.Engaged(nameHash.apply(line), roles)));
            } else if (change.fields().stream().anyMatch(field -> field.path().startsWith("roles"))) {
                lines.add(new Decision.Line(person, new WorksSaying.RolesGiven(roles)));
            }
        });
        LocalDate first = record.firstDay(wanted.works().zone());
        changed(Part.COMPETENCES, wanted.competences(), line -> line.person() + " " + line.competence())
                .keySet()
                .forEach(line -> lines.add(new Decision.Line(
                        Subject.person(line.person()),
                        new WorksSaying.CompetenceGiven(
                                line.competence(),
                                line.level(),
                                first.plusDays(line.fromDay()),
                                first.plusDays(line.toDay()),
                                line.evidence()))));
    }

    private List<Saying> theProcess() {
        List<Saying> sayings = new ArrayList<>();
        changed(Part.STAGES, wanted.stages(), stage -> stage.code())
                .keySet()
                .forEach(stage -> sayings.add(new ProcessSaying.StageDefined(stage)));
        changed(Part.STATIONS, wanted.stations(), station -> station.code())
                .keySet()
                .forEach(station -> sayings.add(new ProcessSaying.StationDefined(station)));
        if (differences.written(Part.JOINTS).findAny().isPresent()) {
            sayings.add(new ProcessSaying.JointsReleased(mergedJoints(), record.jointsRevision() + 1));
        }
        if (differences.written(Part.COMPONENTS).findAny().isPresent()) {
            sayings.add(new ProcessSaying.ComponentsReleased(
                    merged(wanted.components(), record.components(), Component::code),
                    record.componentsRevision() + 1));
        }
        if (differences.written(Part.CALIBRATIONS).findAny().isPresent()) {
            sayings.add(new ProcessSaying.CalibrationsReleased(
                    merged(wanted.calibrations(), record.calibrations(), Calibration::name),
                    record.calibrationsRevision() + 1));
        }
        changed(Part.ROUTES, wanted.routes(), route -> route.code())
                .keySet()
                .forEach(route -> sayings.add(new ProcessSaying.RouteReleased(
                        route,
                        Optional.ofNullable(record.routes().get(route.code()))
                                        .map(ProcessSaying.RouteReleased::revision)
                                        .orElse(0)
                                + 1)));
        changed(Part.ISOLATION_PLANS, wanted.isolationPlans(), Lines.IsolationPlan::code)
                .keySet()
                .forEach(plan -> sayings.add(new ProcessSaying.PlanReleased(PlanFile.plan(plan))));
        changed(Part.OUTLINES, wanted.outlines(), Outline::vehicleKind)
                .keySet()
                .forEach(outline -> sayings.add(new ProcessSaying.OutlineReleased(
                        outline,
                        Optional.ofNullable(record.outlines().get(outline.vehicleKind()))
                                        .map(ProcessSaying.OutlineReleased::revision)
                                        .orElse(0)
                                + 1)));
        return sayings;
    }

    private List<Joint> mergedJoints() {
        return merged(wanted.joints(), record.joints(), Joint::code);
    }

    /** What the files say, and behind it what they leave out: leaving out removes nothing. */
    static <T> List<T> merged(List<T> asked, List<T> known, Function<T, String> code) {
        List<T> merged = new ArrayList<>(asked);
        known.stream()
                .filter(line ->
                        asked.stream().noneMatch(other -> code.apply(other).equals(code.apply(line))))
                .forEach(merged::add);
        return merged;
    }

    private static boolean isNew(Change change, String field) {
        return change.sort() == Change.Sort.ADDED || change.touches(field);
    }

    private <T> LinkedHashMap<T, Change> changed(Part part, List<T> lines, Function<T, String> key) {
        var changed = new LinkedHashMap<T, Change>();
        lines.forEach(
                line -> differences.written(part, key.apply(line)).ifPresent(change -> changed.put(line, change)));
        return changed;
    }
}
