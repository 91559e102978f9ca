package wainbook.line.forecast.whatif;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wainbook.act.Reason;
import wainbook.line.forecast.past.Stop;
import wainbook.line.forecast.state.TheLineNow;

/** What can be asked of a line. Each reason names its field. */
record Limits(TheLineNow line) {

    List<Reason> against(WhatIf asked) {
        var found = new ArrayList<Reason>();
        if (line.posts().isEmpty() || line.vehicles().isEmpty()) {
            found.add(Reason.of("line.whatIfNoLine", Reason.WORKS_RULE).liftedAt("/orders"));
            return found;
        }
        asked.overtime().ifPresent(overtime -> found.addAll(against(overtime)));
        asked.hands().ifPresent(hands -> {
            stage(hands.stage(), "handsStage").ifPresent(found::add);
            if (hands.factor().compareTo(WhatIf.Hands.LEAST) < 0
                    || hands.factor().compareTo(BigDecimal.ONE) > 0) {
                found.add(at("factor", "line.whatIfFactor", WhatIf.Hands.LEAST));
            }
        });
        asked.secondStation().flatMap(stage -> stage(stage, "secondStation")).ifPresent(found::add);
        asked.turn()
                .map(WhatIf.Turn::order)
                .filter(order ->
                        line.waiting().stream().noneMatch(one -> one.order().equals(order)))
                .ifPresent(order -> found.add(at("vehicle", "line.whatIfNotWaiting", order)));
        asked.release().ifPresent(release -> found.addAll(against(release)));
        asked.finishedBy()
                .filter(day -> day.isBefore(today())
                        || !line.calendar()
                                .end()
                                .isAfter(day.atStartOfDay(
                                                line.calendar().shifts().zone())
                                        .toInstant()))
                .ifPresent(day -> found.add(at(
                        "by",
                        "line.whatIfDay",
                        today(),
                        line.calendar().day(line.calendar().end()))));
        return found;
    }

    private List<Reason> against(WhatIf.Overtime overtime) {
        var found = new ArrayList<Reason>();
        if (overtime.days().isEmpty() || overtime.days().size() > WhatIf.Overtime.MOST_DAYS) {
            found.add(at("days", "line.whatIfDays", WhatIf.Overtime.MOST_DAYS));
        }
        overtime.days().stream()
                .filter(day -> day.isBefore(today()) || !worked(day))
                .findFirst()
                .ifPresent(day -> found.add(at("days", "line.whatIfNoWork", day)));
        if (overtime.minutes() < 1 || overtime.minutes() > WhatIf.Overtime.MOST_MINUTES) {
            found.add(at("minutes", "line.wholeNumber", 1, WhatIf.Overtime.MOST_MINUTES));
        }
        overtime.stage().flatMap(stage -> stage(stage, "overtimeStage")).ifPresent(found::add);
        return found;
    }

    private List<Reason> against(WhatIf.Release release) {
        var found = new ArrayList<Reason>();
        boolean held = line.vehicle(release.order()).stream()
                .flatMap(vehicle -> vehicle.stops().stream())
                .anyMatch(stop -> stop.sort() == Stop.HOLD && stop.number() == release.hold());
        if (!held) {
            found.add(at("hold", "line.whatIfNoHold", release.hold(), release.order()));
        }
        if (release.at().filter(at -> at.isBefore(line.calendar().now())).isPresent()) {
            found.add(at("released", "line.whatIfGone"));
        }
        return found;
    }

    private boolean worked(LocalDate day) {
        return line.calendar().worked(day);
    }

    private LocalDate today() {
        return line.calendar().day(line.calendar().now());
    }

    private Optional<Reason> stage(String stage, String field) {
        return line.posts().stream().anyMatch(post -> post.stage().equals(stage))
                ? Optional.empty()
                : Optional.of(at(field, "line.whatIfNoStage", stage));
    }

    private static Reason at(String field, String key, Object... arguments) {
        return Reason.of(key, Reason.WORKS_RULE, arguments).liftedAt("#" + field);
    }
}
