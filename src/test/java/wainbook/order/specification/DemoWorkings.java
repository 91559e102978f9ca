package wainbook.order.specification;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import wainbook.order.duty.ChassisFigures;
import wainbook.order.duty.Duty;
import wainbook.process.ComponentLibrary;
import wainbook.process.VehicleFacts;
import wainbook.rehearsal.scenario.Scenario;
import wainbook.setup.files.WorksFiles;
import wainbook.setup.files.WorksFolder;

/** What the demonstration works specifies, ready to be worked out. All invented. */
final class DemoWorkings {

    static final LocalDate DAY = LocalDate.of(2026, 11, 26);
    private static final WorksFiles WORKS = WorksFolder.read(Path.of("demo-fleet"), VehicleFacts.PREDICATES)
            .fold(files -> files, faults -> {
                throw new IllegalStateException(faults.toString());
            });

    private DemoWorkings() {}

    static Working working(String kind, Duty duty, ChassisFigures vehicle) {
        return new Working(duty, vehicle, library(kind), asked(kind).packType(), DAY, List.of());
    }

    static Working working(String kind) {
        return working(kind, asked(kind).vehicle());
    }

    static Working working(String kind, ChassisFigures vehicle) {
        Scenario.Asked asked = asked(kind);
        return new Working(asked.duty(), vehicle, library(kind), asked.packType(), DAY, List.of());
    }

    static ComponentLibrary library(String kind) {
        return new ComponentLibrary(WORKS.components(), 1).of(kind);
    }

    static Scenario.Asked asked(String kind) {
        return Scenario.beside("demo-fleet").orElseThrow().kinds().stream()
                .filter(one -> one.kind().equals(kind))
                .findFirst()
                .flatMap(Scenario.Kind::specification)
                .orElseThrow();
    }
}
