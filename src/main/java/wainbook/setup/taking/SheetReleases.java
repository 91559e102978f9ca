package wainbook.setup.taking;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import wainbook.process.ProcessSaying;
import wainbook.process.VehicleFacts;
import wainbook.process.joint.Joint;
import wainbook.process.rule.Draft;
import wainbook.process.rule.Known;
import wainbook.process.sheet.CheckSheet;
import wainbook.setup.files.WorksFiles;

/** Releases check sheets by the rules of every release, against what the works will have on record with them. */
record SheetReleases(OnRecord record, WorksFiles wanted, List<Joint> joints) {

    List<ProcessSaying.Released> of(List<CheckSheet> sheets) {
        WorksFiles standing = record.standing();
        Set<String> stages = new HashSet<>();
        Set<String> kinds = new HashSet<>();
        for (WorksFiles files : List.of(standing, wanted)) {
            files.stages().forEach(stage -> stages.add(stage.code()));
            files.instrumentKinds().forEach(kind -> kinds.add(kind.code()));
        }
        var known = new Known(joints, stages, kinds, VehicleFacts.PREDICATES);
        return sheets.stream().map(sheet -> release(sheet, known)).toList();
    }

    private ProcessSaying.Released release(CheckSheet sheet, Known known) {
        return new Draft(sheet)
                .release(known, Optional.ofNullable(record.sheets().get(sheet.code())))
                .fold(released -> released, reasons -> {
                    throw new IllegalStateException(
                            "check sheet " + sheet.code() + " was checked and is refused: " + reasons);
                });
    }
}
