package wainbook.setup.taking;

import java.util.List;
import java.util.Optional;
import wainbook.act.Reason;
import wainbook.setup.files.Differences;
import wainbook.setup.files.Lines;
import wainbook.setup.files.WorksFiles;

/**
 * What taking files would change, and what stands against it.
 *
 * @param wanted what the files ask for, as far as they may
 * @param needsSecond whether a second person has to confirm it
 */
public record Preview(WorksFiles wanted, Differences differences, List<Reason> reasons, boolean needsSecond) {

    public Preview {
        reasons = List.copyOf(reasons);
    }

    static Preview of(OnRecord record, WorksFiles files, Asker asker) {
        WorksFiles standing = record.standing();
        WorksFiles wanted = stillWithdrawn(standing, files);
        var differences = Differences.between(standing, record.ended(), wanted);
        return new Preview(
                wanted,
                differences,
                new TakingRules(record, wanted, differences, asker).against(),
                record.hasProcess() && differences.touchTheProcess());
    }

    public String fingerprint() {
        return differences.fingerprint();
    }

    /** An instrument that was withdrawn stays so until it was calibrated anew, whatever an older file says. */
    private static WorksFiles stillWithdrawn(WorksFiles standing, WorksFiles files) {
        return files.withInstruments(files.instruments().stream()
                .map(line -> standing.instruments().stream()
                        .filter(known -> known.code().equals(line.code()) && !calibratedSince(known, line))
                        .findFirst()
                        .flatMap(Lines.Instrument::withdrawn)
                        .map(why -> line.withdrawn().isPresent() ? line : line.withdrawnBecause(why))
                        .orElse(line))
                .toList());
    }

    private static boolean calibratedSince(Lines.Instrument known, Lines.Instrument line) {
        Optional<Integer> before = known.calibratedDay();
        return line.calibratedDay()
                .filter(day -> before.isEmpty() || day > before.get())
                .isPresent();
    }
}
