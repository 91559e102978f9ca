package wainbook.order.specification;

import java.math.BigDecimal;
import java.util.List;
import wainbook.act.Reason;
import wainbook.engineering.specification.PackLife;
import wainbook.order.duty.Duty;

/** What a duty may say. Bounds are wide: they catch slips of the pen, not unusual work. */
final class DutyRules {

    static final int MOST_LEGS = 12;
    private static final int LONGEST_WORDS = 2000;

    private DutyRules() {}

    static List<Reason> against(Duty duty) {
        var bounds = new Bounds();
        for (int i = 0; i < duty.legs().size(); i++) {
            Duty.Leg leg = duty.legs().get(i);
            String at = "leg" + (i + 1);
            bounds.within(at + "km", leg.km(), 0.1, 1500)
                    .within(at + "meanKmh", leg.meanKmh(), 1, 110)
                    .within(at + "stopsPerKm", leg.stopsPerKm(), 0, 20)
                    .within(at + "upM", leg.upM(), 0, 20_000)
                    .within(at + "downM", leg.downM(), 0, 20_000)
                    .within(at + "loadPercent", leg.loadPercent(), 0, 100);
        }
        if (duty.legs().size() > MOST_LEGS) {
            bounds.refuse(
                    Reason.of("order.tooManyLegs", Reason.WORKS_RULE, MOST_LEGS).liftedAt("#duty"));
        }
        if (duty.words().length() > LONGEST_WORDS) {
            bounds.refuse(Reason.of("order.wordsTooLong", Reason.WORKS_RULE, LONGEST_WORDS)
                    .liftedAt("#words"));
        }
        duty.recorded()
                .ifPresent(way -> bounds.within("timesADay", way.timesADay(), 0.1, 200)
                        .within("traceLoadPercent", way.loadPercent(), 0, 100));
        bounds.within("payloadKg", duty.payloadKg(), 0, 40_000)
                .within("auxiliaryKw", duty.auxiliaryKw(), 0, 60)
                .within("bodyKwh", duty.bodyKwh(), 0, 500)
                .within("outsideC", duty.heating().outsideC(), -40, 20)
                .within("heatedHours", duty.heating().hours(), 0, 24)
                .within("drivingPercent", duty.worst().drivingPercent(), 0, 200)
                .within("bodyPercent", duty.worst().bodyPercent(), 0, 200)
                .within("oddsPercent", duty.worst().oddsPercent(), 50, 99.9)
                .within("startOnPercent", duty.startOnPercent(), 0, 40)
                .within("nightHours", duty.charging().hours(), 0.1, 24)
                .within("nightKw", duty.charging().kw(), 1, 1000);
        duty.use()
                .ifPresent(use -> bounds.within("daysPerYear", use.daysPerYear(), 1, 366)
                        .within("years", use.years().map(DutyRules::whole), 1, PackLife.MOST_YEARS));
        duty.people()
                .ifPresent(people -> bounds.within("seated", whole(people.seated()), 0, 150)
                        .within("standing", whole(people.standing()), 0, 150)
                        .within("seated", whole(people.seated() + people.standing()), 1, 250));
        duty.hydraulics()
                .ifPresent(work -> bounds.within("cycles", whole(work.cycles()), 0, 2000)
                        .within("bar", work.bar(), 0, 500)
                        .within("litres", work.litres(), 0, 500)
                        .within("idleMinutes", whole(work.idleMinutes()), 0, 1440));
        return bounds.against();
    }

    private static BigDecimal whole(int value) {
        return BigDecimal.valueOf(value);
    }
}
