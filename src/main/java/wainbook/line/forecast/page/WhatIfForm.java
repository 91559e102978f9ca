package wainbook.line.forecast.page;

import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import wainbook.line.forecast.whatif.WhatIf;
import wainbook.page.Filled;

/** The question as it stands in the address, so that it can be sent to somebody. */
final class WhatIfForm {

    private static final List<String> FIELDS = List.of(
            "days",
            "minutes",
            "overtimeStage",
            "handsStage",
            "factor",
            "secondStation",
            "vehicle",
            "place",
            "hold",
            "released",
            "by");
    private static final Map<String, String> PRESET =
            Map.of("minutes", "60", "factor", WhatIf.Hands.ASSUMED.toPlainString(), "place", "FIRST");
    private static final Pattern BETWEEN = Pattern.compile("[\\s,;]+");

    private Filled filled;
    private final ZoneId zone;

    private WhatIfForm(Filled filled, ZoneId zone) {
        this.filled = filled;
        this.zone = zone;
    }

    static Filled filled(Map<String, List<String>> address) {
        Filled filled = Filled.fresh();
        for (String field : FIELDS) {
            String typed =
                    address.getOrDefault(field, List.of()).stream().findFirst().orElse("");
            filled = filled.with(field, typed.isBlank() ? PRESET.getOrDefault(field, "") : typed);
        }
        return filled;
    }

    /** The question, and the form with a fault at each field that cannot be read. */
    record Read(WhatIf asked, Filled filled) {}

    static Read read(Filled filled, ZoneId zone) {
        var form = new WhatIfForm(filled, zone);
        var asked = new WhatIf(
                form.overtime(),
                form.text("handsStage").map(stage -> new WhatIf.Hands(stage, form.factor())),
                form.text("secondStation"),
                form.text("vehicle").map(order -> new WhatIf.Turn(order, form.place())),
                form.release(),
                form.text("by").flatMap(day -> form.day("by", day)));
        return new Read(asked, form.filled);
    }

    private Optional<WhatIf.Overtime> overtime() {
        return text("days").map(typed -> {
            List<LocalDate> days = new ArrayList<>();
            BETWEEN.splitAsStream(typed)
                    .filter(one -> !one.isEmpty())
                    .distinct()
                    .forEach(one -> day("days", one).ifPresent(days::add));
            String minutes = filled.value("minutes");
            return new WhatIf.Overtime(
                    days, minutes.matches("[0-9]{1,4}") ? Integer.parseInt(minutes) : 0, text("overtimeStage"));
        });
    }

    private BigDecimal factor() {
        String typed = filled.value("factor").replace(',', '.');
        return typed.matches("[0-9]{1,2}(\\.[0-9]{1,4})?") ? new BigDecimal(typed) : BigDecimal.ZERO;
    }

    private WhatIf.Turn.Place place() {
        for (WhatIf.Turn.Place one : WhatIf.Turn.Place.values()) {
            if (one.name().equals(filled.value("place"))) {
                return one;
            }
        }
        wrong("place", "line.whatIfPlace");
        return WhatIf.Turn.Place.FIRST;
    }

    private Optional<WhatIf.Release> release() {
        return text("hold").flatMap(typed -> {
            int slash = typed.lastIndexOf('/');
            if (slash < 0 || !typed.substring(slash + 1).matches("[0-9]{1,4}")) {
                wrong("hold", "line.whatIfHold");
                return Optional.empty();
            }
            return Optional.of(new WhatIf.Release(
                    typed.substring(0, slash),
                    Integer.parseInt(typed.substring(slash + 1)),
                    text("released").flatMap(this::time)));
        });
    }

    private Optional<Instant> time(String typed) {
        try {
            return Optional.of(LocalDateTime.parse(typed).atZone(zone).toInstant());
        } catch (DateTimeException unreadable) {
            wrong("released", "line.whatIfTime");
            return Optional.empty();
        }
    }

    private Optional<LocalDate> day(String field, String typed) {
        try {
            return Optional.of(LocalDate.parse(typed));
        } catch (DateTimeException unreadable) {
            if (filled.form().fault(field).isEmpty()) {
                wrong(field, "line.whatIfDate", typed);
            }
            return Optional.empty();
        }
    }

    private Optional<String> text(String field) {
        return Optional.of(filled.value(field)).filter(typed -> !typed.isEmpty());
    }

    private void wrong(String field, String key, Object... arguments) {
        filled = filled.wrong(field, key, arguments);
    }
}
