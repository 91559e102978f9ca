package wainbook.quality.containment.page;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeParseException;
import java.util.Arrays;
import java.util.Optional;
import wainbook.page.Filled;
import wainbook.quality.QualitySaying.About;
import wainbook.quality.QualitySaying.Basis;
import wainbook.quality.QualitySaying.Sort;
import wainbook.quality.QualitySaying.Window;
import wainbook.quality.containment.Opening.ToOpen;

/** What a person fills in to open a containment, read and checked field by field. */
record Question(Filled filled, Sort sort, ZoneId zone, Instant now) {

    private static final String CODE = "[A-Za-z0-9][A-Za-z0-9._-]{0,39}";

    static Sort sort(String word) {
        return Arrays.stream(Sort.values())
                .filter(one -> one.name().equals(word))
                .findFirst()
                .orElse(Sort.INSTRUMENT);
    }

    /** The form with a fault at every field that cannot stand. */
    Filled checked() {
        Filled checked = filled;
        String code = filled.value("code");
        boolean lot = sort == Sort.LOT && !code.isEmpty() && code.length() <= 60;
        if (!lot && !code.matches(CODE)) {
            checked = checked.wrong("code", "quality.codeFault");
        }
        if (sort == Sort.REVISION && !filled.value("revision").matches("[1-9]\\d{0,5}")) {
            checked = checked.wrong("revision", "quality.revisionFault");
        }
        if (sort == Sort.COMPETENCE && !filled.value("competence").matches(CODE)) {
            checked = checked.wrong("competence", "quality.competenceFault");
        }
        for (String field : new String[] {"from", "to"}) {
            if (!filled.value(field).isEmpty() && day(field).isEmpty()) {
                checked = checked.wrong(field, "quality.dayFault");
            }
        }
        if (sort == Sort.COMPETENCE && filled.value("from").isEmpty()) {
            checked = checked.wrong("from", "quality.dayFault");
        }
        return checked;
    }

    ToOpen asked() {
        return new ToOpen(
                filled.id(),
                new About(
                        sort,
                        filled.value("code"),
                        sort == Sort.LOT ? typed("part") : Optional.empty(),
                        sort == Sort.REVISION ? typed("revision").map(Integer::valueOf) : Optional.empty(),
                        sort == Sort.REVISION ? typed("item") : Optional.empty(),
                        sort == Sort.COMPETENCE ? typed("competence") : Optional.empty()),
                window(),
                filled.value("reason"),
                filled.value("holdsAll").equals("yes"));
    }

    /** Whole days of the works. */
    private Optional<Window> window() {
        boolean timed = sort == Sort.INSTRUMENT || sort == Sort.COMPETENCE;
        return day("from").filter(day -> timed).map(from -> {
            Instant begin = from.atStartOfDay(zone).toInstant();
            Instant end = day("to")
                    .map(day -> day.plusDays(1).atStartOfDay(zone).toInstant())
                    .orElse(now);
            return new Window(begin, end.isAfter(now) ? now : end, Basis.ASKED);
        });
    }

    private Optional<String> typed(String field) {
        return Optional.of(filled.value(field)).filter(text -> !text.isEmpty());
    }

    private Optional<LocalDate> day(String field) {
        try {
            return Optional.of(LocalDate.parse(filled.value(field)));
        } catch (DateTimeParseException noDay) {
            return Optional.empty();
        }
    }
}
