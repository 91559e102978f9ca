package wainbook.order.specification;

import java.util.Locale;
import wainbook.act.Reason;
import wainbook.engineering.specification.RuledOut;

/** Why a number of packs will not do, as a reason that a page shows and an act refuses with. */
public final class RuledOutReasons {

    private RuledOutReasons() {}

    public static Reason of(RuledOut out) {
        if (out instanceof RuledOut.Payload payload) {
            return Reason.of("order.out" + word(payload.binding().name()), Reason.WORKS_RULE, kg(payload.shortKg()));
        }
        if (out instanceof RuledOut.Energy energy) {
            return Reason.of("order.outEnergy", Reason.WORKS_RULE, one(energy.shortKwh()));
        }
        if (out instanceof RuledOut.Power power) {
            return Reason.of(
                    "order.outPower",
                    Reason.WORKS_RULE,
                    power.second(),
                    kg(power.neededW() / 1000),
                    kg(power.greatestW() / 1000));
        }
        if (out instanceof RuledOut.PartLoad part) {
            return Reason.of("order.outPartLoad", Reason.WORKS_RULE, kg(part.overKg()));
        }
        if (out instanceof RuledOut.Lifted lifted) {
            return Reason.of("order.outLifted", Reason.WORKS_RULE, lifted.axle(), kg(lifted.overKg()));
        }
        if (out instanceof RuledOut.Start start) {
            return Reason.of("order.outStart", Reason.WORKS_RULE, one(100 * start.grade()), one(100 * start.asked()));
        }
        RuledOut.Charging charging = (RuledOut.Charging) out;
        return Reason.of("order.outCharging", Reason.WORKS_RULE, one(charging.hours()), one(charging.standsHours()));
    }

    private static String word(String name) {
        return name.charAt(0) + name.substring(1).toLowerCase(Locale.ROOT);
    }

    private static String kg(double value) {
        return String.format(Locale.ROOT, "%.0f", value);
    }

    private static String one(double value) {
        return String.format(Locale.ROOT, "%.1f", value);
    }
}
