package wainbook.page;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.util.regex.Pattern;

/** How times and figures are written: the works' local time, with the full instant for whoever asks. */
public record Formats(ZoneId zone) {

    private static final Pattern DAY_OR_INSTANT = Pattern.compile("\\d{4}-\\d\\d-\\d\\d(T[0-9:.]+Z)?");
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Words.LOCALE);
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEE d MMM", Words.LOCALE);
    private static final DateTimeFormatter DATE = DateTimeFormatter.ofPattern("d MMM yyyy", Words.LOCALE);
    private static final DateTimeFormatter MOMENT = DateTimeFormatter.ofPattern("d MMM yyyy HH:mm", Words.LOCALE);
    private static final DateTimeFormatter EXACT = DateTimeFormatter.ofPattern("d MMM yyyy HH:mm:ss", Words.LOCALE);
    private static final DateTimeFormatter FULL =
            DateTimeFormatter.ofPattern("EEEE d MMMM yyyy HH:mm:ss", Words.LOCALE);

    /** A figure that may lie on either side of nought, its sign always said. */
    public static String signed(BigDecimal value) {
        String plain = value.stripTrailingZeros().toPlainString();
        return value.signum() > 0 ? "+" + plain : plain.replace('-', '−');
    }

    public String clock(Instant at) {
        return CLOCK.format(at.atZone(zone));
    }

    public String day(Instant at) {
        return DAY.format(at.atZone(zone));
    }

    /** The weekday, the day and the month. */
    public static String day(LocalDate date) {
        return DAY.format(date);
    }

    public String moment(Instant at) {
        return MOMENT.format(at.atZone(zone));
    }

    public String full(Instant at) {
        var local = at.atZone(zone);
        return FULL.format(local) + " " + zone.getId() + " (UTC"
                + local.getOffset().getId().replace("Z", "") + ")";
    }

    public static String date(LocalDate date) {
        return DATE.format(date);
    }

    /**
     * An argument of a reason for people. Reasons carry times and days as ISO 8601 text, which scripts get as it is; times
     * are shown to the second, so that nobody comes back seconds too early.
     */
    String argument(String text) {
        if (!DAY_OR_INSTANT.matcher(text).matches()) {
            return text;
        }
        try {
            return text.endsWith("Z") ? EXACT.format(Instant.parse(text).atZone(zone)) : date(LocalDate.parse(text));
        } catch (DateTimeParseException noSuchDay) {
            return text;
        }
    }

    /** Whole minutes, rounded down: {@code 1 h 12 min}. */
    public static String duration(Duration duration) {
        long minutes = Math.abs(duration.toMinutes());
        return minutes < 60
                ? Words.of("page.minutes", minutes)
                : Words.of("page.hoursAndMinutes", minutes / 60, minutes % 60);
    }
}
