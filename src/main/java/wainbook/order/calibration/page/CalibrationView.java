package wainbook.order.calibration.page;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import wainbook.act.Reason;
import wainbook.order.WorkOrder;
import wainbook.order.calibration.Comparison;
import wainbook.order.calibration.Times;
import wainbook.order.calibration.Wanted;
import wainbook.order.calibration.Wish;
import wainbook.order.promise.Promise;
import wainbook.page.Filled;
import wainbook.page.Option;
import wainbook.page.Words;
import wainbook.process.calibration.Setting;

/**
 * A calibration asked for, as its page shows it.
 *
 * @param times by calculation; absent without an acceptance or a specification
 * @param promises those that stand
 * @param sentBack whether the form comes back with faults
 * @param closed why nothing can be said any more
 */
public record CalibrationView(
        WorkOrder order,
        Wanted wanted,
        Comparison compared,
        Optional<Times> times,
        List<Promise> promises,
        Filled filled,
        boolean sentBack,
        boolean mayAsk,
        List<Reason> closed) {

    public String path() {
        return "/orders/" + order.number() + "/calibration";
    }

    /** The state of the page, for its title. */
    public String state() {
        return Words.of("order.calibrationState." + (compared.nothingAsked() ? "NOTHING" : stands()));
    }

    private String stands() {
        return compared.agrees() ? "AGREES" : compared.read().calibration().isEmpty() ? "NOT_YET" : "DIFFERS";
    }

    /** The same as a sentence. */
    public String sentence() {
        return Character.toUpperCase(state().charAt(0)) + state().substring(1);
    }

    /** Nothing was read yet, as long as the vehicle is being built. */
    public boolean early() {
        return stands().equals("NOT_YET");
    }

    public List<Setting> settings() {
        return List.of(Setting.values());
    }

    public String label(Setting setting) {
        return Words.of("order.setting." + setting.name());
    }

    /** What is known of usual values, so that an unusual one is asked about and not refused. */
    public String remark(Wish wish) {
        boolean bus = order.ordered().vehicleKind().startsWith("bus");
        double value = wish.value().doubleValue();
        if (wish.setting() != Setting.ACCELERATION_LIMIT) {
            return "";
        }
        return bus
                ? value > 1.2 ? Words.of("order.wishAboveStanding") : ""
                : value < 0.6 || value > 1.0 ? Words.of("order.wishOutsideUsual") : "";
    }

    public String by(Wish wish) {
        return wish.promise()
                .map(number -> Words.of("order.wishBy.PROMISE", number))
                .orElseGet(() -> Words.of("order.wishBy." + wish.by().name()));
    }

    public String verdict(Comparison.Line line) {
        return Words.of("order.wishVerdict." + line.verdict().name());
    }

    public String off(Comparison.Line line) {
        return line.off().map(Comparison::signed).orElse("");
    }

    public String which() {
        return Words.of("order.calibrationWhich." + compared.which().name());
    }

    public List<Option> wishers() {
        var options = new ArrayList<Option>();
        options.add(new Option(Wish.By.OPERATOR.name(), Words.of("order.wishBy.OPERATOR")));
        options.add(new Option(Wish.By.WORKS.name(), Words.of("order.wishBy.WORKS")));
        promises.forEach(promise -> options.add(
                new Option(WishForm.promise(promise.number()), Words.of("order.wishBy.PROMISE", promise.number()))));
        return options;
    }

    public String value(Setting setting, String field) {
        return filled.value(setting.name() + field);
    }

    public boolean wrong(Setting setting, String field) {
        return filled.form().fault(setting.name() + field).isPresent();
    }

    /** Earlier wordings, newest first. */
    public List<Wanted.Said> earlier() {
        var all = new ArrayList<>(wanted.asked());
        if (!all.isEmpty()) {
            all.remove(all.size() - 1);
        }
        Collections.reverse(all);
        return all;
    }

    public String words(Wanted.Said said) {
        return said.what().wishes().isEmpty()
                ? Words.of("order.calibrationState.NOTHING")
                : String.join(
                        "; ",
                        said.what().wishes().stream()
                                .map(wish -> label(wish.setting()) + " "
                                        + wish.value().toPlainString() + " "
                                        + wish.setting().unit())
                                .toList());
    }

    public String seconds(OptionalDouble seconds) {
        return seconds.isPresent()
                ? BigDecimal.valueOf(seconds.getAsDouble())
                        .setScale(2, RoundingMode.HALF_UP)
                        .toPlainString()
                : "–";
    }

    public String kg(double kg) {
        return BigDecimal.valueOf(kg).setScale(0, RoundingMode.HALF_UP).toPlainString();
    }

    List<List<String>> cells() {
        return compared.lines().stream()
                .map(line -> Arrays.asList(
                        label(line.wish().setting()),
                        line.wish().setting().unit(),
                        line.wish().value().toPlainString(),
                        line.wish().tolerance().toPlainString(),
                        by(line.wish()),
                        line.wish().why(),
                        line.released().map(BigDecimal::toPlainString).orElse(""),
                        line.read().map(BigDecimal::toPlainString).orElse(""),
                        verdict(line),
                        off(line)))
                .toList();
    }
}
