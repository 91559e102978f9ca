package wainbook.setup.files;

import java.util.List;
import wainbook.process.CheckSheet;
import wainbook.process.Joint;
import wainbook.process.Route;
import wainbook.process.Stage;
import wainbook.process.Station;

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
        List<CheckSheet> sheets,
        List<Route> routes,
        List<Lines.IsolationPlan> isolationPlans,
        List<Lines.LockItem> locks) {}
