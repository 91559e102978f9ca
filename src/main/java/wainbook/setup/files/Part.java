package wainbook.setup.files;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import wainbook.process.Stage;
import wainbook.process.Station;
import wainbook.process.calibration.Calibration;
import wainbook.process.component.Component;

/** The parts of a works, in the order in which they are told: where each is written, and what its lines are known by. */
public enum Part {
    WORKS("works.yaml", ""),
    OPERATORS("works.yaml", "code"),
    PEOPLE("people.csv", "number"),
    COMPETENCES("competences.csv", "person competence"),
    INSTRUMENT_KINDS("instrument-kinds.csv", "code"),
    INSTRUMENTS("instruments.csv", "code"),
    STAGES("stages.csv", "code"),
    STATIONS("stations.csv", "code"),
    JOINTS("joints.csv", "code"),
    COMPONENTS("components.csv", "code"),
    CALIBRATIONS("calibrations.csv", "code revision"),
    SHEETS("sheets", "code"),
    ROUTES("routes.yaml", "code"),
    ISOLATION_PLANS("isolation-plans", "code"),
    OUTLINES("outlines", "vehicle_kind"),
    LOCKS("locks.csv", "number");

    private final String file;

    /** The fields that name a line, with a space between. */
    private final String key;

    Part(String file, String key) {
        this.file = file;
        this.key = key;
    }

    /** The file, or the folder, that it stands in. */
    public String file() {
        return file;
    }

    /** Whether it says how vehicles are built: what two people answer for. */
    public boolean ofTheProcess() {
        return switch (this) {
            case STAGES, STATIONS, JOINTS, COMPONENTS, CALIBRATIONS, SHEETS, ROUTES, ISOLATION_PLANS, OUTLINES -> true;
            case WORKS, OPERATORS, PEOPLE, COMPETENCES, INSTRUMENT_KINDS, INSTRUMENTS, LOCKS -> false;
        };
    }

    /** The lines as a file would write them, each with what it is known by. */
    List<ObjectNode> nodes(WorksFiles files) {
        return lines(files).stream().map(Node::of).toList();
    }

    private List<?> lines(WorksFiles files) {
        return switch (this) {
            case WORKS -> List.of(files.works());
            case OPERATORS -> files.works().operators();
            case PEOPLE -> files.people();
            case COMPETENCES -> files.competences();
            case INSTRUMENT_KINDS -> files.instrumentKinds();
            case INSTRUMENTS -> files.instruments();
            case STAGES -> files.stages();
            case STATIONS -> files.stations();
            case JOINTS -> files.joints();
            case COMPONENTS -> files.components();
            case CALIBRATIONS -> files.calibrations();
            case SHEETS -> files.sheets();
            case ROUTES -> files.routes();
            case ISOLATION_PLANS -> files.isolationPlans();
            case OUTLINES -> files.outlines();
            case LOCKS -> files.locks();
        };
    }

    /** What a line is known by; nothing for the works itself, of which there is one. */
    String key(ObjectNode node) {
        return Arrays.stream(key.split(" "))
                .map(field -> node.path(field).asText())
                .collect(Collectors.joining(" "));
    }

    /** The columns of its file, where that is a table. */
    Columns columns() {
        return switch (this) {
            case PEOPLE -> Columns.of(Lines.Person.class);
            case COMPETENCES -> Columns.of(Lines.Competence.class);
            case INSTRUMENT_KINDS -> Columns.of(Lines.InstrumentKind.class);
            case INSTRUMENTS -> Columns.of(Lines.Instrument.class);
            case STAGES -> Columns.of(Stage.class);
            case STATIONS -> Columns.of(Station.class);
            case JOINTS -> Columns.of(Lines.JointRow.class);
            case COMPONENTS -> Columns.of(Component.class);
            case CALIBRATIONS -> Columns.of(Calibration.class);
            case LOCKS -> Columns.of(Lines.LockItem.class);
            case WORKS, OPERATORS, SHEETS, ROUTES, ISOLATION_PLANS, OUTLINES ->
                throw new IllegalStateException(this + " is no table");
        };
    }

    static List<Part> tables() {
        return Arrays.stream(values())
                .filter(part -> part.file.endsWith(".csv"))
                .toList();
    }
}
