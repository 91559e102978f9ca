package wainbook.order.calibration;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import wainbook.act.Reason;
import wainbook.order.promise.Promise;
import wainbook.process.calibration.Setting;

/** Whether what is asked can be meant. What a road or a licence allows is not asked here. */
public final class WishRules {

    private static final int LONGEST = 200;
    private static final BigDecimal FASTEST_KMH = BigDecimal.valueOf(120);
    private static final BigDecimal LONGEST_S = BigDecimal.valueOf(30);
    private static final BigDecimal STRONGEST_KW = BigDecimal.valueOf(1000);

    private WishRules() {}

    static List<Reason> against(List<Wish> wishes, Optional<SameTime> sameTime, List<Promise> promises) {
        var against = new ArrayList<Reason>();
        var seen = new HashSet<Setting>();
        for (Wish wish : wishes) {
            if (!seen.add(wish.setting())) {
                against.add(at(wish, "Value", "order.wishTwice", wish.setting().thing()));
            }
            one(wish, promises, against);
        }
        sameTime.ifPresent(asked -> sameTime(asked, wishes, against));
        return against;
    }

    private static void one(Wish wish, List<Promise> promises, List<Reason> against) {
        Setting setting = wish.setting();
        if (!setting.plausible(wish.value())) {
            against.add(at(
                    wish,
                    "Value",
                    "order.wishImplausible",
                    setting.thing(),
                    setting.least().toPlainString(),
                    setting.most().toPlainString(),
                    setting.unit()));
        }
        if (wish.tolerance().signum() < 0 || wish.tolerance().compareTo(setting.most()) >= 0) {
            against.add(at(
                    wish,
                    "Tolerance",
                    "order.wishTolerance",
                    setting.thing(),
                    setting.most().toPlainString(),
                    setting.unit()));
        }
        if (wish.why().isBlank() || wish.why().length() > LONGEST) {
            against.add(at(wish, "Why", "order.wishWhy", setting.thing(), LONGEST));
        }
        boolean named = promises.stream()
                .anyMatch(promise -> promise.stands() && wish.promise().equals(Optional.of(promise.number())));
        if (wish.by() == Wish.By.PROMISE ? !named : wish.promise().isPresent()) {
            against.add(at(wish, "By", "order.wishPromise", setting.thing()));
        }
    }

    private static void sameTime(SameTime asked, List<Wish> wishes, List<Reason> against) {
        if (wishes.stream().noneMatch(wish -> wish.setting() == Setting.ACCELERATION_LIMIT)) {
            against.add(Reason.of("order.sameTimeAlone", Reason.WORKS_RULE).liftedAt("#toKmh"));
        }
        within(asked.toKmh(), FASTEST_KMH, "toKmh", "km/h", against);
        within(asked.toleranceS(), LONGEST_S, "toleranceS", "s", against);
        within(asked.shaftKw(), STRONGEST_KW, "shaftKw", "kW", against);
    }

    private static void within(BigDecimal value, BigDecimal most, String field, String unit, List<Reason> against) {
        if (value.signum() <= 0 || value.compareTo(most) > 0) {
            against.add(Reason.of("order.sameTimeBounds", Reason.WORKS_RULE, most.toPlainString(), unit)
                    .liftedAt("#" + field));
        }
    }

    private static Reason at(Wish wish, String field, String key, Object... arguments) {
        return Reason.of(key, Reason.WORKS_RULE, arguments)
                .liftedAt("#" + wish.setting().name() + field);
    }
}
