package wainbook.setup.files;

import java.util.Comparator;
import java.util.List;
import wainbook.process.Route;
import wainbook.process.Stage;
import wainbook.process.Station;
import wainbook.process.calibration.Calibration;
import wainbook.process.component.Component;
import wainbook.process.joint.Joint;
import wainbook.process.outline.Outline;
import wainbook.process.sheet.CheckSheet;

/** All that the files of a works say, once nothing is wrong with them. */
public record WorksFiles(
        Lines.Works works,
        List<Lines.Person> people,
        List<Lines.Competence> competences,
        List<Lines.InstrumentKind> instrumentKinds,
        List<Lines.Instrument> instruments,
        List<Stage> stages,
        List<Station> stations,
        List<Joint> joints,
        List<Component> components,
        List<Calibration> calibrations,
        List<CheckSheet> sheets,
        List<Route> routes,
        List<Lines.IsolationPlan> isolationPlans,
        List<Outline> outlines,
        List<Lines.LockItem> locks) {

    /**
     * The same works with every list in one order. What is read from here goes by codes, so the order of lines says
     * nothing, but for stages, stations and the items of a sheet.
     */
    public WorksFiles inOrder() {
        return new WorksFiles(
                works,
                sorted(people, Comparator.comparing(Lines.Person::number)),
                sorted(
                        competences,
                        Comparator.comparing(Lines.Competence::person).thenComparing(Lines.Competence::competence)),
                sorted(instrumentKinds, Comparator.comparing(Lines.InstrumentKind::code)),
                sorted(instruments, Comparator.comparing(Lines.Instrument::code)),
                sorted(stages, Comparator.comparingInt(Stage::number)),
                stations,
                sorted(joints, Comparator.comparing(Joint::code)),
                sorted(components, Comparator.comparing(Component::code)),
                sorted(calibrations, Comparator.comparing(Calibration::name)),
                sorted(sheets, Comparator.comparing(CheckSheet::code)),
                sorted(routes, Comparator.comparing(Route::code)),
                sorted(isolationPlans, Comparator.comparing(Lines.IsolationPlan::code)),
                sorted(outlines, Comparator.comparing(Outline::vehicleKind)),
                sorted(locks, Comparator.comparing(Lines.LockItem::number)));
    }

    public WorksFiles withLocks(List<Lines.LockItem> others) {
        return new WorksFiles(
                works,
                people,
                competences,
                instrumentKinds,
                instruments,
                stages,
                stations,
                joints,
                components,
                calibrations,
                sheets,
                routes,
                isolationPlans,
                outlines,
                others);
    }

    public WorksFiles withInstruments(List<Lines.Instrument> others) {
        return new WorksFiles(
                works,
                people,
                competences,
                instrumentKinds,
                others,
                stages,
                stations,
                joints,
                components,
                calibrations,
                sheets,
                routes,
                isolationPlans,
                outlines,
                locks);
    }

    private static <T> List<T> sorted(List<T> lines, Comparator<T> order) {
        return lines.stream().sorted(order).toList();
    }
}
