package wainbook.process.page;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import wainbook.act.Moment;
import wainbook.page.Form;
import wainbook.page.Option;
import wainbook.page.Words;
import wainbook.process.CalibrationLibrary;
import wainbook.process.calibration.Calibration;
import wainbook.process.calibration.Setting;

/**
 * The calibrations of the works as a list.
 *
 * @param released who released what is in force, and when
 */
public record CalibrationsView(
        CalibrationLibrary library,
        String kind,
        UnaryOperator<String> titles,
        Optional<Moment> released,
        boolean mayTake) {

    private static final int SHOWN = 8;

    public boolean nothing() {
        return library.calibrations().isEmpty();
    }

    public List<Calibration> rows() {
        return kind.isEmpty() ? library.calibrations() : library.of(kind);
    }

    public Form form() {
        return Form.EMPTY.with("kind", kind);
    }

    public List<Option> kinds() {
        return library.calibrations().stream()
                .map(Calibration::vehicleKind)
                .distinct()
                .map(code -> new Option(code, titles.apply(code)))
                .toList();
    }

    public String csv() {
        return "/process/calibrations/file.csv?kind=" + kind;
    }

    public String title(Calibration one) {
        return titles.apply(one.vehicleKind());
    }

    /** The digits that are read at the vehicle. */
    public String digits(Calibration one) {
        return one.fileSha256().substring(0, SHOWN);
    }

    public List<Setting> settings() {
        return List.of(Setting.values());
    }

    public String head(Setting setting) {
        return Words.of("process.settingHead." + setting.name()) + ", " + setting.unit();
    }

    public String value(Calibration one, Setting setting) {
        return one.value(setting).map(BigDecimal::toPlainString).orElse("–");
    }

    public String standing(Calibration one) {
        return Words.of("process.calibrationStanding." + one.standing().name());
    }

    List<String> cells(Calibration one) {
        var cells = new ArrayList<>(List.of(
                one.code(),
                String.valueOf(one.revision()),
                one.vehicleKind(),
                one.title(),
                one.fileSha256(),
                standing(one)));
        Stream.of(Setting.values())
                .map(one::value)
                .map(value -> value.map(BigDecimal::toPlainString).orElse(""))
                .forEach(cells::add);
        return cells;
    }
}
