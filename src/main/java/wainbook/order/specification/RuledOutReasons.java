package wainbook.order.specification;

import java.util.Locale;
import wainbook.act.Reason;
import wainbook.engineering.specification.PackTable;
import wainbook.engineering.specification.RuledOut;
import wainbook.engineering.specification.SpecificationTable;
import wainbook.engineering.weights.Binding;
import wainbook.engineering.weights.TwoAxles;
import wainbook.order.duty.ChassisFigures;

/** Why a number of packs will not do, as a reason that a page shows and an act refuses with. */
public final class RuledOutReasons {

    private RuledOutReasons() {}

    /** Names the tyres where they are what limits an axle, and the load of that axle with the whole payload. */
    public static Reason of(RuledOut out, SpecificationTable.Row row, Working working) {
        if (out instanceof RuledOut.Payload payload && ofAxles(payload.binding())) {
            boolean front = payload.binding() == Binding.FRONT;
            return working.heldByTyres(front)
                    .map(held -> tyres(held, payload, laden(row, working, front)))
                    .orElseGet(() -> of(out));
        }
        if (out instanceof RuledOut.PartLoad part) {
            return working.heldByTyres(true)
                    .map(held ->
                            tyres("order.outPartLoadTyres", held.axle(), held.share() * part.overKg(), held.tyres()))
                    .orElseGet(() -> of(out));
        }
        if (out instanceof RuledOut.Lifted lifted) {
            return working.tyresThatLimit(lifted.axle())
                    .map(tyres -> tyres("order.outLiftedTyres", lifted.axle(), lifted.overKg(), tyres))
                    .orElseGet(() -> of(out));
        }
        return of(out);
    }

    private static boolean ofAxles(Binding binding) {
        return binding == Binding.FRONT || binding == Binding.REAR;
    }

    /** @return what the group would carry with the payload that is wanted */
    private static double laden(SpecificationTable.Row row, Working working, boolean front) {
        PackTable packs = working.table().packs();
        TwoAxles laden = row.packs().empty().with(packs.payloadKg(), packs.payloadCentreM());
        return front ? laden.frontKg() : laden.rearKg();
    }

    private static Reason tyres(Working.HeldByTyres held, RuledOut.Payload payload, double groupKg) {
        return Reason.of(
                "order.outTyres",
                Reason.WORKS_RULE,
                kg(payload.shortKg()),
                held.axle(),
                kg(held.share() * groupKg - held.tyres().axleKg()),
                held.tyres().number(),
                held.tyres().loadKg().toPlainString(),
                held.tyres().speedKmh().toPlainString());
    }

    private static Reason tyres(String key, int axle, double overKg, ChassisFigures.Tyres tyres) {
        return Reason.of(
                key,
                Reason.WORKS_RULE,
                axle,
                kg(overKg),
                tyres.number(),
                tyres.loadKg().toPlainString());
    }

    static Reason of(RuledOut out) {
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
