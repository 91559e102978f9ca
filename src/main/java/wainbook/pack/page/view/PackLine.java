package wainbook.pack.page.view;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import wainbook.pack.Pack;
import wainbook.pack.PackRow;
import wainbook.pack.watch.WatchTimes;
import wainbook.page.Formats;
import wainbook.page.Words;

/**
 * A pack as lists show it.
 *
 * @param order the vehicle that it is fitted in
 * @param lotHeld whether another pack holds its lot
 */
public record PackLine(PackRow row, Optional<String> order, boolean lotHeld, Instant now, ZoneId zone) {

    /** How a pack stands, the worst first. */
    public enum Standing {
        ALARM("danger", "alert"),
        QUARANTINE("danger", "stop"),
        DEFECTIVE("danger", "blocked"),
        LOT_HELD("warn", "hold"),
        NOT_ACCEPTED("warn", "alert"),
        CHECK_OVERDUE("warn", "clock"),
        OUTSIDE("warn", "alert"),
        FITTED("safe", "done"),
        STORED("quiet", "done"),
        GONE("quiet", "go");

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
            return Words.of("pack.standing." + name());
        }
    }

    public String path() {
        return "/packs/" + row.serial;
    }

    public Standing standing() {
        if (row.gone) {
            return Standing.GONE;
        } else if (row.setAside && row.alarmed) {
            return Standing.ALARM;
        } else if (row.quarantined) {
            return Standing.QUARANTINE;
        } else if (row.setAside) {
            return Standing.DEFECTIVE;
        } else if (lotHeld) {
            return Standing.LOT_HELD;
        } else if (!row.accepted) {
            return Standing.NOT_ACCEPTED;
        } else if (order.isPresent()) {
            return Standing.FITTED;
        } else if (overdue()) {
            return Standing.CHECK_OVERDUE;
        }
        return row.outsideWindow ? Standing.OUTSIDE : Standing.STORED;
    }

    /** The day of the next check in storage; none is owed once it is fitted, gone, or set aside. */
    public Optional<LocalDate> due() {
        boolean stored = row.lookedAt != null && order.isEmpty() && !row.gone && !row.setAside;
        return stored
                ? Optional.of(LocalDate.ofInstant(row.lookedAt, zone).plusMonths(Pack.CHECK_MONTHS))
                : Optional.empty();
    }

    public boolean overdue() {
        return due().filter(day -> LocalDate.ofInstant(now, zone).isAfter(day)).isPresent();
    }

    public String dueInWords() {
        return due().map(Formats::date).orElse("");
    }

    public Optional<Instant> nextWatch() {
        return row.gone ? Optional.empty() : Optional.ofNullable(row.nextWatch);
    }

    public boolean watchLate() {
        return nextWatch()
                .filter(time -> now.isAfter(time.plus(WatchTimes.TOLERANCE)))
                .isPresent();
    }

    public String place() {
        return text(row.place);
    }

    public String type() {
        return text(row.packType);
    }

    public String lot() {
        return text(row.lot);
    }

    private static String text(String of) {
        return of == null ? "–" : of;
    }

    public String charge() {
        return row.chargePercent == null
                ? "–"
                : row.chargePercent.stripTrailingZeros().toPlainString() + " %";
    }

    boolean holds(String search) {
        return Stream.of(row.serial, row.packType, row.lot, row.place, order.orElse(""))
                .anyMatch(text ->
                        text != null && text.toLowerCase(Locale.ROOT).contains(search.toLowerCase(Locale.ROOT)));
    }

    public List<String> cells() {
        return List.of(
                row.serial,
                standing().name(),
                row.packType == null ? "" : row.packType,
                row.lot == null ? "" : row.lot,
                row.place == null ? "" : row.place,
                row.chargePercent == null
                        ? ""
                        : row.chargePercent.stripTrailingZeros().toPlainString(),
                due().map(LocalDate::toString).orElse(""),
                nextWatch().map(Instant::toString).orElse(""),
                order.orElse(""));
    }
}
