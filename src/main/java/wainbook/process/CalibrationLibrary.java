package wainbook.process;

import java.util.List;
import java.util.Optional;
import wainbook.ledger.History;
import wainbook.process.ProcessSaying.CalibrationsReleased;
import wainbook.process.calibration.Calibration;

/** The calibrations of the works as they were released, with those withdrawn since. */
public record CalibrationLibrary(List<Calibration> calibrations, int revision) {

    public CalibrationLibrary {
        calibrations = List.copyOf(calibrations);
    }

    /** As in force; nothing in revision 0 where nothing was released. */
    public static CalibrationLibrary of(History works) {
        return works.last(CalibrationsReleased.class)
                .map(said -> new CalibrationLibrary(said.calibrations(), said.revision()))
                .orElse(new CalibrationLibrary(List.of(), 0));
    }

    public List<Calibration> of(String vehicleKind) {
        return calibrations.stream()
                .filter(one -> one.vehicleKind().equals(vehicleKind))
                .toList();
    }

    /** @param name code and revision, as read at the vehicle */
    public Optional<Calibration> named(String name) {
        return calibrations.stream()
                .filter(one -> one.name().equalsIgnoreCase(name.strip()))
                .findFirst();
    }
}
