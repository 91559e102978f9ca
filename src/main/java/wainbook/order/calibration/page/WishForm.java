package wainbook.order.calibration.page;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wainbook.order.calibration.SameTime;
import wainbook.order.calibration.Wish;
import wainbook.page.Filled;
import wainbook.process.calibration.Setting;

/** The form of a calibration asked for: a row a setting; a row without a value asks nothing. */
final class WishForm {

    static final String VALUE = "Value";
    static final String TOLERANCE = "Tolerance";
    static final String BY = "By";
    static final String WHY = "Why";
    private static final String PROMISE = "PROMISE-";

    private Filled filled;

    private WishForm(Filled filled) {
        this.filled = filled;
    }

    /** What was read, and the form with a fault at each field that could not be. */
    record Read(Filled filled, List<Wish> wishes, Optional<SameTime> sameTime) {}

    static Read read(Filled sent) {
        var form = new WishForm(sent);
        var wishes = new ArrayList<Wish>();
        for (Setting setting : Setting.values()) {
            form.wish(setting).ifPresent(wishes::add);
        }
        Optional<SameTime> sameTime = form.sameTime();
        return new Read(form.filled, wishes, sameTime);
    }

    static Filled filled(Filled fresh, List<Wish> wishes, Optional<SameTime> sameTime) {
        Filled form = fresh;
        for (Wish wish : wishes) {
            String field = wish.setting().name();
            form = form.with(field + VALUE, wish.value().toPlainString())
                    .with(field + TOLERANCE, wish.tolerance().toPlainString())
                    .with(
                            field + BY,
                            wish.promise()
                                    .map(number -> PROMISE + number)
                                    .orElse(wish.by().name()))
                    .with(field + WHY, wish.why());
        }
        if (sameTime.isPresent()) {
            form = form.with("toKmh", sameTime.get().toKmh().toPlainString())
                    .with("toleranceS", sameTime.get().toleranceS().toPlainString())
                    .with("shaftKw", sameTime.get().shaftKw().toPlainString());
        }
        return form;
    }

    static String promise(int number) {
        return PROMISE + number;
    }

    private Optional<Wish> wish(Setting setting) {
        String field = setting.name();
        if (filled.value(field + VALUE).isEmpty()) {
            return Optional.empty();
        }
        BigDecimal value = figure(field + VALUE);
        BigDecimal tolerance = figure(field + TOLERANCE);
        String by = filled.value(field + BY);
        Optional<Integer> promise = Optional.of(by)
                .filter(text -> text.matches(PROMISE + "[0-9]{1,4}"))
                .map(text -> Integer.valueOf(text.substring(PROMISE.length())));
        return Optional.of(new Wish(
                setting,
                value,
                tolerance,
                promise.isPresent()
                        ? Wish.By.PROMISE
                        : by.equals(Wish.By.WORKS.name()) ? Wish.By.WORKS : Wish.By.OPERATOR,
                promise,
                filled.value(field + WHY)));
    }

    private Optional<SameTime> sameTime() {
        if (filled.value("toKmh").isEmpty()
                && filled.value("toleranceS").isEmpty()
                && filled.value("shaftKw").isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new SameTime(figure("toKmh"), figure("toleranceS"), figure("shaftKw")));
    }

    private BigDecimal figure(String field) {
        String typed = filled.value(field).replace(',', '.').replace(" ", "");
        if (!typed.matches("[0-9]{1,6}(\\.[0-9]{1,4})?")) {
            filled = filled.wrong(field, "order.wishFigure", filled.value(field).isEmpty() ? "–" : filled.value(field));
            return BigDecimal.ONE;
        }
        return new BigDecimal(typed);
    }
}
