package wainbook.waste.page;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import wainbook.page.Formats;
import wainbook.page.Words;
import wainbook.process.stream.ListOfWaste;
import wainbook.waste.ContainerRow;
import wainbook.waste.Labels;

/** A container as lists show it. */
public record ContainerLine(ContainerRow row, Instant now, ZoneId zone) {

    private static final BigDecimal HUNDRED = BigDecimal.valueOf(100);
    private static final int NEARLY_FULL = 90;

    /** How a container stands, what asks for somebody first. */
    public enum Standing {
        STANDS_LONG("warn", "clock"),
        SEALED("must", "go"),
        NEARLY_FULL("must", "alert"),
        OPEN("quiet", "done"),
        NO_RETURN("quiet", "document"),
        RETURNED("safe", "done");

        private final String meaning;
        private final String sign;

        Standing(String meaning, String sign) {
            this.meaning = meaning;
            this.sign = sign;
        }

        public String meaning() {
            return meaning;
        }

        public String sign() {
            return sign;
        }

        public String word() {
            return Words.of("waste.standing." + name());
        }
    }

    public String path() {
        return Labels.path(row.label);
    }

    public boolean gone() {
        return row.collectedAt != null;
    }

    public LocalDate askOn() {
        return LocalDate.ofInstant(row.since, zone).plusDays(row.askAfterDays);
    }

    public Standing standing() {
        if (gone()) {
            return row.isReturned ? Standing.RETURNED : Standing.NO_RETURN;
        } else if (row.massKg.signum() > 0 && askOn().isBefore(LocalDate.ofInstant(now, zone))) {
            return Standing.STANDS_LONG;
        } else if (row.isSealed) {
            return Standing.SEALED;
        }
        return percent() >= NEARLY_FULL ? Standing.NEARLY_FULL : Standing.OPEN;
    }

    /** Whole percent of its capacity, rounded down: what shows as full is full. */
    public int percent() {
        return row.filled
                .multiply(HUNDRED)
                .divide(row.capacity, 0, RoundingMode.DOWN)
                .intValue();
    }

    public String fill() {
        return Words.of("waste.fillOf", plain(row.filled), plain(row.capacity), unit());
    }

    public String mass() {
        return plain(row.massKg);
    }

    public String unit() {
        return Words.of("waste.measure." + row.measure.name());
    }

    public String title() {
        return ListOfWaste.ours().find(row.code).map(ListOfWaste.Row::title).orElse("");
    }

    /** What a button says that puts something into it. */
    public String asChoice() {
        return Words.of("waste.choiceOf", row.label, row.place, percent());
    }

    static String plain(BigDecimal value) {
        BigDecimal bare = value.stripTrailingZeros();
        return (bare.scale() < 0 ? bare.setScale(0) : bare).toPlainString();
    }

    boolean holds(String search) {
        return Stream.of(row.label, row.code, row.place, title(), row.noteCode == null ? "" : row.noteCode)
                .anyMatch(text -> text.toLowerCase(Locale.ROOT).contains(search.toLowerCase(Locale.ROOT)));
    }

    public String since() {
        return Formats.date(LocalDate.ofInstant(row.since, zone));
    }

    List<String> cells() {
        return List.of(
                row.label,
                row.code,
                title(),
                standing().name(),
                row.filled.toPlainString(),
                row.capacity.toPlainString(),
                row.measure.name().toLowerCase(Locale.ROOT),
                row.massKg.toPlainString(),
                String.valueOf(row.vehicles),
                row.place,
                row.since.toString(),
                row.collectedAt == null ? "" : row.collectedAt.toString(),
                row.noteCode == null ? "" : row.noteCode,
                row.noteKg == null ? "" : row.noteKg.toPlainString());
    }
}
