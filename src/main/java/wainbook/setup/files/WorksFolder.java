package wainbook.setup.files;

import io.quarkus.runtime.util.ClassPathUtils;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import wainbook.predicate.Predicates;
import wainbook.process.Route;
import wainbook.process.Stage;
import wainbook.process.Station;
import wainbook.process.calibration.Calibration;
import wainbook.process.component.Component;
import wainbook.process.outline.Outline;

/** Reads a works from a folder of CSV and YAML files. Nothing is taken unless everything can be. */
public final class WorksFolder {

    private final Predicates predicates;
    private final List<Fault> faults = new ArrayList<>();

    private WorksFolder(Predicates predicates) {
        this.predicates = predicates;
    }

    public static Found read(Path folder, Predicates predicates) {
        return new WorksFolder(predicates).read(folder);
    }

    /** Reads the demonstration works, or any other that is packed into the program. */
    public static Found onClassPath(String folder, Predicates predicates) {
        List<Found> found = new ArrayList<>();
        try {
            ClassPathUtils.consumeAsPaths(folder, path -> found.add(read(path, predicates)));
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
        return found.stream()
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("nothing on the class path is called " + folder));
    }

    private Found read(Path folder) {
        var works = yaml(folder, "works.yaml").flatMap(file -> whole(file, Lines.Works.class));
        var people = rows(folder, "people.csv", Lines.Person.class);
        var competences = rows(folder, "competences.csv", Lines.Competence.class);
        var kinds = rows(folder, "instrument-kinds.csv", Lines.InstrumentKind.class);
        var instruments = rows(folder, "instruments.csv", Lines.Instrument.class);
        var stages = rows(folder, "stages.csv", Stage.class);
        var stations = rows(folder, "stations.csv", Station.class);
        var joints = rows(folder, "joints.csv", Lines.JointRow.class).stream()
                .flatMap(row -> row.turned(Lines.JointRow::joint, faults).stream())
                .toList();
        List<Located<Component>> components = Files.exists(folder.resolve(Part.COMPONENTS.file()))
                ? rows(folder, Part.COMPONENTS.file(), Component.class)
                : List.of();
        List<Located<Calibration>> calibrations = Files.exists(folder.resolve(Part.CALIBRATIONS.file()))
                ? rows(folder, Part.CALIBRATIONS.file(), Calibration.class)
                : List.of();
        var routes = yaml(folder, "routes.yaml").map(this::routes).orElse(List.of());
        var sheets = sheets(folder);
        var locks = rows(folder, "locks.csv", Lines.LockItem.class);
        var plans = filesOf(folder, "isolation-plans").stream()
                .flatMap(file -> whole(file, Lines.IsolationPlan.class).stream())
                .toList();
        var outlines = outlines(folder);

        Codes numbers = new PeopleChecks(people, competences, faults).run();
        Codes kindCodes = new InstrumentChecks(kinds, instruments, faults).run();
        new ProcessChecks(stages, stations, joints, sheets, routes, kindCodes, predicates, faults).run();
        Codes.of(plans, Lines.IsolationPlan::code, "/code", "isolation-plans/", faults, "isolation plan");
        plans.forEach(plan -> new PlanChecks(plan, faults).run());
        new OutlineChecks(outlines, routes, sheets, faults).run();
        new ComponentChecks(components, routes, faults).run();
        new CalibrationChecks(calibrations, routes, faults).run();
        new LockChecks(locks, numbers, faults).run();
        works.ifPresent(read -> new DayChecks(read, Located.values(stations), faults).run());

        if (!faults.isEmpty()) {
            return new Found.Faulty(faults);
        }
        return new Found.Whole(new WorksFiles(
                works.orElseThrow().value(),
                Located.values(people),
                Located.values(competences),
                Located.values(kinds),
                Located.values(instruments),
                Located.values(stages),
                Located.values(stations),
                Located.values(joints),
                Located.values(components),
                Located.values(calibrations),
                sheets.stream().map(SheetFile::sheet).toList(),
                Located.values(routes),
                Located.values(plans),
                Located.values(outlines),
                Located.values(locks)));
    }

    private <T extends Record> List<Located<T>> rows(Path folder, String name, Class<T> type) {
        return TextFile.read(folder, name, faults)
                .flatMap(text -> CsvFile.read(text, faults))
                .map(file -> file.bind(type, Columns.of(type), faults))
                .orElse(List.of());
    }

    private Optional<YamlFile> yaml(Path folder, String name) {
        return TextFile.read(folder, name, faults).flatMap(text -> YamlFile.read(text, faults));
    }

    private <T> Optional<Located<T>> whole(YamlFile file, Class<T> type) {
        return Binding.TYPED
                .bind(file.root(), type, file::place, faults)
                .map(value -> new Located<>(value, file.place(""), file::place));
    }

    private List<Located<Route>> routes(YamlFile file) {
        List<Located<Route>> routes = new ArrayList<>();
        for (int i = 0; i < file.root().size(); i++) {
            String at = "/" + i;
            Binding.TYPED
                    .bind(file.root().get(i), Route.class, pointer -> file.place(at + pointer), faults)
                    .ifPresent(route -> routes.add(
                            new Located<>(route, file.place(at).unnamed(), pointer -> file.place(at + pointer))));
        }
        return routes;
    }

    private List<SheetFile> sheets(Path folder) {
        return filesOf(folder, "sheets").stream()
                .flatMap(file -> SheetFile.read(file, faults).stream())
                .toList();
    }

    /** A works may do without: its vehicles are then worked by the list alone. */
    private List<Located<Outline>> outlines(Path folder) {
        if (!Files.isDirectory(folder.resolve(Part.OUTLINES.file()))) {
            return List.of();
        }
        return filesOf(folder, Part.OUTLINES.file()).stream()
                .flatMap(file -> whole(file, Outline.class).stream())
                .toList();
    }

    /** All YAML files of a folder within the folder, by name. */
    private List<YamlFile> filesOf(Path folder, String within) {
        Path inner = folder.resolve(within);
        if (!Files.isDirectory(inner)) {
            faults.add(Fault.of(Place.of(within), "fileMissing", "no such folder", within + "/*.yaml"));
            return List.of();
        }
        try (Stream<Path> listed = Files.list(inner)) {
            return listed.map(path -> path.getFileName().toString())
                    .filter(name -> name.endsWith(".yaml"))
                    .sorted()
                    .flatMap(name -> yaml(folder, within + "/" + name).stream())
                    .toList();
        } catch (IOException unreadable) {
            faults.add(Fault.of(Place.of(within), "fileUnreadable", unreadable.getMessage(), "a readable folder"));
            return List.of();
        }
    }
}
